using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Ranking;

namespace PartsMatch.Benchmarks.Unknowns;

/// <summary>A machine and what it counts.</summary>
internal readonly record struct Counted(Spec Machine, double Weight);

/// <summary>Likelihoods by brute force: the need is completed by every machine that counts, and every part judged in full for each.</summary>
internal static class EveryMachine
{
    /// <summary>The mean of a part's likelihood over machines, nothing where it fails.</summary>
    public static double[] Likelihoods(Family family, Weights weights, Need need, IReadOnlyList<Counted> machines, IReadOnlyList<Spec> parts)
    {
        var (sums, all) = (new double[parts.Count], 0.0);
        foreach (var (machine, weight) in machines)
        {
            var completed = family.Complete(need, machine);
            for (var part = 0; part < sums.Length; part++) sums[part] += weight * Likelihood(family, weights, completed, parts[part]);
            all += weight;
        }

        return [.. sums.Select(sum => sum / all)];
    }

    /// <summary>A part's likelihood for a need of which all is known, unrounded.</summary>
    public static double Likelihood(Family family, Weights weights, Need need, Spec part)
    {
        var explained = Ranker.Explain(family, weights, need, part);
        return explained.Sheet.Fit == PartFit.DoesntFit ? 0 : 1 / (1 + Math.Exp(-(weights.Intercept + explained.Score.Value)));
    }

    /// <summary>
    /// The plainer way: machines that agree in as many of the telling fields, from the most telling on, as at least 20 machines agree in count alike, and no others.
    /// </summary>
    public static IReadOnlyList<Counted> AgreeingOrNot(Family family, Need need, IReadOnlyList<Spec> machines)
    {
        const int Enough = 20;
        List<(Field Field, object Of)> telling = [.. family.Aspects.OrderBy(aspect => !aspect.IsDeciding).SelectMany(aspect => aspect.Fields.Spec).Distinct(StringComparer.Ordinal)
            .Select(name => family.SpecShape.Find(name)!).Where(field => field.Get(need.Plate) is not null).Select(field => (field, (object)field.TextOf(need.Plate, Units.Si)!))];
        List<int> agreed = [.. machines.Select(machine => telling.TakeWhile(one => one.Field.TextOf(machine, Units.Si) is not { } said || said.Equals(one.Of)).Count())];
        var kept = telling.Count;
        while (kept > 0 && agreed.Count(count => count >= kept) < Enough) kept--;
        return [.. machines.Where((_, index) => agreed[index] >= kept).Select(machine => new Counted(machine, 1))];
    }
}
