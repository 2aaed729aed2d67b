using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>How motors' plates announce fields.</summary>
internal static class MotorLabels
{
    private static readonly NamedText Output = new("powerMeaning", "output");
    private static readonly NamedText Input = new("powerMeaning", "input");

    /// <summary>All labels; the units of a field come by themselves where ByUnit says so.</summary>
    public static IReadOnlyList<PlateLabel> All { get; } =
    [
        new("type", "TYPE", "MOTOR TYPE", "MTR TYPE"),
        new("power", "POWER", "RATED POWER", "RATED HP", "MHP") { ByUnit = true },
        new("power", "P2", "OUT", "OUTPUT", "POWER OUT", "OUTPUT POWER", "SHAFT OUTPUT", "SHAFT POWER") { Says = Output },
        new("power", "W OUT", "WATTS OUT", "OUTPUT W", "OUTPUT WATTS", "OUT W") { Unit = "W", Says = Output },
        new("power", "KW OUT", "OUTPUT KW") { Unit = "kW", Says = Output },
        new("power", "P1", "INPUT", "POWER IN", "INPUT POWER", "POWER INPUT", "PIN") { Says = Input, YieldsTo = "inputPower", NeverIn = "hp" },
        new("power", "INPUT W", "INPUT WATTS") { Unit = "W", Says = Input, YieldsTo = "inputPower" },
        new("power", "W IN", "WATTS IN") { Unit = "W", Says = Input, YieldsTo = "inputPower", NeverBefore = "fullLoadAmps" },
        new("power", "IN") { Says = Input, YieldsTo = "inputPower", NeverIn = "hp", NeverBefore = "fullLoadAmps" },
        new("power", "INPUT KW") { Unit = "kW", Says = Input, YieldsTo = "inputPower" },
        new("power", "KW IN") { Unit = "kW", Says = Input, YieldsTo = "inputPower", NeverBefore = "fullLoadAmps" },
        new("speed", "SPEED", "FL RPM", "RATED RPM", "RATED SPEED", "NOM RPM", "N2") { ByUnit = true },
        new("speeds", "SPD", "SPDS", "SPEED", "SPEEDS", "NO OF SPEEDS"),
        new("poles", "POLE", "POLES", "NO OF POLES"),
        new("poles", "P") { OnlyBehind = true },
        new("serviceFactor", "SF", "S.F.", "SER FACT", "SERV FACT", "SVC FACT", "SER FACTOR", "SERV FACTOR", "SERVICE FACTOR", "SERVICE FACT"),
        new("duty", "DUTY", "TIME", "TIME RATING", "TIME RTG", "RATING", "DUTY CYCLE"),
        new("voltage", "VOLTAGE", "SUPPLY", "RATED VOLTS", "RATED VOLTAGE", "LINE VOLTS") { ByUnit = true },
        new("connectedFor", "CONN FOR", "CONNECTED FOR", "WIRED FOR", "CONN", "CONNECTED"),
        new("phase", "PH", "PHASE", "PHASES", "PHS", "Ø", "Φ", "~", "NO OF PHASES"),
        new("frequency", "FREQ", "FREQUENCY", "CPS", "CYCLE", "HERZ") { ByUnit = true },
        // A fan motor is rated by the load that it is marked for: its rated-load amps are its full-load amps (practice).
        new("fullLoadAmps", "FLA", "F.L.A.", "FL AMPS", "AMPS FL", "FULL LOAD AMPS", "FULL LOAD AMP", "RATED AMPS", "RATED CURRENT", "CURRENT", "NP AMPS", "RLA", "R.L.A.", "RATED LOAD AMPS", "RATED LOAD CURRENT") { ByUnit = true },
        new("lockedRotorAmps", "LRA", "L.R.A.", "LR AMPS", "AMPS LR", "LOCKED ROTOR AMPS", "LOCKED ROTOR"),
        new("codeLetter", "CODE", "KVA CODE", "CODE LETTER", "LR CODE", "KVA"),
        new("efficiency", "EFF", "NOM EFF", "NEMA NOM EFF", "NEMA NOM EFFICIENCY", "EFFICIENCY", "FL EFF", "Η") { Unit = "%" },
        new("powerFactor", "PF", "P.F.", "COS PHI", "COSPHI", "COS Φ", "COS FI", "COS", "POWER FACTOR", "PWR FACTOR"),
        new("runCapacitor", "CAP", "CAPACITOR", "RUN CAP", "RUN CAPACITOR", "CAPACITOR REQD", "CAP REQD", "MFD/VAC", "MFD/V", "UF/V", "UF/VAC", "µF/V", "CAP MFD/VAC", "CAP MFD", "MFDS", "COND", "KOND") { ByUnit = true },
        new("frame", "FR", "FRM", "FRAME", "FRAME SIZE", "FR SIZE", "IEC FRAME", "NEMA FRAME", "FRAME NO"),
        new("mounts", "MOUNT", "MOUNTING", "MTG", "MTD", "IM"),
        new("bodyDiameter", "DIA", "DIAM", "DIAMETER", "BODY DIA", "BODY DIAMETER", "MOTOR DIA", "SHELL DIA", "OD") { Unit = "in" },
        new("bodyLength", "BODY LENGTH", "BODY LG", "SHELL LENGTH") { Unit = "in" },
        new("studCircle", "STUD CIRCLE", "STUD BC", "STUD BOLT CIRCLE") { Unit = "in" },
        new("faceBoltCircle", "BOLT CIRCLE", "FACE BC", "FACE BOLT CIRCLE") { Unit = "in" },
        new("facePilot", "PILOT", "PILOT DIA", "FACE PILOT") { Unit = "in" },
        new("shaftDiameter", "SHAFT", "SHFT", "SHAFT DIA", "SHFT DIA", "SHAFT DIAM", "SHAFT DIAMETER", "SHAFT SIZE") { Unit = "in", By = "shaftLength" },
        new("shaftLength", "SHAFT LENGTH", "SHAFT LG", "SHAFT LEN", "SHAFT EXT", "SHAFT EXTENSION") { Unit = "in" },
        new("shaftForm", "SHAFT", "SHAFT FORM", "SHFT"),
        new("flatLength", "FLAT", "FLAT LENGTH") { Unit = "in" },
        new("shaftEnds", "SHAFT ENDS", "SHAFTS"),
        new("rotation", "ROT", "ROTN", "ROTATION", "DIR", "DIRECTION", "DIR OF ROT", "DIRECTION OF ROTATION", "TURN"),
        new("reversing", "ROT", "ROTN", "ROTATION", "DIR", "DIRECTION", "DIR OF ROT"),
        new("bearings", "BRG", "BRGS", "BEARING", "BEARINGS", "BRNGS"),
        new("shaftPositions", "SHAFT", "SHAFT POSITION", "POSITION", "POS"),
        new("enclosure", "ENCL", "ENC", "ENCLOSURE"),
        new("ipCode", "IP", "PROTECTION IP", "ENCL IP"),
        new("drainHoles", "DRAIN", "DRAINS", "DRAIN HOLES", "DRAIN HOLE"),
        new("insulation", "INS", "INSUL", "INSULATION", "INS CL", "INS CLASS", "INSUL CL", "INSUL CLASS", "INSULATION CLASS", "INSULATION CL", "CL", "CLASS", "TH CL", "THERM CL", "THERMAL CLASS", "ISOL", "ISO CL", "ISOL CL", "IS CL", "IS KL", "ISO KL", "ISOL KL", "INS KL", "TH KL", "WKL", "W KL", "KL", "CL INS", "CLASS INS"),
        new("ambientMost", "AMB", "AMBIENT", "MAX AMB", "MAX AMBIENT", "AMB MAX", "AMB TEMP", "AMBIENT TEMP", "MAX AMB TEMP", "T AMB", "T AMB MAX", "TA", "TA MAX", "UMG TEMP") { Unit = "C" },
        new("ambientLeast", "AMB", "AMBIENT", "AMB TEMP", "AMBIENT TEMP", "T AMB", "TA", "AMB RANGE", "UMG TEMP") { Unit = "C", To = "ambientMost" },
        new("ambientLeast", "MIN AMB", "MIN AMBIENT", "AMB MIN") { Unit = "C" },
        new("protection", "PROT", "PROTECTION", "THERM PROT", "THERMAL PROT", "THERMAL PROTECTION", "OL PROT", "OVERLOAD", "OVERLOAD PROT", "OVERLOAD PROTECTION", "OVLD", "OVERLD", "O/L", "PROTECTOR", "THERMAL PROTECTOR", "OL", "THERMAL"),
        new("speedControls", "SPEED CONTROL", "SPEED CTRL", "CONTROL"),
        new("hazards", "HAZ", "HAZARD", "HAZARDOUS", "HAZ LOC", "REFRIGERANT CLASS"),
        new("standard", "STD", "STANDARD"),
        new("leadMarks", "LEADS", "LEAD MARKS", "LEAD COLORS", "TERMINALS"),
    ];
}
