using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Motors;

public sealed class PoleCountsTests
{
    /// <summary>Published: n = 120 f / p as engineering tables print it, with the lowest typical full-load speed at 60 and 50 Hz.</summary>
    public static TheoryData<int, double, double, double, double> Table => new()
    {
        { 2, 3600, 3000, 3450, 2850 },
        { 4, 1800, 1500, 1725, 1425 },
        { 6, 1200, 1000, 1140, 950 },
        { 8, 900, 750, 850, 700 },
        { 10, 720, 600, 690, 575 },
        { 12, 600, 500, 575, 480 },
    };

    [Theory]
    [MemberData(nameof(Table))]
    public void Synchronous_and_typical_speeds_are_those_of_the_tables(int poles, double at60, double at50, double typical60, double typical50)
    {
        PoleCounts.Synchronous(poles, 60).ShouldBe(at60);
        PoleCounts.Synchronous(poles, 50).ShouldBe(at50);
        PoleCounts.Of(typical60, 60).ShouldContain(poles);
        PoleCounts.Of(typical50, 50).ShouldContain(poles);
        if (poles > 8) return;
        PoleCounts.Of(typical60, 60).ShouldBe([poles]);
        PoleCounts.Of(typical50, 50).ShouldBe([poles]);
    }

    [Theory]

    // Nameplate speeds of fan motors at 60 Hz: 1625, 1075, 1050, 1140 and 1725 published (public pages); 825, 1550 and 800 from memory.
    [InlineData(1625, 4)]
    [InlineData(1075, 6)]
    [InlineData(825, 8)]
    [InlineData(1550, 4)]
    [InlineData(1050, 6)]
    [InlineData(800, 8)]
    [InlineData(1140, 6)]
    [InlineData(1725, 4)]
    public void Fan_motors_belong_to_one_pole_count(double rpm, int poles) => PoleCounts.Of(rpm, 60).ShouldBe([poles]);

    [Fact]
    public void Both_edges_of_the_slip_belong_to_it()
    {
        // Worked by hand: 0.84 × 1800 = 1512 rpm.
        PoleCounts.Fits(1800, 4, 60).ShouldBeTrue();
        PoleCounts.Fits(1512, 4, 60).ShouldBeTrue();
        PoleCounts.Fits(1511, 4, 60).ShouldBeFalse();
        PoleCounts.Fits(1801, 4, 60).ShouldBeFalse();
    }
}
