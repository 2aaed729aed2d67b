using PartsMatch.Demo.Trade;

namespace PartsMatch.Demo.Outcomes;

/// <summary>A place where parts are put in, with what no record tells of it.</summary>
/// <param name="Name">How records call it.</param>
/// <param name="VoltsOff">How far its supply is off what it should be, as a share.</param>
/// <param name="AirMost">The hottest air there, °C.</param>
/// <param name="IsWet">Whether it is rained on or washed.</param>
/// <param name="Harshness">How much harder it is on parts than others: 1 is usual. Nobody writes it down.</param>
/// <param name="Skill">How well whoever works there knows the work, 0 to 1. Nobody writes it down.</param>
public sealed record Place(string Name, double VoltsOff, double AirMost, bool IsWet, double Harshness, double Skill)
{
    private const int Count = 600;

    /// <summary>The places of the made-up district.</summary>
    public static IReadOnlyList<Place> Draw(Draw draw) => [.. Enumerable.Range(1, Count).Select(number => new Place(
        FormattableString.Invariant($"Place {number:000}"),
        -0.015 + (0.032 * Bell(draw)),
        Math.Round(draw.Between(24, 48)),
        draw.Chance(0.35),
        Math.Exp(0.35 * Bell(draw)),
        draw.Between(0.25, 1)))];

    /// <summary>Nearly normal, mean 0, deviation 1: twelve even draws added up.</summary>
    internal static double Bell(Draw draw) => Enumerable.Range(0, 12).Sum(_ => draw.Between(0, 1)) - 6;
}
