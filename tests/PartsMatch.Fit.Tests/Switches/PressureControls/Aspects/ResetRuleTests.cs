using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>A manual-reset high-pressure safety is never replaced by an automatic one: practice.</summary>
[Trait("Source", "pressureControl.resetRule")]
public sealed class ResetRuleTests : PressureControlAspectTests<ResetRule, ResetFacet>
{
    [Theory]
    [InlineData("function=high pressure; reset=manual", "reset=automatic", "Fails")]
    [InlineData("function=high pressure; reset=manual", "reset=manual", "Meets")]
    [InlineData("function=high pressure; reset=automatic", "reset=manual", "MeetsWithChanges acceptManualReset")]
    [InlineData("function=high pressure; reset=automatic", "reset=automatic", "Meets")]
    [InlineData("function=low pressure; reset=manual", "reset=automatic", "MeetsWithChanges checkAutomaticReset")]
    [InlineData("reset=manual", "reset=automatic", "Unknown Plate function")]
    [InlineData("function=high pressure", "reset=automatic", "Unknown Plate reset")]
    [InlineData("function=high pressure; reset=manual", "", "Unknown Part reset")]
    public void Manual_reset_of_a_high_pressure_safety_stays(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
