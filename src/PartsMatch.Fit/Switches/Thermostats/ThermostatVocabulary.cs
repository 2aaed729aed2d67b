using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>The words of thermostats' plates.</summary>
public static class ThermostatVocabulary
{
    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new(
    [
        new("function", "FUNCTION", "USE"),
        new("action", "ACTION", "CONTACTS", "SWITCH ACTION"),
        new("reset", "RESET"),
        new("poles", "POLES", "POLE", "NO OF POLES"),
        new("common", "COMMON", "COM"),
        new("range", "RANGE", "RNG", "ADJ RANGE", "TEMP RANGE", "SETTING RANGE", "COOLING RANGE", "COOLING", "SCALE") { Unit = "°F" },
        new("differential", "DIFF", "DIFFERENTIAL", "DIF", "ADJ DIFF", "FIXED DIFF") { Unit = "°F" },
        new("cutOut", "CUT-OUT", "CUTOUT", "CUT OUT", "C/O", "OPENS AT", "OPEN AT", "OPENS", "OPEN", "OFF AT") { Unit = "°F" },
        new("cutIn", "CUT-IN", "CUTIN", "CUT IN", "C/I", "CLOSES AT", "CLOSE AT", "CLOSES", "CLOSE", "ON AT", "RESETS", "RESETS AT") { Unit = "°F" },
        Moving("cutOut", ContactLabels.Opening, "RISE", "opens on rise"),
        Moving("cutIn", ContactLabels.Closing, "FALL", "opens on rise"),
        Moving("cutIn", ContactLabels.Closing, "RISE", "closes on rise"),
        Moving("cutOut", ContactLabels.Opening, "FALL", "closes on rise"),
        new("cutIn", "AUTO RESET") { OnlyBefore = true, Says = new("reset", "automatic") },
        new("cutIn", "AUTO RESETS", "AUTO RESETS AT", "AUTO RESET AT") { Unit = "°F", OnlyBefore = true, Says = new("reset", "automatic") },
        new("fanCutOut", "FAN OFF", "FANS OFF", "FAN OPENS", "FANS OPEN", "FAN OPENS AT", "FANS OPEN AT", "FAN CUT-OUT", "FANS OFF AT") { Unit = "°F" },
        new("fanCutIn", "FAN ON", "FANS ON", "FAN CLOSES", "FANS CLOSE", "FAN CLOSES AT", "FANS CLOSE AT", "FAN CUT-IN", "FANS ON AT") { Unit = "°F" },
        new("bulb", "BULB", "ELEMENT", "SENSING", "MOUNT", "SENSOR"),
        new("bulbLength", "BULB LENGTH", "BULB LEN", "BULB LG", "BULB LGTH"),
        new("capillary", "CAP", "CAPILLARY", "CAP TUBE", "CAP LENGTH", "CAPILLARY LENGTH"),
        new("bulbMost", "MAX BULB", "MAX BULB TEMP", "BULB MAX", "MAX TEMP", "MAX TEMP AT BULB", "MAX SENSOR TEMP", "TMAX", "MAX") { Unit = "°F" },
        new("terminals", "TERMINALS", "TERMINAL", "TERM", "CONNECTIONS"),
        new("ratedVolts", "RATED VOLTS", "VOLTAGE", "LINE VOLTAGE", "LINE VOLTS") { ByUnit = true },
        ContactLabels.At(),
        new("fullLoadAmps", "FLA", "F.L.A.", "FL AMPS", "FULL LOAD AMPS", "FULL LOAD", "MOTOR AMPS", "FL", "AC-3"),
        new("lockedRotorAmps", "LRA", "L.R.A.", "LR AMPS", "LOCKED ROTOR AMPS", "LOCKED ROTOR", "LR"),
        new("resistiveAmps", "RES", "RESISTIVE", "RES AMPS", "RESISTIVE AMPS", "NON-INDUCTIVE", "AC-1"),
        new("singlePhaseHorsepower", "HP", "HP 1PH", "1PH HP", "1 PH HP") { Unit = "hp" },
        new("threePhaseHorsepower", "HP 3PH", "3PH HP", "3 PH HP") { Unit = "hp" },
        new("directVolts", "DC VOLTS"),
        new("directAmps", "DC AMPS", "AMPS DC"),
        new("pilotDuty", "PILOT DUTY", "PILOT"),
        new("contacts", "CONTACT TYPE"),
        new("fanRatedVolts", "FAN RATED VOLTS", "FAN VOLTS", "FAN CONTACT VOLTS"),
        new("fanFullLoadAmps", "FAN FLA", "FANS FLA", "FAN FULL LOAD AMPS", "FAN AMPS"),
        new("fanLockedRotorAmps", "FAN LRA", "FANS LRA", "FAN LOCKED ROTOR AMPS"),
        new("fanResistiveAmps", "FAN RES", "FANS RES", "FAN RESISTIVE AMPS"),
        new("fanPilotDuty", "FAN PILOT DUTY", "FAN PILOT"),
        new("hazards", "HAZ", "HAZARD", "REFRIGERANT CLASS", "SUITABLE FOR"),
    ],
    [
        new("poles", "SPST", "1"), new("poles", "DPST", "2"), new("poles", "SPDT", "1"), new("action", "SPDT", "change-over"), new("poles", "DPDT", "2"), new("action", "DPDT", "change-over"),
        new("function", "3-WIRE", "fan delay and defrost end"), new("function", "THREE WIRE", "fan delay and defrost end"), new("function", "FAN DELAY DEFROST END", "fan delay and defrost end"),
        new("isAdjustable", "FIXED", "no"), new("isAdjustable", "NON-ADJUSTABLE", "no"), new("isAdjustable", "NON ADJ", "no"), new("isAdjustable", "ADJUSTABLE", "yes"),
    ])
    {
        Bracketed = ContactLabels.Bracketed,
        UnlessOthers = [new("°F")],
        Example = "THERMOSTAT RANGE -30 TO 90 F DIFF 3.5 TO 36 F CUT-OUT 35 F CUT-IN 39 F SPDT FLA 16/8 LRA 96/48 AT 120/240 V 72 IN CAPILLARY",
        OnlyAtLabel = ["none", "open", "sealed", "auto", "manual", "automatic", "C", "COM", "common", "1", "2", "red", "brown", "black", "bulb", "tabs"],
        Names = ["SWITCH", "SW", "CONTROL", "STAT", "THERMOSTAT", "DEFROST SWITCH", "FAN SWITCH", "BIMETAL"],
        Vague = [new("function", "box thermostat", "fan delay", "defrost end", "fan delay and defrost end", "low limit", "high limit"), new("function", "fan delay", "fan delay and defrost end"), new("function", "defrost end", "fan delay and defrost end"), new("bulb", "strap-on disc", "clip-on disc")],
        Strangers =
        [
            "MODEL", "PART NO", "P/N", "PN", "CAT", "CAT NO", "SER", "SERIAL", "S/N", "DATE", "DATE CODE", "LOT", "BATCH", "FILE", "FILE NO", "STYLE", "TYPE", "SET", "FACTORY SET",
            "NOT", "NOT FOR", "WITHOUT",
        ],
        Limits =
        [
            PlateLimit.Of<int>("poles", "from 1 to 3 poles", count => count is >= 1 and <= 3),
            PlateLimit.Of<TemperatureSpan>("range", "from −60 to 500 °F", span => IsSetting(span.Low) && IsSetting(span.High)),
            PlateLimit.Of<TemperatureDifferenceSpan>("differential", "from 0.5 to 100 °F", span => Within.Span(span.Low.DegreesFahrenheit, 0.5, 100) && Within.Span(span.High.DegreesFahrenheit, 0.5, 100)),
            Setting("cutOut"),
            Setting("cutIn"),
            Setting("fanCutOut"),
            Setting("fanCutIn"),
            PlateLimit.Of<Temperature>("bulbMost", "from 60 to 570 °F", temperature => Within.Span(temperature.DegreesFahrenheit, 60, 570)),
            PlateLimit.Of<Length>("bulbLength", "from 1/2 to 36 in", length => Within.Span(length.Inches, 0.5, 36)),
            PlateLimit.Of<Length>("capillary", "from 2 in to 50 ft", length => Within.Span(length.Inches, 2, 600)),
            PlateLimit.Of<Figures<ElectricPotential>>("ratedVolts", "from 20 to 750 V", all => all.All(volts => Within.Span(volts.Volts, 20, 750))),
            Amps("fullLoadAmps", 0.1, 100),
            Amps("resistiveAmps", 0.1, 100),
            Amps("lockedRotorAmps", 0.5, 600),
            PlateLimit.Of<Figures<ElectricPotential>>("fanRatedVolts", "from 20 to 750 V", all => all.All(volts => Within.Span(volts.Volts, 20, 750))),
            Amps("fanFullLoadAmps", 0.1, 100),
            Amps("fanLockedRotorAmps", 0.5, 600),
        ],
    };

    private static PlateLabel Moving(string field, IEnumerable<string> verbs, string way, string action) => ContactLabels.Moving(field, "°F", verbs, [way, $"TEMP {way}"], action);

    private static PlateLimit Setting(string field) => PlateLimit.Of<Temperature>(field, "from −60 to 500 °F", IsSetting);

    private static bool IsSetting(Temperature temperature) => Within.Span(temperature.DegreesFahrenheit, -60, 500);

    private static PlateLimit Amps(string field, double least, double most) =>
        PlateLimit.Of<Figures<ElectricCurrent>>(field, FormattableString.Invariant($"from {least} to {most} A"), all => all.All(amps => Within.Span(amps.Amperes, least, most)));
}
