using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>Differential = distance of cut-in and cut-out: published article; 5 psi of a fixed one: practice.</summary>
[Trait("Source", "pressureControl.differentialSpan")]
public sealed class DifferentialSpanTests : PressureControlAspectTests<DifferentialSpan, DifferentialFacet>
{
    [Theory]
    [InlineData("10 psi", "20 psi", "differential=10 to 40 psi", "Meets")]
    [InlineData("10 psi", "19.9 psi", "differential=10 to 40 psi", "Fails")]
    [InlineData("10 psi", "50 psi", "differential=10 to 40 psi", "Meets")]
    [InlineData("10 psi", "50.1 psi", "differential=10 to 40 psi", "Fails")]
    [InlineData("400 psi", "300 psi", "differential=100 psi", "Meets")]
    [InlineData("400 psi", "295 psi", "differential=100 psi", "Meets")]
    [InlineData("400 psi", "294.9 psi", "differential=100 psi", "Fails")]
    [InlineData("400 psi", "300 psi", "", "Unknown Part differential")]
    [InlineData("400 psi", "300 psi", "reset=manual", "Meets")]
    public void The_distance_lies_within_it(string cutOut, string cutIn, string part, string answer) => Answer("", $"cutOutNeeded={cutOut}; cutInNeeded={cutIn}", part).ShouldBe(answer);

    [Theory]
    [InlineData("", "Unknown Site cutOutNeeded")]
    [InlineData("cutOutNeeded=10 psi", "Unknown Site cutInNeeded")]
    public void Without_both_it_is_open(string site, string answer) => Answer("", site, "differential=10 to 40 psi").ShouldBe(answer);
}
