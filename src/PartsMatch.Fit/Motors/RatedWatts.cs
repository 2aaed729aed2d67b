using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>Watts as a person reads them: 1/3 hp where it is a standard rating, else 250 W.</summary>
/// <param name="Watts">Watts, to 0.1 W.</param>
public readonly record struct RatedWatts(double Watts)
{
    /// <summary>Half of the last digit that watts are rounded to, and a little: 1/3 hp is 248.67 W.</summary>
    private const double SameFigure = 0.06;

    private const double WattsPerHorsepower = 746;

    /// <inheritdoc/>
    public override string ToString()
    {
        var watts = Watts;
        return HorsepowerSeries.Ratings.FirstOrDefault(rating => Math.Abs((rating * WattsPerHorsepower) - watts) < SameFigure) is var hp and > 0
            ? $"{FractionText.Exactly(hp) ?? FormattableString.Invariant($"{hp:0.####}")} hp"
            : FormattableString.Invariant($"{watts:0.#} W");
    }
}
