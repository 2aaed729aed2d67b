using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

public sealed class MotorDeductionsTests
{
    [Theory]

    // Published: NEMA MG 1 4.4.1 (48: 1/2 in with a flat; 56: 5/8 in, 3/16 in key; 143T: 7/8 in) and 4.4.4 (56C: 5.875 in circle, 4.5 in pilot, 2.06 in of shaft).
    [InlineData("frame=48", "shaftDiameter=1/2 in; shaftForm=flat")]
    [InlineData("frame=56", "shaftDiameter=5/8 in; shaftForm=keyway")]
    [InlineData("frame=143T", "shaftDiameter=7/8 in; shaftForm=keyway; shaftLength=2-1/4 in; mounts=rigid base")]

    // Published: NEMA MG 1 4.2 (H a longer foot, Z a special shaft); that the feet are rigid is practice.
    [InlineData("frame=56HZ", "mounts=rigid base")]
    [InlineData("frame=56C", "faceBoltCircle=5-7/8 in; facePilot=4-1/2 in; shaftLength=2.06 in; shaftDiameter=5/8 in; shaftForm=keyway")]
    [InlineData("frame=48Y", "")]
    [InlineData("frame=56Z", "")]
    [InlineData("frame=56CZ", "")]

    // From memory: IEC 60072-1, frame 71: 14 mm × 30 mm.
    [InlineData("frame=IEC 71", "shaftDiameter=14 mm; shaftForm=keyway; shaftLength=30 mm")]

    // By definition of the type; horsepower is at the shaft (NEMA MG 1 10.40, from memory).
    [InlineData("type=three-phase induction", "phase=three-phase")]
    [InlineData("type=PSC", "phase=single-phase")]
    [InlineData("type=shaded pole", "phase=single-phase")]
    [InlineData("type=ECM", "")]
    [InlineData("power=1/4 hp", "powerMeaning=output")]
    [InlineData("power=250 W", "")]
    [InlineData("power=0.37 kW; type=SCIM", "phase=three-phase; powerMeaning=output")]
    [InlineData("speed=1725/1140 rpm", "speeds=2")]

    // IEC 60034-8, from memory: 230 × √3 = 398; 240 × √3 = 416.
    [InlineData("voltage=230/400 V; phase=3", "starDelta=yes")]
    [InlineData("voltage=230/400 V; starDelta=yes", "standard=IEC")] // practice
    [InlineData("voltage=220-240/380-415 V; phase=3; standard=IEC", "starDelta=yes")]
    [InlineData("voltage=230/460 V; phase=3", "")]
    [InlineData("voltage=230/400 V; phase=1", "")]
    [InlineData("voltage=230/400 V; phase=3; standard=NEMA", "")]
    [InlineData("voltage=230/400 V; phase=3; leadMarks=NEMA marks", "")]
    [InlineData("speed=900/1075 rpm", "")]
    [InlineData("speed=1075/1075 rpm", "speeds=1")]
    [InlineData("power=3/4-1/3 hp", "powerMeaning=output; speeds=2")]
    [InlineData("speed=900/1075 rpm; frequency=50/60 Hz", "speeds=1")]
    [InlineData("speed=900/1075 rpm; power=0.37/0.44 kW", "")]
    [InlineData("speed=900/1075 rpm; power=1/2-1/2 hp", "powerMeaning=output")] // the same power at either frequency
    [InlineData("speed=900/1075 rpm; power=1/3-3/4 hp", "powerMeaning=output; speeds=2")] // no power steps so with the frequency
    [InlineData("speed=900/1075 rpm; power=0.44/0.37 kW", "speeds=2")] // nor against it
    [InlineData("speed=900/1075 rpm; power=1/2-1/2 hp; frequency=50/60 Hz", "powerMeaning=output; speeds=1")]
    [InlineData("speed=900/1075 rpm; power=1/3-3/4 hp; frequency=50/60 Hz", "powerMeaning=output; speeds=2")]

    // Worked by hand from 120 f / p: 1200, 1800, 1000 and 1500 rpm.
    [InlineData("speed=1075 rpm; frequency=60 Hz; type=PSC; phase=1", "poles=6")]
    [InlineData("speed=1550 rpm; frequency=60 Hz; type=shaded pole; phase=1", "poles=4")]
    [InlineData("speed=950 rpm; frequency=50 Hz; type=PSC; phase=1", "poles=6")]
    [InlineData("speed=1425/1725 rpm; frequency=50/60 Hz; type=PSC; phase=1", "speeds=1; poles=4")]
    [InlineData("speed=1075/900/750 rpm; frequency=60 Hz; type=PSC; phase=1", "speeds=3; poles=6")]
    [InlineData("speed=1075 rpm; frequency=60 Hz; runCapacitor=5/370", "poles=6")]
    [InlineData("speed=1075 rpm; frequency=60 Hz", "")]
    [InlineData("speed=1075 rpm; frequency=60 Hz; type=ECM", "")]

