using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Full-load amps at the volts, all motors added up: practice; 3 x 2.5 = 7.5 A worked by hand.</summary>
[Trait("Source", "thermostat.fullLoad")]
public sealed class FullLoadTests : ThermostatAspectTests<FullLoad, ContactAmpsFacet>
{
    [Theory]
    [InlineData("motors=3 x 2.5/12 A; loadVolts=240 V", "Fails")]
    [InlineData("motors=2 x 2.5/12 A; loadVolts=240 V", "Meets")]
    [InlineData("motors=10/60 A; loadVolts=120 V", "Meets")]
    [InlineData("motors=10.1/60 A; loadVolts=120 V", "Fails")]
    [InlineData("heaterAmps=20 A; loadVolts=240 V", "Meets")]
    [InlineData("motors=2/12 A", "Unknown Site loadVolts")]
    public void Motors_stay_within_it(string site, string answer) => Answer("", site, "ratedVolts=120/240 V; fullLoadAmps=10/5 A").ShouldBe(answer);
}
