using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>Codes for what fields say, so that machines are compared by numbers: fields of the plate first, then those of the site that follows from it.</summary>
/// <remarks>Two values are the same when they are written the same in SI, rounded as the trade does: 1/2 in and 12.7 mm are. Codes only grow, and are shared by all snapshots.</remarks>
internal sealed class FieldCodes
{
    /// <summary>The code of what is not known.</summary>
    public const int Unknown = 0;

    private readonly Family family;
    private readonly Field[] fields;
    private readonly SaidValues[] said;
    private readonly Need blank;

    /// <summary>None yet.</summary>
    /// <param name="family">The family.</param>
    public FieldCodes(Family family)
        : this(family, form => new(form))
    {
    }

    /// <summary>Those that were written.</summary>
    /// <param name="family">The family.</param>
    /// <param name="from">Where <see cref="WriteTo"/> wrote them.</param>
    public FieldCodes(Family family, BinaryReader from)
        : this(family, form => new(form, from))
    {
    }

    private FieldCodes(Family family, Func<TextForm, SaidValues> saidOf)
    {
        this.family = family;
        blank = new(family.ReadSpec([]).Spec, family.ReadSite([]).Site);
        fields = [.. family.SpecShape.Fields, .. family.SiteShape.Fields];
        said = [.. fields.Select(field => saidOf(field.Form))];
        Telling = [.. family.Aspects.OrderBy(aspect => !aspect.IsDeciding)
            .SelectMany(aspect => aspect.Fields.Spec.Concat(aspect.Fields.Site), (aspect, name) => new TellingField(FieldOf(name), Find(name), aspect.IsDeciding)).DistinctBy(field => field.At)];
        Deciding = [.. family.Aspects.Where(aspect => aspect.IsDeciding).Select(aspect => (aspect, aspect.Fields.All.Select(family.SpecShape.Find).OfType<Field>().ToArray()))];
        ReadBy = [.. family.Aspects.Select(aspect => aspect.Fields.All.Distinct(StringComparer.Ordinal).Select(Find).ToArray())];
        Read = [.. Telling.Select(field => field.At).Concat(ReadBy.SelectMany(places => places)).Distinct()];
    }

    /// <summary>The fields that machines are compared by, the most telling first: those of deciding aspects before the others, in the family's order.</summary>
    public IReadOnlyList<TellingField> Telling { get; }

    /// <summary>The deciding aspects, and the fields of the plate that each answer may follow from.</summary>
    public IReadOnlyList<(Aspect Aspect, Field[] Plate)> Deciding { get; }

    /// <summary>Of every aspect, the places of all fields that its answer may follow from.</summary>
    public IReadOnlyList<int[]> ReadBy { get; }

    /// <summary>The places of all fields that any answer may follow from, the most telling first.</summary>
    public IReadOnlyList<int> Read { get; }

    /// <summary>How many fields the plate has.</summary>
    public int SpecFields => family.SpecShape.Fields.Count;

    /// <summary>Writes all codes that there are now.</summary>
    public void WriteTo(BinaryWriter to)
    {
        foreach (var values in said) values.WriteTo(to);
    }

    /// <summary>The codes of a machine that were written, field by field.</summary>
    public int[] CodesFrom(BinaryReader from)
    {
        var codes = new int[fields.Length];
        foreach (ref var code in codes.AsSpan()) code = from.Read7BitEncodedInt();
        return codes;
    }

    /// <summary>The codes of a machine: of its plate, and of the site that follows from it.</summary>
    public int[] Of(Spec machine)
    {
        var alone = family.Complete(blank, machine);
        var values = fields.Select((_, at) => ValueOf(alone, at));
        return [.. values.Select((value, at) => value is null ? Unknown : said[at].CodeOf(TextOf(value, at), value))];
    }

    /// <summary>Of every code of a field, how far what it stands for lies from a value, as <see cref="SaidValues.Apart"/> tells.</summary>
    public int[] Apart(int at, object value) => said[at].Apart(TextOf(value, at), value);

    /// <summary>Of every code of a field, where it stands among the others: like values beside each other, and the same whatever was read first.</summary>
    public ushort[] Ranks(int at) => said[at].Ranks();

    /// <summary>The value of a field of plate or site; null when it is not known.</summary>
    public object? ValueOf(Need need, int at) => fields[at].Get(at < SpecFields ? need.Plate : need.Site);

    private string TextOf(object value, int at) => fields[at].Form.WriteAny(value, Units.Si);

    private Field FieldOf(string name) => fields[Find(name)];

    private int Find(string name)
    {
        if (family.SpecShape.Find(name) is { } field) return Array.IndexOf(fields, field);
        var ofSite = family.SiteShape.Find(name) ?? throw new ArgumentException($"{family.Kind} has no field {name}.", nameof(name));
        return Array.IndexOf(fields, ofSite);
    }
}

/// <summary>A field that machines are compared by.</summary>
/// <param name="Field">The field.</param>
/// <param name="At">Its place among all fields.</param>
/// <param name="IsDeciding">Whether a deciding aspect looks at it.</param>
internal sealed record TellingField(Field Field, int At, bool IsDeciding);
