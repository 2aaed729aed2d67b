using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace PartsMatch.Ranking.Tests;

/// <summary>What a shortfall costs, worked by hand.</summary>
public sealed class ShortfallCurveTests
{
    private static readonly ShortfallCurve Steep = new(0.1, 0, 0.2, 0.4, 0.8, 1.6);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.01, 0.1)]
    [InlineData(0.25, 0.1)]
    [InlineData(0.375, 0.2)]
    [InlineData(0.5, 0.3)]
    [InlineData(0.75, 0.7)]
    [InlineData(0.875, 1.1)]
    [InlineData(1, 1.5)]
    [InlineData(1.5, 2.3)]
    [InlineData(2, 3.1)]
    public void Each_ramp_rises_over_its_part_of_the_way_and_stays_up(double shortfall, double cost) => Steep.At(shortfall).ShouldBe(cost, 1e-12);

    [Property]
    public Property An_even_curve_costs_the_same_for_every_step() => Prop.ForAll(
        Gen.Choose(0, 2000).Zip(Gen.Choose(0, 10_000)).ToArbitrary(),
        given => ShortfallCurve.Even(given.Item2 / 100.0).At(given.Item1 / 1000.0).ShouldBe(given.Item1 / 1000.0 * given.Item2 / 100.0, 1e-9));

    [Property]
    public Property A_greater_shortfall_never_costs_less_and_what_was_climbed_adds_up_to_the_cost() => Prop.ForAll(
        Gen.Choose(0, 100).ListOf(ShortfallCurve.Count).Zip(Gen.Choose(0, 2000).Two()).ToArbitrary(),
        given =>
        {
            var curve = ShortfallCurve.Of([.. given.Item1.Select(height => height / 10.0)]);
            var (low, high) = (Math.Min(given.Item2.Item1, given.Item2.Item2) / 1000.0, Math.Max(given.Item2.Item1, given.Item2.Item2) / 1000.0);
            curve.At(low).ShouldBeLessThanOrEqualTo(curve.At(high));
            Span<double> climbed = stackalloc double[ShortfallCurve.Count];
            ShortfallCurve.Climb(high, climbed);
            var sum = 0.0;
            for (var at = 0; at < climbed.Length; at++) sum += climbed[at] * curve.Heights[at];
            curve.At(high).ShouldBe(sum, 1e-9);
        });
}
