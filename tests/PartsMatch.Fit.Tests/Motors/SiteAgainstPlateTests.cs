using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

/// <summary>What was measured against the old motor's plate. Percentages and speeds worked by hand; ±10 % of volts and ±5 % of frequency: NEMA MG 1 12.44 (published); the rest practice.</summary>
public sealed class SiteAgainstPlateTests
{
    [Theory]

    // 240 / 115 = 2.087; 187 / 230 = 0.813; 0.9 × 208 = 187.2, and 187 / 208 = 0.899.
    [InlineData("voltage=115 V; phase=1", "volts=240 V", "voltage", "volts", "115 V plate, 240 V measured: 108.7 % high: check where the volts were measured")]
    [InlineData("voltage=230 V; phase=1", "volts=187 V", "voltage", "volts", "230 V plate, 187 V measured: 18.7 % low: check the tap in use and the supply before the motor is blamed.")]
    [InlineData("voltage=208-230 V; phase=1", "volts=187 V", "voltage", "volts", "208-230 V plate, 187 V measured: 10.1 % low")]
    [InlineData("voltage=115/230 V", "volts=187 V", "voltage", "volts", "230 V plate, 187 V measured: 18.7 % low")]
    [InlineData("voltage=230 V; phase=3", "volts=200/201/202 V", "voltage", "volts", "230 V plate, 201 V measured: 12.6 % low")]
    [InlineData("voltage=230 V; phase=1", "neutralVolts=120 V", "voltage", "neutralVolts", "120 V measured to neutral")]
    [InlineData("frequency=60 Hz", "supplyFrequency=50 Hz", "frequency", "supplyFrequency", "60 Hz plate, 50 Hz supply")]
    [InlineData("rotation=CW shaft end", "turnNeeded=CCW shaft end", "rotation", "turnNeeded", "The plate says CW shaft end, but CCW shaft end is said to be needed")]
    [InlineData("rotation=CW shaft end; reversing=by leads", "turnNeeded=CW lead end", "rotation", "turnNeeded", "whether the old motor had been reversed")]
    [InlineData("shaftDiameter=1/2 in", "hubBore=5/8 in", "shaftDiameter", "hubBore", "The hub's bore is 5/8 in, the old shaft 1/2 in: see whether a bushing")]
    [InlineData("shaftDiameter=1/2 in", "hubBore=3/8 in", "shaftDiameter", "hubBore", "does not go onto that shaft")]
    [InlineData("frame=56", "hubBore=1/2 in", "shaftDiameter", "hubBore", "the old shaft 5/8 in")] // NEMA MG 1 4.4.1 (published)
    [InlineData("shaftLength=7-1/4 in", "shaftRoom=5 in", "shaftLength", "shaftRoom", "The room for a shaft is 5 in, the old shaft 7-1/4 in: it cannot have turned there.")]
    [InlineData("shaftLength=7-1/4 in", "shaftRoom=6-3/4 in", "shaftLength", "shaftRoom", "The room for a shaft is 6-3/4 in")]
    [InlineData("phase=3", "supplyPhase=1", "phase", "supplyPhase", "Three-phase plate, single-phase supply")]
    [InlineData("phase=3", "supplyArrangement=single-phase", "phase", "supplyArrangement", "Three-phase plate, single-phase supply")]

    // 120 × 60 / 6 = 1200 rpm; half a percent over it is 1206.
    [InlineData("type=PSC; speed=1075 rpm; frequency=60 Hz", "measuredSpeed=1207 rpm", "speed", "measuredSpeed", "1207 rpm measured is above 1200 rpm")]
    [InlineData("speed=1075 rpm", "measuredSpeed=1250 rpm; supplyFrequency=60 Hz", "speed", "measuredSpeed", "6 poles at 60 Hz")]
    [InlineData("poles=4; frequency=50 Hz", "measuredSpeed=1550 rpm", "poles", "measuredSpeed", "above 1500 rpm")]

    // 1.25 × 2.8 A is 3.5 A; 3.6 / 2.8 = 1.286.
    [InlineData("fullLoadAmps=2.8 A", "measuredAmps=3.6 A", "fullLoadAmps", "measuredAmps", "3.6 A measured, 2.8 A on the plate: 29 % over")]
    [InlineData("voltage=115/230 V; fullLoadAmps=8/4 A; phase=1", "measuredAmps=8 A; volts=230 V", "fullLoadAmps", "measuredAmps", "4 A on the plate: 100 % over")]

