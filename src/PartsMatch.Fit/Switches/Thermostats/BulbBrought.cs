using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>With what a bulb is cooled and warmed past where contacts are to move, in words; formed only when they are shown.</summary>
/// <remarks>Ice water stands at 32 °F, ice with salt goes down to about 0 °F, a hand warms to about 90 °F, surely past 80 °F, and water boils at 212 °F, in the hills somewhat lower (practice).</remarks>
/// <param name="Coldest">How cold it is to get, °C; null where that is not known.</param>
/// <param name="Warmest">How warm it is to get, °C; null where that is not known.</param>
internal readonly record struct BulbBrought(double? Coldest, double? Warmest)
{
    /// <summary>A little over ice water, °C.</summary>
    private static readonly double LeastOfIceWater = Degrees.In(Temperature.FromDegreesFahrenheit(35));

    /// <summary>A little under a hand, °C.</summary>
    private static readonly double MostOfAHand = Degrees.In(Temperature.FromDegreesFahrenheit(80));

    /// <summary>A little under boiling water, °C.</summary>
    private static readonly double MostOfHotWater = Degrees.In(Temperature.FromDegreesFahrenheit(200));

    private const string Salted = "ice with salt (down to about 0 °F, −18 °C) or the cold coil or box itself";

    /// <inheritdoc/>
    public override string ToString() => $"{Cold} to cool it, {Warm} to warm it";

    private string Warm => Warmest switch
    {
        { } warm when !Within.AtMost(warm, MostOfHotWater) => "a heat gun or hot oil",
        { } warm when !Within.AtMost(warm, MostOfAHand) => "hot water",
        _ => "a hand",
    };

    private string Cold => Coldest switch
    {
        null => $"ice water, or under 35 °F (1.7 °C) {Salted},",
        { } cold when Within.AtLeast(cold, LeastOfIceWater) => "ice water",
        _ => Salted,
    };
}
