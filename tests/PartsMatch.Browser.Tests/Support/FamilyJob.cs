namespace PartsMatch.Browser.Tests.Support;

/// <summary>A job of one family, from its plate to the sheet: a line a family, so that none is without its journey.</summary>
/// <param name="Kind">The family's kind.</param>
/// <param name="Title">What the page calls it.</param>
/// <param name="Plate">The old part's plate.</param>
/// <param name="Typed">What else is known, into fields.</param>
/// <param name="OnSheet">What the sheet of the first part says of it.</param>
/// <param name="Read">What is read at the old part before it is condemned.</param>
/// <param name="Concluded">What is concluded from that.</param>
public sealed record FamilyJob(string Kind, string Title, string Plate, IReadOnlyList<(string Field, string Text)> Typed, string OnSheet, IReadOnlyList<(string Field, string Text)> Read, string Concluded)
{
    public static IReadOnlyList<FamilyJob> All { get; } =
    [
        new("motor", "fan motor", Job.Plate, Job.Typed, "202 V measured", [("read.circuitCalls", "yes"), ("read.leadVolts", "0 V")], "It is not the part"),
        new(
            "solenoidValve",
            "solenoid valve",
            "N.C. 3/8 ODF MOPD 300 PSI MWP 500 PSI CV 1.0 R404A COIL 24V 60HZ",
            [("site.line", "liquid"), ("site.load", "3 tons"), ("site.evaporatingAt", "20 °F"), ("site.condensingAt", "105 °F"), ("site.temperatureThere", "95 °F")],
            "kg/h lose",
            [("read.coilVolts", "24 V"), ("read.magnetPulls", "no")],
            "The part has failed"),
        new(
            "expansionValve",
            "expansion valve",
            "R404A 1 TON EXT EQ 1/4 X 1/2 ODF CROSS CHARGED",
            [("site.load", "1 ton"), ("site.evaporatingAt", "20 °F"), ("site.condensingLeast", "90 °F"), ("site.condensingMost", "110 °F"), ("site.subcooling", "10 °F"), ("site.lineLoss", "5 psi"), ("site.hasDistributor", "no")],
            "of the load of",
            [("read.bulbInPlace", "yes"), ("read.clearLiquid", "no")],
            "It is not the part"),
        new(
            "condensingPressureValve",
            "condensing-pressure valve",
            "3-WAY R404A SETTING 180 PSI 5/8 ODF MWP 450 PSI",
            [("site.load", "5 tons"), ("site.leastAmbient", "20 °F"), ("site.receiverHoldsFlooding", "yes")],
            "180 psi",
            [("read.headPressure", "150 psi"), ("read.enoughCharge", "no")],
            "It is not the part"),
        new(
            "pressureControl",
            "pressure control",
            "LOW PRESSURE AUTO RESET RANGE 5-100 PSI DIFF 10-40 PSI CUT-IN 30 PSI",
            [("site.cutInNeeded", "30 psi"), ("site.cutOutNeeded", "10 psi"), ("site.loads", "coil")],
            "10 psi",
            [("read.isClosed", "no"), ("read.pressureThere", "60 psi")],
            "The part has failed"),
        new(
            "thermostat",
            "thermostat or defrost switch",
            "DEFROST TERMINATION SWITCH OPENS 55 F CLOSES 35 F CLIP-ON 10 FLA 240 V LEADS",
            [("site.heaterAmps", "12 A"), ("site.loadVolts", "240 V"), ("site.defrostPeak", "90 °F")],
            "within 5 °F (2.8 K) is wanted",
            [("read.isClosed", "no"), ("read.bulbTemperature", "20 °F")],
            "The part has failed"),
        new(
            "contactor",
            "contactor or relay",
            "2 POLE FLA 30 LRA 150 COIL 24 V 50/60 HZ",
            [("site.controlVolts", "24 V"), ("site.loadVolts", "240 V"), ("site.motors", "20/110 A")],
            "24 V",
            [("read.circuitCalls", "yes"), ("read.coilVolts", "24 V"), ("read.pullsIn", "no"), ("read.coilOhms", "open")],
            "The part has failed"),
        new(
            "defrostTimer",
            "defrost timer",
            "DEFROST TIMER CLOCK 208-240 V 60 HZ STARTS 1-6 FAIL-SAFE 4-110 MIN TEMP TERMINATED SPDT RES 40 FLA 20 240 V",
            [("site.heaterPower", "6 kW"), ("site.heaterOwnVolts", "240 V"), ("site.loadVolts", "204 V"), ("site.loadPhase", "single-phase"), ("site.minutesAtHeaterVolts", "30 min"), ("site.hazard", "none")],
            "41.5 min are needed",
            [("read.clockTurns", "no"), ("read.clockVoltsThere", "232 V")],
            "The part has failed"),
        new("capacitor", "run capacitor", "45+5 MFD 440 VAC", [], "The motors ask for 45 and 5 µF", [("read.bulges", "yes")], "The part has failed"),
    ];

    public static FamilyJob Named(string kind) => All.Single(job => job.Kind == kind);

    /// <summary>The link of a page about this job.</summary>
    public string At(string path, params IEnumerable<string> more) =>
        $"{path}?kind={Kind}&text={Uri.EscapeDataString(Plate)}{string.Concat(Typed.Select(one => $"&{one.Field}={Uri.EscapeDataString(one.Text)}"))}{string.Concat(more.Select(one => $"&{one}"))}";
}
