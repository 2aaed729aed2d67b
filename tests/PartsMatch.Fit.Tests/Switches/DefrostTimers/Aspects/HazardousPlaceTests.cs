using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>Open contacts beside something that burns: from memory (ASHRAE 15, IEC 60335-2-89).</summary>
[Trait("Source", "defrostTimer.hazardousPlace")]
public sealed class HazardousPlaceTests : DefrostTimerAspectTests<HazardousPlace, IgnitionFacet>
{
    [Theory]
    [InlineData("hazard=A2L", "contacts=open contacts", "Fails")]
    [InlineData("hazard=A3", "contacts=sealed contacts", "MeetsWithChanges checkSwitchListing")]
    [InlineData("hazard=A3", "contacts=sealed contacts; hazards=A3", "Meets")]
    [InlineData("hazard=A2L", "", "Unknown Part contacts")]
    [InlineData("hazard=none", "contacts=open contacts", "Meets")]
    public void Nothing_may_spark_where_something_could_burn(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}
