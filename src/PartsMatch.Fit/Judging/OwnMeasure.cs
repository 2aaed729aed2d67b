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
    /// <summary>The figure of a shortfall, with its unit: 1/8 in (3.18 mm), 3.5 %.</summary>
    /// <param name="shortfall">0 or more.</param>
    /// <param name="units">The units of whoever reads it.</param>
    public string Figure(double shortfall, Units units)
    {
        var amount = Rounded.To(Easy + (shortfall * (Limit - Easy)), 3);
        if (units == Units.AsGiven && Unit == "mm") return new Shown(Rounded.To(amount, 2)).ToString();
        if (units == Units.AsGiven && Unit == "kPa") return new ShownPressure(amount).ToString();
        var figure = ChosenUnits.In(amount, Unit, units);
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Round(figure.Value, figure.Unit switch { "in" => 3, "mm" => 2, _ => 1 }):0.###} {figure.Unit}");
    }

    /// <summary>A shortfall in words: "a shaft 1/8 in (3.18 mm) shorter than the old one".</summary>
    /// <param name="shortfall">0 or more.</param>
    /// <param name="units">The units of whoever reads it.</param>
    public string Words(double shortfall, Units units) => $"{Before} {Figure(shortfall, units)} {After}";
}
