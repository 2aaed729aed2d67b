using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Tolerance 0.04 mm and stocked bushings: practice. Inch arithmetic: 25.4 mm exactly.</summary>
[Trait("Source", "motor.shaftDiameter")]
[Trait("Source", "series.bushings")]
public sealed class ShaftDiameterTests : BodyAspectTests<ShaftDiameter, DiameterFacet>
{
    [Theory]
    [InlineData("1/2 in", "1/2 in", "Meets")]
    [InlineData("1/2 in", "12.7 mm", "Meets")]
    [InlineData("10 mm", "10.03 mm", "Meets")]
    [InlineData("10 mm", "10.04 mm", "Meets")]
    [InlineData("10 mm", "10.05 mm", "Fails")]
    [InlineData("10 mm", "9.96 mm", "Meets")]
    [InlineData("10 mm", "9.95 mm", "Fails")]
    [InlineData("5/16 in", "8 mm", "Fails")] // worked by hand: 7.94 mm, 0.06 mm too thick
    [InlineData("8 mm", "5/16 in", "Fails")] // 0.06 mm of play, and no bushing is that thin
    [InlineData("1/2 in", "5/8 in", "Fails")]
    [InlineData("1/2 in", "3/8 in", "MeetsWithChanges fitBushing")]
    [InlineData("3/8 in", "5/16 in", "MeetsWithChanges fitBushing")]
    [InlineData("12 mm", "10 mm", "MeetsWithChanges fitBushing")]
    [InlineData("1/2 in", "12 mm", "Fails")]
    [InlineData("5/8 in", "1/4 in", "Fails")]
    public void A_shaft_goes_into_the_hub_or_takes_a_stocked_bushing(string bore, string shaft, string answer) =>
        Answer("", $"hubBore={bore}", $"shaftDiameter={shaft}").ShouldBe(answer);

    [Theory]
    [InlineData("shaftDiameter=1/2 in", "", "shaftDiameter=1/2 in", "Meets")]
    [InlineData("shaftDiameter=1/2 in", "hubBore=5/8 in", "shaftDiameter=5/8 in", "Meets")]
    [InlineData("", "", "shaftDiameter=1/2 in", "Unknown Plate shaftDiameter")]
    [InlineData("shaftDiameter=1/2 in", "", "", "Unknown Part shaftDiameter")]
    [InlineData("shaftDiameter=1/2 in", "bladeStays=no", "shaftDiameter=1/2 in", "Unknown Site newBladeBore")] // the hub goes with its blade
    [InlineData("shaftDiameter=1/2 in", "bladeStays=no; newBladeBore=5/8 in", "shaftDiameter=5/8 in", "Meets")]
    [InlineData("shaftDiameter=1/2 in", "bladeStays=no; hubBore=5/8 in; newBladeBore=1/2 in", "shaftDiameter=5/8 in", "Fails")]
    [InlineData("shaftDiameter=1/2 in", "newBladeBore=5/8 in", "shaftDiameter=1/2 in", "Meets")]
    public void The_hub_stands_before_the_old_shaft(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void Three_eighths_of_an_inch_and_9_525_mm_are_one_facet() =>
        Facet("shaftDiameter=3/8 in").ShouldBe(Facet("shaftDiameter=9.525 mm"));

    [Fact]
    public void The_shortfall_is_1_at_the_limit_and_half_way_it_is_a_half()
    {
        var finding = Judge("", "hubBore=10 mm", "shaftDiameter=10.02 mm");
        finding.Shortfall.ShouldBe(0.5, 1e-6);
        finding.Margin!.Value.Value.ShouldBe(0.02, 1e-6);
        Judge("", "hubBore=10 mm", "shaftDiameter=10.04 mm").Shortfall.ShouldBe(1, 1e-6);
    }

    [Fact]
    public void The_bushing_is_named_by_both_diameters() =>
        Judge("", "hubBore=1/2 in", "shaftDiameter=3/8 in").Changes.ShouldHaveSingleItem().Text.ShouldBe("fit a bushing from a 3/8 in (9.53 mm) shaft to a 1/2 in (12.7 mm) hub");

    [Fact]
    public void The_sentence_names_the_limit() =>
        Judge("", "hubBore=5/16 in", "shaftDiameter=8 mm").Sentence.ShouldBe("Its shaft of 8 mm (0.315 in) does not go into the hub's 5/16 in (7.94 mm); at most 0.04 mm over would.");
}
