using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>Sealed where a flammable refrigerant is: ASHRAE 15, IEC 60335-2-40 and -2-89, from memory.</summary>
[Trait("Source", "pressureControl.hazardousPlace")]
public sealed class HazardousPlaceTests : PressureControlAspectTests<HazardousPlace, IgnitionFacet>
{
    [Theory]
    [InlineData("hazard=A2L", "contacts=open", "Fails")]
    [InlineData("hazard=A3", "contacts=sealed", "MeetsWithChanges checkSwitchListing")]
    [InlineData("hazard=A3", "contacts=sealed; hazards=A3", "Meets")]
    [InlineData("hazard=A3", "", "Unknown Part contacts")]
    [InlineData("hazard=none", "contacts=open", "Meets")]
    public void It_is_sealed_there(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}
