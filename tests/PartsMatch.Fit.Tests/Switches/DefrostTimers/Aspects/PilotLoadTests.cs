using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>A300 breaks 720 VA, B300 360 VA (published: NEMA ICS 5).</summary>
[Trait("Source", "defrostTimer.pilotLoad")]
public sealed class PilotLoadTests : DefrostTimerAspectTests<PilotLoad, PilotDutyFacet>
{
    [Theory]
    [InlineData("coilsVa=360 VA; coilVolts=120 V", "pilotDuty=B300", "Meets")]
    [InlineData("coilsVa=360.1 VA; coilVolts=120 V", "pilotDuty=B300", "Fails")]
    [InlineData("coilsVa=720 VA; coilVolts=120 V", "pilotDuty=A300", "Meets")]
    [InlineData("coilsVa=720.1 VA; coilVolts=120 V", "pilotDuty=A300", "Fails")]
    [InlineData("coilsVa=20 VA; loadVolts=240 V", "pilotDuty=A300", "Unknown Site coilVolts")]
    [InlineData("coilsVa=20 VA; coilVolts=120 V", "resistiveAmps=40 A", "Unknown Part pilotDuty")]
    public void Coils_ask_for_pilot_duty_at_their_own_volts(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("", "contactsNeeded=heater, fans, pump-down", "Unknown Site coilsVa")]
    [InlineData("contactsFor=heater, pump-down", "", "Unknown Site coilsVa")]
    [InlineData("pilotDuty=A300", "contactsNeeded=heater, fans, pump-down", "Meets")]
    [InlineData("", "contactsNeeded=heater, fans, pump-down; loads=heater, motor", "Meets")]
    [InlineData("", "contactsNeeded=heater, fans", "Meets")]
    [InlineData("", "", "Meets")]
    public void A_solenoid_valve_that_is_pumped_down_by_it_is_a_coil(string plate, string site, string answer) => Answer(plate, site, "pilotDuty=A300").ShouldBe(answer);
}
