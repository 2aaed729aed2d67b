using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Switches.Contactors;

/// <summary>Scales of a contactor: windows and ratings as in the aspects' tests, worked by hand.</summary>
public sealed class ContactorDrawingsTests
{
    private const string Part = "coilVolts=24 V; coilFrequency=60 Hz; ratedVolts=240/480 V; fullLoadAmps=30/25 A; resistiveAmps=40 A";

    [Fact]
    public void The_control_volts_stand_in_the_coil_s_window()
    {
        var scale = Drawn("controlVolts=21 V").Single(one => one.Name == "coilVolts");
        scale.Zones.Single(zone => zone.Role == Role.Good).Span.ShouldSatisfyAllConditions(span => span.Low.ShouldBe(20.4, 1e-9), span => span.High.ShouldBe(26.4, 1e-9));
        scale.Marks.ShouldHaveSingleItem().At.ShouldBe(Band.Exactly(21));
        scale.Words.ShouldContain("within them");
    }

    [Fact]
    public void Each_kind_of_amps_stands_against_its_own_rating()
    {
        var scales = Drawn("motors=14/73 A; heaterAmps=41 A; loadVolts=480 V");
        scales.Select(scale => scale.Name).ShouldBe(["fullLoadAmps", "resistiveAmps"]);
        scales[0].Marks.Select(mark => mark.At.Low).ShouldBe([14, 25]);
        scales[1].Words.ShouldContain("over that");
    }

    [Fact]
    public void What_is_not_known_is_not_drawn() => Drawn("motors=14/73 A").ShouldBeEmpty();

    private static List<Scale> Drawn(string site) =>
        [.. ContactorFamily.Contactor.Drawings(ContactorFamily.Contactor.ReadNeed(new(null, [], Named.Texts(site))).Need, Named.Record<ContactorSpec>(Part)).Cast<Scale>()];
}
