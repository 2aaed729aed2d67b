using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>Codes for what fields say, so that machines are compared by numbers: fields of the plate first, then those of the site that follows from it.</summary>
/// <remarks>Two values are the same when they are written the same in SI, rounded as the trade does: 1/2 in and 12.7 mm are. Codes only grow, and are shared by all snapshots.</remarks>
internal sealed class FieldCodes
{
    /// <summary>The code of what is not known.</summary>
    public const int Unknown = 0;

    private const int SaidByNone = -1;

    private readonly Family family;
    private readonly Dictionary<(int Field, string Text), int> codes = [];

    public FieldCodes(Family family)
    {
        this.family = family;
        Blank = new(family.ReadSpec([]).Spec, family.ReadSite([]).Site);
        List<string> telling = [.. family.Aspects.OrderBy(aspect => !aspect.IsDeciding).SelectMany(aspect => aspect.Fields.Spec.Concat(aspect.Fields.Site)).Distinct(StringComparer.Ordinal)];
        Telling = [.. telling.Select(Find)];
        Deciding = [.. family.Aspects.Where(aspect => aspect.IsDeciding).Select(aspect => (aspect, aspect.Fields.All.Select(family.SpecShape.Find).OfType<Field>().ToArray()))];
        ReadBy = [.. family.Aspects.Select(aspect => aspect.Fields.All.Distinct(StringComparer.Ordinal).Select(name => Find(name).At).ToArray())];
    }

    /// <summary>The fields that machines are compared by, the most telling first: those of deciding aspects before the others, in the family's order.</summary>
    public IReadOnlyList<(Field Field, int At)> Telling { get; }

    /// <summary>The deciding aspects, and the fields of the plate that each answer may follow from.</summary>
    public IReadOnlyList<(Aspect Aspect, Field[] Plate)> Deciding { get; }

    /// <summary>Of every aspect, the places of all fields that its answer may follow from.</summary>
    public IReadOnlyList<int[]> ReadBy { get; }

    /// <summary>How many fields the plate has.</summary>
    public int SpecFields => family.SpecShape.Fields.Count;

    private Need Blank { get; }

    /// <summary>The codes of a machine: of its plate, and of the site that follows from it.</summary>
    public int[] Of(Spec machine)
    {
        var texts = Texts(family.Complete(Blank, machine));
        lock (codes) return Coded(texts, (at, text) => codes.TryGetValue((at, text), out var code) ? code : codes[(at, text)] = codes.Count + 1);
    }

    /// <summary>The codes of all that a need says; what no machine says has a code that none carries.</summary>
    public int[] Said(Need need)
    {
        var texts = Texts(need);
        lock (codes) return Coded(texts, (at, text) => codes.GetValueOrDefault((at, text), SaidByNone));
    }

    /// <summary>The value of a field of plate or site; null when it is not known.</summary>
    public object? ValueOf(Need need, int at) => at < SpecFields ? family.SpecShape.Fields[at].Get(need.Plate) : family.SiteShape.Fields[at - SpecFields].Get(need.Site);

    private static int[] Coded(string?[] texts, Func<int, string, int> codeOf) => [.. texts.Select((text, at) => text is null ? Unknown : codeOf(at, text))];

    /// <summary>What all fields say, written while no one waits.</summary>
    private string?[] Texts(Need need) =>
        [.. family.SpecShape.Fields.Select(field => field.TextOf(need.Plate, Units.Si)), .. family.SiteShape.Fields.Select(field => field.TextOf(need.Site, Units.Si))];

    private (Field Field, int At) Find(string name)
    {
        if (family.SpecShape.Find(name) is { } field) return (field, family.SpecShape.Fields.Index().Single(one => one.Item == field).Index);
        var ofSite = family.SiteShape.Find(name) ?? throw new ArgumentException($"{family.Kind} has no field {name}.", nameof(name));
        return (ofSite, SpecFields + family.SiteShape.Fields.Index().Single(one => one.Item == ofSite).Index);
    }
}
