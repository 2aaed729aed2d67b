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
            from end in (string[])["LE", "LEAD END", "SE", "SHAFT END", "DE", "DRIVE END", "ODE", "OSE", "OLE", "OPP LE", "OPP SE", "OPP DE", "OPE"]
            from facing in (string[])["", "FACING ", "VIEWED FROM "]
            select ($"{facing}{end} {direction}", $"{direction} {end}")];

    /// <summary>Classes by their temperature (IEC 60085), which newer plates print; only behind a label, for 120 and 130 may be volts.</summary>
    private static readonly (string Words, string Letter)[] Heat =
        [.. from label in (string[])["TH CL", "THERM CL", "THERMAL CLASS", "TH KL", "IS KL", "ISO KL", "INS CL", "INS CLASS", "INSULATION CLASS", "CL", "CLASS"]
            from heat in ((string Degrees, string Letter)[])[("105", "A"), ("120", "E"), ("130", "B"), ("155", "F"), ("180", "H")]
            select ($"{label} {heat.Degrees}", heat.Letter)];

    private static readonly string[] Colours =
        ["BLACK", "BLK", "WHITE", "WHT", "WHI", "RED", "BLUE", "BLU", "YELLOW", "YEL", "ORANGE", "ORN", "ORG", "BROWN", "BRN", "PURPLE", "PUR", "PRP", "VIOLET", "VIO", "PINK", "PNK", "GRAY", "GREY", "GRY"];

    /// <summary>The names of leads in connection diagrams: NEMA MG 1 Part 2 and IEC 60034-8, and colours. Green is the ground's on every motor.</summary>
    private static readonly (string Word, string Value)[] Leads =
    [
        .. Enumerable.Range(1, 12).Select(lead => (FormattableString.Invariant($"T{lead}"), "NEMA marks")),
        .. ((string[])["U1", "V1", "W1", "U2", "V2", "W2", "Z1", "Z2"]).Select(terminal => (terminal, "IEC terminals")),
        .. from colour in Colours
           from end in (string[])["", " CAP", " CAPACITOR", " LINE", " L1", " L2", " COM", " COMMON", " HI", " HIGH", " MED", " LO", " LOW"]
           select ($"{colour}{end}", "coloured"),
    ];

    /// <summary>Words that are values.</summary>
    public static IReadOnlyList<PlateWord> All { get; } =
    [
        // Reversible, connected at the factory for the turn named; from which end is not said (facts: rotation).
        new("reversing", "ECW", "by leads"), new("rotation", "ECW", "CW"),
        new("reversing", "ECCW", "by leads"), new("rotation", "ECCW", "CCW"),
        .. Turned.Select(turned => new PlateWord("rotation", turned.Words, turned.Value)),
        .. Frames.Select(frame => new PlateWord("frame", frame, frame)),
        .. Leads.Select(lead => new PlateWord("leadMarks", lead.Word, lead.Value)),
        new("speeds", "HI/LO", "2"), new("speeds", "HIGH/LOW", "2"), new("speeds", "HI/MED/LO", "3"), new("speeds", "HIGH/MED/LOW", "3"), new("speeds", "HIGH/MEDIUM/LOW", "3"),
        new("speeds", "SINGLE SPEED", "1"), new("speeds", "ONE SPEED", "1"), new("speeds", "TWO SPEED", "2"), new("speeds", "THREE SPEED", "3"), new("speeds", "FOUR SPEED", "4"),
        new("shaftEnds", "SINGLE SHAFT", "1"), new("shaftEnds", "DOUBLE SHAFT", "2"), new("shaftEnds", "DUAL SHAFT", "2"), new("shaftEnds", "DBL SHAFT", "2"),
        // IEC 60034-7: feet and a flange; feet and a tapped face.
        new("mounts", "IM B35", "rigid base, flange"), new("mounts", "B35", "rigid base, flange"), new("mounts", "IM B34", "rigid base, tapped face"), new("mounts", "B34", "rigid base, tapped face"),
        // M is the sign of a motor in the circles of IEC 60617.
        new("phase", "3X", "3"), new("phase", "3AC", "3"), new("phase", "1AC", "1"), new("phase", "M 3~", "3"), new("phase", "M 1~", "1"), new("phase", "3~ M", "3"), new("phase", "1~ M", "1"),
        .. Heat.Select(heat => new PlateWord("insulation", heat.Words, heat.Letter)),
        new("standard", "EN 60034", "IEC"), new("standard", "EN 60034-1", "IEC"), new("standard", "IEC/EN 60034-1", "IEC"), new("standard", "IEC 34-1", "IEC"),
        new("protection", "TH PROT", "thermal"), new("protection", "TH PROTECTED", "thermal"),
        new("runCapacitor", "NO CAP", "none"), new("runCapacitor", "NO CAPACITOR", "none"),
    ];

    /// <summary>Words of the choices that say too little alone: a drive is also DIRECT DRIVE, leads are also LEADS OUT.</summary>
    public static IReadOnlyList<string> OnlyAtLabel { get; } =
    [
        "none", "both", "both ends", "shaft end", "lead end", "input", "output", "in", "out", "shaft", "single", "three", "up", "down", "round", "plain", "flat", "key",
        "fixed", "plug", "leads", "program", "setting", "by setting", "taps", "drive", "manual", "auto", "band", "foot", "B3", "B5", "B14", "B35", "B34", "resistance start", "electronic", "variable", "IEC", "NEMA", "INT", "OPEN",
    ];

    /// <summary>Words that say nothing of any field: star and delta beside volts, lines, ground and speeds beside leads.</summary>
    public static IReadOnlyList<string> Fillers { get; } =
    [
        "AC", "Y", "Δ", "D", "YY", "WYE", "DELTA", "STAR", "L1", "L2", "L3", "LINE 1", "LINE 2", "N", "PE", "GND", "GROUND", "GRN", "GREEN", "GRN/YEL", "COM", "COMMON", "HI", "HIGH", "MED", "LO", "LOW",
    ];

    /// <summary>What such a part is called.</summary>
    public static IReadOnlyList<string> Names { get; } = ["MOTOR", "MTR", "FAN MOTOR", "FAN MTR", "AC MOTOR", "ELECTRIC MOTOR"];

    /// <summary>Words that announce what no field holds; they take the figures behind them along.</summary>
    public static IReadOnlyList<string> Strangers { get; } =
    [
        "MODEL", "MOD", "MDL", "MODEL NO", "MOD NO", "MODEL NUMBER", "SER", "SERIAL", "SER NO", "SERIAL NO", "SERIAL NUMBER", "S/N", "SN", "PART NO", "P/N", "PN", "PART NUMBER",
        "CAT", "CAT NO", "CATALOG NO", "STOCK NO", "STYLE", "SPEC", "SPEC NO", "ORDER NO", "JOB NO", "MFG", "MFG NO", "MFG DATE", "DATE", "DATE CODE", "MADE", "ANNO", "YEAR", "BAUJAHR", "BJ", "FILE", "FILE NO", "ID", "ID NO", "NO", "NR", "LOT", "BATCH",
        "RISE", "TEMP RISE", "SFA", "SF AMPS", "S.F.A.", "MAX ALT", "ALT", "ALTITUDE", "WT", "WEIGHT", "DIAGRAM", "DIAG", "CONN DIAG", "WIRING DIAGRAM", "TEL", "FUSE", "MAX FUSE",
        "NOT", "NOT FOR", "NOT SUITABLE FOR", "NOT SUITABLE FOR USE WITH", "NOT SUITABLE FOR USE ON", "NOT SUITED FOR", "NOT RATED FOR", "NOT INTENDED FOR", "UNSUITABLE FOR", "NOT FOR USE ON", "NOT FOR USE WITH", "WITHOUT", "W/O", "NO", "LESS",
    ];
}
