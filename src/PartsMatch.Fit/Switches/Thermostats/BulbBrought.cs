using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>With what a bulb is cooled and warmed past where contacts are to move, in words; formed only when they are shown.</summary>
/// <remarks>Ice water stands at 32 °F, ice with salt goes down to about 0 °F, and a hand warms to about 90 °F, surely past 80 °F (practice).</remarks>
/// <param name="Coldest">How cold it is to get, °C; null where that is not known.</param>
/// <param name="Warmest">How warm it is to get, °C; null where that is not known.</param>
internal readonly record struct BulbBrought(double? Coldest, double? Warmest)
{
    /// <summary>A little over ice water, °C.</summary>
    private static readonly double LeastOfIceWater = Degrees.In(Temperature.FromDegreesFahrenheit(35));

    /// <summary>A little under a hand, °C.</summary>
    private static readonly double MostOfAHand = Degrees.In(Temperature.FromDegreesFahrenheit(80));

    private const string Salted = "ice with salt (down to about 0 °F, −18 °C) or the cold coil or box itself";

    /// <inheritdoc/>
    public override string ToString() => $"{Cold} to cool it, {(Warmest is { } warm && !Within.AtMost(warm, MostOfAHand) ? "hot water" : "a hand")} to warm it";

    private string Cold => Coldest switch
    {
        null => $"ice water, or under 35 °F (1.7 °C) {Salted},",
        { } cold when Within.AtLeast(cold, LeastOfIceWater) => "ice water",
        _ => Salted,
    };
}
