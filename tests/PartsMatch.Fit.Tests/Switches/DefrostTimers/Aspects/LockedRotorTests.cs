using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>Six times full load where not marked: from memory (UL/IEC 60730-1).</summary>
[Trait("Source", "defrostTimer.lockedRotor")]
public sealed class LockedRotorTests : DefrostTimerAspectTests<LockedRotor, LockedRotorFacet>
{
    [Theory]
    [InlineData("motors=8/60 A; fanVolts=240 V", "lockedRotorAmps=60 A", "Meets")]
    [InlineData("motors=8/60.1 A; fanVolts=240 V", "lockedRotorAmps=60 A", "Fails")]
    [InlineData("motors=8/60 A; fanVolts=240 V", "fullLoadAmps=10 A", "Meets")]
    [InlineData("motors=8/60.1 A; fanVolts=240 V", "fullLoadAmps=10 A", "Unknown Part lockedRotorAmps")]
    [InlineData("motors=10.1 A; fanVolts=240 V", "lockedRotorAmps=60 A", "Unknown Site motors")]
    public void Fans_start_together(string site, string part, string answer) => Answer("", site, $"ratedVolts=240 V; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("contactsFor=heater, fans; resistiveAmps=40 A", "", "Unknown Site motors")]
    [InlineData("resistiveAmps=40 A", "contactsNeeded=heater, fans", "Unknown Site motors")]
    [InlineData("resistiveAmps=40 A", "contactsNeeded=heater, compressor", "Unknown Site motors")]
    [InlineData("resistiveAmps=40 A; pilotDuty=A300", "contactsNeeded=heater, compressor", "Meets")] // its contactor's coil, by what the old one was marked for
    [InlineData("resistiveAmps=40 A; pilotDuty=A300", "contactsNeeded=heater, fans", "Unknown Site motors")]
    [InlineData("resistiveAmps=40 A", "contactsNeeded=heater, fans; loads=heater", "Meets")]
    [InlineData("resistiveAmps=40 A", "contactsNeeded=heater", "Meets")]
    [InlineData("resistiveAmps=40 A", "", "Unknown Site motors")] // nobody said what stops in defrost
    [InlineData("resistiveAmps=40 A", "contactsNeeded=heater, compressor; coilsVa=20 VA", "Meets")]
    [InlineData("resistiveAmps=40 A; ratedVolts=240 V; fullLoadAmps=10 A", "contactsNeeded=heater, fans", "Meets")]
    [InlineData("", "", "Unknown Site motors")]
    public void Fans_that_are_wired_are_open_until_their_amps_are_known(string plate, string site, string answer) => Answer(plate, site, "ratedVolts=240 V; fullLoadAmps=10 A; lockedRotorAmps=60 A").ShouldBe(answer);
}
