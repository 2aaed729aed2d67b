using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Physics;

/// <summary>The split as a band, with fans that stand.</summary>
[Trait("Source", "formula.condenserSplit")]
public sealed class CondenserSplitTests
{
    // Worked by hand: one of three dead, effectiveness 0.6, exponent 0.5: 0.6 / (2/3 · (1 − 0.4^1.2247)) = 1.334.
    [Fact]
    public void One_dead_fan_of_three_raises_the_split_by_a_third_when_all_is_known_exactly()
    {
        var ratio = CondenserSplit.SplitRatio(CondenserSplit.AirflowLeft(3, 1, Band.Exactly(1)), Band.Exactly(0.6), Band.Exactly(0.5));
        ratio.Low.ShouldBe(1.334, 5e-4);
        ratio.High.ShouldBe(ratio.Low, 1e-12);
    }

    // Worked by hand: least 0.5 / (2/3 · (1 − 0.5^1.2754)) = 1.278, most 0.7 / (2/3 · (1 − 0.3^1.1761)) = 1.387.
    [Fact]
    public void With_the_usual_bands_the_same_dead_fan_raises_it_by_28_to_39_percent()
    {
        var ratio = CondenserSplit.SplitRatio(Band.Exactly(2.0 / 3), CondenserSplit.UsualEffectiveness, CondenserSplit.UsualExponent);
        ratio.Low.ShouldBe(1.278, 5e-4);
        ratio.High.ShouldBe(1.387, 6e-4);
        ratio.Holds(1.334).ShouldBeTrue();
    }

    // Arithmetic: two of four fans at 90 to 100 % of their air.
    [Fact]
    public void Dead_fans_and_slower_ones_count_together()
    {
        var left = CondenserSplit.AirflowLeft(4, 2, new Band(0.9, 1));
        left.Low.ShouldBe(0.45, 1e-12);
        left.High.ShouldBe(0.5, 1e-12);
    }

    [Property]
    public Property Less_air_is_a_larger_split_at_both_ends_of_the_band() => Prop.ForAll(
        (from air in Gen.Choose(50, 1500)
         from less in Gen.Choose(1, 49)
         from width in Gen.Choose(0, 200)
         from effectiveness in Gen.Choose(50, 900)
         from wider in Gen.Choose(0, 50)
         from exponent in Gen.Choose(0, 900)
         from more in Gen.Choose(0, 100)
         select (air, less, width, effectiveness, wider, exponent, more)).ToArbitrary(),
        one =>
        {
            var effectiveness = new Band(one.effectiveness / 1000.0, (one.effectiveness + one.wider) / 1000.0);
            var exponent = new Band(one.exponent / 1000.0, (one.exponent + one.more) / 1000.0);
            Band At(int air) => CondenserSplit.SplitRatio(new Band(air / 1000.0, (air + one.width) / 1000.0), effectiveness, exponent);
            var (before, after) = (At(one.air), At(one.air - one.less));
            after.Low.ShouldBeGreaterThan(before.Low);
            after.High.ShouldBeGreaterThan(before.High);
        });

    [Property]
    public Property Whatever_lies_in_the_three_bands_lies_in_the_result() => Prop.ForAll(
        Gen.Choose(0, 1000).Three().ToArbitrary(),
        shares =>
        {
            var (airflow, effectiveness, exponent) = (new Band(0.5, 1.3), new Band(0.2, 0.9), new Band(0.1, 0.8));
            static double Inside(Band band, int share) => band.Low + ((band.High - band.Low) * share / 1000);
            CondenserSplit.SplitRatio(airflow, effectiveness, exponent)
                .Holds(CondenserSplit.Ratio(Inside(airflow, shares.Item1), Inside(effectiveness, shares.Item2), Inside(exponent, shares.Item3))).ShouldBeTrue();
        });

    [Fact]
    public void A_band_with_an_end_outside_its_range_is_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => CondenserSplit.SplitRatio(new Band(0, 1), CondenserSplit.UsualEffectiveness, CondenserSplit.UsualExponent));
        Should.Throw<ArgumentOutOfRangeException>(() => CondenserSplit.SplitRatio(Band.Exactly(1), new Band(0.5, 1), CondenserSplit.UsualExponent));
        Should.Throw<ArgumentOutOfRangeException>(() => CondenserSplit.SplitRatio(Band.Exactly(1), CondenserSplit.UsualEffectiveness, new Band(0.5, 1.1)));
    }
}
