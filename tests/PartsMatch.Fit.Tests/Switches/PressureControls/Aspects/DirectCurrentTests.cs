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

    /// <summary>6 x 1.5 A = 9 A, 6 x 1.7 A = 10.2 A (six times: from memory, as for alternating current).</summary>
    [Theory]
    [InlineData("1.5 A", "Meets")]
    [InlineData("1.7 A", "Unknown Site motors")]
    public void Motors_are_taken_to_start_with_six_times_their_full_load_amps(string motors, string answer) => Answer("", $"loadCurrent=DC; loadVolts=28 V; motors={motors}", "directVolts=28 V; directAmps=10 A").ShouldBe(answer);
}
