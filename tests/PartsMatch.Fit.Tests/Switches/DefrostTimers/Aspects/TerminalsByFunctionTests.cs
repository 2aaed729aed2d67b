using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>By function, never by number: practice.</summary>
[Trait("Source", "defrostTimer.terminalsByFunction")]
public sealed class TerminalsByFunctionTests : DefrostTimerAspectTests<TerminalsByFunction, TimerTerminalsFacet>
{
    private const string Old = "terminals=common 2, heater 3, fans 4";

    [Theory]
    [InlineData(Old, Old, "Meets")]
    [InlineData(Old, "terminals=common 2, heater 3, fans 4, release X", "Meets")]
    [InlineData(Old, "terminals=common 2, heater 4, fans 3", "MeetsWithChanges mapTerminals")]
    [InlineData(Old, "terminals=common 2, heater 3", "MeetsWithChanges mapTerminals")]
    [InlineData(Old, "", "MeetsWithChanges mapTerminals")]
    [InlineData("", Old, "MeetsWithChanges mapTerminals")]
    public void Other_marks_and_unknown_ones_are_mapped(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Fact]
    public void The_change_says_where_each_wire_goes() =>
        Judge(Old, "", "terminals=common N, heater 4, fans 5").Changes.ShouldHaveSingleItem().Text.ShouldBe("map terminals by function: common from 2 to N, heater from 3 to 4, fans from 4 to 5");

    [Fact]
    public void Where_marks_are_not_known_it_names_the_functions() =>
        Judge("", "", "").Changes.ShouldHaveSingleItem().Text.ShouldBe("map terminals by function: common, heater, fans, compressor, release");
}
