using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>B300 breaks 360 VA (published: NEMA ICS 5).</summary>
[Trait("Source", "pressureControl.pilotLoad")]
public sealed class PilotLoadTests : PressureControlAspectTests<PilotLoad, PilotDutyFacet>
{
    [Theory]
    [InlineData("coilsVa=360 VA; loadVolts=120 V", "pilotDuty=B300", "Meets")]
    [InlineData("coilsVa=360.1 VA; loadVolts=120 V", "pilotDuty=B300", "Fails")]
    [InlineData("coilsVa=20 VA; loadVolts=24 V", "ratedVolts=240 V; fullLoadAmps=16 A", "Unknown Part pilotDuty")]
    public void A_coil_asks_for_pilot_duty(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}
