using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>A motor needs motor ratings: IEC 60947, UL 60730, from memory.</summary>
[Trait("Source", "thermostat.kindOfLoad")]
public sealed class KindOfLoadTests : ThermostatAspectTests<KindOfLoad, KindOfLoadFacet>
{
    [Theory]
    [InlineData("motors=1.4/7 A", "fullLoadAmps=10 A", "Meets")]
    [InlineData("motors=1.4/7 A", "resistiveAmps=25 A", "Fails")]
    [InlineData("motors=1.4/7 A", "pilotDuty=B300", "Fails")]
    [InlineData("motors=1.4/7 A", "", "Unknown Part fullLoadAmps")]
    [InlineData("heaterAmps=12 A", "resistiveAmps=25 A", "Meets")]
    [InlineData("", "pilotDuty=B300", "Meets")]
    public void Motors_ask_for_motor_ratings(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}
