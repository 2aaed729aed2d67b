using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>
/// Heaters on their own contact. 6000 W / 240 V = 25 A, at 204 V 25 × 204/240 = 21.25 A; on three phases 6000 / (√3 × 240) = 14.43 A, at 208 V 12.51 A: worked by hand.
/// </summary>
[Trait("Source", "defrostTimer.resistive")]
public sealed class ResistiveTests : DefrostTimerAspectTests<Resistive, ContactAmpsFacet>
{
    [Theory]
    [InlineData("loadVolts=240 V", "resistiveAmps=25 A", "Meets")]
    [InlineData("loadVolts=240 V", "resistiveAmps=24.9 A", "Fails")]
    [InlineData("loadVolts=240 V", "resistiveAmps=25.1 A", "Meets")]
    [InlineData("loadVolts=204 V", "resistiveAmps=21.25 A", "Meets")]
    [InlineData("loadVolts=204 V", "resistiveAmps=21.2 A", "Fails")]
    [InlineData("loadVolts=240 V", "fullLoadAmps=30 A", "Unknown Part resistiveAmps")]
    public void Six_kilowatts_at_240_volts_are_25_amps_and_fewer_at_lower_volts(string there, string part, string answer) =>
        Answer("", $"heaterPower=6 kW; heaterOwnVolts=240 V; loadPhase=single-phase; {there}", $"ratedVolts=240 V; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("loadVolts=240 V", "14.43 A", "Meets")]
    [InlineData("loadVolts=240 V", "14.4 A", "Fails")]
    [InlineData("loadVolts=208 V", "12.51 A", "Meets")]
    [InlineData("loadVolts=208 V", "12.5 A", "Fails")]
    public void On_three_phases_the_root_of_three_divides(string there, string amps, string answer) =>
        Answer("", $"heaterPower=6 kW; heaterOwnVolts=240 V; loadPhase=three-phase; {there}", $"ratedVolts=240 V; resistiveAmps={amps}").ShouldBe(answer);

    [Theory]
    [InlineData("heaterPower=6 kW; loadVolts=240 V; loadPhase=single-phase", "Meets")] // their own volts are taken for those there
    [InlineData("heaterPower=6 kW; loadVolts=240 V", "Unknown Site heaterAmps")]
    [InlineData("motors=10/50 A; fanVolts=120 V", "Meets")] // the old one's 30 A are carried
    [InlineData("heaterAmps=25 A", "Unknown Site loadVolts")]
    [InlineData("heaterAmps=25 A; fanVolts=120 V", "Unknown Site loadVolts")]
    public void Its_own_volts_are_asked_for(string site, string answer) => Answer("ratedVolts=240 V; resistiveAmps=30 A", site, "ratedVolts=240 V; resistiveAmps=40 A").ShouldBe(answer);

    [Theory]
    [InlineData("", "", "resistiveAmps=40 A", "Unknown Site heaterAmps")]
    [InlineData("", "", "", "Unknown Site heaterAmps")]
    [InlineData("fullLoadAmps=20 A; pilotDuty=A300", "", "resistiveAmps=40 A", "Unknown Site heaterAmps")] // ratings of its other contacts say nothing of the heaters
    [InlineData("contactsFor=heater, fans", "", "resistiveAmps=40 A", "Unknown Site heaterAmps")]
    [InlineData("", "contactsNeeded=fans", "", "Meets")]
    [InlineData("", "loads=motor", "", "Meets")]
    [InlineData("resistiveAmps=40 A", "", "resistiveAmps=40 A", "Meets")]
    [InlineData("resistiveAmps=40 A", "", "", "Unknown Part resistiveAmps")]
    public void Heaters_that_nobody_named_are_open_unless_none_are_wired(string plate, string site, string part, string answer)
    {
        static string Rated(string spec) => spec.Contains("resistiveAmps", StringComparison.Ordinal) ? $"ratedVolts=240 V; {spec}" : spec;
        Answer(Rated(plate), site, Rated(part)).ShouldBe(answer);
    }

    /// <summary>6000 / 208 = 28.846; × 240 / 208 = 33.28. 6000 / (√3 × 208) = 16.654; × 240 / 208 = 19.22: worked by hand.</summary>
    [Theory]
    [InlineData("single-phase", "33.28 A", "Meets")]
    [InlineData("single-phase", "33.27 A", "Fails")]
    [InlineData("three-phase", "19.22 A", "Meets")]
    [InlineData("three-phase", "19.21 A", "Fails")]
    public void Heaters_made_for_208_volts_take_more_on_240(string phase, string amps, string answer) =>
        Answer("", $"heaterPower=6 kW; heaterOwnVolts=208 V; loadVolts=240 V; loadPhase={phase}", $"ratedVolts=240 V; resistiveAmps={amps}").ShouldBe(answer);

    [Theory]
    [InlineData("clockVolts=230 V; resistiveAmps=30 A", "", "ratedVolts=120/240 V; resistiveAmps=30 A", "Meets")]
    [InlineData("clockVolts=208-240 V; resistiveAmps=30 A", "", "ratedVolts=240 V; resistiveAmps=30 A", "Meets")]
    [InlineData("clockVolts=230 V; resistiveAmps=30/15 A", "", "ratedVolts=240 V; resistiveAmps=30 A", "Unknown Plate ratedVolts")] // of two voltages, and nobody knows which
    [InlineData("clockVolts=230 V; resistiveAmps=30 A", "", "ratedVolts=120/240 V; resistiveAmps=30/29.9 A", "Unknown Site heaterAmps")]
    [InlineData("clockVolts=120/240 V; resistiveAmps=30 A", "", "ratedVolts=240 V; resistiveAmps=30 A", "Unknown Plate ratedVolts")]
    [InlineData("clockVolts=120/240 V; resistiveAmps=30 A", "loadVolts=240 V", "ratedVolts=240 V; resistiveAmps=30 A", "Meets")]
    [InlineData("clockVolts=120 V; resistiveAmps=30 A", "loadVolts=240 V", "ratedVolts=240 V; resistiveAmps=30 A", "Meets")]
    [InlineData("clockVolts=120 V; resistiveAmps=30 A", "loadVolts=240 V", "ratedVolts=240 V; resistiveAmps=29.9 A", "Unknown Site heaterAmps")] // what it carried at more than its own volts
    public void Amps_without_volts_are_at_the_only_volts_that_are_marked(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void An_answer_that_rests_on_the_clocks_volts_says_so() =>
        Judge("clockVolts=230 V; resistiveAmps=30 A", "", "ratedVolts=240 V; resistiveAmps=30 A").Sentence.ShouldBe("It carries the 30 A of resistive amps that the old part was rated for. The old one's volts are not marked: 230 V are taken.");

    /// <summary>Nobody knows at which volts such a part carries its amps: open, whether the clock's would do or not.</summary>
    [Theory]
    [InlineData("loadVolts=240 V; heaterAmps=25 A", "Unknown Part ratedVolts")]
    [InlineData("loadVolts=120 V; heaterAmps=25 A", "Unknown Part ratedVolts")]
    [InlineData("loadVolts=240 V; heaterAmps=41 A", "Fails")]
    public void A_part_without_volts_of_its_contacts_is_open_whatever_its_clock_is_for(string site, string answer) => Answer("", site, "clockVolts=120 V; resistiveAmps=40 A").ShouldBe(answer);
}
