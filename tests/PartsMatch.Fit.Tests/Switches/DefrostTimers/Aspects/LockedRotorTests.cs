using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>Six times full load where not marked: from memory (UL/IEC 60730-1).</summary>
[Trait("Source", "defrostTimer.lockedRotor")]
public sealed class LockedRotorTests : DefrostTimerAspectTests<LockedRotor, LockedRotorFacet>
{
    [Theory]
    [InlineData("motors=8/60 A; fanVolts=240 V", "lockedRotorAmps=60 A", "Meets")]
    [InlineData("motors=8/60.1 A; fanVolts=240 V", "lockedRotorAmps=60 A", "Fails")]
    [InlineData("motors=8/60 A; fanVolts=240 V", "fullLoadAmps=10 A", "Meets")]
    [InlineData("motors=8/60.1 A; fanVolts=240 V", "fullLoadAmps=10 A", "Unknown Part lockedRotorAmps")]
    [InlineData("motors=10.1 A; fanVolts=240 V", "lockedRotorAmps=60 A", "Unknown Site motors")]
    public void Fans_start_together(string site, string part, string answer) => Answer("", site, $"ratedVolts=240 V; {part}").ShouldBe(answer);
}
