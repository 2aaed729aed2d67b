using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>As many poles: practice; that most have one: practice, taken of an old one alone. That none has fewer than one needs no source.</summary>
[Trait("Source", "thermostat.polesOfThermostat")]
public sealed class PolesOfThermostatTests : ThermostatAspectTests<PolesOfThermostat, ThermostatPolesFacet>
{
    [Theory]
    [InlineData("poles=2", "poles=2", "Meets")]
    [InlineData("poles=2", "poles=1", "Fails")]
    [InlineData("poles=1", "poles=2", "Meets")]
    [InlineData("function=box thermostat", "function=box thermostat", "Meets")]
    [InlineData("function=box thermostat", "function=box thermostat; poles=2", "Meets")]
    [InlineData("function=box thermostat; poles=2", "function=box thermostat", "Unknown Part poles")]
    [InlineData("", "poles=1", "Unknown Plate poles")]
    [InlineData("poles=1", "", "Meets")]
    public void As_many_poles_as_the_old_one(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Theory]
    [InlineData("function=box thermostat", "The old one had 1 pole, it has 1. The old one's are not marked: one is taken, as most have no more.")]
    [InlineData("function=box thermostat; poles=1", "The old one had 1 pole, it has 1.")]
    public void A_pole_that_was_taken_is_told(string plate, string sentence) => Judge(plate, "", "poles=1").Sentence.ShouldBe(sentence);
}
