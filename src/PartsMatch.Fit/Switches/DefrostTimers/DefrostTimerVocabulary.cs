using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>The words of defrost timers' plates.</summary>
public static class DefrostTimerVocabulary
{
    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new(
    [
        new("clockVolts", "CLOCK", "CLOCK VOLTS", "CLOCK MOTOR", "CLOCK V", "TIMER MOTOR", "TIMER COIL", "MOTOR", "MOTOR VOLTS", "CLOCK MTR", "TIMER MTR", "TM") { Past = ["clockFrequency"], PastUnits = CoilMarks.Taken, AloneYieldsTo = "ratedVolts", AloneNeverBehind = ["fullLoadAmps", "lockedRotorAmps", "resistiveAmps"], OthersBeside = ContactLabels.BesideVolts },
        new("clockFrequency", "FREQ", "FREQUENCY", "CLOCK HZ", "CLOCK FREQ") { ByUnit = true },
        new("starts", "STARTS", "STARTS PER DAY", "STARTS/DAY", "STARTS A DAY", "DEFROSTS", "DEFROSTS PER DAY", "DEFROSTS/DAY", "DEFROSTS A DAY", "CYCLES PER DAY", "CYCLES/DAY", "DEFROSTS PER 24 HRS", "PER DAY", "CYCLES", "DAY"),
        new("starts", "EVERY", "STARTS EVERY", "INITIATE EVERY", "INITIATES EVERY", "INITIATED EVERY", "DEFROST EVERY", "DEFROSTS EVERY") { Unit = "h" },
        new("failSafe", "FAIL-SAFE", "FAIL SAFE", "FAILSAFE", "FAIL SAFE TIME", "DEFROST TIME", "DEFROST LENGTH", "DURATION", "TIME LIMIT", "MAX DEFROST", "MAX TIME", "BACKUP TIME") { ByUnit = true, Unit = "min" },
        new("endedBy", "ENDED BY", "TERMINATION", "TERM BY", "TERMINATED BY", "TERM"),
        new("releaseVolts", "RELEASE", "RELEASE COIL", "RELEASE SOLENOID", "RELEASE VOLTS", "SOLENOID", "SOLENOID VOLTS", "SOL", "TERM SOLENOID", "TERM COIL", "TERMINATION SOLENOID", "TERMINATION COIL") { PastUnits = CoilMarks.Taken },
        new("contactsFor", "CONTACTS FOR", "CONTACTS", "SWITCHES"),
        new("poles", "POLES", "POLE", "NO OF POLES"),
        new("body", "CASE", "ENCLOSURE", "SUPPLIED"),
        new("boxPattern", "BOX", "BOX PATTERN", "PATTERN", "FITS BOX"),
        new("ratedVolts", "RATED VOLTS", "CONTACT VOLTS", "VOLTAGE") { ByUnit = true },
        ContactLabels.At(),
        new("fullLoadAmps", "FLA", "F.L.A.", "FL AMPS", "FULL LOAD AMPS", "FULL LOAD", "MOTOR AMPS", "FL", "AC-3"),
        new("lockedRotorAmps", "LRA", "L.R.A.", "LR AMPS", "LOCKED ROTOR AMPS", "LOCKED ROTOR", "LR"),
        new("resistiveAmps", "RES", "RESISTIVE", "RES AMPS", "RESISTIVE AMPS", "NON-INDUCTIVE", "HEATER AMPS", "HTR AMPS", "HTR", "AMPS RES", "HTR CKT", "HEATER CKT", "HEATER CIRCUIT", "AC-1"),
        new("singlePhaseHorsepower", "HP", "HP 1PH", "1PH HP", "1 PH HP") { Unit = "hp" },
        new("threePhaseHorsepower", "HP 3PH", "3PH HP", "3 PH HP") { Unit = "hp" },
        new("directVolts", "DC VOLTS"),
        new("directAmps", "DC AMPS", "AMPS DC"),
        new("pilotDuty", "PILOT DUTY", "PILOT"),
        new("contacts", "CONTACT TYPE"),
        new("hazards", "HAZ", "HAZARD", "REFRIGERANT CLASS", "SUITABLE FOR"),
    ],
    [
        new("poles", "SPDT", "1"), new("poles", "DPDT", "2"), new("poles", "DPST", "2"), new("poles", "SPST", "1"), new("poles", "3PDT", "3"),
        new("endedBy", "TIME OR TEMP", "time, temperature"), new("endedBy", "TIME OR TEMPERATURE", "time, temperature"), new("endedBy", "TEMP OR TIME", "time, temperature"), new("endedBy", "TEMPERATURE OR TIME", "time, temperature"),
        new("endedBy", "TERM BY TIME OR TEMP", "time, temperature"), new("endedBy", "TERMINATED BY TIME OR TEMPERATURE", "time, temperature"), new("endedBy", "TIME OR TEMP TERMINATED", "time, temperature"),
        new("endedBy", "PRESS TERM", "pressure"), new("endedBy", "PRESS TERMINATED", "pressure"),
        new("contactsFor", "HTR CONTACT", "heater"), new("contactsFor", "N.O. HEATER", "heater"), new("contactsFor", "N.C. FANS", "fans"), new("contactsFor", "N.C. FAN", "fans"), new("contactsFor", "N.C. COMPRESSOR", "compressor"),
    ])
    {
        Bracketed = ContactLabels.Bracketed,
        Usual = [CoilMarks.Mains("clockFrequency")],
        InTurns = [("clockVolts", "clockFrequency")],
        Names = ["DEFROST TIMER", "DEFROST CLOCK", "DEFROST TIME CONTROL", "DEFROST TIME SWITCH", "TIME SWITCH", "TIMER", "TIME CLOCK", "DEFROST", "DEFROST CONTROL", "CONTROL", "SWITCH", "SW", "SW RATING", "SWITCH RATING", "TIME INITIATED", "MAX"],
        Example = "DEFROST TIMER CLOCK 208-240 V 60 HZ STARTS 1-6 FAIL-SAFE 4-110 MIN TEMP TERMINATED SPDT RES 40 FLA 20 240 V",
        OnlyAtLabel =
        [
            "none", "open", "sealed", "time", "temperature", "temp", "pressure", "heater", "heaters", "fans", "fan", "compressor", "comp", "evaporator fan", "evap fan", "enclosed", "boxed", "mechanism", "cumulative", "24 hour", "24 hr",
        ],
        Strangers =
        [
            "MODEL", "PART NO", "P/N", "PN", "CAT", "CAT NO", "SER", "SERIAL", "S/N", "SN", "DATE", "DATE CODE", "LOT", "BATCH", "FILE", "FILE NO", "STYLE", "TYPE", "DIAGRAM", "WIRING", "TORQUE",
            "NOT", "NOT FOR", "WITHOUT",
        ],
        Limits =
        [
            PlateLimit.Of<int>("poles", "from 1 to 4 poles", count => count is >= 1 and <= 4),
            PlateLimit.Of<StartsADay>("starts", "from 1 to 24 a day", starts => starts.Most <= 24),
            PlateLimit.Of<MinutesSpan>("failSafe", "from 1 min to 3 h", span => Within.Span(span.Low.Minutes, 1, 180) && Within.AtMost(span.High.Minutes, 180)),
            CoilMarks.Volts("clockVolts", 20),
            CoilMarks.Volts("releaseVolts", 20),
            PlateLimit.Of<Figures<Frequency>>("clockFrequency", "from 45 to 65 Hz", all => all.All(frequency => Within.Span(frequency.Hertz, 45, 65))),
            PlateLimit.Of<Figures<ElectricPotential>>("ratedVolts", "from 100 to 750 V", all => all.All(volts => Within.Span(volts.Volts, 100, 750))),
            Amps("fullLoadAmps", 0.1, 100),
            Amps("resistiveAmps", 0.1, 100),
            Amps("lockedRotorAmps", 0.5, 600),
        ],
    };

    private static PlateLimit Amps(string field, double least, double most) =>
        PlateLimit.Of<Figures<ElectricCurrent>>(field, FormattableString.Invariant($"from {least} to {most} A"), all => all.All(amps => Within.Span(amps.Amperes, least, most)));
}