    // 1.1 × 2.0 A is 2.2 A; 1/2 hp is 1.5 times 1/3 hp; 100 W taken is never the 249 W of 1/3 hp.
    [InlineData("fullLoadAmps=2.0 A", "equipmentFanAmps=2.21 A", "fullLoadAmps", "equipmentFanAmps", "The equipment's plate says 2.21 A for the fan, the old motor's 2 A: more than 10 % apart.")]
    [InlineData("fullLoadAmps=2.21 A", "equipmentFanAmps=2.0 A", "fullLoadAmps", "equipmentFanAmps", "a wrong replacement")]
    [InlineData("power=1/3 hp", "equipmentFanPower=1/2 hp", "power", "equipmentFanPower", "1/2 hp for the fan, the old motor's 1/3 hp")]
    [InlineData("power=100 W", "equipmentFanPower=150 W", "power", "equipmentFanPower", "150 W for the fan, the old motor's 100 W")]
    [InlineData("power=1/3 hp", "equipmentFanPower=100 W", "power", "equipmentFanPower", "more than 10 % apart")]
    public void What_was_measured_and_does_not_go_with_the_plate_is_named(string plate, string site, string fields, string siteFields, string says)
    {
        var found = Found(plate, site).ShouldHaveSingleItem();
        string.Join(", ", found.Fields).ShouldBe(fields);
        string.Join(", ", found.SiteFields).ShouldBe(siteFields);
        found.Sentence.ShouldContain(says);
        found.Sentence.ShouldEndWith(".");
        found.Source.Text.ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData("voltage=208-230 V; phase=1", "volts=187.2 V")] // 0.9 × 208, the edge
    [InlineData("voltage=230 V; phase=1", "volts=253 V")] // 1.1 × 230, the edge
    [InlineData("voltage=115 V; phase=1", "volts=240 V; neutralVolts=120 V")] // on one leg and neutral
    [InlineData("voltage=115/230 V", "volts=240 V")]
    [InlineData("", "volts=187 V")]
    [InlineData("frequency=50/60 Hz", "supplyFrequency=50 Hz")]
    [InlineData("frequency=60 Hz", "supplyFrequency=57 Hz")] // − 5 %, the edge
    [InlineData("rotation=CW shaft end", "turnNeeded=CCW lead end")] // the same turn (geometry)
    [InlineData("rotation=CW", "turnNeeded=CCW shaft end")] // seen from which end?
    [InlineData("shaftDiameter=1/2 in", "hubBore=12.74 mm")] // within 0.04 mm
    [InlineData("shaftDiameter=1/2 in", "hubBore=1 in; drive=belt")]
    [InlineData("shaftLength=7-1/4 in", "shaftRoom=7 in")] // one step of MG 1 4.4.1 note 3: the edge
    [InlineData("shaftLength=7-1/4 in", "shaftRoom=8 in")]
    [InlineData("phase=1", "supplyPhase=3")] // two of three legs
    [InlineData("type=PSC; speed=1075 rpm; frequency=60 Hz", "measuredSpeed=1206 rpm")]
    [InlineData("type=ECM; speed=1075 rpm; frequency=60 Hz", "measuredSpeed=1250 rpm")]
    [InlineData("type=PSC; speed=1075 rpm; frequency=60 Hz", "measuredSpeed=1250 rpm; drive=belt")]
    [InlineData("type=PSC; speed=1075 rpm; frequency=60 Hz", "measuredSpeed=1250 rpm; speedControl=drive")]
    [InlineData("fullLoadAmps=2.8 A", "measuredAmps=3.5 A")]
    [InlineData("voltage=115/230 V; fullLoadAmps=8/4 A; phase=1", "measuredAmps=8 A")] // which tap is not known
    [InlineData("fullLoadAmps=2.0 A", "equipmentFanAmps=2.2 A")]
    [InlineData("power=1/3 hp", "equipmentFanPower=0.25 kW")]
    [InlineData("power=1/3 hp", "equipmentFanPower=400 W")] // may be what it takes: 249 W at 62 %
    public void What_may_be_true_together_is_left_alone(string plate, string site) => Found(plate, site).ShouldBeEmpty();

    /// <summary>Worked by hand: 230 / √3 is 133 V, 240 / √3 is 139 V, 240 / 2 is 120 V, 208 / √3 is 120 V; the high leg of a 240 V delta stands at 240 · √3 / 2 = 208 V.</summary>
    [Theory]
    [InlineData("volts=230 V; neutralVolts=400 V", "volts, neutralVolts", "a leg of a star stands at 1/√3")]
    [InlineData("volts=240 V; neutralVolts=208 V", "volts, neutralVolts", "those of the high leg")]
    [InlineData("volts=240 V; neutralVolts=139 V; supplyArrangement=delta", "supplyArrangement, neutralVolts", "A delta has no neutral")]
    [InlineData("volts=240 V; neutralVolts=120 V; supplyArrangement=wye", "supplyArrangement, volts, neutralVolts", "are those of a centre tap, but it is said to be wye")]
    [InlineData("volts=240 V; neutralVolts=139 V; supplyArrangement=high-leg delta", "supplyArrangement, volts, neutralVolts", "are those of a star")]
    public void Volts_to_neutral_that_are_those_of_no_leg_there_are_named(string site, string fields, string says)
    {
        var found = Found("", site).ShouldHaveSingleItem();
        string.Join(", ", found.SiteFields).ShouldBe(fields);
        found.Sentence.ShouldContain(says);
    }

    [Theory]
    [InlineData("volts=240 V; neutralVolts=208 V; supplyArrangement=high-leg delta")]
    [InlineData("volts=240 V; neutralVolts=120/120/208 V")]
    [InlineData("volts=240 V; neutralVolts=120 V")]
    [InlineData("volts=240 V; neutralVolts=115/125 V")] // legs loaded unevenly
    [InlineData("volts=208 V; neutralVolts=120 V")]
    [InlineData("volts=208 V; neutralVolts=115 V")]
    [InlineData("volts=120 V; neutralVolts=120 V")] // its two leads were on a line and the neutral
    [InlineData("neutralVolts=400 V")]
    public void Volts_to_neutral_of_an_ordinary_supply_are_left_alone(string site) => Found("", site).ShouldBeEmpty();

    [Fact]
    public void Neither_side_is_picked()
    {
        var need = MotorFamily.Motor.ReadNeed(new(null, Named.Texts("voltage=115 V; phase=1"), Named.Texts("volts=240 V"))).Need;
        ((MotorSpec)need.Plate).Voltage.ShouldBe(Named.Record<MotorSpec>("voltage=115 V").Voltage);
        ((MotorSite)need.Site).Volts.ShouldBe(Named.Record<MotorSite>("volts=240 V").Volts);
    }

    private static IReadOnlyList<Contradiction> Found(string plate, string site) => MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Contradictions;
}
