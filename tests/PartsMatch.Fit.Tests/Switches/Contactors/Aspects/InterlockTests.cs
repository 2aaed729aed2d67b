using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Interlocked contactors stay so: practice.</summary>
[Trait("Source", "contactor.interlock")]
public sealed class InterlockTests : ContactorAspectTests<Interlock, InterlockFacet>
{
    [Theory]
    [InlineData("hasInterlock=yes", "hasInterlock=yes", "Unknown Site isInterlocked")]
    [InlineData("hasInterlock=yes", "hasInterlock=no", "Unknown Site isInterlocked")]
    [InlineData("hasInterlock=yes", "", "Unknown Site isInterlocked")]
    [InlineData("hasInterlock=no", "hasInterlock=no", "Meets")]
    [InlineData("hasInterlock=no", "", "Meets")]
    [InlineData("", "hasInterlock=no", "Meets")]
    public void An_old_one_that_takes_an_interlock_may_have_none_on(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Theory]
    [InlineData("", "isInterlocked=yes", "hasInterlock=yes", "MeetsWithChanges bringInterlock")]
    [InlineData("hasInterlock=yes", "isInterlocked=yes", "hasInterlock=yes", "MeetsWithChanges bringInterlock")]
    [InlineData("hasInterlock=yes", "isInterlocked=yes", "hasInterlock=no", "Fails")]
    [InlineData("", "isInterlocked=yes", "hasInterlock=no", "Fails")]
    [InlineData("", "isInterlocked=yes", "", "Unknown Part hasInterlock")]
    [InlineData("", "isInterlocked=no", "hasInterlock=no", "Meets")]
    [InlineData("hasInterlock=yes", "isInterlocked=no", "hasInterlock=no", "Meets")] // it takes one, and has none on
    [InlineData("poleCount=3 poles", "isInterlocked=no", "", "Meets")]
    public void The_place_tells_where_the_plate_does_not(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>Pairs that reverse, change speed or start in star and delta switch three lines: practice.</summary>
    [Theory]
    [InlineData("poleCount=3 poles", "hasInterlock=no", "Unknown Site isInterlocked")]
    [InlineData("poleCount=3 poles", "", "Unknown Site isInterlocked")]
    [InlineData("poleCount=3 poles", "hasInterlock=yes", "Unknown Site isInterlocked")] // where it is, the lever is brought
    [InlineData("poleCount=2 poles", "hasInterlock=no", "Meets")]
    [InlineData("poleCount=3 poles; hasInterlock=no", "hasInterlock=no", "Meets")]
    public void Of_three_lines_it_is_asked(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Fact]
    public void One_that_takes_none_and_is_interlocked_is_a_contradiction() =>
        Families.Find("contactor")!.ReadNeed(new(null, [new("hasInterlock", "no")], [new("isInterlocked", "yes")])).Contradictions.ShouldHaveSingleItem().Sentence.ShouldContain("one of the two is misread");
}
