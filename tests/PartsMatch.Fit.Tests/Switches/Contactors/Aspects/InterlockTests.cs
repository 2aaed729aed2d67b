using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Interlocked contactors stay so: practice.</summary>
[Trait("Source", "contactor.interlock")]
public sealed class InterlockTests : ContactorAspectTests<Interlock, InterlockFacet>
{
    [Theory]
    [InlineData("hasInterlock=yes", "hasInterlock=yes", "Meets")]
    [InlineData("hasInterlock=yes", "hasInterlock=no", "Fails")]
    [InlineData("hasInterlock=yes", "", "Unknown Part hasInterlock")]
    [InlineData("hasInterlock=no", "hasInterlock=no", "Meets")]
    [InlineData("", "hasInterlock=no", "Meets")]
    public void It_stays(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
