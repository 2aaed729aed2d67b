using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>A manual-reset limit is never replaced by an automatic one: practice.</summary>
[Trait("Source", "thermostat.resetRule")]
public sealed class ResetRuleTests : ThermostatAspectTests<ResetRule, ThermostatResetFacet>
{
    [Theory]
    [InlineData("function=low limit; reset=manual", "reset=automatic", "Fails")]
    [InlineData("function=high limit; reset=manual", "reset=automatic", "Fails")]
    [InlineData("function=high limit; reset=manual", "reset=manual", "Meets")]
    [InlineData("function=high limit; reset=automatic", "reset=manual", "MeetsWithChanges acceptManualReset")]
    [InlineData("function=box thermostat; reset=manual", "reset=automatic", "MeetsWithChanges checkAutomaticReset")]
    [InlineData("reset=manual", "reset=automatic", "Unknown Plate function")]
    [InlineData("function=low limit", "reset=manual", "Unknown Plate reset")]
    [InlineData("function=fan delay", "function=fan delay", "Unknown Part reset")] // that most do so by themselves tells nothing of this one
    [InlineData("function=fan delay", "function=fan delay; reset=automatic", "Meets")]
    [InlineData("function=fan delay", "function=fan delay; reset=manual", "MeetsWithChanges acceptManualReset")]
    [InlineData("", "reset=automatic", "Unknown Plate reset")]
    [InlineData("function=low limit; reset=manual", "function=low limit", "Unknown Part reset")]
    public void Manual_reset_of_a_limit_stays(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Fact]
    public void A_reset_that_was_taken_is_told() =>
        Judge("function=fan delay", "", "reset=automatic").Sentence.ShouldBe("It resets as the old one did. How the old one did is not marked: by itself is taken, as a fan delay mostly does.");
}
