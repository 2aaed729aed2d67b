using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>Locked-rotor amps by themselves; 6 times 16 = 96 A where unmarked: UL/IEC 60730-1, from memory.</summary>
[Trait("Source", "pressureControl.lockedRotor")]
public sealed class LockedRotorTests : PressureControlAspectTests<LockedRotor, LockedRotorFacet>
{
    [Theory]
    [InlineData("motors=16/96 A; loadVolts=240 V", "lockedRotorAmps=96 A", "Meets")]
    [InlineData("motors=16/96.1 A; loadVolts=240 V", "lockedRotorAmps=96 A", "Fails")]
    [InlineData("motors=16/96 A; loadVolts=240 V", "fullLoadAmps=16 A", "Meets")]
    [InlineData("motors=16/96.1 A; loadVolts=240 V", "fullLoadAmps=16 A", "Unknown Part lockedRotorAmps")]
    public void Motors_start_within_them(string site, string part, string answer) => Answer("", site, $"ratedVolts=240 V; {part}").ShouldBe(answer);
}
