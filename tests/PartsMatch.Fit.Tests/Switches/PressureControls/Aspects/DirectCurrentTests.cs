using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>Direct current by DC amps alone: practice.</summary>
[Trait("Source", "pressureControl.directCurrent")]
public sealed class DirectCurrentTests : PressureControlAspectTests<DirectCurrent, ContactAmpsFacet>
{
    [Theory]
    [InlineData("heaterAmps=2 A; loadVolts=24 V", "directVolts=28 V; directAmps=2 A", "Meets")]
    [InlineData("heaterAmps=2.1 A; loadVolts=24 V", "directVolts=28 V; directAmps=2 A", "Fails")]
    [InlineData("heaterAmps=2 A; loadVolts=24 V", "ratedVolts=240 V; resistiveAmps=20 A", "Unknown Part directAmps")]
    public void Its_amps_of_direct_current_count(string site, string part, string answer) => Answer("", $"loadCurrent=DC; {site}", part).ShouldBe(answer);
}
