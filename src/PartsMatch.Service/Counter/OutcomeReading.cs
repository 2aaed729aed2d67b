using System.Globalization;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Store;
using NamedText = PartsMatch.Fit.Judging.NamedText;

namespace PartsMatch.Service.Counter;

/// <summary>Makes of what was given a record that can be kept, or says all that is wrong with it, at places such as plate.power.</summary>
/// <param name="find">The part of a number, retired ones too.</param>
/// <param name="today">Today: a day may be tomorrow's, as clocks differ over the world, and no later; null where no day is held against a clock.</param>
/// <param name="readsFields">Whether plate and site are read; else their fields are taken as they are.</param>
internal sealed class OutcomeReading(Func<string, StoredPart?> find, DateOnly? today, bool readsFields = true)
{
    public const string Id = "id";
    public const string Kind = "kind";
    public const string On = "on";
    public const string Place = "place";
    public const string OldPart = "oldPart";
    public const string Plate = "plate";
    public const string PlateText = "plateText";
    public const string Site = "site";
    public const string Part = "part";
    public const string Result = "result";
    public const string Reason = "reason";
    public const string Note = "note";
    public const string Corrects = "corrects";

    public const int LongestId = 64;
    public const int LongestPlace = 100;
    public const int LongestNote = 500;

    /// <summary>A day before it is mistyped: nobody learns from parts of another century.</summary>
    private static readonly DateOnly FirstDay = new(2000, 1, 1);

    private static string DayExpected => "A day is written as 2026-03-14.";

    public Answer<OutcomeDraft> Read(OutcomeGiven given)
    {
        var refusals = new List<Refusal>();
        if (!IsId(given.Id)) refusals.Add(new(Codes.IdUnusable, Id, IdExpected));
        var family = Families.Find(given.Kind.Trim());
        if (family is null) refusals.Add(new(given.Kind.Length == 0 ? Codes.Empty : Codes.Unreadable, Kind, $"A kind is one of {string.Join(", ", Families.All.Select(one => one.Kind))}."));
        var on = Day(given.On, refusals);
        refusals.AddRange([.. Words(given.Place, Place, LongestPlace), .. Words(given.Note, Note, LongestNote)]);
        var oldPart = given.OldPart.Trim() is { Length: > 0 } old ? Known(old, OldPart, family, refusals) : null;
        var plate = family is null ? given.Plate : [.. given.Plate, .. OfText(given, family, refusals)];
        if (family is not null && readsFields) refusals.AddRange([.. Needs.Refusals(family.ReadSpec(given.Plate).Complaints, Plate), .. Needs.Refusals(family.ReadSite(given.Site).Complaints, Site)]);
        var part = Known(given.Part.Trim(), Part, family, refusals);
        CheckResult(given, refusals);
        if (given.Corrects.Length > 0 && !IsId(given.Corrects)) refusals.Add(new(Codes.IdUnusable, Corrects, IdExpected));
        if (refusals.Count > 0) return Answer<OutcomeDraft>.Refused(refusals);
        return new OutcomeDraft(
            given.Id,
            family!.Kind,
            on,
            given.Place.Trim(),
            oldPart?.Number ?? string.Empty,
            Kept(plate),
            Kept(given.Site),
            part!.Number,
            OutcomeWords.Of(OutcomeWords.ResultOf(given.Result)!.Value),
            OutcomeWords.ReasonOf(given.Reason) is { } reason ? OutcomeWords.Of(reason) : string.Empty,
            given.Note.Trim(),
            given.Corrects);
    }

    public static bool IsId(string id) => id.Length is >= 1 and <= LongestId && id.All(sign => char.IsAsciiLetterOrDigit(sign) || sign is '-' or '_' or '.');

    private static string IdExpected { get; } = FormattableString.Invariant($"An id has 1 to {LongestId} letters, digits, dashes, underscores and points.");

    private DateOnly Day(string text, List<Refusal> refusals)
    {
        if (!DateOnly.TryParseExact(text.Trim(), "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var on)) refusals.Add(new(string.IsNullOrWhiteSpace(text) ? Codes.Empty : Codes.Unreadable, On, DayExpected));
        else if (on < FirstDay) refusals.Add(new(Codes.Unreadable, On, FormattableString.Invariant($"{on:O} is before {FirstDay:O}, the first day that is kept. {DayExpected}")));
        else if (on > today?.AddDays(1)) refusals.Add(new(Codes.DayToCome, On, FormattableString.Invariant($"{on:O} is still to come. An outcome is recorded once it is known.")));
        return on;
    }

    private StoredPart? Known(string number, string at, Family? family, List<Refusal> refusals)
    {
        if (number.Length == 0) refusals.Add(new(Codes.Empty, at, "Which part was put in? Its number is needed."));
        else if (find(number) is not { } part) refusals.Add(Needs.NotFound(UnseenSigns.Shown(number), at));
        else if (family is not null && part.Kind != family.Kind) refusals.Add(new(Codes.KindMismatch, at, $"{part.Number} is a {Families.Find(part.Kind)?.Title ?? part.Kind}; the outcome is of a {family.Title}."));
        else return part;
        return null;
    }

    /// <summary>What a plate's text says of fields that were not typed by themselves.</summary>
    private static IEnumerable<NamedText> OfText(OutcomeGiven given, Family family, List<Refusal> refusals)
    {
        if (string.IsNullOrWhiteSpace(given.PlateText)) return [];
        var read = family.ReadNameplate(given.PlateText);
        if (read.Fields.Count == 0) refusals.AddRange(read.Complaints.Select(complaint => new Refusal(complaint.Code, PlateText, complaint.Message)));
        return read.Fields.Where(field => !given.Plate.Any(typed => typed.Name == field.Field.Name)).Select(field => new NamedText(field.Field.Name, field.Text));
    }

    private static void CheckResult(OutcomeGiven given, List<Refusal> refusals)
    {
        var (result, reason) = (OutcomeWords.ResultOf(given.Result), OutcomeWords.ReasonOf(given.Reason));
        var hasReason = !string.IsNullOrWhiteSpace(given.Reason);
        if (result is null) refusals.Add(new(string.IsNullOrWhiteSpace(given.Result) ? Codes.Empty : Codes.Unreadable, Result, $"A result is one of {OutcomeWords.AllResults}."));
        if (hasReason && reason is null) refusals.Add(new(Codes.Unreadable, Reason, $"A reason is one of {OutcomeWords.AllReasons}."));
        if (result == Learning.Result.RightFirstTime && hasReason) refusals.Add(new(Codes.ReasonUnneeded, Reason, "What was right first time has no reason why not. Leave it empty, or choose another result."));
        if (result is not null and not Learning.Result.RightFirstTime && !hasReason) refusals.Add(new(Codes.Empty, Reason, $"Say why it was not right: {OutcomeWords.AllReasons}."));
    }

    private static IEnumerable<Refusal> Words(string words, string at, int longest)
    {
        if (words.Trim().Length > longest) yield return new(Codes.TooLong, at, FormattableString.Invariant($"At most {longest} characters go here."));
        if (UnseenSigns.Complaint(words.Trim()) is { } unseen) yield return new(Codes.Unreadable, at, unseen);
    }

    private static IReadOnlyList<Store.NamedText> Kept(IEnumerable<NamedText> texts) => [.. texts.Where(text => !string.IsNullOrWhiteSpace(text.Text)).Select(text => new Store.NamedText(text.Name, text.Text.Trim()))];
}
