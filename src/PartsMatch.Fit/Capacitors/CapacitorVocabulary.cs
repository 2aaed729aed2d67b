using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Capacitors;

/// <summary>The words of capacitors' cans.</summary>
public static class CapacitorVocabulary
{
    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new(
    [
        new("rating", "CAP", "CAPACITANCE", "MFD/VAC", "MFD/V", "UF/V", "µF/V", "UF/VAC", "RATING", "MFDS") { ByUnit = true },
        new("tolerance", "TOL", "TOLERANCE", "±", "TOL ±") { ByUnit = true, Unit = "%" },
        new("frequency", "FREQ", "FREQUENCY") { ByUnit = true },
        new("duty", "DUTY", "USE", "TYPE"),
        new("isProtected", "PROTECTED"),
        new("temperatureMost", "TEMP", "MAX TEMP", "MAX", "TMAX", "CASE TEMP", "MAX CASE TEMP", "MAX CASE") { Unit = "C" },
        new("can", "CAN", "CASE", "SHAPE"),
        new("diameter", "DIA", "DIAM", "DIAMETER", "CAN DIA") { Unit = "in", By = "height" },
        new("diameter", "ROUND", "CAN", "OVAL") { Unit = "in", By = "height" },
        new("height", "HT", "HEIGHT", "HIGH", "H", "TALL") { Unit = "in" },
    ],
    [
        new("isProtected", "PROTECTED", "yes"), new("isProtected", "P2", "yes"), new("isProtected", "S2", "yes"), new("isProtected", "S3", "yes"),
        new("isProtected", "10000 AFC", "yes"), new("isProtected", "PROTECTED 10000 AFC", "yes"), new("isProtected", "S0", "no"), new("isProtected", "P0", "no"), new("isProtected", "UNPROTECTED", "no"),
    ])
    {
        Example = "45+5 MFD 440 VAC 60 HZ ROUND",
        ToleranceOf = "tolerance",
        OnlyAtLabel = ["run", "start", "none"],
        Names = ["CAPACITOR", "CAP"],
        Strangers = ["MODEL", "PART NO", "P/N", "PN", "CAT", "CAT NO", "SER", "SERIAL", "S/N", "DATE", "DATE CODE", "LOT", "BATCH", "FILE", "FILE NO", "NO", "NOT", "NOT FOR", "WITHOUT"],
        Tails = [new("rating", 110, 1000, "V", "VAC", "V AC", "VOLT", "VOLTS", "V~") { Usual = CapacitorVolts.Usual, NeedNoLabel = CapacitorVolts.Usual }],
        Limits =
        [
            PlateLimit.Of<CapacitorRating>("rating", "from 0.1 to 2000 µF, at 110 to 1000 V", Rating),
            PlateLimit.Of<Ratio>("tolerance", "from 1 to 25 %", ratio => Within.Span(ratio.Percent, 1, 25)),
            PlateLimit.Of<Figures<Frequency>>("frequency", "from 45 to 65 Hz", all => all.All(frequency => Within.Span(frequency.Hertz, 45, 65))),
            PlateLimit.Of<Temperature>("temperatureMost", "from 40 to 125 °C", temperature => Within.Span(temperature.DegreesCelsius, 40, 125)),
            PlateLimit.Of<Length>("diameter", "from 15 to 150 mm", length => Within.Span(length.Millimeters, 15, 150)),
            PlateLimit.Of<Length>("height", "from 25 to 250 mm", length => Within.Span(length.Millimeters, 25, 250)),
        ],
    };

    private static bool Rating(CapacitorRating rating) =>
        !rating.IsNone && Within.Span(rating.Capacitance!.Value.Microfarads, 0.1, 2000) && (rating.Volts is not { } volts || Within.Span(volts.Volts, 110, 1000));
}
