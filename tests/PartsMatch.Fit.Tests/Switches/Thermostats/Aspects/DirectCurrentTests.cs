using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Direct current by DC amps alone: practice.</summary>
[Trait("Source", "thermostat.directCurrent")]
public sealed class DirectCurrentTests : ThermostatAspectTests<DirectCurrent, EachContact<ContactAmpsFacet>>
{
    [Theory]
    [InlineData("", "heaterAmps=2 A; loadVolts=24 V", "directVolts=28 V; directAmps=2 A", "Meets")]
    [InlineData("", "heaterAmps=2.1 A; loadVolts=24 V", "directVolts=28 V; directAmps=2 A", "Fails")]
    [InlineData("", "heaterAmps=2 A; loadVolts=24 V", "ratedVolts=240 V; resistiveAmps=20 A", "Unknown Part directAmps")]
    [InlineData("function=fan delay and defrost end", "heaterAmps=2 A; loadVolts=24 V; fanMotors=2/2 A; fanVolts=24 V", "directVolts=28 V; directAmps=2 A", "Meets")]
    [InlineData("function=fan delay and defrost end", "heaterAmps=2 A; loadVolts=24 V; fanMotors=2.1/10 A; fanVolts=24 V", "directVolts=28 V; directAmps=2 A", "Fails")] // each of its contacts
    public void Its_amps_of_direct_current_count(string plate, string site, string part, string answer) => Answer(plate, $"loadCurrent=DC; {site}", part).ShouldBe(answer);
}
