namespace PartsMatch.Service.Pages.Models;

/// <summary>What a cost in log-odds does to the odds of a part, in words that go on behind "it".</summary>
internal static class Odds
{
    /// <summary>Costs that differ by less are told alike.</summary>
    private const double Near = 0.06;

    private const double Hardly = 0.05;

    /// <summary>Whether a cost is worth a word.</summary>
    public static bool Count(double cost) => cost >= Hardly;

    /// <summary>The share of the odds that a cost leaves, 0 to 1.</summary>
    public static double Left(double cost) => Math.Exp(-cost);

    public static string Of(double cost) => cost switch
    {
        0 => "costs nothing",
        < Hardly => "hardly changes the odds",
        _ when IsNear(cost, 2) => "halves the odds",
        _ when IsNear(cost, 3) => "leaves a third of the odds",
        _ when IsNear(cost, 4) => "leaves a quarter of the odds",
        _ when Left(cost) > 0.5 => FormattableString.Invariant($"takes {100 * (1 - Left(cost)):0} % off the odds"),
        _ when Left(cost) > 0.1 => FormattableString.Invariant($"divides the odds by {1 / Left(cost):0.0}"),
        _ when Left(cost) > 0.001 => FormattableString.Invariant($"divides the odds by {1 / Left(cost):0}"),
        _ => "divides the odds by more than a thousand",
    };

    /// <summary>A cost as so much work.</summary>
    /// <param name="cost">The cost.</param>
    /// <param name="hour">What an hour's work costs; above 0.</param>
    public static string InWork(double cost, double hour) => (cost / hour) switch
    {
        < 1.0 / 24 => "less than a few minutes' work",
        < 0.96 and var hours => FormattableString.Invariant($"as much as {5 * Math.Round(12 * hours):0} minutes' work"),
        < 1.05 => "as much as an hour's work",
        < 10 and var hours => FormattableString.Invariant($"as much as {hours:0.0} hours' work"),
        _ => "more than a day's work",
    };

    private static bool IsNear(double cost, double divisor) => Math.Abs(cost - Math.Log(divisor)) < Near;
}
