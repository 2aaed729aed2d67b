namespace PartsMatch.Learning.Tests;

/// <summary>When trained weights are taken, worked by hand.</summary>
public sealed class AdoptionGateTests
{
    [Theory]
    [InlineData(true, 0.01, 0.02, 0.03, 0.02)] // mean 0.02, standard error 0.0082 / 2
    [InlineData(false, 0.03, -0.03, 0.02, -0.01)] // mean 0.0025, standard error 0.0138
    [InlineData(false, -0.01, -0.02, -0.01, -0.02)]
    [InlineData(false, 0.0, 0.0, 0.0, 0.0)]
    public void A_gain_must_exceed_its_standard_error(bool isOpen, params double[] gains)
    {
        var gate = AdoptionGate.Of([.. gains.Select(gain => new FoldGain(0.5, 0.5 - gain))]);
        gate.IsOpen.ShouldBe(isOpen);
        gate.Gain.ShouldBe(gains.Average(), 1e-12);
        gate.Reason.ShouldContain(isOpen ? "they are taken" : "hand-set weights rank");
    }

    /// <summary>Gains 0.01 and 0.03: mean 0.02, deviation 0.0141, standard error 0.01.</summary>
    [Fact]
    public void The_standard_error_is_the_deviation_of_folds_over_the_root_of_their_number() =>
        AdoptionGate.Of([new(0.5, 0.49), new(0.5, 0.47)]).StandardError.ShouldBe(0.01, 1e-12);
}
