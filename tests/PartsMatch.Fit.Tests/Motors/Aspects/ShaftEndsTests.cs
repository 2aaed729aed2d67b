using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>One shaft or two: practice.</summary>
[Trait("Source", "motor.shaftEnds")]
public sealed class ShaftEndsTests : BodyAspectTests<ShaftEnds, EndsFacet>
{
    [Theory]
    [InlineData("shaftEnds=1", "", "shaftEnds=1", "Meets")]
    [InlineData("shaftEnds=2", "", "shaftEnds=2", "Meets")]
    [InlineData("shaftEnds=2", "", "shaftEnds=1", "Fails")]
    [InlineData("shaftEnds=1", "", "shaftEnds=2", "MeetsWithChanges guardSecondShaft")]
    [InlineData("shaftEnds=1", "", "", "MeetsWithChanges guardSecondShaft")]
    [InlineData("shaftEnds=2", "", "", "Unknown Part shaftEnds")]
    [InlineData("", "", "shaftEnds=1", "Unknown Plate shaftEnds")]
    [InlineData("", "", "shaftEnds=2", "MeetsWithChanges guardSecondShaft")]
    [InlineData("", "", "", "Unknown Plate shaftEnds")]
    [InlineData("", "fanKind=propeller", "shaftEnds=1", "Meets")]
    [InlineData("", "fanKind=blower wheel", "shaftEnds=1", "Unknown Plate shaftEnds")]
    [InlineData("shaftEnds=2", "fanKind=propeller", "shaftEnds=1", "Fails")]
    public void As_many_ends_as_fans_are_needed(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