    // Worked by hand: at 514 rpm 12 poles (504 to 600) and 14 (432 to 514.3) are both possible; at 1450 rpm neither 4 (1512 to 1800) nor 6 (up to 1200) is.
    [InlineData("speed=514 rpm; frequency=60 Hz; type=PSC; phase=1", "")]
    [InlineData("speed=1450 rpm; frequency=60 Hz; type=PSC; phase=1", "")]
    public void A_plate_implies(string plate, string implied)
    {
        var (spec, deductions) = MotorDeductions.Deduce(Named.Record<MotorSpec>(plate));
        deductions.Select(deduction => new NamedText(deduction.Field, deduction.Text)).ShouldBe(Named.Texts(implied));
        deductions.ShouldAllBe(deduction => deduction.Side == Side.Plate && deduction.Because.Length > 0 && deduction.From.Count > 0);
        foreach (var deduction in deductions) Shape<MotorSpec>.Of.Find(deduction.Field)!.TextOf(spec).ShouldBe(deduction.Text);
    }

    [Fact]
    public void What_follows_from_an_iec_frame_is_said_to_be_from_memory() =>
        MotorDeductions.Deduce(Named.Record<MotorSpec>("frame=IEC 80")).Deductions.ShouldAllBe(deduction => deduction.Source.Status == SourceStatus.Memory);

    [Theory]
    [InlineData("frequency=60 Hz", "", "supplyFrequency=60 Hz")]
    [InlineData("frequency=50/60 Hz", "", "")]
    [InlineData("frequency=60 Hz", "supplyFrequency=50 Hz", "")]
    [InlineData("phase=3", "", "supplyPhase=three-phase")]
    [InlineData("phase=1", "", "supplyPhase=single-phase")]
    [InlineData("", "supplyArrangement=wye", "supplyPhase=three-phase")]
    [InlineData("", "supplyArrangement=single-phase", "supplyPhase=single-phase")]
    [InlineData("", "volts=460/467/450 V", "supplyPhase=three-phase")]
    [InlineData("", "volts=230 V", "")]
    [InlineData("phase=1", "volts=460/467/450 V; supplyArrangement=wye", "supplyPhase=single-phase")]
    [InlineData("phase=3", "supplyArrangement=single-phase", "supplyPhase=single-phase")]
    public void The_old_motor_tells_of_the_site(string plate, string site, string implied)
    {
        var need = MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
        need.Deductions.Where(deduction => deduction.Side == Side.Site && deduction.Field != "bladeStays").Select(deduction => new NamedText(deduction.Field, deduction.Text)).ShouldBe(Named.Texts(implied));
    }

    [Theory]
    [InlineData("", "", "yes")]
    [InlineData("", "newBladeBore=1/2 in", "no")]
    [InlineData("", "newHubHoldsOn=flat", "no")]
    [InlineData("", "bladeStays=no", null)]
    public void The_blade_is_taken_to_stay_until_a_new_one_is_spoken_of(string plate, string site, string? stays) =>
        MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Deductions.SingleOrDefault(deduction => deduction.Field == "bladeStays")?.Text.ShouldBe(stays);

    [Fact]
    public void A_blade_that_goes_takes_its_hub_along() =>
        MotorFamily.Motor.ReadNeed(new(null, Named.Texts("shaftDiameter=1/2 in; shaftForm=flat"), Named.Texts("bladeStays=no"))).Deductions.ShouldNotContain(deduction => deduction.Field == "hubBore" || deduction.Field == "hubHoldsOn");

    [Fact]
    public void A_deduction_never_overrides_a_reading()
    {
        var shape = Shape<MotorSpec>.Of;
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(500), Prop.ForAll(TextPool.TextsOf(shape, 4).ToArbitrary(), texts =>
        {
            var read = shape.Read(texts).Record;
            var (deduced, deductions) = MotorDeductions.Deduce(read);
            foreach (var field in shape.Fields.Where(field => field.Get(read) is not null)) field.Get(deduced).ShouldBe(field.Get(read), field.Name);
            deductions.Select(deduction => deduction.Field).ShouldBeUnique();
            deductions.ShouldAllBe(deduction => shape.Find(deduction.Field)!.Get(read) == null);
        }));
    }

    [Fact]
    public void Deducing_again_finds_nothing_new()
    {
        var once = MotorDeductions.Deduce(Named.Record<MotorSpec>("frame=56C; type=PSC; speed=1075 rpm; frequency=60 Hz; power=1/3 hp"));
        once.Deductions.Count.ShouldBe(8);
        MotorDeductions.Deduce(once.Spec).Deductions.ShouldBeEmpty();
    }
}
