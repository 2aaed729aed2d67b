using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>Words of motors' plates beside the labels and the words that the choices carry themselves.</summary>
internal static class MotorWords
{
    /// <summary>Frames with letters, which nothing else on a plate looks like; 56C is not among them, for 56 °C is a temperature.</summary>
    private static readonly string[] Frames =
        ["42Y", "42Z", "48Y", "48Z", "48YZ", "48H", "56Y", "56Z", "56YZ", "56H", "56HZ", "56CZ", "143T", "145T", "143TC", "145TC", "182T", "184T", "182TC", "184TC", "213T", "215T"];

    private static readonly (string Words, string Value)[] Turned =
        [.. from direction in (string[])["CW", "CCW"]
            from end in (string[])["LE", "LEAD END", "SE", "SHAFT END", "DE", "DRIVE END", "ODE", "OSE", "OLE", "OPP LE", "OPP SE", "OPP DE"]
            from facing in (string[])["", "FACING ", "VIEWED FROM "]
            select ($"{facing}{end} {direction}", $"{direction} {end}")];

    /// <summary>Words that are values.</summary>
    public static IReadOnlyList<PlateWord> All { get; } =
    [
        // Reversible, connected at the factory for the turn named; from which end is not said (facts: rotation).
        new("reversing", "ECW", "by leads"), new("rotation", "ECW", "CW"),
        new("reversing", "ECCW", "by leads"), new("rotation", "ECCW", "CCW"),
        .. Turned.Select(turned => new PlateWord("rotation", turned.Words, turned.Value)),
        .. Frames.Select(frame => new PlateWord("frame", frame, frame)),
        new("speeds", "SINGLE SPEED", "1"), new("speeds", "ONE SPEED", "1"), new("speeds", "TWO SPEED", "2"), new("speeds", "THREE SPEED", "3"), new("speeds", "FOUR SPEED", "4"),
        new("shaftEnds", "SINGLE SHAFT", "1"), new("shaftEnds", "DOUBLE SHAFT", "2"), new("shaftEnds", "DUAL SHAFT", "2"), new("shaftEnds", "DBL SHAFT", "2"),
        new("runCapacitor", "NO CAP", "none"), new("runCapacitor", "NO CAPACITOR", "none"),
    ];

    /// <summary>Words of the choices that say too little alone: a drive is also DIRECT DRIVE, leads are also LEADS OUT.</summary>
    public static IReadOnlyList<string> OnlyAtLabel { get; } =
    [
        "none", "both", "both ends", "shaft end", "lead end", "input", "output", "in", "out", "shaft", "single", "three", "up", "down", "round", "plain", "flat", "key",
        "fixed", "plug", "leads", "program", "setting", "by setting", "taps", "drive", "manual", "auto", "band", "foot", "B3", "B5", "B14", "resistance start", "electronic", "variable", "IEC", "NEMA", "INT", "OPEN",
    ];

    /// <summary>Words that announce what no field holds; they take the figures behind them along.</summary>
    public static IReadOnlyList<string> Strangers { get; } =
    [
        "MODEL", "MOD", "MDL", "MODEL NO", "MOD NO", "MODEL NUMBER", "SER", "SERIAL", "SER NO", "SERIAL NO", "SERIAL NUMBER", "S/N", "SN", "PART NO", "P/N", "PN", "PART NUMBER",
        "CAT", "CAT NO", "CATALOG NO", "STOCK NO", "STYLE", "SPEC", "SPEC NO", "ORDER NO", "JOB NO", "MFG", "MFG NO", "MFG DATE", "DATE", "DATE CODE", "MADE", "FILE", "FILE NO", "ID", "ID NO", "NO", "NR", "LOT", "BATCH",
        "RISE", "TEMP RISE", "SFA", "SF AMPS", "S.F.A.", "MAX ALT", "ALT", "ALTITUDE", "WT", "WEIGHT", "DIAGRAM", "DIAG", "CONN DIAG", "WIRING DIAGRAM", "TEL", "FUSE", "MAX FUSE",
        "NOT", "NOT FOR", "NOT FOR USE WITH", "WITHOUT", "W/O", "NO", "LESS",
    ];
}
