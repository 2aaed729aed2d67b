using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Pages.Needs;

/// <summary>What was typed about a failed part and its place, kept as typed: an error loses nothing, and a link holds it all.</summary>
/// <param name="Family">What kind of part failed.</param>
/// <param name="Text">A text that is still to be read: a plate's, or the old part's number.</param>
/// <param name="Shown">The plate's text that fields were read from before; only shown, never read into fields again.</param>
/// <param name="OldNumber">The old part's number.</param>
/// <param name="Plate">Fields of the plate.</param>
/// <param name="Site">Fields of the site.</param>
/// <param name="Readings">What was read at the old part, or at the new one.</param>
public sealed record NeedTyped(Family Family, string Text, string Shown, string OldNumber, IReadOnlyList<NamedText> Plate, IReadOnlyList<NamedText> Site, IReadOnlyList<NamedText> Readings)
{
    public const string PlatePrefix = "plate";
    public const string SitePrefix = "site";
    public const string ReadingsPrefix = "read";
    public const string KeptPrefix = "kept";
    private const string Kind = "kind";
    private const string TextName = "text";
    private const string ShownName = "shown";
    private const string OldName = "old";

    public static NeedTyped Of(Typed typed) => new(
        Families.Find(typed[Kind]) ?? Families.All[0],
        typed[TextName].Trim(),
        typed[ShownName].Trim(),
        typed[OldName].Trim(),
        typed.Under(PlatePrefix),
        typed.Under(SitePrefix),
        typed.Under(ReadingsPrefix))
    {
        Kept = typed.Under(KeptPrefix),
        StrangeKind = typed[Kind] is { Length: > 0 } kind && Families.Find(kind) is null ? kind : null,
    };

    /// <summary>A part that was found at another one, as if what is known of it had been typed.</summary>
    public static NeedTyped Of(OtherPart other) => new(other.Family, string.Empty, string.Empty, string.Empty, other.Family.SpecShape.Write(other.Plate), other.Family.SiteShape.Write(other.Site), []);

    /// <summary>A kind of part that was asked for and that there is none of: said, never taken silently for another.</summary>
    public string? StrangeKind { get; private init; }

    /// <summary>Fields that another kind of part has and this one has not: kept unseen, by the names of their inputs, until that kind is chosen again.</summary>
    public IReadOnlyList<NamedText> Kept { get; private init; } = [];

    /// <summary>Nothing at all was typed.</summary>
    public bool IsBlank => IsEmpty && Box.Length + Readings.Count + Kept.Count == 0 && StrangeKind is null;

    public bool IsEmpty => Text.Length == 0 && OldNumber.Length == 0 && Plate.Count + Site.Count == 0;

    /// <summary>What the one box of the first page holds.</summary>
    public string Box => Text.Length > 0 ? Text : Shown.Length > 0 ? Shown : OldNumber;

    public NeedGiven Given => new(Family, Plate, Text.Length > 0 ? Text : null, OldNumber.Length > 0 ? OldNumber : null, Site);

    /// <summary>The readings; null when there are none.</summary>
    public ReadingsGiven? ReadingsGiven => Readings.Count > 0 ? new(Family, Readings) : null;

    /// <summary>The inputs that hold it, in a form or a link.</summary>
    public IEnumerable<NamedText> Inputs =>
    [
        new(Kind, StrangeKind ?? Family.Kind),
        new(TextName, Text),
        new(OldName, OldNumber),
        .. Plate.Select(text => text with { Name = $"{PlatePrefix}.{text.Name}" }),
        .. Site.Select(text => text with { Name = $"{SitePrefix}.{text.Name}" }),
        .. Readings.Select(text => text with { Name = $"{ReadingsPrefix}.{text.Name}" }),
        .. Kept.Select(text => text with { Name = $"{KeptPrefix}.{text.Name}" }),
        new(ShownName, Shown),
    ];

    /// <summary>The link of a page about this need. Where it would be too long, the plate's text is left out: its fields stand in it.</summary>
    public string To(string path, params IEnumerable<NamedText> more)
    {
        var link = Link.To(path, [.. more, .. Inputs]);
        return link.Length <= Link.Longest ? link : Link.To(path, [.. more, .. (this with { Shown = string.Empty }).Inputs]);
    }

