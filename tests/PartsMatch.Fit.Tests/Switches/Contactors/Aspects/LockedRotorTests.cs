using PartsMatch.Fit.Switches.Contactors.Aspects;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Sums of locked-rotor amps; 6 times full load where unmarked: UL/IEC 60730-1, from memory. 73 + 2 x 7 = 87 A, 6 x 40 = 240 A: worked by hand.</summary>
[Trait("Source", "contactor.lockedRotor")]
public sealed class LockedRotorTests : ContactorAspectTests<LockedRotor, LockedRotorFacet>
{
    [Theory]
    [InlineData("14/73 + 2 x 1.4/7 A", "87", "Meets")]
    [InlineData("14/73 + 2 x 1.4/7 A", "86.9", "Fails")]
    [InlineData("14/73 + 2 x 1.4/7 A", "87.1", "Meets")]
    [InlineData("14/73 + 2 x 1.4 A", "89.8", "Meets")] // 73 + 2 x 6 x 1.4
    [InlineData("14/73 + 2 x 1.4 A", "89.7", "Unknown Site motors")]
    public void All_motors_together_stay_within_the_marked_ones(string motors, string amps, string answer) =>
        Answer("", $"motors={motors}; loadVolts=240 V", $"ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps={amps} A").ShouldBe(answer);

    [Theory]
    [InlineData("40/240 A", "Meets")]
    [InlineData("40/240.1 A", "Unknown Part lockedRotorAmps")]
    [InlineData("40 A", "Meets")]
    [InlineData("40.1 A", "Unknown Site motors")]
    public void Unmarked_ones_are_six_times_full_load(string motors, string answer) =>
        Answer("", $"motors={motors}; loadVolts=240 V", "ratedVolts=240 V; fullLoadAmps=40 A").ShouldBe(answer);

    [Theory]
    [InlineData("loads=compressor; motors=43/200 A", "acEightAmps=45 A", "Meets")]
    [InlineData("loads=compressor; motors=43/270 A", "acThreeAmps=40 A; acEightAmps=45 A", "Meets")] // 6 x 45
    [InlineData("loads=compressor; motors=43/270.1 A", "acThreeAmps=40 A; acEightAmps=45 A", "Unknown Part lockedRotorAmps")]
    [InlineData("loads=compressor; motors=35/170 A", "acThreeAmps=40 A", "Unknown Part lockedRotorAmps")]
    [InlineData("loads=motor; motors=35/170 A", "acEightAmps=45 A", "Unknown Part lockedRotorAmps")]
    [InlineData("loads=compressor, motor; motors=35/240 A", "acThreeAmps=40 A; acEightAmps=45 A", "Meets")] // 6 x 40, the lower of the two
    [InlineData("loads=compressor, motor; motors=35/240.1 A", "acThreeAmps=40 A; acEightAmps=45 A", "Unknown Part lockedRotorAmps")]
    [InlineData("loads=compressor, motor; motors=35/170 A", "acEightAmps=45 A", "Unknown Part lockedRotorAmps")]
    [InlineData("loads=compressor, motor; motors=35/240 A", "acThreeAmps=40 A; acEightAmps=45 A; lockedRotorAmps=300 A", "Meets")]
    public void A_compressor_s_are_six_times_the_amps_for_compressors(string site, string part, string answer) => Answer("", $"{site}; loadVolts=400 V", $"ratedVolts=400 V; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("40/200 A", "240 V", "Meets")]
    [InlineData("40/200 A", "480 V", "Fails")]
    [InlineData("40/166 A", "480 V", "Meets")]
    public void They_are_those_of_the_volts(string motors, string volts, string answer) =>
        Answer("", $"motors={motors}; loadVolts={volts}", "ratedVolts=240/480 V; fullLoadAmps=40/32 A; lockedRotorAmps=200/166 A").ShouldBe(answer);

    [Theory]
    [InlineData("ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps=150 A", "Meets")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps=150.1 A", "Unknown Site motors")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=25 A", "Meets")] // 6 x 25 = 150
    [InlineData("ratedVolts=240 V; fullLoadAmps=25.1 A", "Unknown Site motors")]
    [InlineData("", "Unknown Site motors")]
    public void Where_nobody_named_what_is_on_it_the_old_rating_is_enough(string plate, string answer) =>
        Answer(plate, "", "ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps=150 A").ShouldBe(answer);

    /// <summary>25 A × 6 = 150 A (from memory, as the rule has it).</summary>
    [Fact]
    public void What_is_taken_for_the_old_ones_is_told() =>
        Judge("ratedVolts=240 V; fullLoadAmps=25 A", "", "ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps=150 A").Sentence.ShouldEndWith("The old one's are not marked: six times its full-load amps are taken for them.");

    [Theory]
    [InlineData("ratedVolts=240 V; resistiveAmps=50 A")]
    [InlineData("pilotDuty=A300")]
    public void Neither_resistive_amps_nor_pilot_duty_stand_in(string part) => Answer("", "motors=5/25 A; loadVolts=240 V", part).ShouldBe("Unknown Part lockedRotorAmps");

    [Theory]
    [InlineData("motors=5/30 A", "fullLoadAmps=5 A", "Its own are not marked: six times its full-load amps are taken for them.")]
    [InlineData("motors=5 A", "fullLoadAmps=5 A; lockedRotorAmps=30 A", "The motors' are not all given: six times their full-load amps are taken for them.")]
    [InlineData("motors=5 A", "fullLoadAmps=5 A", "Neither its own nor the motors' are marked: six times the full-load amps are taken for both.")]
    [InlineData("motors=5/30 A", "fullLoadAmps=5 A; lockedRotorAmps=30 A", "30 A are on it.")]
    public void What_is_taken_for_amps_that_are_not_marked_is_told(string site, string part, string says)
    {
        Answer("", $"{site}; loadVolts=240 V", $"ratedVolts=240 V; {part}").ShouldBe("Meets");
        Judge("", $"{site}; loadVolts=240 V", $"ratedVolts=240 V; {part}").Sentence.ShouldEndWith(says);
    }
}
