using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>The words of pressure controls' plates.</summary>
public static class PressureControlVocabulary
{
    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new(
    [
        new("function", "FUNCTION", "USE"),
        new("action", "ACTION", "CONTACTS", "SWITCH ACTION"),
        new("reset", "RESET"),
        new("poles", "POLES", "POLE", "NO OF POLES"),
        new("range", "RANGE", "RNG", "ADJ RANGE", "CUT-IN RANGE", "CUT-OUT RANGE", "SETTING RANGE") { Unit = "psi" },
        new("differential", "DIFF", "DIFFERENTIAL", "DIF", "ADJ DIFF") { Unit = "psi" },
        new("cutOut", "CUT-OUT", "CUTOUT", "CUT OUT", "C/O", "OPENS AT", "OPEN AT", "OPENS", "OPEN", "OFF AT", "FAN OFF") { Unit = "psi" },
        new("cutIn", "CUT-IN", "CUTIN", "CUT IN", "C/I", "CLOSES AT", "CLOSE AT", "CLOSES", "CLOSE", "ON AT", "FAN ON", "RESETS", "RESETS AT") { Unit = "psi" },
        new("cutOut", "HP CUT-OUT") { Unit = "psi", Says = new("function", "high pressure") },
        Moving("cutOut", ContactLabels.Opening, "RISE", "opens on rise"),
        Moving("cutIn", ContactLabels.Closing, "FALL", "opens on rise"),
        Moving("cutIn", ContactLabels.Closing, "RISE", "opens on fall"),
        Moving("cutOut", ContactLabels.Opening, "FALL", "opens on fall"),
        new("cutIn", "AUTO RESET") { OnlyBefore = true, Says = new("reset", "automatic") },
        new("cutIn", "AUTO RESETS", "AUTO RESETS AT", "AUTO RESET AT") { Unit = "psi", OnlyBefore = true, Says = new("reset", "automatic") },
        new("cutOut", "OFF"),
        new("cutIn", "ON"),
        new("pressureMost", "MAX", "MAX PRESS", "MAX PRESSURE", "MWP", "MAX WORKING PRESSURE", "MAX WP", "PS", "MAX BELLOWS PRESSURE") { Unit = "psi" },
        new("connection", "CONN", "CONNECTION", "PRESS CONN"),
        new("materials", "MATERIAL", "MATERIALS", "WETTED", "BELLOWS"),
        new("ratedVolts", "RATED VOLTS", "VOLTAGE") { ByUnit = true },
        ContactLabels.At(),
        new("fullLoadAmps", "FLA", "F.L.A.", "FL AMPS", "FULL LOAD AMPS", "FULL LOAD", "MOTOR AMPS", "FL", "AC-3"),
        new("lockedRotorAmps", "LRA", "L.R.A.", "LR AMPS", "LOCKED ROTOR AMPS", "LOCKED ROTOR", "LR"),
        new("resistiveAmps", "RES", "RESISTIVE", "RES AMPS", "RESISTIVE AMPS", "NON-INDUCTIVE", "AC-1"),
        new("singlePhaseHorsepower", "HP 1PH", "1PH HP", "1 PH HP") { Unit = "hp" },
        new("threePhaseHorsepower", "HP 3PH", "3PH HP", "3 PH HP") { Unit = "hp" },
        new("directVolts", "DC VOLTS"),
        new("directAmps", "DC AMPS", "AMPS DC"),
        new("pilotDuty", "PILOT DUTY", "PILOT"),
        new("contacts", "CONTACT TYPE"),
        new("hazards", "HAZ", "HAZARD", "REFRIGERANT CLASS", "SUITABLE FOR"),
    ],
    [
        new("poles", "SPST", "1"), new("poles", "DPST", "2"), new("poles", "SPDT", "1"), new("action", "SPDT", "change-over"), new("poles", "DPDT", "2"), new("action", "DPDT", "change-over"),
        new("isAdjustable", "FIXED", "no"), new("isAdjustable", "NON-ADJUSTABLE", "no"), new("isAdjustable", "NON ADJ", "no"), new("isAdjustable", "ADJUSTABLE", "yes"),
    ])
    {
        Bracketed = ContactLabels.Bracketed,
        UnlessOthers = [new("psi", "inHg")],
        Example = "LOW PRESSURE AUTO RESET RANGE 5-100 PSI DIFF 10-40 PSI CUT-IN 30 PSI",
        OnlyAtLabel = ["none", "open", "sealed", "auto", "manual", "automatic", "copper", "brass", "bronze", "steel", "stainless", "SS", "flare", "NPT", "solder", "ODF", "ODS", "braze", "fan control", "condenser fan", "cond fan"],
        Names = ["PRESSURE CONTROL", "PRESSURE SWITCH", "PRESSURE CUTOUT", "PRESSURE SW", "PRESSOSTAT", "CONTROL", "SWITCH", "SW", "SAFETY"],
        Strangers =
        [
            "MODEL", "PART NO", "P/N", "PN", "CAT", "CAT NO", "SER", "SERIAL", "S/N", "DATE", "DATE CODE", "LOT", "BATCH", "TEST", "TEST PRESS", "TEST PRESSURE", "FILE", "FILE NO", "STYLE", "TYPE", "SET", "FACTORY SET",
            "NOT", "NOT FOR", "WITHOUT",
        ],
        Limits =
        [
            PlateLimit.Of<int>("poles", "from 1 to 3 poles", count => count is >= 1 and <= 3),
            PlateLimit.Of<PressureSpan>("range", "from −15 to 900 psi", span => IsSetting(span.Low) && IsSetting(span.High)),
            PlateLimit.Of<PressureSpan>("differential", "from 1 to 400 psi", span => Within.Span(span.Low.PoundsForcePerSquareInch, 1, 400) && Within.Span(span.High.PoundsForcePerSquareInch, 1, 400)),
            PlateLimit.Of<Pressure>("cutOut", "from −15 to 900 psi", IsSetting),
            PlateLimit.Of<Pressure>("cutIn", "from −15 to 900 psi", IsSetting),
            PlateLimit.Of<Pressure>("pressureMost", "from 50 to 3000 psi", pressure => Within.Span(pressure.PoundsForcePerSquareInch, 50, 3000)),
            PlateLimit.Of<Figures<ElectricPotential>>("ratedVolts", "from 20 to 750 V", all => all.All(volts => Within.Span(volts.Volts, 20, 750))),
            Amps("fullLoadAmps", 0.1, 100),
            Amps("resistiveAmps", 0.1, 100),
            Amps("lockedRotorAmps", 0.5, 600),
        ],
    };

    private static PlateLabel Moving(string field, IEnumerable<string> verbs, string way, string action) => ContactLabels.Moving(field, "psi", verbs, [way, $"PRESS {way}"], action);

    private static bool IsSetting(Pressure pressure) => Within.Span(pressure.PoundsForcePerSquareInch, -15, 900);

    private static PlateLimit Amps(string field, double least, double most) =>
        PlateLimit.Of<Figures<ElectricCurrent>>(field, FormattableString.Invariant($"from {least} to {most} A"), all => all.All(amps => Within.Span(amps.Amperes, least, most)));
}
