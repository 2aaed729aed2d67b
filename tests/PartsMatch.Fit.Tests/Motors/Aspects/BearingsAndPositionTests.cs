using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Sleeve bearings in the positions they are rated for, ball bearings in any: practice (facts/13).</summary>
[Trait("Source", "motor.bearingsAndPosition")]
public sealed class BearingsAndPositionTests : MotorAspectTests<BearingsAndPosition>
{
    [Theory]
    [InlineData("horizontal", "bearings=sleeve; shaftPositions=horizontal", "Meets")]
    [InlineData("shaft up", "bearings=sleeve; shaftPositions=horizontal, shaft up", "Meets")]
    [InlineData("shaft up", "bearings=sleeve; shaftPositions=horizontal, shaft down", "Fails")]
    [InlineData("shaft down", "bearings=sleeve; shaftPositions=horizontal", "Fails")]
    [InlineData("horizontal", "bearings=sleeve; shaftPositions=shaft up", "Fails")]
    [InlineData("shaft up", "bearings=ball", "Meets")]
    [InlineData("horizontal", "bearings=sleeve", "Meets")] // level, any bearing runs
    [InlineData("horizontal", "", "Meets")]
    [InlineData("shaft down", "shaftPositions=horizontal, shaft down", "Meets")]
    public void A_sleeve_runs_only_as_it_is_rated_and_a_ball_in_any_position(string position, string part, string verdict) =>
        Judge(site: $"shaftPosition={position}", part: part).Verdict.ToString().ShouldBe(verdict);

    [Fact]
    public void A_ball_bearing_motor_whose_entry_lists_other_positions_is_asked_about() =>
        MeetsWith([PlaceChanges.AskPosition], site: "shaftPosition=shaft up", part: "bearings=ball; shaftPositions=horizontal").Changes[0].Text
            .ShouldBe("ask whether it may sit with the shaft up: its entry lists other positions");

    [Theory]
    [InlineData("bearings=sleeve", "shaftPositions")]
    [InlineData("", "bearings")]
    [InlineData("shaftPositions=horizontal", "bearings")] // balls would do, sleeves would not
    public void What_the_entry_does_not_say_is_asked_for_where_the_shaft_is_not_level(string part, string field) =>
        Unknown(Side.Part, field, site: "shaftPosition=shaft up", part: part);

    [Theory]
    [InlineData("", "bearings=sleeve; shaftPositions=horizontal, shaft up, shaft down")]
    [InlineData("", "bearings=ball")]
    [InlineData("shaftPositions=horizontal", "bearings=sleeve; shaftPositions=horizontal")]
    [InlineData("shaftPositions=horizontal", "bearings=sleeve; shaftPositions=horizontal, shaft down")]
    public void With_the_position_not_known_a_motor_rated_for_all_that_the_old_one_was_is_no_worse(string plate, string part) => Meets(plate, part: part);

    [Theory]
    [InlineData("shaftPositions=horizontal, shaft up", "bearings=sleeve; shaftPositions=horizontal")]
    [InlineData("", "bearings=sleeve; shaftPositions=horizontal")]
    [InlineData("bearings=sleeve", "bearings=sleeve")]
    [InlineData("", "")]
    public void Else_one_looks_where_the_shaft_points(string plate, string part) => Unknown(Side.Site, "shaftPosition", plate, part: part);

    [Theory]
    [InlineData("shaft up", "rain", true)]
    [InlineData("shaft up", "wash-down", true)]
    [InlineData("shaft up", "dry", false)]
    [InlineData("shaft down", "rain", false)]
    public void Water_is_kept_off_the_upper_bearing(string position, string surroundings, bool isCautioned)
    {
        var finding = Meets(site: $"shaftPosition={position}; surroundings={surroundings}", part: "bearings=ball");
        (finding.Caution?.Contains("slinger", StringComparison.Ordinal) == true).ShouldBe(isCautioned);
        if (isCautioned) finding.CautionAt.ShouldBe(Stage.Mount);
    }
}
