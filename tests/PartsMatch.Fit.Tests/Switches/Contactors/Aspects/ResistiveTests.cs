using PartsMatch.Fit.Switches.Contactors.Aspects;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Resistive amps by themselves; AC-1 is for resistance: IEC 60947-4-1 table 1 (published). 6000 W / 240 V = 25 A, 18 kW / (√3 · 480 V) = 21.65 A: worked by hand.</summary>
[Trait("Source", "contactor.resistive")]
public sealed class ResistiveTests : ContactorAspectTests<Resistive, ContactAmpsFacet>
{
    [Theory]
    [InlineData("heaterAmps=50 A; loadVolts=240 V", "Meets")]
    [InlineData("heaterAmps=50.1 A; loadVolts=240 V", "Fails")]
    [InlineData("heaterAmps=49.9 A; loadVolts=240 V", "Meets")]
    [InlineData("heaterPower=12 kW; loadVolts=240 V; loadPhase=1", "Meets")] // 50 A
    [InlineData("heaterPower=12.1 kW; loadVolts=240 V; loadPhase=1", "Fails")]
    [InlineData("heaterPower=12.1 kW; loadVolts=240 V; loadPhase=3", "Meets")] // 29.1 A
    [InlineData("heaterPower=12 kW; loadVolts=240 V", "Unknown Site heaterAmps")]
    [InlineData("motors=10/50 A", "Meets")]
    [InlineData("heaterAmps=10 A; loadVolts=480 V", "Fails")]
    public void Heaters_stay_within_the_resistive_amps(string site, string answer) => Answer("", site, "ratedVolts=240 V; resistiveAmps=50 A").ShouldBe(answer);

    [Theory]
    [InlineData("ratedVolts=240 V; fullLoadAmps=60 A; lockedRotorAmps=300 A", "Unknown Part resistiveAmps")]
    [InlineData("ratedVolts=400 V; acThreeAmps=25 A", "Unknown Part resistiveAmps")]
    [InlineData("ratedVolts=400 V; acOneAmps=25 A", "Meets")]
    public void Motor_amps_do_not_stand_in_and_AC_1_is_resistive(string part, string answer) => Answer("", "heaterAmps=25 A; loadVolts=240 V", part).ShouldBe(answer);

    [Theory]
    [InlineData("ratedVolts=240 V; resistiveAmps=50 A", "Meets")]
    [InlineData("ratedVolts=240 V; resistiveAmps=50.1 A", "Unknown Site heaterAmps")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=40 A", "Meets")]
    public void Where_nobody_named_what_is_on_it_the_old_rating_is_enough(string plate, string answer) => Answer(plate, "", "ratedVolts=240 V; resistiveAmps=50 A").ShouldBe(answer);

    /// <summary>6000 / 208 = 28.846; × 240 / 208 = 33.28. 6000 / (√3 × 208) = 16.654; × 240 / 208 = 19.22: worked by hand.</summary>
    [Theory]
    [InlineData("single-phase", "33.28 A", "Meets")]
    [InlineData("single-phase", "33.27 A", "Fails")]
    [InlineData("three-phase", "19.22 A", "Meets")]
    [InlineData("three-phase", "19.21 A", "Fails")]
    public void Heaters_made_for_208_volts_take_more_on_240(string phase, string amps, string answer) =>
        Answer("", $"heaterPower=6 kW; heaterOwnVolts=208 V; loadVolts=240 V; loadPhase={phase}", $"ratedVolts=240 V; resistiveAmps={amps}").ShouldBe(answer);
}
