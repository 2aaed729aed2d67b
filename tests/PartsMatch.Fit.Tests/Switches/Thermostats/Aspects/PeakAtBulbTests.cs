using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>At least the peak of the defrost: practice.</summary>
[Trait("Source", "thermostat.peakAtBulb")]
public sealed class PeakAtBulbTests : ThermostatAspectTests<PeakAtBulb, BulbMostFacet>
{
    [Theory]
    [InlineData("", "defrostPeak=90 °F", "bulbMost=90 °F", "Meets")]
    [InlineData("", "defrostPeak=90 °F", "bulbMost=89.9 °F", "Fails")]
    [InlineData("", "defrostPeak=32 °C", "bulbMost=32.1 °C", "Meets")]
    [InlineData("", "defrostPeak=90 °F", "", "Unknown Part bulbMost")]
    [InlineData("bulbMost=140 °F", "", "bulbMost=140 °F", "Meets")]
    [InlineData("bulbMost=140 °F", "", "bulbMost=120 °F", "Unknown Site defrostPeak")]
    [InlineData("", "", "bulbMost=140 °F", "Unknown Site defrostPeak")]
    public void It_bears_the_defrost(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
