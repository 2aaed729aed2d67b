using PartsMatch.Fit.Valves.SolenoidValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves.SolenoidValves.Aspects;

/// <summary>250 psi before it and 50 psi behind it need 200 psi: published worked example.</summary>
[Trait("Source", "solenoidValve.opensAgainst")]
public sealed class OpensAgainstTests : SolenoidAspectTests<OpensAgainst, OpeningFacet>
{
    [Theory]
    [InlineData("", "inletMost=250 psi; outletLeast=50 psi", "openingDifferential=200 psi", "Meets")]
    [InlineData("", "inletMost=250 psi; outletLeast=50 psi", "openingDifferential=199 psi", "Fails")]
    [InlineData("", "inletMost=250 psi; outletLeast=50 psi", "openingDifferential=201 psi", "Meets")]
    [InlineData("", "inletMost=17.24 bar; outletLeast=3.45 bar", "openingDifferential=14 bar", "Meets")]
    [InlineData("", "inletMost=250 psi; outletLeast=-14 psi", "openingDifferential=250 psi", "Fails")] // down in a vacuum there is more to open against
    [InlineData("", "inletMost=250 psi", "openingDifferential=300 psi", "Unknown Site outletLeast")]
    [InlineData("", "", "openingDifferential=300 psi", "Unknown Site inletMost")]
    [InlineData("openingDifferential=300 psi", "", "openingDifferential=300 psi", "Meets")]
    [InlineData("openingDifferential=300 psi", "", "openingDifferential=299 psi", "Unknown Site inletMost")]
    [InlineData("", "inletMost=250 psi; outletLeast=50 psi", "", "Unknown Part openingDifferential")]
    public void It_opens_against_the_largest_difference(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
