using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>As many poles as lines; the shunt and its crankcase heat: practice.</summary>
[Trait("Source", "contactor.poles")]
public sealed class PolesTests : ContactorAspectTests<Poles, PolesFacet>
{
    [Theory]
    [InlineData("poleCount=2P", "", "poleCount=2P", "Meets")]
    [InlineData("poleCount=2P", "", "poleCount=3P", "MeetsWithChanges leavePoleUnused")]
    [InlineData("poleCount=2P", "", "poleCount=1P", "Fails")]
    [InlineData("poleCount=2P", "", "poleCount=1P with shunt", "Fails")]
    [InlineData("poleCount=3P", "", "poleCount=2P", "Fails")]
    [InlineData("poleCount=3P", "linesSwitched=2", "poleCount=2P", "Meets")]
    [InlineData("poleCount=3P", "", "poleCount=4P", "MeetsWithChanges leavePoleUnused")]
    [InlineData("poleCount=1P", "", "poleCount=1P with shunt", "Meets")]
    [InlineData("poleCount=1P", "", "poleCount=2P", "MeetsWithChanges leavePoleUnused")]
    [InlineData("", "", "poleCount=2P", "Unknown Plate poleCount")]
    [InlineData("", "linesSwitched=2", "poleCount=2P", "Meets")]
    [InlineData("poleCount=2P", "", "", "Unknown Part poleCount")]
    public void Each_line_has_a_pole(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Theory]
    [InlineData("", "poleCount=1P with shunt", "Meets")]
    [InlineData("", "poleCount=1P", "MeetsWithChanges joinLine")]
    [InlineData("shuntFeedsHeat=yes", "poleCount=2P", "MeetsWithChanges feedCrankcaseHeat")]
    [InlineData("shuntFeedsHeat=no", "poleCount=2P", "Meets")]
    [InlineData("", "poleCount=2P", "MeetsWithChanges checkShunt")]
    [InlineData("shuntFeedsHeat=yes", "poleCount=3P", "MeetsWithChanges feedCrankcaseHeat")]
    public void Two_poles_for_a_pole_and_a_shunt_lose_the_crankcase_heat(string site, string part, string answer) => Answer("poleCount=1P with shunt", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("", "linesSwitched=1; shuntFeedsHeat=yes", "poleCount=2P", "MeetsWithChanges feedCrankcaseHeat")]
    [InlineData("", "linesSwitched=1; shuntFeedsHeat=yes", "poleCount=1P with shunt", "Meets")]
    [InlineData("", "linesSwitched=1; shuntFeedsHeat=yes", "poleCount=1P", "MeetsWithChanges joinLine")]
    [InlineData("", "linesSwitched=1; shuntFeedsHeat=no", "poleCount=2P", "MeetsWithChanges leavePoleUnused")]
    [InlineData("", "linesSwitched=1", "poleCount=2P", "MeetsWithChanges leavePoleUnused")]
    [InlineData("poleCount=2P", "linesSwitched=1; shuntFeedsHeat=yes", "poleCount=2P", "MeetsWithChanges leavePoleUnused")]
    public void A_shunt_that_feeds_heat_is_one_whether_the_plate_tells_or_not(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>Of a pole of each kind one may be without a wire, as of any two: who says that one line is switched is believed.</summary>
    [Theory]
    [InlineData("", "poleCount=1P", "Fails")]
    [InlineData("sidesWired=NO; linesSwitched=1", "poleCount=1P", "Meets")]
    [InlineData("sidesWired=both", "poleCount=1P", "Fails")]
    [InlineData("", "poleCount=2P", "Meets")]
    [InlineData("linesSwitched=1", "poleCount=2P", "MeetsWithChanges leavePoleUnused")]
    [InlineData("", "contactAction=one of each", "Meets")] // which are two
    public void Of_one_of_each_both_count_until_fewer_lines_are_said_to_be_switched(string site, string part, string answer) => Answer("contactAction=one of each", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("sidesWired=NO", "2 lines are switched; it has 1 pole. Both poles of the old one count until fewer lines are said to be switched.")]
    [InlineData("sidesWired=both", "2 lines are switched; it has 1 pole.")]
    public void Which_lines_count_of_one_of_each_is_said_where_one_is_not_wired(string site, string said) => Judge("contactAction=one of each", site, "poleCount=1P").Sentence.ShouldBe(said);

    [Fact]
    public void The_change_says_what_is_lost() =>
        Judge("poleCount=1P with shunt", "shuntFeedsHeat=yes", "poleCount=2P").Changes.ShouldHaveSingleItem().Text
            .ShouldBe("feed the crankcase heat from the line side: with 2 poles both lines open, and the shunt that fed it is gone");
}
