using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Marked for it meets, unmarked is unknown, an open start switch fails (the trade's rule). That A3 and division 1 are the stricter ones: ASHRAE 34, NFPA 70 501 (from memory).</summary>
[Trait("Source", "motor.hazardousPlace")]
public sealed class HazardousPlaceTests : MotorAspectTests<HazardousPlace>
{
    [Theory]
    [InlineData("A2L", "A2L", Verdict.Meets)]
    [InlineData("A2L", "A3", Verdict.Meets)]
    [InlineData("A3", "A3", Verdict.Meets)]
    [InlineData("A3", "A2L", Verdict.Fails)]
    [InlineData("A2L", "ordinary places", Verdict.Fails)]
    [InlineData("A2L", "class I division 1", Verdict.Fails)]
    [InlineData("class I division 2", "class I division 2", Verdict.Meets)]
    [InlineData("class I division 2", "class I division 1", Verdict.Meets)]
    [InlineData("class I division 1", "class I division 2", Verdict.Fails)]
    [InlineData("class I division 1", "A3", Verdict.Fails)]
    [InlineData("A2L", null, Verdict.Unknown)]
    [InlineData("class I division 1", null, Verdict.Unknown)]
    [InlineData("none", null, Verdict.Meets)]
    [InlineData("none", "ordinary places", Verdict.Meets)]
    public void A_hazard_needs_a_motor_marked_for_it(string hazard, string? marked, Verdict verdict)
    {
        var finding = Judge(site: $"hazard={hazard}", part: marked is null ? "type=PSC" : $"type=PSC; hazards={marked}");
        finding.Verdict.ShouldBe(verdict, finding.Sentence);
        if (verdict == Verdict.Unknown) finding.Missing.ShouldBe([new Missing(Side.Part, "hazards")]);
    }

    [Theory]
    [InlineData("split phase", "ODP", true)]
    [InlineData("capacitor start", "OAO", true)]
    [InlineData("capacitor start capacitor run", "ODP", true)]
    [InlineData("split phase", "TEFC", false)]
    [InlineData("PSC", "ODP", false)]
    [InlineData("shaded pole", "OAO", false)]
    public void An_open_start_switch_fails_marked_or_not(string type, string enclosure, bool sparks)
    {
        var part = $"type={type}; enclosure={enclosure}";
        if (sparks)
        {
            Fails(site: "hazard=A2L", part: part).Sentence.ShouldContain("start switch");
            Fails(site: "hazard=A2L", part: $"{part}; hazards=A2L");
        }
        else
        {
            Unknown(Side.Part, "hazards", site: "hazard=A2L", part: part);
            Meets(site: "hazard=A2L", part: $"{part}; hazards=A2L");
        }
    }

    [Fact]
    public void Where_nothing_was_said_any_motor_meets_without_a_caution() => Meets(part: "type=split phase; enclosure=ODP").Caution.ShouldBeNull();

    [Fact]
    public void A_place_of_which_nothing_is_said_is_told_to_be_taken_for_an_ordinary_one() =>
        Meets(part: "type=split phase; enclosure=ODP").Sentence.ShouldStartWith("Taken for an ordinary place, since nothing says otherwise");

    [Fact]
    public void An_old_motor_that_was_marked_asks_for_the_same_until_the_place_is_known()
    {
        Meets(plate: "hazards=A2L", part: "hazards=A2L, A3");
        Meets(plate: "hazards=ordinary places");
        Unknown(Side.Site, "hazard", plate: "hazards=A2L");
        Unknown(Side.Site, "hazard", plate: "hazards=A2L, A3", part: "hazards=A2L");
        Unknown(Side.Site, "hazard", plate: "hazards=A2L", part: "hazards=ordinary places");
        Meets(plate: "hazards=A2L", site: "hazard=none");
    }
}
