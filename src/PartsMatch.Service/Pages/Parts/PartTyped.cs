using System.Globalization;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Store;
using NamedText = PartsMatch.Fit.Judging.NamedText;

namespace PartsMatch.Service.Pages.Parts;

/// <summary>A part as it was typed, kept as typed: an error or a conflict loses nothing.</summary>
/// <param name="Family">What kind of part it is.</param>
/// <param name="Version">The version that the form was made from; 0 for a new part.</param>
/// <param name="Number">Its number.</param>
/// <param name="Maker">Who makes it.</param>
/// <param name="Title">A few words for it.</param>
/// <param name="Status">A word of <see cref="Statuses"/>.</param>
/// <param name="Spec">Fields of its spec.</param>
/// <param name="SupersededBy">What replaced it.</param>
public sealed record PartTyped(Family Family, int Version, string Number, string Maker, string Title, string Status, IReadOnlyList<NamedText> Spec, IReadOnlyList<SupersessionTyped> SupersededBy)
{
    public const string NumberName = "number";
    public const string MakerName = "maker";
    public const string TitleName = "title";
    public const string StatusName = "status";
    public const string VersionName = "version";
    public const string KindName = "kind";
    public const string SpecPrefix = "spec";
    public const string KeptPrefix = "kept";

    /// <summary>Fields that another kind of part has and this one has not: kept unseen until that kind is chosen again.</summary>
    public IReadOnlyList<NamedText> Kept { get; private init; } = [];

    public static IReadOnlyList<string> Statuses { get; } = [.. Enum.GetValues<PartStatus>().Select(Word)];

    public static PartTyped New(Family family) => new(family, 0, string.Empty, string.Empty, string.Empty, Word(PartStatus.Current), [], []);

    public static PartTyped Of(Family family, StoredPart part) => new(
        family, part.Version, part.Number, part.Maker, part.Title, Word(part.Status),
        [.. part.Spec.Select(text => new NamedText(text.Name, text.Text))],
        [.. part.SupersededBy.Select(SupersessionTyped.Of)]);

    public static PartTyped Of(Family family, Typed form) => new(
        family,
        VersionIn(form, VersionName),
        form[NumberName].Trim(), form[MakerName].Trim(), form[TitleName].Trim(), form[StatusName],
        form.Under(SpecPrefix),
        SupersessionTyped.AllOf(form))
    {
        Kept = form.Under(KeptPrefix),
    };

    /// <summary>The same as a part of another kind.</summary>
    public PartTyped As(Family other)
    {
        var fields = Spec.Concat(Kept).ToLookup(text => other.SpecShape.Find(text.Name) is not null);
        return this with { Family = other, Spec = [.. fields[true]], Kept = [.. fields[false]] };
    }

    /// <summary>What was typed as the core takes it, with what cannot be read of it.</summary>
    /// <param name="present">The part that is changed; null for a new one.</param>
    public (PartGiven Given, IReadOnlyList<Refusal> Unreadable) Read(StoredPart? present)
    {
        List<Refusal> wrong = [];
        if (present is not null && PartNumber.Key(Number) != PartNumber.Key(present.Number))
            wrong.Add(new(Codes.NumberUnusable, NumberName, $"{present.Number} cannot become “{Number}”: only dashes, spaces and case may change. Add that as a part of its own, and let it supersede this one."));
        if (!Statuses.Contains(Status)) wrong.Add(new(Codes.Unreadable, StatusName, $"“{Status}” is no status; it is one of {string.Join(", ", Statuses)}."));
        var by = SupersededBy.Select((one, at) => one.Read(at, Number, wrong)).OfType<Supersession>().ToList();
        return (new(Number, Maker, Title, Enum.TryParse<PartStatus>(Status, ignoreCase: true, out var status) ? status : PartStatus.Current, new(Family, Spec), by), wrong);
    }

    /// <summary>What was typed wherever something was typed since <paramref name="began"/>, and what stands <paramref name="now"/> elsewhere.</summary>
    public PartTyped Onto(PartTyped began, PartTyped now) => now with
    {
        Number = Mine(Number, began.Number, now.Number),
        Maker = Mine(Maker, began.Maker, now.Maker),
        Title = Mine(Title, began.Title, now.Title),
        Status = Mine(Status, began.Status, now.Status),
        Spec = [.. now.Spec.Concat(Spec).Select(text => text.Name).Distinct().Select(name => new NamedText(name, Mine(TextOf(Spec, name), TextOf(began.Spec, name), TextOf(now.Spec, name)))).Where(text => text.Text.Length > 0)],
        SupersededBy = SupersededBy.SequenceEqual(began.SupersededBy) ? now.SupersededBy : SupersededBy,
    };

    /// <summary>A version that a form holds; 0, which no part ever has, for what is none.</summary>
    public static int VersionIn(Typed form, string input) => int.TryParse(form[input], NumberStyles.None, CultureInfo.InvariantCulture, out var version) ? version : 0;

    private static string Mine(string typed, string began, string now) => typed == began ? now : typed;

    private static string TextOf(IReadOnlyList<NamedText> spec, string name) => spec.FirstOrDefault(text => text.Name == name)?.Text ?? string.Empty;

    private static string Word(PartStatus status) => status.ToString().ToLowerInvariant();
}
