using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Pages.Drawings;

namespace PartsMatch.Service.Tests.Pages.Drawings;

public sealed class TicksTests
{
    // Worked by hand.
    [Theory]
    [InlineData(720, 1200, 6, "800 900 1000 1100 1200")]
    [InlineData(0, 171, 6, "0 50 100 150")]
    [InlineData(1440, 1800, 6, "1500 1600 1700 1800")]
    [InlineData(4.1, 5.9, 7, "4.5 5.0 5.5")]
    [InlineData(0, 0.05, 6, "0.00 0.01 0.02 0.03 0.04 0.05")]
    [InlineData(-12, 12, 6, "-10 -5 0 5 10")]
    public void Ticks_are_round_numbers(double low, double high, int most, string texts) =>
        string.Join(' ', Ticks.Of(new(low, high), most).Select(tick => tick.Text)).ShouldBe(texts);

    [Fact]
    public void A_range_of_nothing_has_one_tick() => Ticks.Of(Band.Exactly(5), 6).ShouldHaveSingleItem().Text.ShouldBe("5.00");

    [Property]
    public Property They_lie_in_the_range_are_no_more_than_asked_and_evenly_apart() => Prop.ForAll(
        Gen.Choose(-100_000, 100_000).Zip(Gen.Choose(1, 1_000_000)).Zip(Gen.Choose(3, 9)).ToArbitrary(),
        one =>
        {
            var range = new Band(one.Item1.Item1 / 100.0, (one.Item1.Item1 + one.Item1.Item2) / 100.0);
            var values = Ticks.Of(range, one.Item2).Select(tick => tick.Value).ToList();
            values.Count.ShouldBeInRange(1, one.Item2);
            values.ShouldAllBe(value => range.Holds(value));
            values.Zip(values.Skip(1), (before, after) => after - before).ShouldAllBe(step => Math.Abs(step - (values[1] - values[0])) < 1e-6);
        });
}
