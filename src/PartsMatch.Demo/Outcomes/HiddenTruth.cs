using System.Runtime.InteropServices;

namespace PartsMatch.Demo.Outcomes;

/// <summary>What really decides whether a part does the job in this invented world. It is a hazard made of softened thresholds, products of them, the place, the technician and the part's own quality: not the form of any model that ranks.</summary>
/// <param name="Rules">Each way to fail.</param>
/// <param name="Together">Pairs of rules that are worse together, and how much.</param>
public sealed record HiddenTruth(IReadOnlyList<HiddenRule> Rules, IReadOnlyList<(int One, int Other, double Hazard)> Together)
{
    private const double Always = 0.02;

    /// <summary>The chances of an installation.</summary>
    /// <param name="old">The old part.</param>
    /// <param name="part">The new one.</param>
    /// <param name="place">Where.</param>
    /// <param name="quality">What the part's own quality adds to its hazard.</param>
    /// <param name="drift">How much harder the day is than the first, 1 or more.</param>
    public Chances Of(PartFigures old, PartFigures part, Place place, double quality, double drift)
    {
        var (failure, rework) = (Always + quality, Always * (1.5 - place.Skill));
        var each = new double[Rules.Count];
        for (var at = 0; at < each.Length; at++)
        {
            each[at] = Rules[at].HazardOf(old, part, place);
            if (Rules[at].IsRework) rework += each[at] * (1.6 - (1.3 * place.Skill));
            else failure += each[at];
        }

        foreach (var (one, other, hazard) in Together) failure += hazard * each[one] * each[other];
        failure *= place.Harshness * drift;
        var right = Math.Exp(-failure - rework);
        return new(right, (1 - right) * failure / (failure + rework));
    }
}

/// <summary>How an installation may end.</summary>
/// <param name="Right">Right the first time, 0 to 1.</param>
/// <param name="CameBack">It comes back; what is left is reworked.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Chances(double Right, double CameBack);
