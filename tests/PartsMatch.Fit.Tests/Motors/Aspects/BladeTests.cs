using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>A blade is made for one turn (practice); the two ends of a shaft name the same turn oppositely (geometry). Power of a new diameter is the fan load's question.</summary>
[Trait("Source", "motor.blade")]
public sealed class BladeTests : MotorAspectTests<Blade>
{
    private const string Direct = "bladeStays=yes; drive=direct; bladeHand=CW shaft end";

    [Theory]
    [InlineData("rotation=CW shaft end; reversing=fixed")]
    [InlineData("rotation=CCW lead end; reversing=fixed")] // the same turn, named from the other end
    [InlineData("rotation=CCW shaft end; reversing=by plug")]
    [InlineData("rotation=CCW shaft end; type=three-phase induction")] // any three-phase motor is reversed by two lines
    [InlineData("reversing=by leads")]
    public void A_motor_that_turns_as_the_blade_is_made_for_or_can_be_set_so_meets(string part) => Meets(site: Direct, part: part).Caution.ShouldBeNull();

    [Theory]
    [InlineData("rotation=CCW shaft end; reversing=fixed")]
    [InlineData("rotation=CW lead end; reversing=fixed")]
    [InlineData("rotation=CCW shaft end; type=shaded pole")]
    public void One_that_can_only_turn_the_other_way_fails(string part) => Fails(site: Direct, part: part).Sentence.ShouldContain("clockwise facing the shaft");

    [Theory]
    [InlineData("", "rotation")]
    [InlineData("rotation=CCW; reversing=fixed", "rotation")] // no end named
    [InlineData("rotation=CCW shaft end", "reversing")]
    public void What_the_entry_does_not_say_of_its_turn_is_asked_for(string part, string field) => Unknown(Side.Part, field, site: Direct, part: part);

    [Fact]
    public void Whether_that_blade_sits_on_the_motor_is_asked_before_it_fails_one() =>
        Unknown(Side.Site, "drive", site: "bladeHand=CW shaft end", part: "rotation=CCW shaft end; reversing=fixed");

    [Theory]
    [InlineData("")]
    [InlineData("bladeStays=yes; drive=direct")]
    [InlineData("bladeStays=yes; drive=direct; bladeHand=CW")]
    [InlineData("drive=belt; bladeHand=CW shaft end")]
    [InlineData("drive=belt; bladeStays=no")]
    public void Without_a_hand_that_is_known_or_with_a_belt_nothing_is_asked(string site) => Meets(site: site, part: "rotation=CCW shaft end; reversing=fixed");

    [Fact]
    public void A_hand_and_a_needed_turn_that_disagree_are_told_before_the_turn_is_set()
    {
        var finding = Meets(site: $"{Direct}; turnNeeded=CCW shaft end", part: "rotation=CCW shaft end; reversing=by plug");
        finding.Caution!.ShouldStartWith("The blade is marked for clockwise facing the shaft, and the fan is said to need counterclockwise facing the shaft");
        finding.CautionAt.ShouldBe(Stage.NoteWhatIsThere);
    }

    [Fact]
    public void A_new_blade_is_like_the_old_one_and_proved_by_the_amps()
    {
        var finding = MeetsWith(
            [PlaceChanges.CheckBladePower],
            site: "bladeStays=no; drive=direct; bladeDiameter=24 in; newBladeDiameter=22 in; newBladeBore=1/2 in; blades=4; bladePitch=27 °; turnNeeded=CW shaft end");
        var change = finding.Changes[0];
        change.Text.ShouldBe("see by the amps that the new blade is not too much for the motor: choose one like the old, with 4 blades and a pitch of 27 °, made to turn clockwise facing the shaft");
        change.Kit.ShouldHaveSingleItem().What.ShouldBe("blade, 22 in (558.8 mm), 1/2 in (12.7 mm) bore");
    }

    [Fact]
    public void Of_an_old_blade_nobody_described_the_new_one_is_taken_like_it() =>
        MeetsWith([PlaceChanges.CheckBladePower], site: "bladeStays=no").Changes[0].Text
            .ShouldBe("see by the amps that the new blade is not too much for the motor: choose one like the old, with as many blades and the same pitch");

    [Fact]
    public void A_new_blade_s_power_is_not_judged_here() =>
        MeetsWith([PlaceChanges.CheckBladePower], "power=1/4 hp; speed=1075 rpm", "bladeStays=no; drive=direct; bladeDiameter=20 in; newBladeDiameter=30 in", "power=1/4 hp; speed=1075 rpm");
}
