using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>B300: 360 VA broken, 3600 made (NEMA ICS 5, published).</summary>
[Trait("Source", "thermostat.pilotLoad")]
public sealed class PilotLoadTests : ThermostatAspectTests<PilotLoad, PilotDutyFacet>
{
    [Theory]
    [InlineData("coilsVa=360 VA; loadVolts=120 V", "pilotDuty=B300", "Meets")]
    [InlineData("coilsVa=360.1 VA; loadVolts=120 V", "pilotDuty=B300", "Fails")]
    [InlineData("coilsVa=20 VA; loadVolts=24 V", "", "Unknown Part pilotDuty")]
    [InlineData("motors=1.4/7 A", "", "Meets")]
    public void Coils_ask_for_pilot_duty(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}
