using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>Ammonia eats copper and brass: from memory.</summary>
[Trait("Source", "pressureControl.materials")]
public sealed class MaterialsTests : PressureControlAspectTests<Materials, MaterialsFacet>
{
    [Theory]
    [InlineData("", "refrigerant=R-717", "materials=copper, brass", "Fails")]
    [InlineData("", "refrigerant=R-717", "materials=steel", "Meets")]
    [InlineData("", "refrigerant=R-717", "materials=steel, brass", "Fails")]
    [InlineData("", "refrigerant=R-717", "", "Unknown Part materials")]
    [InlineData("", "refrigerant=R-404A", "materials=copper", "Meets")]
    [InlineData("", "refrigerant=R-404A", "", "Meets")]
    [InlineData("", "", "materials=copper", "Meets")]
    [InlineData("materials=steel", "", "materials=copper", "Unknown Site refrigerant")]
    [InlineData("materials=steel", "", "materials=steel", "Meets")]
    public void Ammonia_asks_for_steel(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
