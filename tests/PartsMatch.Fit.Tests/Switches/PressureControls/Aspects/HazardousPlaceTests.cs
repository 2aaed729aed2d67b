using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>Sealed where a flammable refrigerant is: ASHRAE 15, IEC 60335-2-40 and -2-89, from memory.</summary>
[Trait("Source", "pressureControl.hazardousPlace")]
public sealed class HazardousPlaceTests : PressureControlAspectTests<HazardousPlace, IgnitionFacet>
{
    [Theory]
    [InlineData("hazard=A2L", "contacts=open", "Fails")]
    [InlineData("hazard=A3", "contacts=sealed", "MeetsWithChanges checkListing")]
    [InlineData("hazard=A3", "contacts=sealed; hazards=A3", "Meets")]
    [InlineData("hazard=A3", "", "Unknown Part contacts")]
    [InlineData("hazard=none", "contacts=open", "Meets")]
    public void It_is_sealed_there(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    /// <summary>ASHRAE 34: R-404A is A1, R-32 A2L, R-290 A3, R-717 B2L (published).</summary>
    [Theory]
    [InlineData("refrigerant=R-404A", "contacts=open", "Meets")]
    [InlineData("refrigerant=R-32", "contacts=open", "Fails")]
    [InlineData("refrigerant=R-32", "contacts=sealed", "MeetsWithChanges checkListing")]
    [InlineData("refrigerant=R-32", "contacts=sealed; hazards=A2L", "Meets")]
    [InlineData("refrigerant=R-290", "contacts=sealed; hazards=A2L", "MeetsWithChanges checkListing")]
    [InlineData("refrigerant=R-290", "contacts=sealed; hazards=A3", "Meets")]
    [InlineData("refrigerant=R-290", "", "Unknown Part contacts")]
    [InlineData("refrigerant=R-290; hazard=none", "contacts=open", "Meets")] // it cannot reach the switch
    [InlineData("refrigerant=R-717", "contacts=open", "Meets")] // its room is classified or not, which is said by itself
    public void A_refrigerant_that_burns_allows_no_open_contacts(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}
