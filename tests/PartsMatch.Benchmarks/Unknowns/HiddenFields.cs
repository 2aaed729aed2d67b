using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Benchmarks.Unknowns;

/// <summary>A need, and the same with some fields of its plate hidden.</summary>
/// <param name="Full">With all that the catalogue says of the old part.</param>
/// <param name="Open">With fields hidden, so that a deciding aspect is open.</param>
internal sealed record HiddenNeed(Need Full, Need Open);

/// <summary>Needs whose old parts are the catalogue's, and the machines that are known besides: an old part is never among them.</summary>
/// <param name="Parts">All parts, as they are offered.</param>
/// <param name="Machines">The known machines.</param>
/// <param name="MachineSpecs">What is known of each of them, with deductions.</param>
/// <param name="Needs">The needs.</param>
internal sealed record HiddenFields(IReadOnlyList<CataloguePart> Parts, KnownMachines Machines, IReadOnlyList<Spec> MachineSpecs, IReadOnlyList<HiddenNeed> Needs)
{
    /// <summary>Draws them.</summary>
    /// <param name="family">The family.</param>
    /// <param name="parts">Its parts.</param>
    /// <param name="count">How many needs.</param>
    /// <param name="hidden">How many fields are hidden of each, of those that some aspect reads.</param>
    /// <param name="seed">What all chance follows from.</param>
    public static HiddenFields Draw(Family family, IReadOnlyList<CataloguePart> parts, int count, int hidden, int seed)
    {
        var random = new Random(seed);
        List<CataloguePart> drawn = [.. parts];
        random.Shuffle(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(drawn));
        var machines = KnownMachines.Of(family, drawn.Skip(count));
        return new(parts, machines, [.. drawn.Skip(count).Select(part => family.Deduce(part.Spec).Spec)], [.. drawn.Take(count).Select(old => Hidden(family, old.Spec, hidden, random)).Where(need => !machines.Complete(need.Open).IsNone)]);
    }

    private static HiddenNeed Hidden(Family family, Spec old, int hidden, Random random)
    {
        var read = family.Aspects.SelectMany(aspect => aspect.Fields.All).ToHashSet(StringComparer.Ordinal);
        var plate = family.SpecShape.Write(old);
        var names = plate.Select(text => text.Name).Where(read.Contains).ToArray();
        random.Shuffle(names);
        var gone = names.Take(hidden).ToHashSet(StringComparer.Ordinal);
        var site = SiteOf(family, old);
        return new(family.ReadNeed(new(null, plate, site)).Need, family.ReadNeed(new(null, [.. plate.Where(text => !gone.Contains(text.Name))], site)).Need);
    }

    /// <summary>The one reading that everybody takes, the supply's volts, where the kind has it: as the old part's plate says, or as the field's example.</summary>
    private static NamedText[] SiteOf(Family family, Spec old)
    {
        if (family.SiteShape.Find("volts") is not { } volts) return [];
        var first = family.SpecShape.Find("voltage")?.TextOf(old)?.Split('/', '-', ' ')[0];
        return [new(volts.Name, first is null ? volts.Example : $"{first} V")];
    }
}
