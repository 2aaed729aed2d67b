using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Tests.Published;

[Trait("Source", "unbalance-derating.csv")]
public sealed class UnbalanceDeratingTests
{
    // Published: NEMA MG 1 figure 14-1 as an engineering page reads it off (1 %: from memory, no derating up to there).
    [Theory]
    [InlineData(0, 1.0)]
    [InlineData(0.5, 1.0)]
    [InlineData(1, 1.0)]
    [InlineData(1.5, 0.97)]
    [InlineData(2, 0.95)]
    [InlineData(2.5, 0.93)]
    [InlineData(3, 0.89)]
    [InlineData(3.5, 0.85)]
    [InlineData(4, 0.82)]
    [InlineData(4.5, 0.78)]
    [InlineData(5, 0.76)]
    public void The_factor_at_a_point_is_the_point(double percent, double factor) => UnbalanceDerating.Factor(percent)!.Value.ShouldBe(factor, 1e-12);

    // A second published page gives 0.95 for the standard's own example of 460, 467, 450 V; another 0.90 at 3 %. Tolerance: the stated doubt.
    [Fact]
    public void A_second_page_agrees_within_the_stated_doubt()
    {
        UnbalanceDerating.Factor(Unbalance.Percent(460, 467, 450))!.Value.ShouldBe(0.95, UnbalanceDerating.Doubt);
        UnbalanceDerating.Factor(3)!.Value.ShouldBe(0.90, UnbalanceDerating.Doubt + 1e-12);
    }

    // Worked by hand: half way between 0.95 and 0.93, and a fifth of the way from 0.89 to 0.85.
    [Theory]
    [InlineData(2.25, 0.94)]
    [InlineData(3.1, 0.882)]
    [InlineData(0.3, 1)]
    public void Between_two_points_runs_a_straight_line(double percent, double factor) => UnbalanceDerating.Factor(percent)!.Value.ShouldBe(factor, 1e-12);

    [Fact]
    public void Above_five_percent_there_is_no_factor()
    {
        UnbalanceDerating.Factor(5.001).ShouldBeNull();
        UnbalanceDerating.Factor(double.PositiveInfinity).ShouldBeNull();

        // The edge belongs to the inside, also by the last bit of binary arithmetic.
        UnbalanceDerating.Factor(5 + 1e-12)!.Value.ShouldBe(0.76, 1e-9);
    }

    [Fact]
    public void More_unbalance_never_allows_more_power()
    {
        for (var percent = 0.0; percent < 4.99; percent += 0.01) UnbalanceDerating.Factor(percent + 0.01)!.Value.ShouldBeLessThanOrEqualTo(UnbalanceDerating.Factor(percent)!.Value);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void What_is_no_unbalance_is_refused(double percent) => Should.Throw<ArgumentOutOfRangeException>(() => UnbalanceDerating.Factor(percent));

    [Fact]
    public void The_points_say_that_they_are_read_off_a_curve() =>
        UnbalanceDerating.All.ShouldAllBe(point => point.Source.Text.Contains("±0.01") && (point.Source.Status == SourceStatus.Memory) == (point.Percent == 1));
}
