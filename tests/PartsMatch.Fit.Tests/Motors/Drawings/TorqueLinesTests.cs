using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Drawings;
using PartsMatch.Fit.Motors.Running;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors.Drawings;

/// <summary>The torque lines: drawn from what the estimates come from, or not at all.</summary>
public sealed class TorqueLinesTests
{
    private const string Rest = "powerMeaning=output; frequency=60 Hz; voltage=230 V; phase=single-phase";
    private const string Psc = $"type=PSC; power=1/3 hp; speed=1075 rpm; poles=6; {Rest}";
    private const string Known = $"{Psc}; breakdownTorque=130 %";
    private const string Stronger = $"type=PSC; power=1/2 hp; speed=1050 rpm; poles=6; {Rest}";
    private const string Electronic = $"type=ECM; power=1/2 hp; speed=1140 rpm; {Rest}";
    private const string There = "volts=230 V; supplyFrequency=60 Hz";

    public static TheoryData<string, string, string> Jobs => new()
    {
        { Psc, There, Psc },
        { Known, "volts=187.2 V; supplyFrequency=60 Hz", Known },
        { Psc, $"{There}; measuredSpeed=1080 rpm", Stronger },
        { Psc, $"{There}; measuredAmps=1.2 A", Electronic },
        { Electronic, There, Psc },
        { Electronic, There, Electronic },
        { Psc.Replace("powerMeaning=output; ", "", StringComparison.Ordinal), There, Stronger },
        { Psc, $"{There}; bladeStays=no; bladeDiameter=20 in; newBladeDiameter=22 in", Stronger },
        { $"type=three-phase induction; power=2 hp; speed=1740 rpm; poles=4; {Rest.Replace("single-phase", "3", StringComparison.Ordinal)}", $"{There}; drive=belt", $"type=three-phase induction; power=2 hp; speed=1140 rpm; poles=6; {Rest.Replace("single-phase", "3", StringComparison.Ordinal)}" },
    };

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Each_mark_lies_where_its_motor_s_curve_meets_a_fan_s(string plate, string site, string part)
    {
        var chart = Draw(plate, site, part).ShouldNotBeNull();
        foreach (var mark in chart.Marks)
        {
            Distance(chart.Curves.Single(curve => curve.Role == mark.Role), mark.At).ShouldBeLessThan(1e-3);
            chart.Curves.Where(curve => curve.Role == Role.Load).Min(fan => Distance(fan, mark.At)).ShouldBeLessThan(1e-3);
            mark.AcrossX.Holds(mark.At.X).ShouldBeTrue($"{mark.At.X} in {mark.AcrossX}");
            mark.AcrossY.Holds(mark.At.Y).ShouldBeTrue($"{mark.At.Y} in {mark.AcrossY}");
        }
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void The_boxes_are_as_wide_as_the_speeds_that_will_differ(string plate, string site, string part)
    {
        var chart = Draw(plate, site, part)!;
        var speed = MotorDifferences.Of(new(Named.Record<MotorSpec>(plate), Named.Record<MotorSite>(site)), Named.Record<MotorSpec>(part)).Single(one => one.Name == "speed");
        chart.Marks.Single(mark => mark.Role == Role.Old).AcrossX.ShouldBe(speed.Old!.Value);
        chart.Marks.Single(mark => mark.Role == Role.New).AcrossX.ShouldBe(speed.New!.Value);
        chart.Words.ShouldContain($"the new one at {speed.New.Value.ToString("0")} rpm");
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Both_boxes_lie_within_the_axes_and_every_curve_within_its_area(string plate, string site, string part)
    {
        var chart = Draw(plate, site, part)!;
        foreach (var mark in chart.Marks)
        {
            (chart.X.Range.Low < mark.AcrossX.Low && mark.AcrossX.High <= chart.X.Range.High).ShouldBeTrue($"{mark.AcrossX} in {chart.X.Range}");
            (chart.Y.Range.Low < mark.AcrossY.Low && mark.AcrossY.High < chart.Y.Range.High).ShouldBeTrue($"{mark.AcrossY} in {chart.Y.Range}");
        }

        foreach (var area in chart.Bands.Where(area => area.Role != Role.Load))
        {
            var curve = chart.Curves.Single(one => one.Role == area.Role);
            foreach (var (low, point, high) in area.Lower.Zip(curve.Points, area.Upper)) new Band(low.Y - 1e-6, high.Y + 1e-6).Holds(point.Y).ShouldBeTrue($"{point} between {low.Y} and {high.Y}");
        }
    }

    // Worked by Kloss through the rated point: 6-pole 1075 rpm, breakdown 1.3 times, 187.2 V on a 230 V winding, fully loaded at rated volts: 986 rpm.
    // The fan's torque there: (986/1075)² of the rated, 84.1 %.
    [Fact]
    public void At_187_volts_the_box_begins_at_986_rpm_and_at_84_percent_of_the_torque()
    {
        var mark = Draw(Known, "volts=187.2 V; supplyFrequency=60 Hz", Known)!.Marks.Single(one => one.Role == Role.New);
        mark.AcrossX.Low.ShouldBe(986, 1);
        mark.AcrossY.High.ShouldBe(84.1, 0.2);
    }

    // The rated point (Kloss goes through it) and synchronous speed, where there is no torque: definitions.
    [Fact]
    public void At_rated_volts_the_old_line_goes_through_100_percent_at_its_plate_s_speed_and_ends_at_synchronous()
    {
        var old = Draw(Psc, There, Stronger)!.Curves.Single(curve => curve.Role == Role.Old);
        old.Points.Single(point => point.X.Equals(1075)).Y.ShouldBe(100, 1e-6);
        old.Points[^1].ShouldBe(new Point(1200, 0));
    }

    // 1/2 hp at 1140 rpm against 1/3 hp at 1075 rpm: 1.5 × 1075/1140 of the rated torque, and 1 to 1.5 times as much at most (band of the type): by hand.
    [Fact]
    public void An_electronic_motor_s_line_is_level_up_to_its_speed_and_falls_straight_down()
    {
        var line = Draw(Psc, There, Electronic)!.Curves.Single(curve => curve.Role == Role.New);
        line.Points.SkipLast(1).ShouldAllBe(point => Math.Abs(point.Y - (100 * 1.25 * 1.5 * 1075 / 1140)) < 0.1);
        line.Points[^2].X.ShouldBe(1140);
        line.Points[^1].ShouldBe(new Point(1140, 0));
    }

    // Fan laws: torque with the fifth power of the diameter: (22/20)⁵ = 1.61.
    [Fact]
    public void A_new_blade_has_a_fan_curve_of_its_own()
    {
        var fans = Draw(Psc, $"{There}; bladeStays=no; bladeDiameter=20 in; newBladeDiameter=22 in", Stronger)!.Curves.Where(curve => curve.Role == Role.Load).ToList();
        fans.Select(fan => fan.Label).ShouldBe(["fan, old blade", "fan, new blade"]);
        (fans[1].Points[0].Y / fans[0].Points[0].Y).ShouldBe(1.61051, 1e-5);
    }

    [Theory]
    [InlineData("type=PSC; power=1/3 hp", There, Psc)]
    [InlineData(Psc, There, "type=PSC; speed=1075 rpm")]
    [InlineData("", "", "")]
    [InlineData(Psc, "volts=460 V; supplyFrequency=60 Hz", Psc)]
    [InlineData("type=ECM; power=1/3-1/4 hp; speed=1100/915 rpm; powerMeaning=output; voltage=230 V; phase=single-phase", There, Psc)]
    public void Nothing_is_drawn_of_what_cannot_be_told(string plate, string site, string part) => Draw(plate, site, part).ShouldBeNull();

    private static Chart? Draw(string plate, string site, string part) =>
        TorqueLines.Of(new(Named.Record<MotorSpec>(plate), Named.Record<MotorSite>(site)), Named.Record<MotorSpec>(part));

    /// <summary>How far a point lies from a curve's straight pieces.</summary>
    private static double Distance(Curve curve, Point point) => curve.Points.Zip(curve.Points.Skip(1)).Min(piece =>
    {
        var (a, b) = piece;
        var (x, y) = (b.X - a.X, b.Y - a.Y);
        var part = Math.Clamp((((point.X - a.X) * x) + ((point.Y - a.Y) * y)) / ((x * x) + (y * y)), 0, 1);
        return Math.Sqrt(Math.Pow(a.X + (part * x) - point.X, 2) + Math.Pow(a.Y + (part * y) - point.Y, 2));
    });
}
