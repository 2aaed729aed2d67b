using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Physics;

namespace PartsMatch.Fit.Tests.Physics;

/// <summary>Kloss's curve against worked examples, and how a fan slows on low volts.</summary>
[Trait("Source", "formula.torqueLine")]
public sealed class TorqueLineTests
{
    // Published inputs (a university textbook's solved problem 10.19, seen as a companion script): 12-pole, 50 Hz, 480 rpm,
    // breakdown slip 0.6, breakdown torque 117.34 N·m, 15.576 N·m at 480 rpm, 103.54 N·m at start. Results computed from its formulas.
    [Fact]
    public void The_curve_through_the_rated_point_of_a_textbook_motor_gives_its_starting_torque()
    {
        var line = new TorqueLine(500, 480, 15.576, 117.34 / 15.576);
        line.TorqueAt(0).ShouldBe(103.54, 0.05);
        line.TorqueAt(480).ShouldBe(15.576, 1e-9);
        line.TorqueAt(200).ShouldBe(117.34, 0.01);
    }

    // Textbook exercise (statement published, result computed): 25 hp, starting torque 200 % of full load; at half the volts a quarter: 203.5 / 4 = 50.9 N·m.
    [Fact]
    public void Half_the_volts_leave_a_quarter_of_the_torque()
    {
        var line = new TorqueLine(1800, 1750, 101.77, 2.5);
        (line.TorqueAt(0, 0.5) * 4).ShouldBe(line.TorqueAt(0), 1e-9);
    }

    // Worked example of the trade page: 6 poles, 1075 rpm, breakdown 1.3 times, fan that loads it fully at rated volts, on 187.2 V of a 230 V winding: 986 rpm.
    // A straight line in slip would say 1028 rpm, since it forgets how near breakdown is.
    [Fact]
    public void A_high_slip_fan_motor_at_the_low_end_of_its_volts_runs_at_986_rpm_not_at_1028() =>
        new TorqueLine(1200, 1075, 1, 1.3).SpeedOnFan(1, 187.2 / 230).ShouldBe(986, 1);

    [Fact]
    public void At_rated_volts_and_rated_load_it_runs_at_rated_speed() =>
        new TorqueLine(1200, 1075, 1, 1.5).SpeedOnFan(1, 1).ShouldBe(1075, 1e-6);

    [Property]
    public Property More_volts_never_slow_a_fan_and_more_load_never_speeds_it() => Prop.ForAll(
        (from slip in Gen.Choose(20, 160)
         from breakdown in Gen.Choose(105, 350)
         from load in Gen.Choose(30, 130)
         from volts in Gen.Choose(60, 120)
         select (slip, breakdown, load, volts)).ToArbitrary(),
        one =>
        {
            var line = new TorqueLine(1200, 1200 * (1 - (one.slip / 1000.0)), 1, one.breakdown / 100.0);
            var speed = line.SpeedOnFan(one.load / 100.0, one.volts / 100.0);
            speed.ShouldBeInRange(0, 1200);
            line.SpeedOnFan(one.load / 100.0, (one.volts + 1) / 100.0).ShouldBeGreaterThanOrEqualTo(speed - 1e-6);
            line.SpeedOnFan((one.load + 1) / 100.0, one.volts / 100.0).ShouldBeLessThanOrEqualTo(speed + 1e-6);

            // It is a crossing: what the motor gives there is what the fan asks for.
            line.TorqueAt(speed, one.volts / 100.0).ShouldBe(one.load / 100.0 * Math.Pow(speed / line.RatedRpm, 2), 1e-6);
        });

    [Theory]
    [InlineData(1200, 1200, 1, 2)]
    [InlineData(1200, 0, 1, 2)]
    [InlineData(1200, 1075, 0, 2)]
    [InlineData(1200, 1075, 1, 0.99)]
    public void A_rated_point_that_cannot_be_is_refused(double synchronous, double rated, double torque, double breakdown) =>
        Should.Throw<ArgumentOutOfRangeException>(() => new TorqueLine(synchronous, rated, torque, breakdown));
}
