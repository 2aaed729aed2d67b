using PartsMatch.Fit.Valves;
using PartsMatch.Fit.Valves.SolenoidValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves.SolenoidValves.Aspects;

/// <summary>Working pressure at least the design pressure: ASHRAE 15, from memory.</summary>
[Trait("Source", "solenoidValve.bodyPressure")]
public sealed class BodyPressureTests : SolenoidAspectTests<BodyPressure, PressureFacet>
{
    [Theory]
    [InlineData("", "designPressure=450 psi", "workingPressure=450 psi", "Meets")]
    [InlineData("", "designPressure=450 psi", "workingPressure=449 psi", "Fails")]
    [InlineData("", "designPressure=450 psi", "workingPressure=451 psi", "Meets")]
    [InlineData("", "designPressure=90 bar", "workingPressure=500 psi", "Fails")] // carbon dioxide: 1305 psi
    [InlineData("workingPressure=500 psi", "", "workingPressure=500 psi", "Meets")]
    [InlineData("workingPressure=500 psi", "", "workingPressure=450 psi", "Unknown Site designPressure")]
    [InlineData("", "", "workingPressure=450 psi", "Unknown Site designPressure")]
    [InlineData("", "designPressure=450 psi", "", "Unknown Part workingPressure")]
    public void Its_body_holds_the_design_pressure(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
