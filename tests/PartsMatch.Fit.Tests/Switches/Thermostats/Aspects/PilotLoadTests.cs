using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>B300: 360 VA broken, 3600 made (NEMA ICS 5, published).</summary>
[Trait("Source", "thermostat.pilotLoad")]
public sealed class PilotLoadTests : ThermostatAspectTests<PilotLoad, EachContact<PilotDutyFacet>>
{
    [Theory]
    [InlineData("coilsVa=360 VA; loadVolts=120 V", "pilotDuty=B300", "Meets")]
    [InlineData("coilsVa=360.1 VA; loadVolts=120 V", "pilotDuty=B300", "Fails")]
    [InlineData("coilsVa=20 VA; loadVolts=24 V", "", "Unknown Part pilotDuty")]
    [InlineData("motors=1.4/7 A", "", "Meets")]
    public void Coils_ask_for_pilot_duty(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("coilsVa=20 VA; loadVolts=120 V; fanCoilsVa=180 VA; fanVolts=120 V", "Meets")]
    [InlineData("coilsVa=20 VA; loadVolts=120 V; fanCoilsVa=180.1 VA; fanVolts=120 V", "Fails")] // C300: 180 VA
    [InlineData("coilsVa=360 VA; loadVolts=120 V; fanCoilsVa=20 VA; fanVolts=120 V", "Meets")]
    [InlineData("coilsVa=20 VA; loadVolts=120 V; fanCoilsVa=20 VA", "Unknown Site fanVolts")]
    [InlineData("coilsVa=20 VA; loadVolts=120 V; fanMotors=4/20 A; fanVolts=120 V", "Meets")]
    public void With_three_wires_a_fan_contactors_coil_is_by_itself(string site, string answer) =>
        Answer("function=fan delay and defrost end", site, "function=fan delay and defrost end; pilotDuty=B300; fanPilotDuty=C300; fanFullLoadAmps=8 A").ShouldBe(answer);
}
