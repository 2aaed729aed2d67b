using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Wires end in what its terminals take: practice.</summary>
[Trait("Source", "thermostat.terminalsOfThermostat")]
public sealed class TerminalsOfThermostatTests : ThermostatAspectTests<TerminalsOfThermostat, ThermostatEndsFacet>
{
    [Theory]
    [InlineData("terminals=leads", "terminals=leads", "Meets")]
    [InlineData("terminals=leads", "terminals=quick connects", "MeetsWithChanges fitTerminals")]
    [InlineData("", "terminals=leads", "Unknown Plate terminals")]
    [InlineData("terminals=leads", "", "Unknown Part terminals")]
    public void Wires_go_on(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Theory]
    [InlineData("action=opens on rise", 2)]
    [InlineData("action=opens on rise; poles=2", 4)]
    [InlineData("action=change-over", 3)]
    public void There_is_an_end_for_each_wire(string plate, int count) => Judge($"terminals=screws; {plate}", "", "terminals=quick connects").Changes.ShouldHaveSingleItem().Kit.ShouldHaveSingleItem().Quantity.ShouldBe(count);
}
