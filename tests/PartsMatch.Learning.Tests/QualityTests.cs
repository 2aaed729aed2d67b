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

    /// <summary>
    /// Of A's three parts the one that worked stands second: 1 / log2 3 = 0.6309. Of B's, two that are told alike share the first two places, one of which worked: half of 1 + 0.6309, 0.8155.
    /// Of C all worked, and of what names no old part nothing is a list.
    /// </summary>
    [Fact]
    public void Order_is_the_mean_over_old_parts_of_which_some_worked_and_some_did_not()
    {
        Quality.Order(
            [Of("A", true), Of("A", false), Of("A", false), Of("B", true), Of("B", false), Of("C", true), Of("C", true), Of("", true), Of("", false)],
            [new(1, true), new(2, false), new(0, false), new(3, true), new(3, false), new(1, true), new(0, true), new(0, true), new(1, false)])!.Value.ShouldBe((0.6309 + 0.8155) / 2, 1e-4);
        Quality.Order([Of("A", true), Of("B", false)], [new(1, true), new(2, false)]).ShouldBeNull();

        static Example Of(string old, bool worked) => Drawn.Example([], [], worked ? Result.RightFirstTime : Result.CameBack) with { Old = old };
    }

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
