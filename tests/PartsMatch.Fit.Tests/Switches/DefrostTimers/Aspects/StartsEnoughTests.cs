using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>As many starts as needed: practice.</summary>
[Trait("Source", "defrostTimer.startsEnough")]
public sealed class StartsEnoughTests : DefrostTimerAspectTests<StartsEnough, StartsFacet>
{
    [Theory]
    [InlineData("1", "2 to 6 a day", "Fails")]
    [InlineData("2", "2 to 6 a day", "Meets")]
    [InlineData("3", "2 to 6 a day", "Meets")]
    [InlineData("6", "2 to 6 a day", "Meets")]
    [InlineData("7", "2 to 6 a day", "Fails")]
    [InlineData("4", "4 a day", "Meets")]
    [InlineData("5", "4 a day", "Fails")]
    public void The_number_needed_lies_in_the_programme(string needed, string starts, string answer) => Answer("", $"startsNeeded={needed}", $"starts={starts}").ShouldBe(answer);

    [Theory]
    [InlineData("starts=1 to 6 a day", "starts=1 to 6 a day", "Meets")]
    [InlineData("starts=1 to 6 a day", "starts=1 to 8 a day", "Meets")]
    [InlineData("starts=1 to 6 a day", "starts=2 to 12 a day", "Unknown Site startsNeeded")]
    [InlineData("starts=1 to 6 a day", "starts=1 to 4 a day", "Unknown Site startsNeeded")]
    [InlineData("starts=1 to 6 a day", "", "Unknown Part starts")]
    [InlineData("starts=4 a day", "starts=2 a day", "Fails")]
    [InlineData("", "starts=1 to 4 a day", "Unknown Site startsNeeded")]
    public void Else_it_holds_all_that_the_old_one_could(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
