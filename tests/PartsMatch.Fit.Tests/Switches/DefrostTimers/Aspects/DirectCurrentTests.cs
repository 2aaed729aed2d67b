using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>Direct current by DC amps alone: practice.</summary>
[Trait("Source", "defrostTimer.directCurrent")]
public sealed class DirectCurrentTests : DefrostTimerAspectTests<DirectCurrent, ContactAmpsFacet>
{
    [Theory]
    [InlineData("coilsVa=48 VA; coilVolts=24 V", "directVolts=28 V; directAmps=2 A", "Meets")]
    [InlineData("coilsVa=49 VA; coilVolts=24 V", "directVolts=28 V; directAmps=2 A", "Fails")]
    [InlineData("coilsVa=48 VA; loadVolts=24 V", "directVolts=28 V; directAmps=2 A", "Unknown Site coilVolts")] // the heaters' volts are not theirs
    [InlineData("coilsVa=48 VA; coilVolts=24 V", "ratedVolts=240 V; resistiveAmps=20 A", "Unknown Part directAmps")]
    public void Its_amps_of_direct_current_count(string site, string part, string answer) => Answer("", $"loadCurrent=DC; {site}", part).ShouldBe(answer);
}
