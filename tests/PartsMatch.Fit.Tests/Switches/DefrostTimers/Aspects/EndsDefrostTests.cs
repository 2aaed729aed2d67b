using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>As the old one did, and time by the fail-safe: practice.</summary>
[Trait("Source", "defrostTimer.endsDefrost")]
public sealed class EndsDefrostTests : DefrostTimerAspectTests<EndsDefrost, DefrostEndFacet>
{
    [Theory]
    [InlineData("", "endedThereBy=temperature", "endedBy=temperature", "Meets")]
    [InlineData("", "endedThereBy=temperature", "endedBy=time, temperature", "Meets")]
    [InlineData("", "endedThereBy=temperature", "endedBy=time", "Fails")]
    [InlineData("", "endedThereBy=pressure", "endedBy=time, temperature", "Fails")]
    [InlineData("", "endedThereBy=time", "endedBy=time", "Meets")]
    [InlineData("", "endedThereBy=time", "endedBy=temperature", "MeetsWithChanges leaveRelease")]
    [InlineData("", "endedThereBy=time", "endedBy=pressure", "Fails")] // its pressure element still ends it
    [InlineData("", "endedThereBy=time", "endedBy=temperature, pressure", "Fails")]
    [InlineData("", "endedThereBy=time", "endedBy=time, pressure", "MeetsWithChanges putOutPressure")]
    [InlineData("", "endedThereBy=temperature", "endedBy=temperature, pressure", "MeetsWithChanges putOutPressure")]
    [InlineData("", "endedThereBy=pressure", "endedBy=time, pressure", "Meets")]
    [InlineData("endedBy=time, temperature", "", "endedBy=time, temperature, pressure", "MeetsWithChanges putOutPressure")]
    [InlineData("endedBy=time, pressure", "", "endedBy=time, pressure", "Meets")]
    [InlineData("", "endedThereBy=time", "", "Unknown Part endedBy")]
    [InlineData("", "", "endedBy=time", "Unknown Site endedThereBy")]
    [InlineData("endedBy=temperature", "", "endedBy=time", "Fails")]
    [InlineData("releaseVolts=240 V", "", "endedBy=time", "Unknown Site endedThereBy")] // there it is; whether it is wired nobody said
    [InlineData("releaseVolts=240 V", "", "endedBy=time, temperature", "Meets")]
    [InlineData("", "endedThereBy=temperature", "releaseVolts=240 V", "Meets")]
    [InlineData("", "endedThereBy=time", "releaseVolts=240 V", "MeetsWithChanges leaveRelease")]
    [InlineData("", "endedThereBy=pressure", "releaseVolts=240 V", "Unknown Part endedBy")] // some take several
    [InlineData("endedBy=time, temperature", "", "endedBy=time, temperature", "Meets")]
    [InlineData("endedBy=time, temperature", "", "endedBy=temperature", "Unknown Site endedThereBy")]
    [InlineData("endedBy=time, temperature", "", "", "Unknown Part endedBy")]
    public void It_ends_as_the_defrost_is_ended_there(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
