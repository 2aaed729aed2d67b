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

    [Theory]
    [InlineData("", "motors=5/30 A", "fullLoadAmps=5 A", "Its own are not marked: six times its full-load amps are taken for them.")]
    [InlineData("", "motors=5 A", "fullLoadAmps=5 A; lockedRotorAmps=30 A", "The motors' are not all given: six times their full-load amps are taken for them.")]
    [InlineData("", "motors=5 A", "fullLoadAmps=5 A", "Its own are not marked: six times its full-load amps are taken for them. The motors' are not all given: six times their full-load amps are taken for them.")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=5 A", "", "fullLoadAmps=5 A; lockedRotorAmps=30 A", "The old one's are not marked: six times its full-load amps are taken for them.")]
    [InlineData("", "motors=5/30 A", "fullLoadAmps=5 A; lockedRotorAmps=30 A", "30 A are on it.")]
    public void What_is_taken_for_amps_that_are_not_marked_is_told(string plate, string site, string part, string says)
    {
        Answer(plate, $"{site}; loadVolts=240 V", $"ratedVolts=240 V; {part}").ShouldBe("Meets");
        Judge(plate, $"{site}; loadVolts=240 V", $"ratedVolts=240 V; {part}").Sentence.ShouldEndWith(says);
    }
}
