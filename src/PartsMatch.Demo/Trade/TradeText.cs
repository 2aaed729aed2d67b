using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Trade;

/// <summary>Values written in the generators as the trade writes them: "1/4 hp", "208-230 V".</summary>
public static class TradeText
{
    /// <summary>Reads a text of ours.</summary>
    /// <exception cref="ArgumentException">It does not read: a slip in a table of ours.</exception>
    public static T Read<T>(string text)
        where T : notnull
    {
        var reading = TextForms.Of<T>().Read(text);
        return reading.IsRead ? reading.Value : throw new ArgumentException(reading.Wrong, nameof(text));
    }

    /// <summary>How a value is written in the catalogue.</summary>
    public static string Write<T>(T value)
        where T : notnull => TextForms.Of<T>().Write(value);

    /// <summary>Watts of a rating row, for arithmetic.</summary>
    public static double WattsOf(this Figures<Power> power, int row = 0) => (double)power.Of(row).Watts;

    /// <summary>Horsepower of the first rating row, for arithmetic: 746 W each (NIST SP 811).</summary>
    public static double Horsepower(this Figures<Power> power) => power.WattsOf() / 746;
}
