using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Quantities;

/// <summary>What is kept in one unit is shown in those that were chosen. 25.4 mm to the inch, 746 W to the horsepower, 1.8 °F to the kelvin, 0.3048 m to the foot: published.</summary>
public sealed class ChosenUnitsTests
{
    [Theory]
    [InlineData(1.6, "mm", Units.Us, "+0.063 in")]
    [InlineData(-12.7, "mm", Units.Us, "−0.5 in")]
    [InlineData(1.5875, "mm", Units.Si, "+1.59 mm")]
    [InlineData(1.5875, "mm", Units.AsGiven, "+1.59 mm")]
    [InlineData(373, "W", Units.Us, "+0.5 hp")]
    [InlineData(10, "K", Units.Us, "+18 °F")]
    [InlineData(-304.8, "m", Units.Us, "−1000 ft")]
    [InlineData(22.5, "V", Units.Us, "+22.5 V")]
    [InlineData(2, "%", Units.Si, "+2 %")]
    public void A_margin_follows_the_choice(double value, string unit, Units units, string text) => new Margin(value, unit).Text(units).ShouldBe(text);

    [Fact]
    public void A_difference_follows_it_and_its_ratio_stays()
    {
        var power = new Difference("shaftPower", "Shaft power", "W", Band.Exactly(186.5), new(373, 746), new(2, 4), []);
        (power.In(Units.Us).Unit, power.In(Units.Us).Old, power.In(Units.Us).New, power.In(Units.Us).Ratio).ShouldBe(("hp", Band.Exactly(0.25), new Band(0.5, 1), new Band(2, 4)));
        power.In(Units.Si).ShouldBeSameAs(power);
        var speed = power with { Unit = "rpm" };
        speed.In(Units.Us).ShouldBeSameAs(speed);
    }

    [Fact]
    public void A_scale_of_a_split_follows_it_with_its_zones_and_marks()
    {
        var scale = new Scale("split", "Split", "words", "°F", new(0, 45), [new("good", Role.Good, new(0, 27)), new("bad", Role.Bad, new(27, 45))], [new("measured", Role.New, Band.Exactly(18))]);
        var si = scale.In(Units.Si).ShouldBeOfType<Scale>();
        (si.Unit, si.Range, si.Zones[0].Span, si.Zones[1].Span, si.Marks[0].At).ShouldBe(("K", new Band(0, 25), new Band(0, 15), new Band(15, 25), Band.Exactly(10)));
        scale.In(Units.Us).ShouldBeSameAs(scale);
    }

    [Theory]
    [InlineData("1/2 in", Units.Si, "12.7 mm")]
    [InlineData("12.7 mm", Units.Us, "0.5 in")]
    [InlineData("1/2 in", Units.AsGiven, "1/2 in")]
    [InlineData("no length", Units.Si, "no length")]
    public void A_deductions_text_follows_it(string text, Units units, string shown) => Shape<MotorSpec>.Of.Find("shaftDiameter")!.InUnits(text, units).ShouldBe(shown);

    [Theory]
    [InlineData("5000 ft", Units.Si, "1524 m")]
    [InlineData("1000 m", Units.Us, "3281 ft")]
    [InlineData("5000 ft", Units.Us, "5000 ft")]
    [InlineData("5000 ft", Units.AsGiven, "5000 ft")]
    public void An_altitude_is_written_in_feet_or_metres_never_in_inches_or_millimetres(string text, Units units, string shown) => Shape<MotorSite>.Of.Find("altitude")!.InUnits(text, units).ShouldBe(shown);
}
