using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>At least the minutes needed: practice. 30 × (240/204)² = 41.52, worked by hand: at 204 V the heat of 6 kW at 240 V is 4.335 kW.</summary>
[Trait("Source", "defrostTimer.failSafeLongEnough")]
public sealed class FailSafeLongEnoughTests : DefrostTimerAspectTests<FailSafeLongEnough, FailSafeFacet>
{
    [Theory]
    [InlineData("44.9 min", "4 to 45 min", "Meets")]
    [InlineData("45 min", "4 to 45 min", "Meets")]
    [InlineData("45.1 min", "4 to 45 min", "Fails")]
    [InlineData("4 min", "4 to 45 min", "Meets")]
    [InlineData("3.9 min", "4 to 45 min", "MeetsWithChanges checkLongerDefrost")]
    [InlineData("1 h", "4 to 110 min", "Meets")]
    [InlineData("30 min", "", "Unknown Part failSafe")]
    public void The_minutes_needed_are_at_most_its_longest(string needed, string span, string answer) => Answer("", $"minutesNeeded={needed}", span.Length > 0 ? $"failSafe={span}" : "").ShouldBe(answer);

    [Theory]
    [InlineData("failSafe=4 to 41.4 min", "Fails")]
    [InlineData("failSafe=4 to 41.5 min", "Meets")]
    [InlineData("failSafe=4 to 41.6 min", "Meets")]
    public void Thirty_minutes_at_240_volts_are_41_and_a_half_at_204(string part, string answer) => Answer("", "minutesAtHeaterVolts=30 min; heaterOwnVolts=240 V; loadVolts=204 V", part).ShouldBe(answer);

    [Theory]
    [InlineData("minutesAtHeaterVolts=30 min; heaterOwnVolts=240 V", "Unknown Site loadVolts")]
    [InlineData("minutesAtHeaterVolts=30 min; loadVolts=204 V", "Unknown Site heaterOwnVolts")]
    public void Minutes_at_other_volts_say_nothing_until_both_are_known(string site, string answer) => Answer("failSafe=4 to 110 min", site, "failSafe=4 to 110 min").ShouldBe(answer);

    [Theory]
    [InlineData("endedThereBy=time; minutesNeeded=15 min", "Fails")]
    [InlineData("endedThereBy=temperature; minutesNeeded=15 min", "MeetsWithChanges checkLongerDefrost")]
    [InlineData("endedThereBy=time; minutesNeeded=20 min", "Meets")]
    public void Too_long_fails_where_time_alone_ends_it(string site, string answer) => Answer("", site, "failSafe=20 to 60 min").ShouldBe(answer);

    [Theory]
    [InlineData("failSafe=4 to 110 min", "failSafe=4 to 110 min", "Meets")]
    [InlineData("failSafe=4 to 60 min", "failSafe=4 to 110 min", "Meets")]
    [InlineData("failSafe=4 to 110 min", "failSafe=4 to 60 min", "Unknown Site minutesNeeded")]
    [InlineData("failSafe=4 to 110 min", "failSafe=10 to 110 min", "Unknown Site minutesNeeded")]
    [InlineData("", "failSafe=4 to 110 min", "Unknown Site minutesNeeded")]
    public void Else_it_holds_the_old_ones_span(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Fact]
    public void A_fail_safe_near_its_longest_costs_more_than_one_with_room() =>
        Judge("", "minutesNeeded=58 min", "failSafe=4 to 60 min").Shortfall.ShouldBeGreaterThan(Judge("", "minutesNeeded=50 min", "failSafe=4 to 60 min").Shortfall + 0.5);

    [Theory]
    [InlineData("30 min", "4 to 110 min", "Its fail-safe goes from 4 to 110 min, the old one's 30 min.")]
    [InlineData("30 min", "30 min", "Its fail-safe is 30 min, the old one's 30 min.")]
    [InlineData("10 to 60 min", "4 to 110 min", "Its fail-safe goes from 4 to 110 min, the old one's from 10 to 60 min.")]
    public void A_fail_safe_of_one_time_is_said_as_one(string old, string span, string sentence) => Judge($"failSafe={old}", "", $"failSafe={span}").Sentence.ShouldBe(sentence);
}
