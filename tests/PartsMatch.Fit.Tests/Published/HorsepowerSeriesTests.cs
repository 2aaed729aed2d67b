using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Published;

[Trait("Source", "series.horsepower")]
public sealed class HorsepowerSeriesTests
{
    [Theory]

    // Published: NIST SP 811: an electric horsepower is 746 W exactly.
    [InlineData("1 hp", 746)]
    [InlineData("1/2 hp", 373)]
    [InlineData("1/4 hp", 186.5)]
    [InlineData("0.37 kW", 370)]
    public void A_plates_horsepower_is_746_watts(string power, double watts) => ((double)QuantityForms.Power.Read(power).Value.Watts).ShouldBe(watts, 1e-9);

    [Theory]

    // The series: NEMA MG 1 10.32, from memory. Counted by hand.
    [InlineData("1/3 hp", "1/2 hp", 1)]
    [InlineData("1/4 hp", "1/2 hp", 2)]
    [InlineData("1/2 hp", "1/2 hp", 0)]
    [InlineData("1/2 hp", "0.37 kW", 0)]
    [InlineData("0.37 kW", "1/2 hp", 0)]
    [InlineData("0.55 kW", "3/4 hp", 0)]
    [InlineData("0.18 kW", "0.25 kW", 1)]
    [InlineData("1/5 hp", "1/4 hp", 1)]
    [InlineData("1/2 hp", "1/4 hp", 0)]
    [InlineData("1 hp", "3 hp", 3)]
    public void Steps_up_the_series_are_counted(string from, string to, int steps) =>
        HorsepowerSeries.StepsUp((double)QuantityForms.Power.Read(from).Value.Watts, (double)QuantityForms.Power.Read(to).Value.Watts).ShouldBe(steps);

    [Fact]
    public void The_series_rises() => HorsepowerSeries.Ratings.ShouldBe(HorsepowerSeries.Ratings.Order());
}
