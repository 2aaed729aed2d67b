using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>Pilot duty and resistive amps are no motor ratings: the distinction is in IEC 60947 and UL 60730, from memory.</summary>
[Trait("Source", "pressureControl.kindOfLoad")]
public sealed class KindOfLoadTests : PressureControlAspectTests<KindOfLoad, KindOfLoadFacet>
{
    [Theory]
    [InlineData("motors=5/25 A", "pilotDuty=B300", "Fails")]
    [InlineData("motors=5/25 A", "resistiveAmps=20 A", "Fails")]
    [InlineData("motors=5/25 A", "pilotDuty=B300; fullLoadAmps=16 A", "Meets")]
    [InlineData("loads=compressor", "pilotDuty=B300; threePhaseHorsepower=1 hp", "Meets")]
    [InlineData("motors=5/25 A", "", "Unknown Part fullLoadAmps")]
    [InlineData("coilsVa=20 VA", "pilotDuty=B300", "Meets")]
    [InlineData("", "pilotDuty=B300", "Meets")]
    public void A_motor_needs_a_motor_rating(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}
