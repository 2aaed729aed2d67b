using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Resistive amps for heaters, and nothing else: IEC 60947-4-1 table 1, published; 6000 W / 240 V = 25 A worked by hand.</summary>
[Trait("Source", "thermostat.resistive")]
public sealed class ResistiveTests : ThermostatAspectTests<Resistive, ContactAmpsFacet>
{
    [Theory]
    [InlineData("heaterPower=6 kW; loadVolts=240 V; loadPhase=single-phase", "resistiveAmps=25 A", "Meets")]
    [InlineData("heaterAmps=25.1 A; loadVolts=240 V", "resistiveAmps=25 A", "Fails")]
    [InlineData("heaterAmps=5 A; loadVolts=240 V", "fullLoadAmps=30 A", "Unknown Part resistiveAmps")]
    public void Heaters_ask_for_resistive_amps(string site, string part, string answer) => Answer("", site, $"ratedVolts=240 V; {part}").ShouldBe(answer);
}
