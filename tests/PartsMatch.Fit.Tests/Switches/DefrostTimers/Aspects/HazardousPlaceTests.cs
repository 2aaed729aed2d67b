using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>Open contacts beside something that burns: from memory (ASHRAE 15, IEC 60335-2-89).</summary>
[Trait("Source", "defrostTimer.hazardousPlace")]
public sealed class HazardousPlaceTests : DefrostTimerAspectTests<HazardousPlace, IgnitionFacet>
{
    [Theory]
    [InlineData("hazard=A2L", "contacts=open contacts", "Fails")]
    [InlineData("hazard=A3", "contacts=sealed contacts", "MeetsWithChanges checkListing")]
    [InlineData("hazard=A3", "contacts=sealed contacts; hazards=A3", "Meets")]
    [InlineData("hazard=A2L", "", "Unknown Part contacts")]
    [InlineData("hazard=none", "contacts=open contacts", "Meets")]
    public void Nothing_may_spark_where_something_could_burn(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

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
