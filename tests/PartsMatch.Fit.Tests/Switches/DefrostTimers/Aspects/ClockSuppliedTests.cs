using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>±10 %: practice. 0.9 × 230 = 207, 1.1 × 230 = 253, 0.9 × 208 = 187.2, 1.1 × 240 = 264, worked by hand.</summary>
[Trait("Source", "defrostTimer.clockSupplied")]
public sealed class ClockSuppliedTests : DefrostTimerAspectTests<ClockSupplied, CoilFacet>
{
    [Theory]
    [InlineData("206.9 V", "230 V", "Fails")]
    [InlineData("207 V", "230 V", "Meets")]
    [InlineData("207.1 V", "230 V", "Meets")]
    [InlineData("252.9 V", "230 V", "Meets")]
    [InlineData("253 V", "230 V", "Meets")]
    [InlineData("253.1 V", "230 V", "Fails")]
    [InlineData("187.1 V", "208-240 V", "Fails")]
    [InlineData("187.2 V", "208-240 V", "Meets")]
    [InlineData("264 V", "208-240 V", "Meets")]
    [InlineData("264.1 V", "208-240 V", "Fails")]
    [InlineData("120 V", "120/240 V", "MeetsWithChanges connectClock")]
    [InlineData("180 V", "120/240 V", "Fails")]
    public void A_clock_takes_a_tenth_more_or_less_than_its_volts(string volts, string clock, string answer) =>
        Answer("", $"clockSupplyVolts={volts}; clockSupplyFrequency=60 Hz", $"clockVolts={clock}; clockFrequency=60 Hz").ShouldBe(answer);

    [Theory]
    [InlineData("60 Hz", "60 Hz", "Meets")]
    [InlineData("50 Hz", "60 Hz", "Fails")]
    [InlineData("60 Hz", "50 Hz", "Fails")]
    [InlineData("50 Hz", "50/60 Hz", "Meets")]
    public void A_clock_keeps_time_at_its_own_frequency_alone(string there, string clock, string answer) =>
        Answer("", $"clockSupplyVolts=230 V; clockSupplyFrequency={there}", $"clockVolts=230 V; clockFrequency={clock}").ShouldBe(answer);

    [Theory]
    [InlineData("clockVolts=208-240 V; clockFrequency=60 Hz", "Meets")]
    [InlineData("clockVolts=240 V; clockFrequency=60 Hz", "Unknown Site clockSupplyVolts")] // 208 V is under 216 V
    [InlineData("clockVolts=230 V; clockFrequency=60 Hz", "Meets")] // from 207 to 253 V
    [InlineData("clockVolts=120 V; clockFrequency=60 Hz", "Fails")]
    [InlineData("clockVolts=208-240 V; clockFrequency=50 Hz", "Fails")]
    [InlineData("clockVolts=208-240 V", "Unknown Part clockFrequency")]
    [InlineData("clockFrequency=60 Hz", "Unknown Part clockVolts")]
    public void Where_no_volts_were_measured_it_takes_all_that_the_old_one_could_be_fed(string part, string answer) =>
        Answer("clockVolts=208-240 V; clockFrequency=60 Hz", "", part).ShouldBe(answer);

    [Theory]
    [InlineData("clockVolts=240 V; clockFrequency=60 Hz", "Unknown Site clockSupplyVolts")]
    [InlineData("clockVolts=120/240 V; clockFrequency=60 Hz", "MeetsWithChanges connectClock")]
    public void Of_an_old_clock_for_two_voltages_it_is_not_known_which_is_there(string part, string answer) =>
        Answer("clockVolts=120/240 V; clockFrequency=60 Hz", "", part).ShouldBe(answer);

    [Fact]
    public void With_nothing_known_the_volts_are_asked_for() => Answer("", "", "clockVolts=230 V; clockFrequency=60 Hz").ShouldBe("Unknown Site clockSupplyVolts");

    [Fact]
    public void The_change_names_the_volts() =>
        Judge("", "clockSupplyVolts=236 V; clockSupplyFrequency=60 Hz", "clockVolts=120/240 V; clockFrequency=60 Hz").Changes.ShouldHaveSingleItem().Text.ShouldBe("connect its clock for 240 V 60 Hz");

    [Fact]
    public void Volts_near_the_limit_cost_more_than_volts_in_the_middle() =>
        Judge("", "clockSupplyVolts=210 V; clockSupplyFrequency=60 Hz", "clockVolts=230 V; clockFrequency=60 Hz").Shortfall
            .ShouldBeGreaterThan(Judge("", "clockSupplyVolts=225 V; clockSupplyFrequency=60 Hz", "clockVolts=230 V; clockFrequency=60 Hz").Shortfall + 0.5);

    /// <summary>Within the 1 % that a grid may wander (EN 50160, from memory). 0.99 × 60 = 59.4, 1.01 × 60 = 60.6, 0.99 × 50 = 49.5, 1.01 × 50 = 50.5, worked by hand.</summary>
    [Theory]
    [InlineData("59.3 Hz", "60 Hz", "Fails")]
    [InlineData("59.4 Hz", "60 Hz", "Meets")]
    [InlineData("59.5 Hz", "60 Hz", "Meets")]
    [InlineData("60.5 Hz", "60 Hz", "Meets")]
    [InlineData("60.6 Hz", "60 Hz", "Meets")]
    [InlineData("60.7 Hz", "60 Hz", "Fails")]
    [InlineData("49.4 Hz", "50 Hz", "Fails")]
    [InlineData("49.5 Hz", "50 Hz", "Meets")]
    [InlineData("50.5 Hz", "50 Hz", "Meets")]
    [InlineData("50.6 Hz", "50 Hz", "Fails")]
    public void A_frequency_is_its_own_within_one_percent(string there, string clock, string answer) =>
        Answer("", $"clockSupplyVolts=230 V; clockSupplyFrequency={there}", $"clockVolts=230 V; clockFrequency={clock}").ShouldBe(answer);
}
