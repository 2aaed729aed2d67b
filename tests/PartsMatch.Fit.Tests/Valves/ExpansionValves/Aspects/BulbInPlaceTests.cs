using PartsMatch.Fit.Tests.Notes;
using PartsMatch.Fit.Valves.ExpansionValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves.ExpansionValves.Aspects;

/// <summary>A bulb goes into its well, or lies on straight pipe: practice.</summary>
[Trait("Source", "expansionValve.bulbInPlace")]
public sealed class BulbInPlaceTests : ExpansionAspectTests<BulbInPlace, BulbSizeFacet>
{
    [Theory]
    [InlineData("bulbPlace=strapped on", "bulbDiameter=3/4 in", "Meets")]
    [InlineData("bulbPlace=strapped on", "", "Meets")]
    [InlineData("", "", "Meets")] // nothing says that there is a well
    [InlineData("wellBore=1/2 in", "bulbDiameter=1/2 in", "Meets")]
    [InlineData("wellBore=1/2 in", "bulbDiameter=12.71 mm", "MeetsWithChanges strapBulbOn")]
    [InlineData("wellBore=1/2 in", "bulbDiameter=3/4 in", "MeetsWithChanges strapBulbOn")]
    [InlineData("wellBore=9/16 in", "bulbDiameter=1/2 in", "Meets")] // 1/16 in of play
    [InlineData("wellBore=37/64 in", "bulbDiameter=1/2 in", "MeetsWithChanges fillWell")]
    [InlineData("wellBore=1/2 in", "", "Unknown Part bulbDiameter")]
    [InlineData("bulbPlace=in a well", "bulbDiameter=1/2 in", "Unknown Site wellBore")]
    public void A_bulb_goes_into_its_well(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("bulbPlace=strapped on; bulbRoom=3-1/2 in", "bulbLength=3-1/2 in", "Meets")]
    [InlineData("bulbPlace=strapped on; bulbRoom=3-1/2 in", "bulbLength=3.6 in", "MeetsWithChanges checkBulbRoom")]
    [InlineData("bulbRoom=3-1/2 in", "bulbLength=4 in", "MeetsWithChanges checkBulbRoom")]
    [InlineData("bulbRoom=3-1/2 in", "", "Unknown Part bulbLength")]
    [InlineData("wellBore=5/8 in; bulbRoom=3-1/2 in", "bulbDiameter=1/2 in; bulbLength=4 in", "MeetsWithChanges fillWell checkBulbRoom")]
    [InlineData("bulbPlace=in a well; bulbRoom=3-1/2 in", "bulbDiameter=1/2 in; bulbLength=4 in", "Unknown Site wellBore")]
    [InlineData("wellBore=1/2 in; bulbRoom=3-1/2 in", "bulbDiameter=3/4 in; bulbLength=4 in", "MeetsWithChanges strapBulbOn")] // beside the well, whose depth says nothing of the pipe
    [InlineData("wellBore=1/2 in; bulbRoom=3-1/2 in", "bulbDiameter=3/4 in", "MeetsWithChanges strapBulbOn")]
    public void A_bulb_has_room(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("bulbDiameter=1/2 in", "bulbDiameter=1/2 in", "Meets")]
    [InlineData("bulbDiameter=3/4 in", "bulbDiameter=1/2 in", "MeetsWithChanges fillWell")]
    [InlineData("bulbDiameter=1/2 in", "bulbDiameter=3/4 in", "Unknown Site wellBore")]
    [InlineData("bulbDiameter=1/2 in; bulbLength=3 in", "bulbDiameter=1/2 in; bulbLength=3 in", "Meets")]
    [InlineData("bulbDiameter=1/2 in; bulbLength=3 in", "bulbDiameter=1/2 in; bulbLength=3-1/2 in", "Unknown Site bulbRoom")]
    [InlineData("bulbDiameter=1/2 in; bulbLength=3 in", "bulbDiameter=1/2 in", "Unknown Part bulbLength")]
    public void What_goes_into_an_unmeasured_well_is_told_by_the_old_bulb(string plate, string part, string answer) => Answer(plate, "bulbPlace=in a well", part).ShouldBe(answer);

    [Fact]
    public void A_bulb_strapped_on_beside_its_well_is_not_measured_by_the_old_one_in_it() =>
        Answer("bulbDiameter=1/2 in; bulbLength=3 in", "bulbPlace=in a well; wellBore=1/2 in", "bulbDiameter=3/4 in; bulbLength=4 in").ShouldBe("MeetsWithChanges strapBulbOn");

    [Fact]
    public void A_bulb_too_thick_for_its_well_is_a_contradiction_of_the_old_one_and_so_is_a_well_under_straps()
    {
        var family = Families.Find("expansionValve")!;
        family.ReadNeed(new(null, [new("bulbDiameter", "3/4 in")], [new("wellBore", "1/2 in")])).Contradictions.Single().Fields.ShouldBe(["bulbDiameter"]);
        family.ReadNeed(new(null, [new("bulbDiameter", "1/2 in")], [new("wellBore", "1/2 in")])).Contradictions.ShouldBeEmpty();
        family.ReadNeed(new(null, [], [new("bulbPlace", "strapped on"), new("wellBore", "1/2 in")])).Contradictions.Single().SiteFields.ShouldBe(["bulbPlace", "wellBore"]);
    }

    /// <summary>The bulb is put in one place.</summary>
    [Theory]
    [InlineData("wellBore=1/2 in", "bulbDiameter=1/2 in", "push the bulb to the bottom of its well")]
    [InlineData("wellBore=1/2 in", "bulbDiameter=3/4 in", "strap the bulb tight on clean, level suction pipe")]
    [InlineData("", "bulbDiameter=1/2 in", "strap the bulb tight on clean, level suction pipe")]
    public void The_notes_say_where_the_bulb_goes(string site, string part, string step)
    {
        string[] places = ["push the bulb to the bottom of its well", "strap the bulb tight on clean, level suction pipe"];
        var words = NotesCases.Of("expansionValve", string.Empty, site, part).Notes.Steps.Select(one => one.Words);
        places.Where(place => words.Any(one => one.Contains(place, StringComparison.Ordinal))).ShouldBe([step]);
    }
}
