using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>At least the test pressure: practice.</summary>
[Trait("Source", "pressureControl.workingPressure")]
public sealed class WorkingPressureTests : PressureControlAspectTests<WorkingPressure, PressureMostFacet>
{
    [Theory]
    [InlineData("", "testPressure=475 psi", "pressureMost=475 psi", "Meets")]
    [InlineData("", "testPressure=475 psi", "pressureMost=474.9 psi", "Fails")]
    [InlineData("", "testPressure=475 psi", "pressureMost=475.1 psi", "Meets")]
    [InlineData("pressureMost=475 psi", "", "pressureMost=475 psi", "Meets")]
    [InlineData("pressureMost=475 psi", "", "pressureMost=450 psi", "Unknown Site testPressure")]
    [InlineData("pressureMost=450 psi", "testPressure=475 psi", "pressureMost=450 psi", "Fails")]
    [InlineData("", "testPressure=475 psi", "", "Unknown Part pressureMost")]
    public void It_bears_the_test(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
