using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Locked-rotor amps are a rating of their own: practice; 6 times full load where unmarked (UL/IEC 60730-1, from memory).</summary>
[Trait("Source", "thermostat.lockedRotor")]
public sealed class LockedRotorTests : ThermostatAspectTests<LockedRotor, LockedRotorFacet>
{
    [Theory]
    [InlineData("motors=5/30 A; loadVolts=240 V", "ratedVolts=240 V; fullLoadAmps=5 A; lockedRotorAmps=30 A", "Meets")]
    [InlineData("motors=5/30.1 A; loadVolts=240 V", "ratedVolts=240 V; fullLoadAmps=5 A; lockedRotorAmps=30 A", "Fails")]
    [InlineData("motors=5/30 A; loadVolts=240 V", "ratedVolts=240 V; fullLoadAmps=5 A", "Meets")]
    [InlineData("motors=5/30.1 A; loadVolts=240 V", "ratedVolts=240 V; fullLoadAmps=5 A", "Unknown Part lockedRotorAmps")]
    public void Motors_start_on_it(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}
