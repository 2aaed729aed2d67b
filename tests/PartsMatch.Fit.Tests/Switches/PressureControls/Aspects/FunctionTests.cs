using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>The same function: practice.</summary>
[Trait("Source", "pressureControl.function")]
public sealed class FunctionTests : PressureControlAspectTests<Function, FunctionFacet>
{
    [Theory]
    [InlineData("function=high pressure", "function=high pressure", "Meets")]
    [InlineData("function=high pressure", "function=low pressure", "Fails")]
    [InlineData("function=low pressure", "function=fan cycling", "Fails")]
    [InlineData("function=fan cycling", "function=fan cycling", "Meets")]
    [InlineData("", "function=low pressure", "Unknown Plate function")]
    [InlineData("function=low pressure", "", "Unknown Part function")]
    public void It_is_the_same_or_fails(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
