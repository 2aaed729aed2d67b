using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>A mechanism fits a box of its own pattern: practice. The patterns are invented.</summary>
[Trait("Source", "defrostTimer.fitsBox")]
public sealed class FitsBoxTests : DefrostTimerAspectTests<FitsBox, TimerBoxFacet>
{
    [Theory]
    [InlineData("boxPattern=DX", "body=mechanism only; boxPattern=DX", "Meets")]
    [InlineData("boxPattern=DX", "body=in its own box; boxPattern=dx", "Meets")]
    [InlineData("boxPattern=DX", "body=in its own box; boxPattern=PL", "MeetsWithChanges putUpTimerBox")]
    [InlineData("", "body=in its own box; boxPattern=PL", "MeetsWithChanges putUpTimerBox")]
    [InlineData("boxPattern=DX", "body=mechanism only; boxPattern=PL", "MeetsWithChanges putUpTimerBox")]
    [InlineData("boxPattern=DX", "body=mechanism only", "Unknown Part boxPattern")]
    [InlineData("", "body=mechanism only; boxPattern=DX", "Unknown Plate boxPattern")]
    [InlineData("boxPattern=DX", "boxPattern=DX", "Unknown Part body")]
    public void A_mechanism_asks_for_a_box_of_its_pattern(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
