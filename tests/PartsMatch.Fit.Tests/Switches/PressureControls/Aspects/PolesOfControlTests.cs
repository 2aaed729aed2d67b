using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>As many poles: practice.</summary>
[Trait("Source", "pressureControl.polesOfControl")]
public sealed class PolesOfControlTests : PressureControlAspectTests<PolesOfControl, ControlPolesFacet>
{
    [Theory]
    [InlineData("poles=1", "poles=1", "Meets")]
    [InlineData("poles=1", "poles=2", "Meets")]
    [InlineData("poles=2", "poles=1", "Fails")]
    [InlineData("", "poles=1", "Unknown Plate poles")]
    [InlineData("", "poles=2", "Meets")]
    [InlineData("", "", "Unknown Plate poles")]
    [InlineData("poles=2", "", "Unknown Part poles")]
    [InlineData("poles=1", "", "Meets")]
    public void There_are_as_many(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Theory]
    [InlineData("poles=1", "poles=1", "The old one had 1 pole, it has 1.")]
    [InlineData("poles=2", "poles=1", "The old one had 2 poles, it has 1.")]
    public void One_is_a_pole_and_two_are_poles(string plate, string part, string sentence) => Judge(plate, "", part).Sentence.ShouldBe(sentence);
}
