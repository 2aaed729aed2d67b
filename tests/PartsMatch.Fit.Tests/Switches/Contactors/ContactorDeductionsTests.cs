using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Switches.Contactors;

/// <summary>What follows from a contactor's plate. Sizes: NEMA ICS 2 tables 2-4-1 and 2-4-2 (published); amps of horsepower: NFPA 70 tables 430.248 and 430.250 (published).</summary>
public sealed class ContactorDeductionsTests
{
    [Theory]
    [InlineData("size=NEMA 2; poleCount=3P", "continuousAmps=45 A; ratedVolts=200/230/460/575 V; threePhaseHorsepower=10 / 15 / 25 / 25 hp; fullLoadAmps=32.2/42/34/27 A")]
    [InlineData("size=NEMA 1P; poleCount=2P", "continuousAmps=36 A; ratedVolts=115/230 V; singlePhaseHorsepower=3 / 5 hp; fullLoadAmps=34/28 A")]
    [InlineData("size=NEMA 0; poleCount=2P", "continuousAmps=18 A; ratedVolts=115/230 V; singlePhaseHorsepower=1 hp / 2 hp; fullLoadAmps=16/12 A")]
    [InlineData("size=NEMA 1P; poleCount=3P", "continuousAmps=36 A")]
    public void A_size_tells_continuous_amps_and_horsepower_by_volts_and_phases(string plate, string deduced) => Deduced(plate).ShouldBe(deduced);

    [Theory]
    [InlineData("size=NEMA 2", "continuousAmps=45 A")]
    [InlineData("poleCount=2P", "")] // a relay may open or change over
    [InlineData("acOneAmps=50 A; acThreeAmps=25 A", "resistiveAmps=50 A; fullLoadAmps=25 A")]
    [InlineData("poleCount=3P; contactAction=NO; ratedVolts=240/480 V; threePhaseHorsepower=10 / 20 hp", "fullLoadAmps=28/27 A")]
    [InlineData("poleCount=3P; contactAction=NO; ratedVolts=240/300 V; threePhaseHorsepower=10 / 20 hp", "")]
    [InlineData("fullLoadAmps=30 A; ratedVolts=240 V", "")]
    [InlineData("contactAction=one of each", "poleCount=2 poles")] // what the words mean
    public void Nothing_else_is_taken_for_granted(string plate, string deduced) => Deduced(plate).ShouldBe(deduced);

    [Theory]
    [InlineData("poleCount=2P; auxiliaries=1 NO; coilFrequency=60 Hz", "", "linesSwitched=2; controlCurrent=AC; controlFrequency=60 Hz")]
    [InlineData("poleCount=1P with shunt; coilFrequency=50/60 Hz", "", "linesSwitched=1; controlCurrent=AC")]
    [InlineData("", "heaterPower=6 kW; loadVolts=240 V; loadPhase=1", "heaterOwnVolts=240 V; heaterAmps=25 A; loads=heater")] // 6000 W / 240 V
    [InlineData("", "heaterPower=18 kW; loadVolts=480 V; loadPhase=3", "heaterOwnVolts=480 V; heaterAmps=21.65 A; loads=heater")] // 18000 W / (√3 · 480 V)
    [InlineData("", "motors=14/73 A; coilsVa=20 VA", "loads=motor, coil")]
    [InlineData("", "loads=compressor; motors=14/73 A", "")]
    public void The_place_follows_from_the_old_one_and_from_what_is_named(string plate, string site, string deduced)
    {
        var need = ContactorFamily.Contactor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
        string.Join("; ", need.Deductions.Where(one => one.Side == Side.Site).Select(one => $"{one.Field}={one.Text}")).ShouldBe(deduced);
    }

    [Theory]
    [InlineData("heaterOwnVolts=208 V", "6 kW over their own 208 V, at the 240 V there")]
    [InlineData("", "no others are given: taken for the volts there; 6 kW over their own 240 V, at the 240 V there")]
    public void The_volts_that_heaters_are_taken_for_are_told(string own, string because)
    {
        var need = ContactorFamily.Contactor.ReadNeed(new(null, [], Named.Texts($"heaterPower=6 kW; loadVolts=240 V; loadPhase=1; {own}")));
        string.Join("; ", need.Deductions.Where(one => one.Field.StartsWith("heater", StringComparison.Ordinal)).Select(one => one.Because)).ShouldBe(because);
    }

    private static string Deduced(string plate) =>
        string.Join("; ", ContactorFamily.Contactor.Deduce(Named.Record<ContactorSpec>(plate)).Deductions.Select(one => $"{one.Field}={one.Text}"));
}
