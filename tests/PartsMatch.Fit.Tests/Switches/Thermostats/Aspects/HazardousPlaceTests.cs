using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Sealed where a flammable refrigerant is: ASHRAE 15, IEC 60335-2-40 and -2-89, from memory.</summary>
[Trait("Source", "thermostat.hazardousPlace")]
public sealed class HazardousPlaceTests : ThermostatAspectTests<HazardousPlace, IgnitionFacet>
{
    [Theory]
    [InlineData("hazard=A2L", "contacts=open", "Fails")]
    [InlineData("hazard=A3", "contacts=sealed", "MeetsWithChanges checkSwitchListing")]
    [InlineData("hazard=A3", "contacts=sealed; hazards=A3", "Meets")]
    [InlineData("hazard=A3", "", "Unknown Part contacts")]
    [InlineData("hazard=none", "contacts=open", "Meets")]
    public void It_is_sealed_there(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}
