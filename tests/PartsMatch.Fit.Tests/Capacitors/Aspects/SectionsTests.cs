using PartsMatch.Fit.Capacitors.Aspects;

namespace PartsMatch.Fit.Tests.Capacitors.Aspects;

/// <summary>Two single ones for a two-section one: practice.</summary>
[Trait("Source", "capacitor.sections")]
public sealed class SectionsTests : CapacitorAspectTests<Sections, SectionsFacet>
{
    [Theory]
    [InlineData("rating=5 µF", "", "rating=5 µF", "Meets")]
    [InlineData("rating=45+5 µF", "", "rating=45+5 µF", "Meets")]
    [InlineData("rating=45+5 µF", "", "rating=45 µF", "MeetsWithChanges bringSecondCapacitor")]
    [InlineData("rating=5 µF", "", "rating=45+5 µF", "MeetsWithChanges leaveCapacitorSectionUnused")]
    [InlineData("rating=45+5 µF", "motorAsksFor=45 µF; secondMotorAsksFor=none", "rating=45 µF", "Meets")]
    [InlineData("", "motorAsksFor=45 µF; secondMotorAsksFor=5 µF", "rating=45 µF", "MeetsWithChanges bringSecondCapacitor")]
    [InlineData("rating=45+5 µF", "motorAsksFor=45 µF", "rating=45 µF", "MeetsWithChanges bringSecondCapacitor")] // the old can still served two
    [InlineData("", "", "rating=45 µF", "Unknown Plate rating")]
    [InlineData("rating=45 µF", "", "", "Unknown Part rating")]
    public void A_section_for_each_motor(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void The_section_that_serves_is_named() =>
        Judge("rating=5 µF", "", "rating=45+5 µF").Changes.ShouldHaveSingleItem().Text.ShouldBe("use its 5 µF section; leave the 45 µF section unused, its terminal covered");

    [Fact]
    public void The_second_capacitor_is_named() =>
        Judge("rating=45+5 µF", "", "rating=45 µF").Changes.ShouldHaveSingleItem().Text.ShouldBe("bring a second capacitor of 5 µF for the second motor, with a strap");
}
