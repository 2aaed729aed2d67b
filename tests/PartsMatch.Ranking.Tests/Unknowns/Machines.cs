using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Tests;

namespace PartsMatch.Ranking.Tests.Unknowns;

/// <summary>The demo catalogue as ranking takes it, and completions said once more as plainly as can be.</summary>
internal static class Machines
{
    public static IReadOnlyList<CataloguePart> Demo(Family family) =>
        [.. DemoParts.Of(family).Select(part => new CataloguePart(part.Number, family.ReadSpec(part.Texts).Spec, IsOffered: true))];

    /// <summary>Every machine that agrees with a need, one by one: as many of the telling fields as at least 20 machines agree with, from the most telling on.</summary>
    public static IReadOnlyList<Need> Agreeing(Family family, Need need, IReadOnlyList<CataloguePart> machines)
    {
        var telling = family.Aspects.Where(aspect => aspect.IsDeciding).Concat(family.Aspects.Where(aspect => !aspect.IsDeciding))
            .SelectMany(aspect => aspect.Fields.Spec.Concat(aspect.Fields.Site)).Distinct().Where(name => Said(family, need, name) is not null).ToList();
        var blank = new Need(family.ReadSpec([]).Spec, family.ReadSite([]).Site);
        var alone = machines.Select(machine => family.Complete(blank, family.Deduce(machine.Spec).Spec)).ToList();
        for (var kept = telling.Count; ; kept--)
        {
            var agreeing = alone.Where(machine => telling.Take(kept).All(name => Said(family, machine, name) is not { } said || said == Said(family, need, name))).ToList();
            if (kept == 0 || agreeing.Count >= Math.Min(20, machines.Count)) return [.. agreeing.Select(machine => family.Complete(need, machine.Plate))];
        }
    }

    /// <summary>A likelihood, worked out in full for every machine: the mean of what it is where the part passes, and of nothing where it fails.</summary>
    public static double Likelihood(Family family, Weights weights, IReadOnlyList<Need> completions, Spec part) =>
        completions.Average(need => Ranker.Explain(family, weights, need, part) is { Likelihood: not null } explained ? 1 / (1 + Math.Exp(-(weights.Intercept + explained.Score.Value))) : 0);

    private static string? Said(Family family, Need need, string name) =>
        family.SpecShape.Find(name) is { } field ? field.TextOf(need.Plate, Units.Si) : family.SiteShape.Find(name)!.TextOf(need.Site, Units.Si);
}
