using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Tests;

namespace PartsMatch.Ranking.Tests.Unknowns;

/// <summary>The demo catalogue as ranking takes it, and completions said once more as plainly as can be.</summary>
internal static class Machines
{
    public static IReadOnlyList<CataloguePart> Demo(Family family) =>
        [.. DemoParts.Of(family).Select(part => new CataloguePart(part.Number, family.ReadSpec(part.Texts).Spec, IsOffered: true))];

    /// <summary>
    /// Every machine by what it counts, said once more: the sum of its distances, halved once a reach from the nearest one on, the reach the least at which all count as five alike ones.
    /// </summary>
    public static IReadOnlyList<(Need Need, int Weight)> Near(Family family, Need need, IReadOnlyList<CataloguePart> machines)
    {
        var blank = new Need(family.ReadSpec([]).Spec, family.ReadSite([]).Site);
        var specs = machines.Select(machine => family.Deduce(machine.Spec).Spec).ToList();
        var apart = specs.Select(spec => Apart(family, need, family.Complete(blank, spec))).ToList();
        for (var reach = 1 / 16.0; ; reach *= 2)
        {
            var weights = apart.Select(far => (int)Math.Round(1000 * Math.Pow(2, (apart.Min() - far) / (100 * reach)))).ToList();
            var alike = Math.Pow(weights.Sum(), 2) / weights.Sum(weight => Math.Pow(weight, 2));
            if (reach >= 16 || alike >= Math.Min(5, machines.Count / 2.0)) return [.. specs.Zip(weights, (spec, weight) => (family.Complete(need, spec), weight)).Where(one => one.weight > 0)];
        }
    }

    /// <summary>How far a machine is from what is known of a need, in hundredths of a step: what deciding aspects look at counts twice, what the machine does not say half a step.</summary>
    public static int Apart(Family family, Need need, Need machine)
    {
        var deciding = family.Aspects.Where(aspect => aspect.IsDeciding).SelectMany(aspect => aspect.Fields.Spec.Concat(aspect.Fields.Site)).ToHashSet();
        var looked = deciding.Concat(family.Aspects.SelectMany(aspect => aspect.Fields.Spec.Concat(aspect.Fields.Site))).Distinct().Where(name => Said(family, need, name) is not null);
        return looked.Sum(name => (deciding.Contains(name) ? 2 : 1) * (Said(family, machine, name) is not { } said ? 50 : said == Said(family, need, name) ? 0 : Math.Max(1, (int)Math.Round(100 * StepsApart(family, need, machine, name)))));
    }

    /// <summary>A likelihood, worked out in full for every machine: the mean, by what each counts, of what it is where the part passes, and of nothing where it fails.</summary>
    public static double Likelihood(Family family, Weights weights, IReadOnlyList<(Need Need, int Weight)> machines, Spec part) =>
        machines.Sum(machine => machine.Weight * Passing(family, weights, machine.Need, part)) / machines.Sum(machine => (double)machine.Weight);

    private static double Passing(Family family, Weights weights, Need need, Spec part) =>
        Ranker.Explain(family, weights, need, part) is { Likelihood: not null } explained ? 1 / (1 + Math.Exp(-(weights.Intercept + explained.Score.Value))) : 0;

    private static double StepsApart(Family family, Need one, Need other, string name)
    {
        var form = (family.SpecShape.Find(name) ?? family.SiteShape.Find(name))!.Form;
        return Steps.Apart([.. form.StepsOf(Value(family, one, name)!)], [.. form.StepsOf(Value(family, other, name)!)]);
    }

    private static object? Value(Family family, Need need, string name) => family.SpecShape.Find(name) is { } field ? field.Get(need.Plate) : family.SiteShape.Find(name)!.Get(need.Site);

    private static string? Said(Family family, Need need, string name) =>
        family.SpecShape.Find(name) is { } field ? field.TextOf(need.Plate, Units.Si) : family.SiteShape.Find(name)!.TextOf(need.Site, Units.Si);
}
