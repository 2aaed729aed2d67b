using PartsMatch.Fit.Capacitors.Aspects;

namespace PartsMatch.Fit.Tests.Capacitors.Aspects;

/// <summary>I = 2πfCV (physics): the current rises with frequency. 1 % for a supply that wanders: practice.</summary>
[Trait("Source", "capacitor.capacitorFrequency")]
public sealed class CapacitorFrequencyTests : CapacitorAspectTests<CapacitorFrequency, FrequencyFacet>
{
    [Theory]
    [InlineData("supplyFrequency=60 Hz", "frequency=60 Hz", "Meets")]
    [InlineData("supplyFrequency=60 Hz", "frequency=50/60 Hz", "Meets")]
    [InlineData("supplyFrequency=50 Hz", "frequency=60 Hz", "Meets")]
    [InlineData("supplyFrequency=50.5 Hz", "frequency=50 Hz", "Meets")]
    [InlineData("supplyFrequency=50.6 Hz", "frequency=50 Hz", "Fails")]
    [InlineData("supplyFrequency=60 Hz", "frequency=50 Hz", "Fails")]
    [InlineData("", "frequency=50 Hz", "Unknown Site supplyFrequency")]
    [InlineData("", "frequency=50/60 Hz", "Meets")]
    [InlineData("supplyFrequency=60 Hz", "", "Unknown Part frequency")]
    [InlineData("", "", "Unknown Part frequency")]
    public void The_supply_has_at_most_the_highest_marked_frequency(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Fact]
    public void The_only_frequency_of_the_old_one_tells_the_supply_s() => Answer("frequency=60 Hz", "", "frequency=50 Hz").ShouldBe("Fails");
}
