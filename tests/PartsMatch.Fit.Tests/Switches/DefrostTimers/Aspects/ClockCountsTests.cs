using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>Hours of the day or of the compressor: practice.</summary>
[Trait("Source", "defrostTimer.clockCounts")]
public sealed class ClockCountsTests : DefrostTimerAspectTests<ClockCounts, ClockCountsFacet>
{
    [Theory]
    [InlineData("clock=24-hour clock", "clock=24-hour clock", "Meets")]
    [InlineData("clock=24-hour clock", "clock=running time", "MeetsWithChanges feedClock")]
    [InlineData("clock=running time", "clock=24-hour clock", "MeetsWithChanges feedClock")]
    [InlineData("clock=running time", "", "Unknown Part clock")]
    [InlineData("", "clock=running time", "Unknown Plate clock")]
    public void A_clock_of_the_other_kind_is_fed_elsewhere(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Fact]
    public void A_clock_for_the_day_must_not_stop_with_the_compressor() => Judge("clock=running time", "", "clock=24-hour clock").Changes.ShouldHaveSingleItem().Text.ShouldStartWith("feed its clock from a line that never goes off");
}
