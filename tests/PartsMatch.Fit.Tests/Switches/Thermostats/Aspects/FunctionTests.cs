using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>The same function, or three wires for either alone: practice.</summary>
[Trait("Source", "thermostat.function")]
public sealed class FunctionTests : ThermostatAspectTests<Function, ThermostatFunctionFacet>
{
    [Theory]
    [InlineData("function=fan delay", "function=fan delay", "Meets")]
    [InlineData("function=fan delay", "function=defrost end", "Fails")]
    [InlineData("function=fan delay", "function=fan delay and defrost end", "Meets")]
    [InlineData("function=defrost end", "function=fan delay and defrost end", "Meets")]
    [InlineData("function=box thermostat", "function=fan delay and defrost end", "Fails")]
    [InlineData("function=fan delay and defrost end", "function=fan delay", "Fails")]
    [InlineData("function=low limit", "function=box thermostat", "Fails")]
    [InlineData("", "function=fan delay", "Unknown Plate function")]
    [InlineData("function=fan delay", "", "Unknown Part function")]
    public void A_function_stays(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
