using PartsMatch.Fit.Capacitors.Aspects;

namespace PartsMatch.Fit.Tests.Capacitors.Aspects;

/// <summary>3/4 in over the can for terminals and wires: practice.</summary>
[Trait("Source", "capacitor.canHeight")]
public sealed class CanHeightTests : CapacitorAspectTests<CanHeight, HeightFacet>
{
    [Theory]
    [InlineData("", "heightRoom=4 in", "height=3.25 in", "Meets")]
    [InlineData("", "heightRoom=4 in", "height=82.56 mm", "Fails")] // 3.25 in is 82.55 mm
    [InlineData("height=3 in", "", "height=3 in", "Meets")]
    [InlineData("height=3 in", "", "height=76.21 mm", "Unknown Site heightRoom")]
    [InlineData("height=3 in", "heightRoom=5 in", "height=4 in", "Meets")]
    [InlineData("", "", "height=3 in", "Unknown Site heightRoom")]
    [InlineData("height=3 in", "", "", "Unknown Part height")]
    public void A_can_goes_into_the_room_with_its_terminals(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
