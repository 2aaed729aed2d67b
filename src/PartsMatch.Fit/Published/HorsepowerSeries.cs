using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Published;

/// <summary>The standard horsepower ratings of small and medium motors.</summary>
public static class HorsepowerSeries
{
    private const double WattsPerHorsepower = 746;

    /// <summary>
    /// How far apart two figures may lie and still mean the same rating. The kilowatt series is paired with the horsepower series by name:
    /// 0.37 kW with 1/2 hp (373 W) is 0.8 % under, 0.55 kW with 3/4 hp (559.5 W) 1.7 %, and 0.18, 0.12 and 0.09 kW with 1/4, 1/6 and 1/8 hp 3.5 %.
    /// </summary>
    public const double SameRating = 0.04;

    /// <summary>NEMA MG 1 10.32: subfractional, small and medium ratings.</summary>
    public static Source Source { get; } = new("NEMA MG 1 10.32, standard horsepower ratings", SourceStatus.Memory);

    /// <summary>The ratings, in horsepower, from a thousandth to 50.</summary>
    public static IReadOnlyList<double> Ratings { get; } =
    [
        0.001, 0.0015, 0.002, 0.003, 0.005, 0.0075, 0.010, 0.015, 0.025, 0.035,
        1.0 / 20, 1.0 / 12, 1.0 / 8, 1.0 / 6, 1.0 / 4, 1.0 / 3, 1.0 / 2, 3.0 / 4,
        1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50,
    ];

    private static readonly double[] Watts = [.. Ratings.Select(rating => rating * WattsPerHorsepower)];

    /// <summary>How many standard ratings lie above one power, up to another: 1 from 1/3 to 1/2 hp, 0 when both mean the same rating.</summary>
    /// <param name="fromWatts">The old power, in watts.</param>
    /// <param name="toWatts">The new one, in watts; 0 steps when it is lower.</param>
    public static int StepsUp(double fromWatts, double toWatts)
    {
        var (above, upTo, steps) = (fromWatts * (1 + SameRating), toWatts * (1 + SameRating), 0);
        foreach (var watts in Watts)
        {
            if (!Within.AtMost(watts, upTo)) break;
            if (watts > above) steps++;
        }

        return steps;
    }
}
