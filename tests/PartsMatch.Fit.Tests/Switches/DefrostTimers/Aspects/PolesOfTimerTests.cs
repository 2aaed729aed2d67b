using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>As many poles: practice.</summary>
[Trait("Source", "defrostTimer.polesOfTimer")]
public sealed class PolesOfTimerTests : DefrostTimerAspectTests<PolesOfTimer, TimerPolesFacet>
{
    [Theory]
    [InlineData("poles=2", "poles=2", "Meets")]
    [InlineData("poles=2", "poles=3", "Meets")]
    [InlineData("poles=2", "poles=1", "Fails")]
    [InlineData("poles=2", "", "Unknown Part poles")]
    [InlineData("", "poles=1", "MeetsWithChanges checkTimerPoles")]
    [InlineData("", "poles=3", "MeetsWithChanges checkTimerPoles")]
    [InlineData("", "poles=4", "Meets")] // no timer has more
    [InlineData("", "", "Unknown Part poles")]
    public void As_many_poles_as_the_old_one_or_more(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Fact]
    public void A_pole_too_many_costs_a_little() => Judge("poles=1", "", "poles=2").Shortfall.ShouldBeGreaterThan(Judge("poles=1", "", "poles=1").Shortfall);

    [Theory]
    [InlineData("poles=1", "no more than one line")]
    [InlineData("poles=2", "no more than 2 lines")]
    public void The_check_counts_its_lines(string part, string says) => Judge("", "", part).Changes.ShouldHaveSingleItem().Text.ShouldEndWith(says);
}
