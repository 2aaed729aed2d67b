using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>Motors need motor ratings: from memory (IEC 60947, UL 60730).</summary>
[Trait("Source", "defrostTimer.kindOfLoad")]
public sealed class KindOfLoadTests : DefrostTimerAspectTests<KindOfLoad, KindOfLoadFacet>
{
    [Theory]
    [InlineData("motors=4/20 A", "fullLoadAmps=20 A", "Meets")]
    [InlineData("motors=4/20 A", "resistiveAmps=40 A", "Fails")]
    [InlineData("motors=4/20 A", "pilotDuty=A300", "Fails")]
    [InlineData("motors=4/20 A", "", "Unknown Part fullLoadAmps")]
    [InlineData("loads=heater", "resistiveAmps=40 A", "Meets")]
    [InlineData("", "resistiveAmps=40 A", "Meets")]
    public void Marked_for_heaters_alone_it_takes_no_fans(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}
