using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Locked-rotor amps are a rating of their own: practice; 6 times full load where unmarked (UL/IEC 60730-1, from memory).</summary>
[Trait("Source", "thermostat.lockedRotor")]
public sealed class LockedRotorTests : ThermostatAspectTests<LockedRotor, EachContact<LockedRotorFacet>>
{
    [Theory]
    [InlineData("motors=5/30 A; loadVolts=240 V", "ratedVolts=240 V; fullLoadAmps=5 A; lockedRotorAmps=30 A", "Meets")]
    [InlineData("motors=5/30.1 A; loadVolts=240 V", "ratedVolts=240 V; fullLoadAmps=5 A; lockedRotorAmps=30 A", "Fails")]
    [InlineData("motors=5/30 A; loadVolts=240 V", "ratedVolts=240 V; fullLoadAmps=5 A", "Meets")]
    [InlineData("motors=5/30.1 A; loadVolts=240 V", "ratedVolts=240 V; fullLoadAmps=5 A", "Unknown Part lockedRotorAmps")]
    public void Motors_start_on_it(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("fanMotors=8/48 A; fanVolts=120 V", "Meets")]
    [InlineData("fanMotors=8/48.1 A; fanVolts=120 V", "Fails")]
    [InlineData("motors=5/30 A; loadVolts=240 V; fanMotors=8/48 A; fanVolts=120 V", "Meets")]
    [InlineData("motors=5/30.1 A; loadVolts=240 V; fanMotors=8/48 A; fanVolts=120 V", "Fails")]
    [InlineData("", "Unknown Site motors")]
    public void With_three_wires_each_contact_starts_its_own_motors(string site, string answer) => Answer(
        "function=fan delay and defrost end",
        $"{(site.StartsWith("fan", StringComparison.Ordinal) ? "loads=heater; " : string.Empty)}{site}",
        "function=fan delay and defrost end; ratedVolts=240 V; fullLoadAmps=5 A; lockedRotorAmps=30 A; fanRatedVolts=120 V; fanFullLoadAmps=8 A; fanLockedRotorAmps=48 A").ShouldBe(answer);
}
