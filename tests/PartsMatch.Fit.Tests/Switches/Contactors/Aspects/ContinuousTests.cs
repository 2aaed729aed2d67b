using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Motors and heaters together: practice; 27 A continuous is NEMA ICS 2's for size 1 (published).</summary>
[Trait("Source", "contactor.continuous")]
public sealed class ContinuousTests : ContactorAspectTests<Continuous, ContinuousFacet>
{
    [Theory]
    [InlineData("motors=14/73 A; heaterAmps=13 A", "continuousAmps=27 A", "Meets")]
    [InlineData("motors=14/73 A; heaterAmps=13.1 A", "continuousAmps=27 A", "Fails")]
    [InlineData("motors=14/73 A; heaterAmps=12.9 A", "continuousAmps=27 A", "Meets")]
    [InlineData("motors=14/73 A; heaterAmps=13.1 A", "size=NEMA 1", "Fails")]
    [InlineData("motors=14/73 A; heaterAmps=13 A", "", "Unknown Part continuousAmps")]
    [InlineData("motors=14/73 A", "", "Meets")]
    [InlineData("heaterAmps=13 A", "", "Meets")]
    [InlineData("", "", "Meets")]
    [InlineData("loads=motor, heater; heaterAmps=13 A", "continuousAmps=27 A", "Unknown Site motors")]
    [InlineData("loads=motor, heater; motors=13 A", "continuousAmps=27 A", "Unknown Site heaterAmps")]
    public void A_pole_carries_them_together(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}
