using System.Globalization;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging;

/// <summary>What an aspect's shortfall is in the aspect's own unit: "a shaft 1/8 in shorter than the old one" says more than "half way to its limit".</summary>
/// <param name="Before">The words before the figure: "a shaft".</param>
/// <param name="After">The words behind it: "shorter than the old one".</param>
/// <param name="Easy">The figure that nobody would give a thought, where the shortfall is 0.</param>
/// <param name="Limit">The figure at the limit, where it is 1.</param>
/// <param name="Unit">The unit of both: mm, %, m.</param>
public sealed record OwnMeasure(string Before, string After, double Easy, double Limit, string Unit)
{
    /// <summary>What it is the other way, where too much is wrong as well as too little, or where another figure counts for as much; null where it is one figure alone.</summary>
    public OwnMeasure? Or { get; init; }

    /// <summary>Whether half way is as many times the easy figure as the limit is times half way: twice, where the limit is four times.</summary>
    public bool IsByTimes { get; init; }

    /// <summary>The figure of a shortfall, with its unit: 1/8 in (3.18 mm), 3.5 %; both, where they differ the other way: 5 % or 40 %.</summary>
    /// <param name="shortfall">0 or more.</param>
    /// <param name="units">The units of whoever reads it.</param>
    public string Figure(double shortfall, Units units)
    {
        var (one, other) = (One(shortfall, units), Or?.Figure(shortfall, units));
        return other is null || other == one ? one : $"{one} or {other}";
    }

    /// <summary>A shortfall in words: "a shaft 1/8 in (3.18 mm) shorter than the old one".</summary>
    /// <param name="shortfall">0 or more.</param>
    /// <param name="units">The units of whoever reads it.</param>
    public string Words(double shortfall, Units units) => $"{Before} {One(shortfall, units)} {After}{(Or is null ? string.Empty : $" or {Or.Words(shortfall, units)}")}";

    private string One(double shortfall, Units units)
    {
        var amount = Rounded.To(IsByTimes ? Easy * Math.Pow(Limit / Easy, shortfall) : Easy + (shortfall * (Limit - Easy)), 3);
        if (units == Units.AsGiven && AsGiven(amount) is { } given) return given;
        var figure = ChosenUnits.In(amount, Unit, units);
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Round(figure.Value, figure.Unit switch { "in" => 3, "mm" => 2, _ => 1 }):0.###} {figure.Unit}");
    }

    /// <summary>A figure as sentences show it where no units were chosen, in both systems; null where both write it alike.</summary>
    private string? AsGiven(double amount) => Unit switch
    {
        "mm" => new Shown(Rounded.To(amount, 2)).ToString(),
        "m" => new ShownAltitude(amount).ToString(),
        "K" => new ShownDifference(amount).ToString(),
        "kPa" => new ShownPressure(amount).ToString(),
        _ => null,
    };
}
