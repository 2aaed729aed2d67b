using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Running;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors.Running;

/// <summary>What will be different once it runs, against worked figures.</summary>
public sealed class MotorDifferencesTests
{
    private const string Rest = "powerMeaning=output; frequency=60 Hz; voltage=230 V; phase=single-phase";
    private const string Old = $"type=PSC; power=1/3 hp; speed=1075 rpm; poles=6; fullLoadAmps=2.1 A; breakdownTorque=130 %; {Rest}";

    private static Dictionary<string, Difference> Differ(string plate, string site, string part) =>
        MotorDifferences.Of(new(Named.Record<MotorSpec>(plate), Named.Record<MotorSite>(site)), Named.Record<MotorSpec>(part)).ToDictionary(one => one.Name);

    // Worked by Kloss through the rated point: 6-pole 1075 rpm, breakdown 1.3 times, 187.2 V on a 230 V winding, fully loaded at rated volts: 986 rpm; a straight line in slip says 1028.
    [Fact]
    public void At_187_volts_a_full_fan_pulls_a_230_volt_motor_down_to_986_rpm()
    {
        var speed = Differ(Old, "volts=187.2 V; supplyFrequency=60 Hz", Old)["speed"];
        speed.New!.Value.Low.ShouldBe(986, 1);
        speed.New.Value.High.ShouldBeGreaterThan(1028);
        speed.Ratio.ShouldBe(new Band(1, 1));
    }

    // Fan laws (ASHRAE Handbook), worked by hand: 1075 to 1140 rpm is 1.0605 in flow and 1.1926 in power. The new motor holds its speed; the old one was measured at its plate's.
    [Fact]
    public void From_1075_to_1140_rpm_the_fan_laws_give_flow_and_power()
    {
        var differences = Differ(Old, "volts=230 V; supplyFrequency=60 Hz; measuredSpeed=1075 rpm", $"type=ECM; power=1/2 hp; speed=1140 rpm; fullLoadAmps=3 A; {Rest}");
        differences["airflow"].Ratio!.Value.Middle.ShouldBe(1.0605, 5e-5);
        differences["shaftPower"].Ratio!.Value.Middle.ShouldBe(1.1926, 5e-5);
        differences["shareOfRating"].New!.Value.Middle.ShouldBe(100 * 1.1926 * 2 / 3, 0.01);
    }

    // ε 0.5 to 0.7, exponent 0.4 to 0.6 (practice): 5 % less air over one of three fans is 1.7 % less over the coil; the split grows, by less than in proportion.
    [Fact]
    public void Less_air_is_a_larger_split_and_less_so_the_more_fans_there_are()
    {
        const string Slower = $"type=ECM; power=1/2 hp; speed=1020 rpm; {Rest}";
        const string Site = "volts=230 V; supplyFrequency=60 Hz; measuredSpeed=1075 rpm";
        var alone = Differ(Old, Site, Slower)["condensingSplit"].Ratio!.Value;
        var amongThree = Differ(Old, $"{Site}; fansOnCoil=3", Slower)["condensingSplit"].Ratio!.Value;
        alone.Low.ShouldBeGreaterThan(1);
        alone.High.ShouldBeLessThan(1075.0 / 1020);
        amongThree.High.ShouldBeLessThan(alone.Low);
        amongThree.Low.ShouldBeGreaterThan(1);
    }

    [Fact]
    public void Amps_stay_within_the_plate_s_while_the_load_does()
    {
        var amps = Differ(Old, "volts=230 V; supplyFrequency=60 Hz", Old)["amps"];
        amps.New!.Value.High.ShouldBe(2.1, 1e-9);
        amps.New.Value.Low.ShouldBeInRange(0.9, 1.5);
    }