    /// <summary>Whether a link of it holds the plate's text as well.</summary>
    public bool IsWholeIn(string link) => Shown.Length == 0 || link.Contains($"{ShownName}=", StringComparison.Ordinal);

    /// <summary>With its text read into fields; one that is a part's number becomes the old part. What was typed into a field stays; what an earlier text gave goes with that text.</summary>
    public NeedTyped Read(Shelf shelf)
    {
        if (Text.Length == 0) return this;
        if (Text == Shown) return this with { Text = string.Empty };
        var reading = Family.ReadNameplate(Text);
        if (reading.Complaints.Any(Counter.Needs.IsOfTheWhole)) return this;
        if (NumberInText.Find(shelf, Text) is var (old, rest)) return InPlaceOf(old, rest);
        var typed = TypedAlone();
        return this with
        {
            Text = string.Empty,
            Shown = Text,
            OldNumber = Shown.Length > 0 ? OldNumber : string.Empty,
            Plate = [.. typed, .. FieldsOf(reading).Where(field => !typed.Exists(one => one.Name == field.Name))],
        };
    }

    /// <summary>The same for another kind of part: the text is still to be read, for what it says of that kind.</summary>
    public NeedTyped As(Family other)
    {
        var fields = (this with { Plate = TypedAlone() }).Inputs.Where(input => input.Name.Contains('.', StringComparison.Ordinal))
            .Select(input => input.Name.StartsWith($"{KeptPrefix}.", StringComparison.Ordinal) ? input with { Name = input.Name[(KeptPrefix.Length + 1)..] } : input).ToList();
        return new(other, Box, string.Empty, string.Empty, Under(PlatePrefix, other.SpecShape), Under(SitePrefix, other.SiteShape), Under(ReadingsPrefix, other.ReadingsShape)) { Kept = fields };

        List<NamedText> Under(string prefix, Shape shape)
        {
            var there = fields.Where(field => field.Name.StartsWith($"{prefix}.", StringComparison.Ordinal) && shape.Find(field.Name[(prefix.Length + 1)..]) is not null).ToList();
            fields.RemoveAll(there.Contains);
            return [.. there.Select(field => field with { Name = field.Name[(prefix.Length + 1)..] })];
        }
    }

    /// <summary>Whether its text holds the number of a part of another kind: read, it would bring that kind back.</summary>
    public bool HoldsNumberOfAnotherKind(Shelf shelf) => NumberInText.Find(shelf, Text) is var (old, _) && old.Family != Family;

    /// <summary>The box is empty: neither a text nor a number stands for the old part any more. Fields stand as they are shown.</summary>
    public NeedTyped WithEmptyBox() => this with { Shown = string.Empty, OldNumber = string.Empty };

    /// <summary>The catalogue says what the old part was, and the rest of the text what its plate says; of what was typed only that stays which no earlier text gave, and of another kind nothing.</summary>
    private NeedTyped InPlaceOf(CatalogueEntry old, string rest)
    {
        var typed = old.Family == Family ? this with { StrangeKind = null, Plate = TypedAlone() } : new(old.Family, string.Empty, string.Empty, string.Empty, [], [], []);
        var said = FieldsOf(old.Family.ReadNameplate(rest)).Where(field => !typed.Plate.Any(one => one.Name == field.Name)).ToList();
        return typed with { Text = string.Empty, Shown = said.Count > 0 ? rest : string.Empty, OldNumber = old.Stored.Number, Plate = [.. typed.Plate, .. said] };
    }

    /// <summary>Fields of the plate that the text before did not give.</summary>
    private List<NamedText> TypedAlone() => [.. Plate.Except(Shown.Length > 0 ? FieldsOf(Family.ReadNameplate(Shown)) : [])];

    private static IEnumerable<NamedText> FieldsOf(NameplateReading reading) => reading.Fields.Select(field => new NamedText(field.Field.Name, field.Text));
}
