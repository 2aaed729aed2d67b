using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>What the figures of fan motors' plates can be (practice): wide enough for any motor of the trade, narrow enough that a figure at the wrong label is refused.</summary>
internal static class MotorLimits
{
    /// <summary>Rows of amps lie nearer together than this, as ratio: two voltages are 2 apart, two windings up to 3.</summary>
    private const double WidestRows = 3.9;

    /// <summary>Rows of power lie nearer together than this: half the speed needs an eighth of the power.</summary>
    private const double WidestPowerRows = 10;

    private const string VoltsWords = "a voltage that motors are made for: 12 to 28, 36 to 50, 100 to 130, 200 to 280, 340 to 365, 375 to 500 or 525 to 700 V";

    /// <summary>Bands about the nominal voltages of the world's supplies: 71 beside a V is something else, and 370 V is a capacitor's.</summary>
    private static readonly (double Least, double Most)[] NominalVolts = [(12, 28), (36, 50), (100, 130), (200, 280), (340, 365), (375, 500), (525, 700)];

    private static readonly string[] CodeLetters = ["A", "B", "C", "D", "E", "F", "G", "H", "J", "K", "L", "M", "N", "P", "R", "S", "T", "U", "V"];

    /// <summary>All limits.</summary>
    public static IReadOnlyList<PlateLimit> All { get; } =
    [
        PlateLimit.Of<Figures<Power>>("power", "from 1 W to 200 kW, rows at most 10 times apart", Rows),
        PlateLimit.Of<Figures<Power>>("inputPower", "from 1 W to 200 kW, rows at most 10 times apart", Rows),
        PlateLimit.Of<Figures<RotationalSpeed>>("speed", "from 250 to 6000 rpm, without decimals", all => all.All(speed => Within.Span(speed.RevolutionsPerMinute, 250, 6000) && double.IsInteger(speed.RevolutionsPerMinute))),
        PlateLimit.Of<int>("speeds", "from 1 to 8 speeds", count => count is >= 1 and <= 8),
        PlateLimit.Of<int>("poles", "an even number from 2 to 24", count => count is >= 2 and <= 24 && int.IsEvenInteger(count)),
        PlateLimit.Of<int>("shaftEnds", "1 or 2 shaft ends", count => count is 1 or 2),
        PlateLimit.Of<double>("serviceFactor", "from 0.5 to 2", factor => Within.Span(factor, 0.5, 2)),
        PlateLimit.Of<double>("powerFactor", "from 0.2 to 1", factor => Within.Span(factor, 0.2, 1)),
        PlateLimit.Of<Taps>("voltage", VoltsWords, Volts),
        PlateLimit.Of<Taps>("connectedFor", VoltsWords, Volts),
        PlateLimit.Of<Figures<Frequency>>("frequency", "from 45 to 65 Hz", all => all.All(frequency => Within.Span(frequency.Hertz, 45, 65))),
        PlateLimit.Of<Amps>("fullLoadAmps", "from 0.02 to 150 A", amps => Current(amps, 0.02, 150)),
        PlateLimit.Of<Amps>("lockedRotorAmps", "from 0.05 to 1000 A", amps => Current(amps, 0.05, 1000)),
        PlateLimit.Of<string>("codeLetter", "one of the letters A to V", letter => CodeLetters.Contains(letter)),
        PlateLimit.Of<Ratio>("efficiency", "from 5 to 99 %", ratio => Within.Span(ratio.Percent, 5, 99)),
        PlateLimit.Of<CapacitorRating>("runCapacitor", "from 0.5 to 200 µF, at 200 to 700 V", Capacitor),
        PlateLimit.Of<Length>("bodyDiameter", "from 50 to 450 mm", length => Within.Span(length.Millimeters, 50, 450)),
        PlateLimit.Of<Length>("bodyLength", "from 30 to 600 mm", length => Within.Span(length.Millimeters, 30, 600)),
        PlateLimit.Of<Length>("shaftDiameter", "from 3 to 60 mm", length => Within.Span(length.Millimeters, 3, 60)),
        PlateLimit.Of<Length>("shaftLength", "from 8 to 500 mm", length => Within.Span(length.Millimeters, 8, 500)),
        PlateLimit.Of<Temperature>("ambientMost", "from 15 to 120 °C", temperature => Within.Span(temperature.DegreesCelsius, 15, 120)),
        PlateLimit.Of<Temperature>("ambientLeast", "from −60 to 20 °C", temperature => Within.Span(temperature.DegreesCelsius, -60, 20)),
    ];

    private static bool Rows(Figures<Power> all) =>
        all.All(power => Within.Span((double)power.Watts, 1, 200_000)) && Within.Ratio((double)all.Max(power => power.Watts), (double)all.Min(power => power.Watts), WidestPowerRows);

    private static bool Volts(Taps taps) => taps.All(tap => IsNominal(tap.First.Volts) && IsNominal(tap.Last.Volts));

    private static bool IsNominal(double volts) => Array.Exists(NominalVolts, band => Within.Span(volts, band.Least, band.Most));

    private static bool Current(Amps amps, double least, double most)
    {
        var all = amps.SelectMany(amp => (double[])[amp.First.Amperes, amp.Last.Amperes]).ToList();
        return all.TrueForAll(amp => Within.Span(amp, least, most)) && Within.Ratio(all.Max(), all.Min(), WidestRows);
    }

    private static bool Capacitor(CapacitorRating rating) =>
        rating.IsNone || (Within.Span(rating.Capacitance!.Value.Microfarads, 0.5, 200) && (rating.Volts is not { } volts || Within.Span(volts.Volts, 200, 700)));
}
