using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>The words of expansion valves' plates.</summary>
public static class ExpansionValveVocabulary
{
    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new(
    [
        new("refrigerants", "REFRIGERANTS", "REFRIGERANT", "REFR", "REFRIG"),
        new("oils", "OIL", "OILS", "FOR OIL", "FOR OILS"),
        new("ratedCapacity", "CAPACITY", "CAP", "NOM CAP", "NOMINAL", "RATED") { ByUnit = true },
        new("ratedWith", "RATED WITH", "RATED FOR"),
        new("ratedEvaporatingAt", "EVAP", "AT EVAP", "EVAPORATING AT") { Unit = "F" },
        new("ratedLiquidAt", "LIQUID", "LIQ", "LIQUID TEMP") { Unit = "F" },
        new("ratedDrop", "DROP", "DP", "ΔP", "PRESSURE DROP") { Unit = "psi" },
        new("workingPressure", "MWP", "SWP", "PS", "WORKING PRESSURE", "MAX PRESS") { Unit = "psi" },
        new("limitsAt", "MOP", "LIMIT", "MOP AT") { Unit = "F" },
        new("limitPressure", "MOP", "LIMIT", "MOP AT") { OnlyBefore = true },
        new("evaporatingLeast", "FROM", "RANGE FROM", "MIN EVAP") { Unit = "F" },
        new("evaporatingMost", "TO", "RANGE TO", "MAX EVAP") { Unit = "F" },
        new("evaporatingLeast", "RANGE", "EVAP RANGE", "EVAPORATING RANGE", "TEMP RANGE", "EVAP") { Unit = "F", To = "evaporatingMost" },
        new("capillary", "CAPILLARY", "CAP TUBE", "CAPILLARY LENGTH", "TUBE") { Unit = "in" },
        new("capillary", "CAP"),
        new("bulbDiameter", "BULB DIA", "BULB DIAMETER", "BULB OD") { Unit = "in" },
        new("bulbLength", "BULB LENGTH", "BULB LG") { Unit = "in" },
        new("inletSize", "CONN", "CONNECTIONS", "CONNECTION", "INLET") { Unit = "in", By = "outletSize" },
        Sized("solder", "ODF", "ODS", "SWEAT", "SOLDER"),
        Sized("flare", "SAE", "FLARE", "SAE FLARE"),
        Sized("pipe thread", "FPT", "NPT", "MPT"),
        new("outletSize", "OUTLET", "OUT") { Unit = "in" },
        new("equaliser", "EQ", "EQUALIZER", "EQUALISER"),
        new("charge", "CHARGE", "BULB"),
    ],
    [
        new("bothWays", "BI-FLOW", "yes"), new("bothWays", "BIFLOW", "yes"), new("bothWays", "BOTH WAYS", "yes"), new("bothWays", "ONE WAY", "no"),
    ])
    {
        UnlessOthers = [new("psi"), new("F")],
        Example = "R404A 1/2 TON EXT EQ 3/8 X 1/2 ODF MOP CHARGE",
        NeverAlone = ["ratedWith"],
        OnlyAtLabel = ["none", "internal", "external", "LIQUID", "CROSS", "MO", "AB"],
        Names = ["EXPANSION VALVE", "THERMOSTATIC EXPANSION VALVE", "TXV", "TEV", "TX VALVE", "VALVE"],
        Strangers = ["MODEL", "PART NO", "P/N", "PN", "CAT NO", "SER", "SERIAL", "S/N", "DATE", "DATE CODE", "LOT", "BATCH", "TEST", "TEST PRESS", "TEST PRESSURE", "FILE", "TYPE", "CLASS", "ORIFICE"],
        Limits =
        [
            PlateLimit.Of<CoolingLoad>("ratedCapacity", "from 0.05 to 250 tons", load => Within.Span(load.Watts, 175, 880_000)),
            PlateLimit.Of<Temperature>("ratedEvaporatingAt", "from −60 to 70 °F", at => Within.Span(at.DegreesCelsius, -51.2, 21.2)),
            PlateLimit.Of<Temperature>("ratedLiquidAt", "from 40 to 140 °F", at => Within.Span(at.DegreesCelsius, 4.4, 60.1)),
            PlateLimit.Of<PressureDifference>("ratedDrop", "from 10 to 1000 psi", drop => Within.Span(drop.Value.Kilopascals, 68, 6900)),
            PlateLimit.Of<Temperature>("limitsAt", "from −40 to 80 °F", MayBeLimit),
            PlateLimit.Of<Pressure>("limitPressure", "from −10 to 500 psi", limit => Within.Span(limit.Kilopascals, -69, 3450)),
            PlateLimit.Of<Temperature>("evaporatingLeast", "from −100 to 50 °F", at => Within.Span(at.DegreesCelsius, -73.4, 10)),
            PlateLimit.Of<Temperature>("evaporatingMost", "from −60 to 80 °F", at => Within.Span(at.DegreesCelsius, -51.2, 26.7)),
            PlateLimit.Of<Pressure>("workingPressure", "from 100 to 2500 psi", most => Within.Span(most.Kilopascals, 689, 17_300)),
            PlateLimit.Of<Length>("inletSize", "from 1/8 to 3 in", size => Within.Span(size.Millimeters, 3, 77)),
            PlateLimit.Of<Length>("outletSize", "from 1/8 to 3 in", size => Within.Span(size.Millimeters, 3, 77)),
            PlateLimit.Of<Length>("bulbDiameter", "from 1/4 to 1-1/2 in", size => Within.Span(size.Millimeters, 6, 38.2)),
            PlateLimit.Of<Length>("bulbLength", "from 1 to 12 in", length => Within.Span(length.Millimeters, 25, 305)),
            PlateLimit.Of<Length>("capillary", "from 1 to 30 ft", length => Within.Span(length.Millimeters, 300, 9150)),
        ],
    };

    /// <summary>Whether a pressure limit may lie at an evaporating temperature: from −40 to 80 °F.</summary>
    internal static bool MayBeLimit(Temperature at) => Within.Span(at.DegreesCelsius, -40, 26.7);

    /// <summary>A size before the name of its joint: 3/8 ODF. The three of 3/8 X 1/2 X 1/4 ODF are inlet, outlet and equaliser in this order, and the equaliser's is 1/4 in (both from memory).</summary>
    private static PlateLabel Sized(string joint, params string[] words) => new("inletSize", words) { Unit = "in", OnlyBehind = true, By = "outletSize", Third = new("1/4 in", new("equaliser", "external")), Says = new("joint", joint) };
}
