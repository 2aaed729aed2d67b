using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>The words of condensing-pressure valves' plates.</summary>
public static class CondensingPressureValveVocabulary
{
    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new(
    [
        new("refrigerants", "REFRIGERANTS", "REFRIGERANT", "REFR", "REFRIG"),
        new("oils", "OIL", "OILS", "FOR OIL", "FOR OILS"),
        new("setting", "SETTING", "SET", "SET AT", "HOLDS", "PRESSURE") { Unit = "psi" },
        new("settingLeast", "SET FROM", "RANGE FROM") { Unit = "psi" },
        new("settingMost", "SET TO", "RANGE TO") { Unit = "psi" },
        new("settingLeast", "RANGE", "ADJ", "ADJ RANGE", "RANGE ADJ", "ADJUSTABLE", "ADJUSTABLE RANGE", "SETTING RANGE", "SETTING", "SET", "SET RANGE") { Unit = "psi", To = "settingMost" },
        new("workingPressure", "MWP", "SWP", "PS", "WORKING PRESSURE", "MAX PRESS") { Unit = "psi" },
        new("ratedCapacity", "CAPACITY", "CAP", "RATED", "NOMINAL") { ByUnit = true },
        new("ratedWith", "RATED WITH", "RATED FOR"),
        new("ratedDrop", "DROP", "DP", "ΔP") { Unit = "psi" },
        new("ratedAmbient", "AMBIENT", "AMB", "AT AMBIENT", "MIN AMBIENT", "MIN AMB", "LEAST AMBIENT") { Unit = "F" },
        new("condenserPort", "CONN", "CONNECTIONS", "CONDENSER", "COND PORT") { Unit = "in", By = "receiverPort" },
        Sized("solder", "ODF", "ODS", "SWEAT", "SOLDER"),
        Sized("flare", "SAE", "FLARE"),
        Sized("pipe thread", "FPT", "NPT"),
        new("receiverPort", "RECEIVER", "REC PORT") { Unit = "in" },
        new("dischargePort", "DISCHARGE", "HOT GAS", "DISCH PORT", "HOT GAS PORT") { Unit = "in" },
        new("arrangement", "ARRANGEMENT", "ACTION"),
    ],
    [
        new("arrangement", "INLET REG", "inlet regulator"),
        new("isAdjustable", "FIXED", "no"), new("isAdjustable", "NON-ADJUSTABLE", "no"), new("isAdjustable", "NON ADJ", "no"),
    ])
    {
        UnlessOthers = [new("psi")],
        Example = "3-WAY R404A SETTING 180 PSI 5/8 ODF MWP 450 PSI",
        NeverAlone = ["ratedWith"],
        Names = ["HEAD PRESSURE", "HEAD PRESSURE CONTROL", "CONDENSING PRESSURE", "HEAD PRESSURE VALVE", "CONDENSING PRESSURE VALVE", "HEAD PRESS CONTROL", "HEAD PRESS VALVE", "VALVE"],
        OnlyAtLabel = ["MO", "AB"],
        Strangers = ["MODEL", "PART NO", "P/N", "PN", "CAT NO", "SER", "SERIAL", "S/N", "DATE", "DATE CODE", "LOT", "BATCH", "TEST", "TEST PRESS", "TEST PRESSURE", "FILE", "TYPE", "CLASS"],
        Limits =
        [
            PlateLimit.Of<Pressure>("setting", "from 5 to 600 psi", setting => Within.Span(setting.Kilopascals, 34, 4140)),
            PlateLimit.Of<Pressure>("settingLeast", "from 5 to 600 psi", setting => Within.Span(setting.Kilopascals, 34, 4140)),
            PlateLimit.Of<Pressure>("settingMost", "from 5 to 600 psi", setting => Within.Span(setting.Kilopascals, 34, 4140)),
            PlateLimit.Of<Pressure>("workingPressure", "from 100 to 2500 psi", most => Within.Span(most.Kilopascals, 689, 17_300)),
            PlateLimit.Of<CoolingLoad>("ratedCapacity", "from 0.1 to 500 tons", load => Within.Span(load.Watts, 350, 1.76e6)),
            PlateLimit.Of<PressureDifference>("ratedDrop", "from 0.5 to 50 psi", drop => Within.Span(drop.Value.Kilopascals, 3, 345)),
            PlateLimit.Of<Temperature>("ratedAmbient", "from −60 to 80 °F", at => Within.Span(at.DegreesCelsius, -51.2, 26.7)),
            PlateLimit.Of<Length>("condenserPort", "from 1/4 to 3 in", size => Within.Span(size.Millimeters, 6, 77)),
            PlateLimit.Of<Length>("receiverPort", "from 1/4 to 3 in", size => Within.Span(size.Millimeters, 6, 77)),
            PlateLimit.Of<Length>("dischargePort", "from 1/4 to 3 in", size => Within.Span(size.Millimeters, 6, 77)),
        ],
    };

    /// <summary>A size before the name of its joint: 5/8 ODF.</summary>
    private static PlateLabel Sized(string joint, params string[] words) => new("condenserPort", words) { Unit = "in", OnlyBehind = true, By = "receiverPort", Says = new("joint", joint) };
}
