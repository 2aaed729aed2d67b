using PartsMatch.Fit.Switches.Contactors.Aspects;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Direct current by DC amps alone: practice. 48 VA over 24 V are 2 A, worked by hand.</summary>
[Trait("Source", "contactor.directCurrent")]
public sealed class DirectCurrentTests : ContactorAspectTests<DirectCurrent, ContactAmpsFacet>
{
    private const string Part = "directVolts=28/125 V; directAmps=10/0.5 A";

    [Theory]
    [InlineData("heaterAmps=10 A; loadVolts=28 V", "Meets")]
    [InlineData("heaterAmps=9.9 A; loadVolts=28 V", "Meets")]
    [InlineData("heaterAmps=10.1 A; loadVolts=28 V", "Fails")]
    [InlineData("heaterAmps=10.1 A", "Fails")] // whatever the volts
    [InlineData("heaterAmps=0.5 A; loadVolts=125 V", "Meets")]
    [InlineData("heaterAmps=0.6 A; loadVolts=125 V", "Fails")]
    [InlineData("heaterAmps=0.1 A; loadVolts=137.6 V", "Fails")] // a tenth over 125 V are 137.5
    [InlineData("heaterAmps=6 A; motors=4/4 A; loadVolts=28 V", "Meets")]
    [InlineData("heaterAmps=6 A; motors=4.1/20 A; loadVolts=28 V", "Fails")] // all together
    [InlineData("coilsVa=48 VA; loadVolts=24 V", "Meets")]
    [InlineData("coilsVa=70 VA; loadVolts=110 V", "Fails")]
    [InlineData("coilsVa=48 VA", "Unknown Site loadVolts")]
    [InlineData("heaterAmps=5 A", "Unknown Site loadVolts")]
    [InlineData("loads=heater; loadVolts=28 V", "Unknown Site heaterAmps")]
    [InlineData("loadVolts=28 V", "Unknown Site loads")]
    public void Its_amps_of_direct_current_count(string site, string answer) => Answer("", $"loadCurrent=DC; {site}", Part).ShouldBe(answer);

    [Theory]
    [InlineData("motors=8/40 A", "Unknown Part directAmps")]
    [InlineData("motors=8/10 A", "Meets")]
    [InlineData("motors=8/10.1 A", "Unknown Part directAmps")]
    [InlineData("motors=10.1/40 A", "Fails")]
    [InlineData("motors=1.5 A", "Unknown Site motors")]
    [InlineData("heaterAmps=6 A; motors=2/4 A", "Meets")]
    [InlineData("heaterAmps=6 A; motors=2/4.1 A", "Unknown Part directAmps")]
    public void What_motors_take_as_they_start_lies_within_it_or_it_is_open(string site, string answer) => Answer("", $"loadCurrent=DC; loadVolts=28 V; {site}", Part).ShouldBe(answer);

    [Theory]
    [InlineData("loadCurrent=DC; heaterAmps=1 A; loadVolts=24 V", "ratedVolts=240 V; resistiveAmps=40 A; fullLoadAmps=30 A; pilotDuty=A300", "Unknown Part directAmps")] // AC amps stand in for none
    [InlineData("loadCurrent=DC; heaterAmps=1 A; loadVolts=24 V", "directAmps=10 A", "Unknown Part directVolts")]
    [InlineData("loadCurrent=AC; heaterAmps=1 A; loadVolts=24 V", "", "Meets")]
    [InlineData("heaterAmps=1 A; loadVolts=24 V", "", "Meets")]
    public void What_is_not_given_is_open_and_only_where_it_is_asked(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("directVolts=28 V; directAmps=10 A", "", Part, "Meets")] // marked for nothing else
    [InlineData("directVolts=28 V; directAmps=10.1 A", "", Part, "Unknown Site loadCurrent")]
    [InlineData("directVolts=28 V; directAmps=10 A", "", "", "Unknown Part directAmps")]
    [InlineData("directAmps=10 A", "", Part, "Unknown Plate directVolts")]
    [InlineData("directVolts=28 V; directAmps=10 A", "loadCurrent=AC", "", "Meets")]
    [InlineData("directVolts=28 V; directAmps=10 A", "loadCurrent=DC", Part, "Meets")]
    [InlineData("directVolts=28 V; directAmps=10.1 A", "loadCurrent=DC", Part, "Unknown Site loads")]
    [InlineData("directVolts=28 V; directAmps=10 A; ratedVolts=240 V; resistiveAmps=10 A", "", "ratedVolts=240 V; resistiveAmps=10 A", "Meets")] // marked for both, as most are
    public void Where_nobody_said_the_old_one_tells(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void Three_phases_of_direct_current_are_a_contradiction() =>
        Families.Find("contactor")!.ReadNeed(new(null, [], [new("loadCurrent", "DC"), new("loadPhase", "three-phase")])).Contradictions.ShouldHaveSingleItem().Sentence.ShouldStartWith("Direct current has no three phases");
}

/// <summary>Ratings for alternating current beside direct current: practice.</summary>
public sealed class ResistiveBesideDirectCurrentTests : ContactorAspectTests<Resistive, ContactAmpsFacet>
{
    [Theory]
    [InlineData("heaterAmps=10 A; loadVolts=24 V", "Meets")]
    [InlineData("heaterAmps=40.1 A; loadVolts=24 V", "Fails")] // still less of the other
    [InlineData("heaterAmps=10 A", "Meets")] // nothing is asked for an answer that another gives
    public void What_it_does_not_bear_of_alternating_current_it_does_not_bear_of_direct(string site, string answer) => Answer("", $"loadCurrent=DC; {site}", "ratedVolts=240 V; resistiveAmps=40 A").ShouldBe(answer);
}
