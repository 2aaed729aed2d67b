using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Rules: the trade's practice (trade rule: fixed the wrong way fails, reversible is a change).</summary>
[Trait("Source", "motor.rotation")]
public sealed class RotationTests : BodyAspectTests<Rotation, TurnFacet>
{
    // Published: two public pages that list lead marks; "OE" is read as output end, as in the list seen.
    [Theory]
    [InlineData("CWSE", Direction.Clockwise)]
    [InlineData("CWOE", Direction.Clockwise)]
    [InlineData("CWDE", Direction.Clockwise)]
    [InlineData("CWPE", Direction.Clockwise)]
    [InlineData("CWOLE", Direction.Clockwise)]
    [InlineData("CCWLE", Direction.Clockwise)]
    [InlineData("CCWOSE", Direction.Clockwise)]
    [InlineData("CCWODE", Direction.Clockwise)]
    [InlineData("CCW NDE", Direction.Clockwise)]
    [InlineData("CCWSE", Direction.Counterclockwise)]
    [InlineData("CCWOE", Direction.Counterclockwise)]
    [InlineData("CCWDE", Direction.Counterclockwise)]
    [InlineData("CCWPE", Direction.Counterclockwise)]
    [InlineData("CCWOLE", Direction.Counterclockwise)]
    [InlineData("CWLE", Direction.Counterclockwise)]
    [InlineData("CWOSE", Direction.Counterclockwise)]
    [InlineData("CWODE", Direction.Counterclockwise)]
    [InlineData("CW OPP SE", Direction.Counterclockwise)]
    [InlineData("cwse", Direction.Clockwise)]
    [InlineData("CW", null)]
    [InlineData("CCW", null)]
    public void A_lead_mark_tells_the_turn_facing_the_shaft(string mark, Direction? turn) =>
        Turn.Form.Read(mark).Value!.FacingShaft.ShouldBe(turn);

    [Property]
    public Property A_turn_seen_from_the_other_end_twice_is_the_same_and_faces_the_shaft_alike() => Prop.ForAll(
        Gen.Elements(Direction.Clockwise, Direction.Counterclockwise).Zip(Gen.Elements(MotorEnd.Shaft, MotorEnd.Lead)).ToArbitrary(),
        pair =>
        {
            var turn = new Turn(pair.Item1, pair.Item2);
            turn.FromOtherEnd().FromOtherEnd().ShouldBe(turn);
            turn.FromOtherEnd().FacingShaft.ShouldBe(turn.FacingShaft);
        });

    // Geometry: CW at the lead end is CCW at the shaft end. Reversing: practice.
    [Theory]
    [InlineData("rotation=CW shaft end", "", "rotation=CW shaft end; reversing=fixed", "Meets")]
    [InlineData("rotation=CW lead end", "", "rotation=CCW shaft end; reversing=fixed", "Meets")]
    [InlineData("rotation=CW lead end", "", "rotation=CW shaft end; reversing=fixed", "Fails")]
    [InlineData("rotation=CW shaft end", "", "rotation=CCW shaft end; reversing=fixed", "Fails")]
    [InlineData("rotation=CW shaft end", "", "rotation=CCW shaft end; reversing=by plug", "MeetsWithChanges reverse")]
    [InlineData("rotation=CW shaft end", "", "rotation=CCW shaft end; reversing=by setting", "MeetsWithChanges reverse")]
    [InlineData("rotation=CW shaft end", "", "rotation=CW shaft end; reversing=by leads", "Meets")]
    [InlineData("rotation=CW shaft end", "", "rotation=CW shaft end", "Meets")]
    [InlineData("rotation=CW shaft end", "", "rotation=CCW shaft end", "Unknown Part reversing")]
    [InlineData("rotation=CW shaft end", "", "reversing=fixed", "Unknown Part rotation")]
    [InlineData("rotation=CW shaft end", "", "rotation=CW; reversing=fixed", "Unknown Part rotation")]
    [InlineData("rotation=CW shaft end", "", "reversing=by leads", "MeetsWithChanges seeTurn")]
    [InlineData("rotation=CW shaft end", "", "", "Unknown Part rotation")]
    [InlineData("", "", "rotation=CW shaft end; reversing=by plug", "MeetsWithChanges seeTurn")]
    [InlineData("", "", "rotation=CW shaft end; reversing=fixed", "Unknown Plate rotation")]
    [InlineData("rotation=CW", "", "rotation=CW shaft end; reversing=fixed", "Unknown Plate rotation")]
    [InlineData("", "turnNeeded=CW", "rotation=CW shaft end; reversing=fixed", "Unknown Site turnNeeded")]
    [InlineData("rotation=CW shaft end", "turnNeeded=CCW", "rotation=CW shaft end; reversing=fixed", "Unknown Site turnNeeded")]
    [InlineData("rotation=CW shaft end", "turnNeeded=CCW", "rotation=CW shaft end; reversing=by plug", "MeetsWithChanges seeTurn")]
    public void A_turn_is_judged_facing_the_shaft(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void The_turn_seen_at_the_site_stands_before_the_plate() =>
        Answer("rotation=CW shaft end", "turnNeeded=CCW shaft end", "rotation=CCW shaft end; reversing=fixed").ShouldBe("Meets");

    // From memory, unchecked: a shaded pole cannot be reversed electrically, three phases turn round with two lines.
    [Theory]
    [InlineData("type=shaded pole; rotation=CCW shaft end", "Fails")]
    [InlineData("type=shaded pole; rotation=CCW shaft end; reversing=by leads", "MeetsWithChanges reverse")]
    [InlineData("type=three-phase induction; rotation=CCW shaft end", "MeetsWithChanges reverse")]
    [InlineData("type=permanent split capacitor; rotation=CCW shaft end", "Unknown Part reversing")]
    public void Where_reversing_is_not_said_the_type_may_tell(string part, string answer) => Answer("rotation=CW shaft end", "", part).ShouldBe(answer);

    [Theory]
    [InlineData("reversing=by plug", "turn its reversing plug round, so that it turns clockwise facing the shaft")]
    [InlineData("reversing=by leads", "change its two reversing leads over, so that it turns clockwise facing the shaft")]
    [InlineData("reversing=by setting", "change its setting of rotation, so that it turns clockwise facing the shaft")]
    [InlineData("phase=3; type=three-phase induction", "interchange any two of its three lines, so that it turns clockwise facing the shaft")]
    public void The_change_says_how_and_which_way(string part, string words) =>
        Judge("rotation=CW shaft end", "", $"rotation=CCW shaft end; {part}").Changes.ShouldHaveSingleItem().Text.ShouldBe(words);

    [Theory]
    [InlineData("propeller", "blows the wrong way")]
    [InlineData("blower wheel", "still blows the right way")]
    public void What_a_wrong_turn_looks_like_depends_on_the_fan(string fan, string words) =>
        Judge("rotation=CW shaft end", $"fanKind={fan}", "rotation=CCW shaft end; reversing=by plug").Caution.ShouldNotBeNull().ShouldContain(words);

    [Fact]
    public void A_double_shaft_names_the_end_that_is_meant() =>
        Judge("rotation=CW shaft end", "", "rotation=CW shaft end; shaftEnds=2").Caution.ShouldNotBeNull().ShouldContain("opposite ways");
}
