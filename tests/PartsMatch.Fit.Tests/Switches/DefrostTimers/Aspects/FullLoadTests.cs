using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>Fans on their own contact, at their own volts. 2 hp at 230 V single-phase are 12 A (published: NFPA 70 table 430.248).</summary>
[Trait("Source", "defrostTimer.fullLoad")]
public sealed class FullLoadTests : DefrostTimerAspectTests<FullLoad, FullLoadFacet>
{
    [Theory]
    [InlineData("motors=10/50 A; fanVolts=240 V", "Meets")]
    [InlineData("motors=10.1/50 A; fanVolts=240 V", "Fails")]
    [InlineData("motors=20/100 A; fanVolts=120 V; loadVolts=240 V", "Meets")] // the heaters' 240 V are nothing to the fans
    [InlineData("motors=20/100 A; fanVolts=240 V; loadVolts=120 V", "Fails")]
    [InlineData("motors=2 x 4/20 A; fanVolts=240 V", "Meets")]
    [InlineData("motors=8/40 A; loadVolts=240 V", "Unknown Site fanVolts")]
    [InlineData("heaterAmps=25 A; loadVolts=240 V", "Unknown Site motors")] // naming heaters says nothing of fans
    [InlineData("loads=heater; heaterAmps=25 A; loadVolts=240 V", "Meets")]
    public void Fans_are_judged_by_their_own_volts(string site, string answer) => Answer("", site, "ratedVolts=120/240 V; fullLoadAmps=20/10 A; resistiveAmps=40 A").ShouldBe(answer);

    [Theory]
    [InlineData("motors=12/60 A; fanVolts=230 V", "Meets")]
    [InlineData("motors=12.1/60 A; fanVolts=230 V", "Fails")]
    public void Horsepower_stands_for_the_amps_of_the_codes_table(string site, string answer) => Answer("", site, "ratedVolts=240 V; singlePhaseHorsepower=2 hp").ShouldBe(answer);

    [Theory]
    [InlineData("contactsFor=heater, fans; resistiveAmps=40 A", "", "Unknown Site motors")]
    [InlineData("resistiveAmps=40 A", "contactsNeeded=heater, fans", "Unknown Site motors")]
    [InlineData("resistiveAmps=40 A", "contactsNeeded=heater, compressor", "Unknown Site motors")]
    [InlineData("resistiveAmps=40 A; pilotDuty=A300", "contactsNeeded=heater, compressor", "Meets")] // its contactor's coil, by what the old one was marked for
    [InlineData("resistiveAmps=40 A; pilotDuty=A300", "contactsNeeded=heater, fans", "Unknown Site motors")]
    [InlineData("resistiveAmps=40 A", "contactsNeeded=heater, fans; loads=heater", "Meets")]
    [InlineData("resistiveAmps=40 A", "contactsNeeded=heater", "Meets")]
    [InlineData("resistiveAmps=40 A", "", "Unknown Site motors")] // nobody said what stops in defrost, and hardly a timer stops nothing
    [InlineData("resistiveAmps=40 A; pilotDuty=A300", "", "Unknown Site motors")]
    [InlineData("resistiveAmps=40 A", "contactsNeeded=heater, compressor; coilsVa=20 VA", "Meets")] // its contactor's coil, as named
    [InlineData("", "contactsNeeded=heater, compressor; coilsVa=20 VA", "Meets")]
    [InlineData("resistiveAmps=40 A", "contactsNeeded=heater, compressor, pump-down; coilsVa=20 VA", "Unknown Site motors")] // the coil may be the solenoid valve's
    [InlineData("resistiveAmps=40 A", "coilsVa=20 VA", "Unknown Site motors")] // which says nothing of fans
    [InlineData("", "contactsNeeded=heater", "Meets")]
    [InlineData("resistiveAmps=40 A; ratedVolts=240 V; fullLoadAmps=10 A", "contactsNeeded=heater, fans", "Meets")]
    [InlineData("", "", "Unknown Site motors")]
    public void Fans_that_are_wired_are_open_until_their_amps_are_known(string plate, string site, string answer) => Answer(plate, site, "ratedVolts=240 V; fullLoadAmps=10 A; lockedRotorAmps=60 A").ShouldBe(answer);
}