    // Fan laws, worked by hand: an electronic motor holds 1100 and 700 rpm; shaft power is (700/1100)³ = 0.2577 of that on high, 0.7 to 1 × 373 W there: 67.3 to 96.1 W. A new one of 735 rpm on low: 1.05 in speed and air, 1.158 in power.
    [Fact]
    public void Low_speed_has_figures_of_its_own_where_it_is_used()
    {
        const string motor = $"type=ECM; power=1/2-1/4 hp; speed=1100/700 rpm; speeds=2; speedMeans=electronic; fullLoadAmps=4/2 A; {Rest}";
        const string site = "volts=230 V; supplyFrequency=60 Hz; speedsUsed=2";
        var differences = Differ(motor, site, motor.Replace("1100/700", "1100/735", StringComparison.Ordinal));
        differences.Keys.ShouldBe(["speed", "airflow", "shaftPower", "shareOfRating", "amps", "condensingSplit", "speedOnLow", "airflowOnLow", "shaftPowerOnLow", "shareOfRatingOnLow", "ampsOnLow"]);
        differences["speedOnLow"].Title.ShouldBe("Speed on low");
        differences["shaftPowerOnLow"].Old!.Value.Low.ShouldBe(67.3, 0.05);
        differences["shaftPowerOnLow"].Old!.Value.High.ShouldBe(96.1, 0.05);
        differences["airflowOnLow"].Ratio!.Value.Middle.ShouldBe(1.05, 1e-6);
        differences["shaftPowerOnLow"].Ratio!.Value.Middle.ShouldBe(1.157625, 1e-6);
        differences["ampsOnLow"].New!.Value.High.ShouldBe(2, 1e-9);
        Differ(motor, "volts=230 V; supplyFrequency=60 Hz; speedsUsed=1", motor).Keys.ShouldNotContain("speedOnLow");
    }

    [Fact]
    public void Every_estimate_says_what_it_assumes() =>
        Differ(Old, "supplyFrequency=60 Hz", Old).Values.ShouldAllBe(one => one.Assumptions.Any(words => words.Contains("70 to 100 %", StringComparison.Ordinal)) && one.Assumptions.Any(words => words.Contains("none were measured", StringComparison.Ordinal)));

    [Theory]
    [InlineData("type=PSC; power=1/3 hp")]
    [InlineData("")]
    public void Without_speed_or_power_nothing_is_estimated(string plate) => Differ(plate, "volts=230 V; supplyFrequency=60 Hz", Old).ShouldBeEmpty();

    // 208 V is 55 % under a 460 V plate, and 240 V is 109 % over a 115 V one: one of the two is wrong.
    [Theory]
    [InlineData("460 V", "208 V", true)]
    [InlineData("115 V", "240 V", true)]
    [InlineData("230 V", "172.4 V", true)]
    [InlineData("230 V", "172.6 V", false)]
    public void Nothing_is_estimated_from_volts_that_the_old_motor_cannot_have_run_on(string plate, string volts, bool withheld) =>
        (Differ(Old.Replace("230 V", plate, StringComparison.Ordinal), $"volts={volts}; supplyFrequency=60 Hz", Old).Count == 0).ShouldBe(withheld);

    // Input watts measured: 250 W at 50 % efficiency is 125 W at the shaft; on 1/3 hp that is half a load, and Kloss gives the slip 0.2217 (2.78 − √(2.78² − 1)) = 0.0408 for the torque 0.467 there: 1151 rpm.
    [Fact]
    public void Measured_input_narrows_the_load()
    {
        var differences = Differ($"{Old}; efficiency=50 %", "volts=230 V; supplyFrequency=60 Hz; measuredInput=250 W", Old);
        differences["shaftPower"].Old!.Value.Middle.ShouldBe(125, 0.1);
        differences["speed"].Old!.Value.Low.ShouldBe(1151, 2);
    }

    // DOE: load is at most amps over the plate's at rated volts (from memory): 1.5 of 2.1 A is 71 %.
    [Fact]
    public void Measured_amps_bound_the_load_from_above() =>
        Differ(Old, "volts=230 V; supplyFrequency=60 Hz; measuredAmps=1.5 A", Old)["shareOfRating"].Old!.Value.High.ShouldBe(100 * 1.5 / 2.1, 0.01);

    [Property]
    public Property Lower_volts_never_run_the_fan_faster_and_never_move_more_air() => Prop.ForAll(
        Gen.Choose(187, 252).Zip(Gen.Choose(105, 250)).ToArbitrary(),
        one =>
        {
            var motor = Old.Replace("130 %", $"{one.Item2} %", StringComparison.Ordinal);
            var (low, high) = (Differ(motor, $"volts={one.Item1} V; supplyFrequency=60 Hz", motor)["speed"].New!.Value, Differ(motor, $"volts={one.Item1 + 1} V; supplyFrequency=60 Hz", motor)["speed"].New!.Value);
            low.Low.ShouldBeLessThanOrEqualTo(high.Low + 1e-6);
            low.High.ShouldBeLessThanOrEqualTo(high.High + 1e-6);
        });
}
