using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>The words of solenoid valves' plates and coils.</summary>
public static class SolenoidValveVocabulary
{
    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new(
    [
        new("refrigerants", "REFRIGERANTS", "REFRIGERANT", "REFR", "REFRIG", "FOR REFRIGERANTS"),
        new("oils", "OIL", "OILS", "FOR OIL", "FOR OILS"),
        new("flowCoefficient", "FLOW COEFFICIENT", "FLOW") { ByUnit = true },
        new("openingDifferential", "MOPD", "MAX OPD", "MAX OPD.", "OPD", "MAX DP", "MAX DIFF", "MAX OPENING DIFF", "ΔP MAX") { Unit = "psi" },
        new("directDifferential", "MOPD DC", "MAX OPD DC") { Unit = "psi" },
        new("openingDifferential", "PSI AC", "PSID AC") { Unit = "psi", OnlyBehind = true },
        new("openingDifferential", "BAR AC") { Unit = "bar", OnlyBehind = true },
        new("directDifferential", "PSI DC", "PSID DC") { Unit = "psi", OnlyBehind = true },
        new("directDifferential", "BAR DC") { Unit = "bar", OnlyBehind = true },
        new("leastDifferential", "MIN OPD", "MIN DP", "MIN DIFF", "ΔP MIN", "LEAST DIFF") { Unit = "psi" },
        new("workingPressure", "MWP", "SWP", "MAX WORKING PRESSURE", "WORKING PRESSURE", "MAX PRESS", "PS") { Unit = "psi" },
        new("inletSize", "CONN", "CONNECTION", "CONNECTIONS", "INLET", "SIZE", "IN") { Unit = "in", By = "outletSize" },
        Sized("solder", "ODF", "ODS", "SWEAT", "SOLDER"),
        Sized("flare", "SAE", "FLARE", "SAE FLARE"),
        Sized("pipe thread", "FPT", "NPT", "MPT", "FNPT"),
        Sized("butt weld", "BW", "BUTT WELD"),
        new("outletSize", "OUTLET", "OUT") { Unit = "in" },
        new("coilVolts", "COIL", "COIL VOLTS", "COIL V") { Past = ["coilFrequency", "coilPower"], PastUnits = CoilMarks.Taken },
        new("coilVolts", "VOLTS", "VOLTAGE") { ByUnit = true },
        new("coilFrequency", "FREQ", "FREQUENCY") { ByUnit = true },
        new("coilPower", "COIL VA", "POWER", "HOLDING", "HOLDING VA", "HOLD", "SEALED", "SEALED VA") { ByUnit = true },
        new("coilInrush", "INRUSH", "INRUSH VA", "VA INRUSH", "COIL INRUSH", "PULL-IN") { Unit = "VA" },
        new("body", "BODY", "MATERIAL"),
        new("hazards", "HAZ", "HAZARD", "REFRIGERANT CLASS", "SUITABLE FOR"),
        new("lift", "OPERATION", "ACTION"),
        new("coilNumber", "COIL NO", "COIL P/N", "COIL TYPE", "COIL NUMBER"),
    ],
    [
        new("bothWays", "BI-FLOW", "yes"), new("bothWays", "BIFLOW", "yes"), new("bothWays", "BOTH WAYS", "yes"), new("bothWays", "BIDIRECTIONAL", "yes"), new("bothWays", "ONE WAY", "no"),
    ])
    {
        UnlessOthers = [new("psi")],
        Example = "NC 3/8 ODF MOPD 300 PSI R404A COIL 24V 60HZ",
        Names = ["SOLENOID", "SOLENOID VALVE", "REFRIGERANT VALVE", "VALVE"],
        OnlyAtLabel = ["MO", "AB"],
        Strangers = ["MODEL", "PART NO", "P/N", "PN", "CAT", "CAT NO", "SER", "SERIAL", "S/N", "DATE", "DATE CODE", "LOT", "BATCH", "TEST", "TEST PRESS", "TEST PRESSURE", "FILE", "FILE NO", "TYPE", "CLASS", "TS"],
        Groups = [["coilVolts", "coilFrequency"]],
        Usual = [CoilMarks.Mains("coilFrequency")],
        InTurns = [("coilVolts", "coilFrequency")],
        Limits =
        [
            PlateLimit.Of<FlowCoefficient>("flowCoefficient", "from 0.01 to 200 Kv", flow => Within.Span(flow.Kv, 0.01, 200)),
            PlateLimit.Of<PressureDifference>("openingDifferential", "from 10 to 2000 psi", most => Within.Span(most.Value.Kilopascals, 68, 13_800)),
            PlateLimit.Of<PressureDifference>("directDifferential", "from 10 to 2000 psi", most => Within.Span(most.Value.Kilopascals, 68, 13_800)),
            PlateLimit.Of<PressureDifference>("leastDifferential", "from 0 to 30 psi", least => Within.Span(least.Value.Kilopascals, 0, 207)),
            PlateLimit.Of<Pressure>("workingPressure", "from 100 to 2500 psi", most => Within.Span(most.Kilopascals, 689, 17_300)),
            PlateLimit.Of<Length>("inletSize", "from 1/8 to 5 in", size => Within.Span(size.Millimeters, 3, 127)),
            PlateLimit.Of<Length>("outletSize", "from 1/8 to 5 in", size => Within.Span(size.Millimeters, 3, 127)),
            CoilMarks.Volts("coilVolts", 6),
            PlateLimit.Of<Figures<Frequency>>("coilFrequency", "from 45 to 65 Hz", all => all.All(frequency => Within.Span(frequency.Hertz, 45, 65))),
            PlateLimit.Of<ElectricApparentPower>("coilPower", "from 1 to 200 VA", power => Within.Span(power.Voltamperes, 1, 200)),
            PlateLimit.Of<ElectricApparentPower>("coilInrush", "from 1 to 2000 VA", power => Within.Span(power.Voltamperes, 1, 2000)),
        ],
    };

    /// <summary>A size before the name of its joint: 3/8 ODF.</summary>
    private static PlateLabel Sized(string joint, params string[] words) => new("inletSize", words) { Unit = "in", OnlyBehind = true, By = "outletSize", Says = new("joint", joint) };
}
