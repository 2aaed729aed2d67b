using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>A motor needs motor ratings: IEC 60947, UL 60730, from memory.</summary>
[Trait("Source", "thermostat.kindOfLoad")]
public sealed class KindOfLoadTests : ThermostatAspectTests<KindOfLoad, EachContact<KindOfLoadFacet>>
{
    [Theory]
    [InlineData("motors=1.4/7 A", "fullLoadAmps=10 A", "Meets")]
    [InlineData("motors=1.4/7 A", "resistiveAmps=25 A", "Fails")]
    [InlineData("motors=1.4/7 A", "pilotDuty=B300", "Fails")]
    [InlineData("motors=1.4/7 A", "", "Unknown Part fullLoadAmps")]
    [InlineData("heaterAmps=12 A", "resistiveAmps=25 A", "Meets")]
    [InlineData("", "pilotDuty=B300", "Meets")]
    public void Motors_ask_for_motor_ratings(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("fanMotors=4/20 A", "resistiveAmps=25 A; fanFullLoadAmps=8 A", "Meets")]
    [InlineData("fanMotors=4/20 A", "fullLoadAmps=8 A; fanPilotDuty=B300", "Fails")]
    [InlineData("fanMotors=4/20 A", "resistiveAmps=25 A", "Fails")] // one set stands for both
    [InlineData("fanCoilsVa=9 VA", "fullLoadAmps=8 A; fanPilotDuty=B300", "Meets")]
    public void With_three_wires_the_fans_ask_it_of_their_own_contacts(string site, string part, string answer) =>
        Answer("function=fan delay and defrost end", $"loads=heater; {site}", $"function=fan delay and defrost end; {part}").ShouldBe(answer);
}
