using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>As many poles: practice; one unless more are marked: practice.</summary>
[Trait("Source", "thermostat.polesOfThermostat")]
public sealed class PolesOfThermostatTests : ThermostatAspectTests<PolesOfThermostat, ThermostatPolesFacet>
{
    [Theory]
    [InlineData("poles=2", "poles=2", "Meets")]
    [InlineData("poles=2", "poles=1", "Fails")]
    [InlineData("poles=1", "poles=2", "Meets")]
    [InlineData("function=box thermostat", "function=box thermostat", "Meets")]
    [InlineData("function=box thermostat; poles=2", "function=box thermostat", "Fails")]
    [InlineData("", "poles=1", "Unknown Plate poles")]
    [InlineData("poles=1", "", "Unknown Part poles")]
    public void As_many_poles_as_the_old_one(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
