using PartsMatch.Ranking;

namespace PartsMatch.Learning.Tests;

/// <summary>When trained weights are taken, worked by hand.</summary>
public sealed class AdoptionGateTests
{
    [Theory]
    [InlineData(Choice.Trained, 0.01, 0.02, 0.03, 0.02, 0.01, 0.03)] // mean 0.02, standard error 0.0037
    [InlineData(Choice.Rescaled, 0.03, -0.03, 0.02, -0.01, 0.0, 0.005)] // mean 0.0025, standard error 0.0087
    [InlineData(Choice.Rescaled, -0.01, -0.02, -0.01, -0.02, -0.01)]
    [InlineData(Choice.Rescaled, 0.0, 0.0, 0.0, 0.0, 0.0)]
    public void A_gain_must_exceed_its_standard_error(Choice choice, params double[] gains)
    {
        var gate = AdoptionGate.Of([.. gains.Select(gain => new Fold(Lost(0.5), Lost(0.5 - gain)))]);
        gate.Choice.ShouldBe(choice);
        gate.Trained.Gain.ShouldBe(gains.Average(), 1e-12);
        gate.Reason.ShouldEndWith(choice == Choice.Trained ? ": they are taken." : ": hand-set weights rank, rescaled.");
    }

    /// <summary>Gains 0.01 and 0.03, five times each: mean 0.02, deviation √(10 × 0.01² / 9) = 0.01054, standard error 0.01054 / √10 = 0.01 / 3.</summary>
    [Fact]
    public void The_standard_error_is_the_deviation_of_folds_over_the_root_of_their_number() =>
        AdoptionGate.Of([.. Enumerable.Range(0, 10).Select(fold => new Fold(Lost(0.5), Lost(fold % 2 == 0 ? 0.49 : 0.47)))]).Trained.StandardError.ShouldBe(0.01 / 3, 1e-12);

    /// <summary>Order lost −0.03 and −0.05: mean −0.04, standard error 0.01. Lost −0.03 and −0.011: mean −0.0205, standard error 0.0095. Lost −0.03 and −0.009: mean −0.0195, standard error 0.0105, less than two of them. A fold without an order has no say.</summary>
    [Theory]
    [InlineData(Choice.Rescaled, 0.87, 0.85, double.NaN, double.NaN, double.NaN)]
    [InlineData(Choice.Rescaled, 0.87, 0.889, double.NaN, double.NaN, double.NaN)]
    [InlineData(Choice.Trained, 0.87, 0.891, double.NaN, double.NaN, double.NaN)]
    [InlineData(Choice.Trained, 0.87, 0.92, double.NaN, double.NaN, double.NaN)]
    [InlineData(Choice.Trained, 0.95, 0.92, 0.95, double.NaN, double.NaN)]
    [InlineData(Choice.Trained, 0.1, double.NaN, double.NaN, double.NaN, double.NaN)]
    public void What_loses_less_and_puts_parts_in_a_clearly_worse_order_is_not_taken(Choice choice, params double[] orders)
    {
        var gate = AdoptionGate.Of([.. orders.Select((order, at) => new Fold(new(0.5, 0.9), new(0.4 - (0.01 * at), double.IsNaN(order) ? null : order)))]);
        gate.Choice.ShouldBe(choice, gate.Reason);
        (gate.Reason.Contains("in a worse order: their NDCG@5 is 0.0", StringComparison.Ordinal) && gate.Reason.EndsWith(": hand-set weights rank, rescaled.", StringComparison.Ordinal)).ShouldBe(choice == Choice.Rescaled, gate.Reason);
        if (orders[1] == 0.85) gate.Reason.ShouldContain("their NDCG@5 is 0.0400 less, more than two standard errors of 0.0100:");
    }

    /// <summary>Each case: by how much less than rescaled ones trained ones and those in place lose, in ten folds that are 0.003 off either way for whatever is not in place: every standard error is √(10 × 0.003² / 9) / √10 = 0.001.</summary>
    [Theory]
    [InlineData(Choice.Trained, 0.05, 0.03, "Trained weights lose 0.0500 nats less than rescaled hand-set ones on outcomes that they had not seen (0.4500 against 0.5000), more than one standard error of 0.0010. They lose 0.0200 nats less than those that rank at present on outcomes that they had not seen (0.4500 against 0.4700), more than one standard error of 0.0010; those were trained before, and may have seen some of these outcomes: they are taken.")]
    [InlineData(Choice.Present, 0.05, 0.0495, "They lose 0.0005 nats less than those that rank at present on outcomes that they had not seen (0.4500 against 0.4505), and would have to lose more than 0.0010 less, one standard error; those were trained before, and may have seen some of these outcomes: those that rank at present stay.")]
    [InlineData(Choice.Present, 0.0005, 0.01, "The latter lose 0.0100 nats more than those that rank at present")]
    [InlineData(Choice.Rescaled, 0.0005, -0.01, "The latter lose 0.0100 nats less than those that rank at present")]
    public void Where_trained_weights_rank_at_present_what_is_better_must_be_better_than_these_too(Choice choice, double trained, double present, string said)
    {
        var gate = AdoptionGate.Of([.. Enumerable.Range(0, 10).Select(fold => fold % 2 == 0 ? 0.003 : -0.003).Select(off => new Fold(Lost(0.5 + (trained > 0.001 ? 0 : off)), Lost(0.5 - trained + (trained > 0.001 ? off : 0)), Lost(0.5 - present)))], WeightsOrigin.Trained);
        gate.Choice.ShouldBe(choice, gate.Reason);
        gate.Reason.ShouldContain(said);
        gate.Figures["logLossPresent"].ShouldBe(0.5 - present, 1e-12);
    }

    /// <summary>However much is gained on four folds, four prove nothing; the same on five does.</summary>
    [Theory]
    [InlineData(4, Choice.Rescaled)]
    [InlineData(5, Choice.Trained)]
    public void Fewer_than_five_folds_prove_nothing(int folds, Choice choice) =>
        AdoptionGate.Of([.. Enumerable.Range(0, folds).Select(fold => new Fold(Lost(0.5), Lost(0.4 - (0.001 * fold))))]).Choice.ShouldBe(choice);

    [Theory]
    [InlineData(WeightsOrigin.Trained, 0, Choice.Present, "those that rank at present stay.")]
    [InlineData(null, 0, Choice.Rescaled, "hand-set weights rank, rescaled.")]
    [InlineData(WeightsOrigin.Trained, 4, Choice.Present, "those that rank at present stay.")]
    public void Where_too_little_can_be_held_out_nothing_trained_is_pushed_out(WeightsOrigin? contends, int folds, Choice choice, string end)
    {
        var gate = AdoptionGate.Of([.. Enumerable.Range(0, folds).Select(fold => new Fold(Lost(0.5), Lost(0.3 + (0.001 * fold)), Lost(0.6)))], contends);
        gate.Choice.ShouldBe(choice);
        gate.Reason.ShouldStartWith("All outcomes are of fewer than 5 places");
        gate.Reason.ShouldEndWith(end);
        gate.Figures.ShouldBeEmpty("nothing was measured");
    }

    private static FoldTold Lost(double loss) => new(loss, null);
}
