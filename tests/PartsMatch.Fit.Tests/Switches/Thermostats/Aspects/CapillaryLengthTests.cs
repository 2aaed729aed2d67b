using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>As long as the way to the bulb: practice; 6 ft = 72 in.</summary>
[Trait("Source", "thermostat.capillaryLength")]
public sealed class CapillaryLengthTests : ThermostatAspectTests<CapillaryLength, CapillaryFacet>
{
    [Theory]
    [InlineData("", "capillaryReach=72 in", "capillary=6 ft", "Meets")]
    [InlineData("", "capillaryReach=72 in", "capillary=71.9 in", "Fails")]
    [InlineData("", "capillaryReach=72 in", "capillary=72.1 in", "Meets")]
    [InlineData("", "capillaryReach=72 in", "", "Unknown Part capillary")]
    [InlineData("capillary=72 in", "", "capillary=72 in", "Meets")]
    [InlineData("capillary=72 in", "", "capillary=36 in", "Unknown Site capillaryReach")]
    [InlineData("", "", "capillary=36 in", "Unknown Site capillaryReach")]
    [InlineData("", "capillaryReach=72 in", "bulb=strap-on disc", "Meets")]
    public void It_reaches_the_bulb(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
