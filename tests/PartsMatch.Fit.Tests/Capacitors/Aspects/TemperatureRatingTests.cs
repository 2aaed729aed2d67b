using PartsMatch.Fit.Capacitors.Aspects;

namespace PartsMatch.Fit.Tests.Capacitors.Aspects;

/// <summary>70 °C or more, and not below the air: practice.</summary>
[Trait("Source", "capacitor.temperatureRating")]
public sealed class TemperatureRatingTests : CapacitorAspectTests<TemperatureRating, TemperatureFacet>
{
    [Theory]
    [InlineData("", "temperatureMost=70 °C", "Meets")]
    [InlineData("", "temperatureMost=158 °F", "Meets")] // 70 °C
    [InlineData("", "temperatureMost=69.9 °C", "Fails")]
    [InlineData("", "temperatureMost=85 °C", "Meets")]
    [InlineData("airMost=40 °C", "temperatureMost=65 °C", "Fails")]
    [InlineData("airMost=75 °C", "temperatureMost=75 °C", "Meets")]
    [InlineData("airMost=75.1 °C", "temperatureMost=75 °C", "Fails")]
    [InlineData("airMost=40 °C", "", "Unknown Part temperatureMost")]
    public void At_least_70_degrees_and_at_least_the_air(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("40 °C", 0)]
    [InlineData("65 °C", 0.5)]
    [InlineData("70 °C", 1)]
    public void The_nearer_the_air_the_larger_the_shortfall(string air, double shortfall) =>
        Judge("", $"airMost={air}", "temperatureMost=70 °C").Shortfall.ShouldBe(shortfall, 1e-9);
}
