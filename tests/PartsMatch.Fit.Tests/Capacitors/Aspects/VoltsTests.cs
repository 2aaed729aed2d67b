using PartsMatch.Fit.Capacitors.Aspects;

namespace PartsMatch.Fit.Tests.Capacitors.Aspects;

/// <summary>At least the motor plate's volts: practice.</summary>
[Trait("Source", "capacitor.volts")]
public sealed class VoltsTests : CapacitorAspectTests<Volts, VoltsFacet>
{
    [Theory]
    [InlineData("370 V", "Meets")]
    [InlineData("369.9 V", "Fails")]
    [InlineData("370.1 V", "Meets")]
    [InlineData("440 V", "Meets")]
    [InlineData("250 V", "Fails")]
    public void At_least_370_V_for_370_V(string volts, string answer) => Answer("", "motorAsksFor=5 µF 370 V", $"rating=5 µF {volts}").ShouldBe(answer);

    [Theory]
    [InlineData("rating=5 µF 440 V", "motorAsksFor=5 µF 370 V", "rating=5 µF 370 V", "Meets")]
    [InlineData("rating=5 µF 440 V", "motorAsksFor=5 µF", "rating=5 µF 370 V", "Fails")]
    [InlineData("", "motorAsksFor=45 µF 370 V; secondMotorAsksFor=5 µF 440 V", "rating=45+5 µF 370 V", "Fails")]
    [InlineData("", "motorAsksFor=45 µF 370 V; secondMotorAsksFor=5 µF", "rating=45+5 µF 370 V", "Unknown Site secondMotorAsksFor")]
    [InlineData("", "motorAsksFor=45 µF; secondMotorAsksFor=5 µF 440 V", "rating=45+5 µF 440 V", "Unknown Site motorAsksFor")]
    [InlineData("", "motorAsksFor=45 µF; secondMotorAsksFor=5 µF 440 V", "rating=45+5 µF 370 V", "Fails")]
    [InlineData("", "", "rating=5 µF 370 V", "Unknown Plate rating")]
    [InlineData("rating=5 µF 370 V", "", "rating=5 µF", "Unknown Part rating")]
    public void The_higher_of_what_two_motors_ask_for_counts(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
