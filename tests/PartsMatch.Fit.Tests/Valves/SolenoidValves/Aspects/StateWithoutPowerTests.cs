using PartsMatch.Fit.Valves.SolenoidValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves.SolenoidValves.Aspects;

/// <summary>Normally closed opens when energised, normally open closes: published.</summary>
[Trait("Source", "solenoidValve.stateWithoutPower")]
public sealed class StateWithoutPowerTests : SolenoidAspectTests<StateWithoutPower, StateFacet>
{
    [Theory]
    [InlineData("normalState=NC", "", "normalState=normally closed", "Meets")]
    [InlineData("normalState=NC", "", "normalState=normally open", "Fails")]
    [InlineData("normalState=NC", "needsState=normally open", "normalState=normally open", "Meets")]
    [InlineData("", "", "normalState=normally open", "Unknown Site needsState")]
    [InlineData("normalState=NC", "", "", "Unknown Part normalState")]
    public void The_same_state_or_none(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
