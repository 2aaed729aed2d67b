using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Switches.Contactors;

/// <summary>What a contactor's plate and place cannot say all at once. Limits as in the aspects' tests; sums worked by hand.</summary>
public sealed class ContactorContradictionsTests
{
    [Theory]
    [InlineData("ratedVolts=120/240/480 V; fullLoadAmps=40/32 A", "", "ratedVolts, fullLoadAmps", "2 figures stand beside 3 rated volts")]
    [InlineData("fullLoadAmps=30 A; lockedRotorAmps=15 A", "", "fullLoadAmps, lockedRotorAmps", "15 A, are less than the full-load amps, 30 A")]
    [InlineData("contactAction=NO", "sidesWired=NC", "contactAction; sidesWired", "The old contacts: normally open; said to be wired: the normally closed side of change-over contacts. One of the two is misread.")]
    [InlineData("contactAction=one of each; poleCount=1P", "", "contactAction, poleCount", "A normally open and a normally closed pole are two, and it is said to have 1 pole.")]
    [InlineData("acOneAmps=20 A; acThreeAmps=25 A", "", "acOneAmps, acThreeAmps", "less than the AC-3 amps")]
    [InlineData("size=NEMA 1; continuousAmps=45 A", "", "size, continuousAmps", "NEMA 1 carries 27 A all day, and 45 A are marked")]
    [InlineData("coilVolts=24 V", "controlVolts=120 V", "coilVolts; controlVolts", "marked 24 V, and 120 V are there")]
    [InlineData("coilFrequency=50 Hz", "controlFrequency=60 Hz", "coilFrequency; controlFrequency", "marked 50 Hz, and the control circuit has 60 Hz")]
    [InlineData("poleCount=2P", "linesSwitched=3", "poleCount; linesSwitched", "has 2 poles, and 3 lines")]
    [InlineData("auxiliaries=1 NO", "auxiliariesUsed=1 NC", "auxiliaries; auxiliariesUsed", "has 1 NO as auxiliary contacts, and 1 NC")]
    [InlineData("ratedVolts=240 V", "loadVolts=480 V", "ratedVolts; loadVolts", "rated up to 240 V, and 480 V are switched")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=20 A", "loadVolts=240 V; motors=14/73 + 7/35 A", "fullLoadAmps; motors", "carried 20 A at 240 V, and 21 A are on it: it was too small")]
    [InlineData("", "loads=heater; motors=14/73 A", "; loads, motors", "Motors' amps are given")]
    [InlineData("", "loads=motor; heaterPower=6 kW", "; loads, heaterPower", "Heaters' power is given")]
    [InlineData("", "loads=motor; coilsInrushVa=15 VA", "; loads, coilsInrushVa", "Coils' inrush VA are given")]
    public void What_disagrees_is_told(string plate, string site, string fields, string says)
    {
        var found = Contradictions(plate, site).ShouldHaveSingleItem();
        $"{string.Join(", ", found.Fields)}{(found.SiteFields.Count > 0 ? $"; {string.Join(", ", found.SiteFields)}" : string.Empty)}".ShouldBe(fields);
        found.Sentence.ShouldContain(says);
    }

    [Theory]
    [InlineData("ratedVolts=120/240/480 V; fullLoadAmps=40 A; lockedRotorAmps=200/200/166 A", "")]
    [InlineData("coilVolts=24 V", "controlVolts=20.4 V")]
    [InlineData("coilVolts=208-240 V", "controlVolts=264 V")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=21 A", "loadVolts=264 V; motors=14/73 + 7/35 A")]
    [InlineData("size=NEMA 1; continuousAmps=27 A", "")]
    [InlineData("poleCount=3P", "linesSwitched=2")]
    [InlineData("contactAction=one of each", "sidesWired=NO")] // the other may be without a wire
    [InlineData("contactAction=one of each", "sidesWired=both")]
    public void What_agrees_is_not(string plate, string site) => Contradictions(plate, site).ShouldBeEmpty();

    private static IReadOnlyList<Fit.Judging.Contradiction> Contradictions(string plate, string site) =>
        ContactorFamily.Contactor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Contradictions;
}
