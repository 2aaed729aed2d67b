using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Steps of 1/4 in: NEMA MG 1 4.4.1 note 3 (published). That the blade may be set back by one step, and 1/2 in of flat: practice.</summary>
[Trait("Source", "motor.shaftLength")]
public sealed class ShaftLengthTests : BodyAspectTests<ShaftLength, LengthFacet>
{
    [Theory]
    [InlineData("4 in", "Meets")]
    [InlineData("3.75 in", "MeetsWithChanges setBladeBack")] // 1/4 in short: the edge
    [InlineData("95.3 mm", "MeetsWithChanges setBladeBack")]
    [InlineData("95.2 mm", "Fails")] // 6.40 mm short
    [InlineData("4.25 in", "Meets")]
    [InlineData("108 mm", "Unknown Site shaftRoom")] // 6.40 mm longer than the old one, room not measured
    public void A_shaft_within_a_quarter_of_an_inch_of_the_old_one_will_do(string length, string answer) =>
        Answer("shaftLength=4 in", "", $"shaftLength={length}").ShouldBe(answer);

    [Theory]
    [InlineData("5 in", "yes", "Meets")]
    [InlineData("127.1 mm", "yes", "MeetsWithChanges cutShaft")]
    [InlineData("127.1 mm", "no", "Fails")]
    [InlineData("6 in", "no", "Fails")]
    [InlineData("4 in", "no", "Meets")] // what was measured as needed: the edge
    [InlineData("101.5 mm", "yes", "Fails")] // 0.1 mm short
    [InlineData("3 in", "yes", "Fails")]
    public void A_shaft_is_never_shorter_than_what_was_measured_and_one_longer_than_the_measured_room_is_cut_or_fails(string length, string canBeCut, string answer) =>
        Answer("", "shaftLengthNeeded=4 in; shaftRoom=5 in", $"shaftLength={length}; shaftCanBeCut={canBeCut}").ShouldBe(answer);

    [Theory]
    [InlineData("", "", "shaftLength=4 in", "Unknown Plate shaftLength")]
    [InlineData("", "", "", "Unknown Plate shaftLength")]
    [InlineData("shaftLength=4 in", "", "", "Unknown Part shaftLength")]
    [InlineData("", "shaftRoom=5 in", "", "Unknown Part shaftLength")]
    [InlineData("", "shaftRoom=5 in", "shaftLength=4 in", "Unknown Plate shaftLength")]
    [InlineData("", "shaftRoom=5 in", "shaftLength=6 in; shaftCanBeCut=no", "Fails")]
    [InlineData("", "shaftLengthNeeded=4 in; shaftRoom=5 in", "shaftLength=6 in", "Unknown Part shaftCanBeCut")]
    [InlineData("shaftLength=4 in", "", "shaftLength=6 in; shaftCanBeCut=no", "Unknown Site shaftRoom")]
    [InlineData("shaftLength=4 in", "", "shaftLength=6 in; shaftCanBeCut=yes", "MeetsWithChanges cutShaft")]
    [InlineData("shaftLength=4 in", "shaftRoom=7 in", "shaftLength=6 in; shaftCanBeCut=no", "Meets")]
    [InlineData("", "shaftLengthNeeded=4 in", "shaftLength=6 in; shaftCanBeCut=yes", "MeetsWithChanges checkShaftRoom")]
    [InlineData("", "shaftLengthNeeded=4 in", "shaftLength=6 in", "Unknown Site shaftRoom")]
    public void What_is_not_known_stays_unknown_unless_it_decides_nothing(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    // Geometry: no shaft is longer than what is needed and shorter than the room. The old one of 7-1/4 in needs 7 in.
    [Theory]
    [InlineData("shaftLength=7-1/4 in", "shaftRoom=5 in", "yes")]
    [InlineData("shaftLength=7-1/4 in", "shaftRoom=6-3/4 in", "yes")]
    [InlineData("shaftLength=7-1/4 in", "shaftRoom=5 in", "no")]
    [InlineData("", "shaftLengthNeeded=7 in; shaftRoom=5 in", "yes")]
    public void Room_for_less_shaft_than_is_needed_fails_and_is_not_asked_for_again(string plate, string site, string canBeCut)
    {
        var finding = Judge(plate, site, $"shaftLength=7-1/4 in; shaftCanBeCut={canBeCut}");
        finding.Verdict.ShouldBe(Verdict.Fails);
        finding.Missing.ShouldBeEmpty();
        finding.Sentence.ShouldNotContain("not known");
    }

    [Fact]
    public void A_shaft_is_cut_to_the_room_as_long_as_that_is_not_less_than_needed() =>
        Answer("shaftLength=7-1/4 in", "shaftRoom=7 in", "shaftLength=7-1/4 in; shaftCanBeCut=yes").ShouldBe("MeetsWithChanges cutShaft");

    // Worked by hand: cut from 6 to 5 in takes 1 in off the flat; at least 1/2 in must be left.
    [Theory]
    [InlineData("shaftForm=flat; flatLength=1.5 in", "MeetsWithChanges cutShaft")]
    [InlineData("shaftForm=flat; flatLength=38 mm", "MeetsWithChanges cutShaft fileFlat")]
    [InlineData("shaftForm=flat", "MeetsWithChanges cutShaft fileFlat")]
    [InlineData("shaftForm=round", "MeetsWithChanges cutShaft")]
    public void Enough_of_the_flat_is_left_under_the_set_screw(string form, string answer) =>
        Answer("", "shaftLengthNeeded=4 in; shaftRoom=5 in", $"shaftLength=6 in; shaftCanBeCut=yes; {form}").ShouldBe(answer);

    [Fact]
    public void The_cut_is_named_by_its_length() =>
        Judge("", "shaftLengthNeeded=4 in; shaftRoom=5 in", "shaftLength=6 in; shaftCanBeCut=yes").Changes.ShouldHaveSingleItem().Text.ShouldBe("cut the shaft from 6 in (152.4 mm) to 5 in (127 mm)");

    [Fact]
    public void A_shaft_one_step_short_stands_at_the_limit()
    {
        Judge("shaftLength=4 in", "", "shaftLength=4 in").Shortfall.ShouldBe(0);
        Judge("shaftLength=4 in", "", "shaftLength=3.75 in").Shortfall.ShouldBe(1, 1e-9);
    }
}
