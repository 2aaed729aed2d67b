namespace PartsMatch.Learning.Tests;

/// <summary>Figures of quality, worked by hand.</summary>
public sealed class QualityTests
{
    /// <summary>Log-odds 0 are a coin: ln 2. Log-odds ln 3 are 3/4: −ln 3/4 where it worked, −ln 1/4 where not.</summary>
    [Fact]
    public void Log_loss_is_the_mean_of_minus_the_logarithm_of_what_was_told_of_what_happened()
    {
        Quality.LogLoss([new(0, true), new(0, false)]).ShouldBe(Math.Log(2), 1e-12);
        Quality.LogLoss([new(Math.Log(3), true), new(Math.Log(3), false)]).ShouldBe(-(Math.Log(0.75) + Math.Log(0.25)) / 2, 1e-12);
    }

    /// <summary>Of the six pairs of one that worked and one that did not, 3 and 2 are the right way round and one is a tie: 5.5 / 6.</summary>
    [Fact]
    public void The_area_under_the_curve_counts_pairs_the_right_way_round_and_ties_by_half() =>
        Quality.Auc([new(3, true), new(2, true), new(2, false), new(1, false), new(0, false)]).ShouldBe(5.5 / 6, 1e-12);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Where_all_are_of_a_kind_nothing_can_be_told_apart(bool worked) => Quality.Auc([new(1, worked), new(2, worked)]).ShouldBe(0.5);

    /// <summary>Twenty outcomes told to be 1/4 and twenty told to be 3/4, of which 5 and 20 work: five bins each, off by 0 and by 1/4 on the mean of each half.</summary>
    [Fact]
    public void Calibration_error_is_the_mean_distance_of_what_was_told_and_what_happened()
    {
        var low = Enumerable.Range(0, 20).Select(at => new HeldOut(-Math.Log(3), at % 4 == 0));
        var high = Enumerable.Range(0, 20).Select(_ => new HeldOut(Math.Log(3), true));
        List<HeldOut> all = [.. low, .. high];

        Quality.Calibration(all).Select(bin => bin.Outcomes).ShouldBe(Enumerable.Repeat(4, 10));
        Quality.CalibrationError(all).ShouldBe(0.125, 1e-12);

        // Every bin of four at 1/4 or 3/4: √(2 · 3/16 / 4π).
        Quality.CalibrationFloor(all).ShouldBe(Math.Sqrt(2 * 0.1875 / (4 * Math.PI)), 1e-12);
    }
}
