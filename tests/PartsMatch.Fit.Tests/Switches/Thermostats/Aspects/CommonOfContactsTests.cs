using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>The common wire goes onto what is common: practice.</summary>
[Trait("Source", "thermostat.commonOfContacts")]
public sealed class CommonOfContactsTests : ThermostatAspectTests<CommonOfContacts, CommonFacet>
{
    [Theory]
    [InlineData("action=change-over; common=C", "action=change-over; common=C", "Meets")]
    [InlineData("action=change-over; common=red lead", "action=change-over; common=C", "MeetsWithChanges mapCommon")]
    [InlineData("action=opens on rise", "action=change-over; common=1", "MeetsWithChanges mapCommon")]
    [InlineData("action=change-over; common=C", "action=change-over", "Unknown Part common")]
    [InlineData("action=change-over; common=C", "action=opens on rise", "Meets")]
    [InlineData("action=change-over; common=C", "", "Unknown Part action")]
    public void The_common_one_is_known(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
