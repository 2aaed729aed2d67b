using PartsMatch.Fit.Capacitors.Aspects;

namespace PartsMatch.Fit.Tests.Capacitors.Aspects;

/// <summary>A strap gives 1/16 in: practice.</summary>
[Trait("Source", "capacitor.strap")]
public sealed class StrapTests : CapacitorAspectTests<Strap, CanFacet>
{
    [Theory]
    [InlineData("can=round; diameter=2 in", "Meets")]
    [InlineData("can=round; diameter=52.39 mm", "Meets")] // 50.8 + 1.59
    [InlineData("can=round; diameter=52.4 mm", "MeetsWithChanges fitStrap")]
    [InlineData("can=round; diameter=49.21 mm", "Meets")]
    [InlineData("can=round; diameter=49.2 mm", "MeetsWithChanges fitStrap")]
    [InlineData("can=oval; diameter=2 in", "MeetsWithChanges fitStrap")]
    [InlineData("can=oval", "MeetsWithChanges fitStrap")]
    [InlineData("diameter=2.5 in", "MeetsWithChanges fitStrap")]
    [InlineData("can=round", "Unknown Part diameter")]
    [InlineData("diameter=2 in", "Unknown Part can")]
    public void A_strap_holds_a_can_of_its_shape_and_diameter(string part, string answer)
    {
        Answer("", "strapHolds=round; strapDiameter=2 in", part).ShouldBe(answer);
        Answer("can=round; diameter=2 in", "", part).ShouldBe(answer);
    }

    [Theory]
    [InlineData("", "Unknown Plate can")]
    [InlineData("can=round", "Unknown Plate diameter")]
    public void What_the_strap_holds_may_be_unknown(string plate, string answer) => Answer(plate, "", "can=round; diameter=2 in").ShouldBe(answer);

    [Fact]
    public void The_strap_is_named_by_both_cans() =>
        Judge("can=round; diameter=2 in", "", "can=oval; diameter=2.5 in").Changes.ShouldHaveSingleItem().Text
            .ShouldBe("fit a strap for an oval can of 2-1/2 in (63.5 mm); the one there holds a round can of 2 in (50.8 mm)");
}
