using PartsMatch.Fit.Switches.Contactors.Aspects;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Sums of full-load amps at the volts; a tenth over the rated volts, and that amps hold at lower ones: practice. 14 + 2 x 1.4 = 16.8 A, 240 x 1.1 = 264 V: worked by hand. Horsepower in amps: NFPA 70 tables 430.248 and 430.250 (published), that it stands for them: from memory.</summary>
[Trait("Source", "contactor.fullLoad")]
public sealed class FullLoadTests : ContactorAspectTests<FullLoad, FullLoadFacet>
{
    private const string Part = "ratedVolts=240/480/600 V; fullLoadAmps=40/32/26 A";

    [Theory]
    [InlineData("39.9 A", "Meets")]
    [InlineData("40 A", "Meets")]
    [InlineData("40.1 A", "Fails")]
    [InlineData("37.2/223 + 2 x 1.4/7 A", "Meets")] // 40 A
    [InlineData("37.3/223 + 2 x 1.4/7 A", "Fails")] // 40.1 A
    public void All_motors_together_stay_within_the_rating(string motors, string answer) => Answer("", $"motors={motors}; loadVolts=240 V", Part).ShouldBe(answer);

    [Theory]
    [InlineData("40 A", "120 V", "Meets")] // amps hold at lower volts
    [InlineData("40 A", "264 V", "Meets")]
    [InlineData("40 A", "264.1 V", "Fails")]
    [InlineData("32 A", "264.1 V", "Meets")]
    [InlineData("32 A", "480 V", "Meets")]
    [InlineData("32.1 A", "480 V", "Fails")]
    [InlineData("26 A", "660 V", "Meets")]
    [InlineData("26 A", "660.1 V", "Fails")] // above 600 V it is not rated
    [InlineData("26 A", "", "Unknown Site loadVolts")]
    [InlineData("40.1 A", "", "Fails")] // over it at any volts
    public void A_rating_holds_at_its_volts_and_below(string motors, string volts, string answer) =>
        Answer("", $"motors={motors}{(volts.Length > 0 ? $"; loadVolts={volts}" : string.Empty)}", Part).ShouldBe(answer);

    [Fact]
    public void A_rating_at_240_volts_says_nothing_at_480() =>
        Judge("", "motors=10 A; loadVolts=480 V", "ratedVolts=240 V; fullLoadAmps=40 A").Sentence.ShouldBe("It is rated up to 240 V, which goes to 264 V; it is to switch 480 V.");

    [Theory]
    [InlineData("ratedVolts=240 V; resistiveAmps=50 A")]
    [InlineData("ratedVolts=240 V; lockedRotorAmps=240 A")]
    [InlineData("pilotDuty=A300")]
    [InlineData("continuousAmps=50 A")]
    public void No_other_rating_stands_in_for_it(string part) => Answer("", "motors=10/50 A; loadVolts=240 V", part).ShouldBe("Unknown Part fullLoadAmps");

    [Theory]
    [InlineData("fullLoadAmps=40 A", "Unknown Part ratedVolts")]
    [InlineData("fullLoadAmps=9.9 A", "Fails")] // too few at any volts
    public void Amps_without_their_volts_leave_it_open(string part, string answer) => Answer("", "motors=10 A; loadVolts=240 V", part).ShouldBe(answer);

    [Theory]
    [InlineData("loads=heater", "Meets")]
    [InlineData("heaterAmps=10 A", "Meets")]
    [InlineData("loads=motor", "Unknown Site motors")]
    public void Without_a_motor_on_it_nothing_is_asked(string site, string answer) => Answer("", site, Part).ShouldBe(answer);

    [Theory]
    [InlineData("ratedVolts=240 V; fullLoadAmps=40 A", "", "Meets")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=40.1 A", "", "Unknown Site motors")]
    [InlineData("ratedVolts=240/480 V; fullLoadAmps=40/40 A", "", "Unknown Site motors")]
    [InlineData("ratedVolts=240/480 V; fullLoadAmps=40/40 A", "loadVolts=240 V", "Meets")]
    [InlineData("", "", "Unknown Site motors")]
    [InlineData("pilotDuty=B300", "", "Meets")]
    [InlineData("fullLoadAmps=40 A", "", "Unknown Plate ratedVolts")]
    public void Where_nobody_named_what_is_on_it_the_old_rating_is_enough(string plate, string site, string answer) => Answer(plate, site, Part).ShouldBe(answer);

    [Theory]
    [InlineData("size=NEMA 1; poleCount=3P", "motors=22 A; loadVolts=230 V", "Meets")] // 7-1/2 hp at 230 V: 22 A
    [InlineData("size=NEMA 1; poleCount=3P", "motors=22.1 A; loadVolts=230 V", "Fails")]
    [InlineData("size=NEMA 1; poleCount=3P", "motors=25.3 A; loadVolts=208 V", "Meets")] // 7-1/2 hp at 200 V: 25.3 A
    [InlineData("size=NEMA 1; poleCount=3P", "motors=25.4 A; loadVolts=208 V", "Fails")]
    [InlineData("size=NEMA 1; poleCount=2P", "motors=24 A; loadVolts=115 V", "Meets")] // 2 hp at 115 V: 24 A
    [InlineData("size=NEMA 1; poleCount=2P", "motors=24.1 A; loadVolts=115 V", "Fails")]
    public void A_size_carries_what_its_horsepower_takes(string part, string site, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("loads=compressor; motors=35/170 A", "acThreeAmps=40 A; acEightAmps=25 A", "Fails")]
    [InlineData("loads=compressor; motors=43/200 A", "acThreeAmps=40 A; acEightAmps=45 A", "Meets")]
    [InlineData("loads=compressor; motors=43/200 A", "acEightAmps=45 A", "Meets")]
    [InlineData("loads=compressor; motors=45/200 A", "acEightAmps=45 A", "Meets")]
    [InlineData("loads=compressor; motors=45.1/200 A", "acEightAmps=45 A", "Fails")]
    [InlineData("loads=compressor; motors=35/170 A", "acThreeAmps=40 A", "Unknown Part acEightAmps")]
    [InlineData("loads=compressor; motors=45/170 A", "acThreeAmps=40 A", "Unknown Part acEightAmps")]
    [InlineData("loads=compressor; motors=35/170 A", "acThreeAmps=40 A; lockedRotorAmps=240 A", "Meets")]
    [InlineData("loads=compressor; motors=35/170 A", "fullLoadAmps=40 A", "Meets")]
    [InlineData("loads=motor; motors=35/170 A", "acThreeAmps=40 A; acEightAmps=25 A", "Meets")]
    [InlineData("loads=motor; motors=35/170 A", "acEightAmps=45 A", "Unknown Part fullLoadAmps")]
    public void A_compressor_is_carried_by_amps_for_compressors(string site, string part, string answer) => Answer("", $"{site}; loadVolts=400 V", $"ratedVolts=400 V; {part}").ShouldBe(answer);

    /// <summary>Nobody tells which of the motors is the compressor: each kind within its own rating, whichever it is, and all within the higher (practice). 20 + 2 x 10 = 40 A: worked by hand.</summary>
    [Theory]
    [InlineData("20/100 + 2 x 3/15 A", "acThreeAmps=40 A; acEightAmps=25 A", "Meets")] // at most 23 A of compressors
    [InlineData("22/100 + 2 x 3/15 A", "acThreeAmps=40 A; acEightAmps=25 A", "Meets")] // 25 A
    [InlineData("22.1/100 + 2 x 3/15 A", "acThreeAmps=40 A; acEightAmps=25 A", "Unknown Site motors")] // 25.1 A, or 22.1 A, or 3 A
    [InlineData("22.1/100 + 2 x 3/15 A", "acThreeAmps=25 A; acEightAmps=40 A", "Unknown Site motors")]
    [InlineData("34/100 + 2 x 3/15 A", "acThreeAmps=40 A; acEightAmps=25 A", "Unknown Site motors")] // 40 A
    [InlineData("34.1/100 + 2 x 3/15 A", "acThreeAmps=40 A; acEightAmps=25 A", "Fails")] // 40.1 A on one contact
    [InlineData("25.1/100 + 2 x 5/25 A", "acThreeAmps=40 A; acEightAmps=4.9 A", "Fails")] // none of them may be the compressor
    [InlineData("25.1/100 + 2 x 5/25 A", "acThreeAmps=4.9 A; acEightAmps=40 A", "Fails")] // all of them would have to be
    [InlineData("25.1/100 + 2 x 5/25 A", "acThreeAmps=40 A; acEightAmps=5 A", "Unknown Site motors")]
    [InlineData("26/130 A", "acThreeAmps=40 A; acEightAmps=25 A", "Unknown Site motors")] // one figure for both
    [InlineData("25/130 A", "acThreeAmps=40 A; acEightAmps=25 A", "Meets")]
    [InlineData("40.1/130 A", "acThreeAmps=40 A; acEightAmps=25 A", "Fails")]
    [InlineData("20/100 + 2 x 10/50 A", "acThreeAmps=40 A; acEightAmps=45 A", "Meets")]
    [InlineData("20.1/100 + 2 x 10/50 A", "acThreeAmps=40 A; acEightAmps=45 A", "Meets")]
    [InlineData("20/100 + 2 x 10/50 A", "acEightAmps=45 A", "Unknown Part fullLoadAmps")] // nothing is known of it for fans
    [InlineData("25.1/100 + 2 x 10/50 A", "acEightAmps=45 A", "Unknown Part fullLoadAmps")]
    [InlineData("25.1/100 + 2 x 10/50 A", "acEightAmps=9.9 A", "Fails")]
    [InlineData("20/100 + 2 x 10/50 A", "acThreeAmps=40 A", "Unknown Part acEightAmps")]
    [InlineData("20.1/100 + 2 x 10/50 A", "acThreeAmps=40 A", "Unknown Part acEightAmps")]
    [InlineData("20/100 + 2 x 10/50 A", "fullLoadAmps=40 A; lockedRotorAmps=240 A", "Meets")]
    [InlineData("20.1/100 + 2 x 10/50 A", "fullLoadAmps=40 A; lockedRotorAmps=240 A", "Fails")]
    public void A_compressor_and_fans_each_stay_within_their_own_rating(string motors, string part, string answer) => Answer("", $"loads=compressor, motor; motors={motors}; loadVolts=400 V", $"ratedVolts=400 V; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("22.1/100 + 2 x 3/15 A", "", "Unknown Site loadVolts")]
    [InlineData("34.1/100 + 2 x 3/15 A", "", "Fails")] // over both at any volts
    [InlineData("20/100 + 2 x 3/15 A", "; loadVolts=480 V", "Fails")] // it is rated up to 440 V
    public void Where_both_are_on_it_its_volts_count_as_well(string motors, string volts, string answer) => Answer("", $"loads=compressor, motor; motors={motors}{volts}", "ratedVolts=400 V; acThreeAmps=40 A; acEightAmps=25 A").ShouldBe(answer);

    [Theory]
    [InlineData("acEightAmps=45 A", "acThreeAmps=50 A; acEightAmps=45 A", "Meets")]
    [InlineData("acEightAmps=45 A", "acThreeAmps=50 A; acEightAmps=44 A", "Unknown Site motors")]
    [InlineData("acEightAmps=45 A", "acThreeAmps=50 A", "Unknown Part acEightAmps")]
    [InlineData("fullLoadAmps=40 A; lockedRotorAmps=200 A", "acThreeAmps=40 A; acEightAmps=30 A", "Unknown Site motors")]
    [InlineData("fullLoadAmps=40 A", "acThreeAmps=40 A; acEightAmps=30 A", "Meets")]
    public void What_the_old_one_carried_of_compressors_is_asked_for_as_well(string plate, string part, string answer) => Answer($"ratedVolts=400 V; {plate}", "", $"ratedVolts=400 V; {part}").ShouldBe(answer);

    [Fact]
    public void The_shortfall_is_0_up_to_four_fifths_and_1_at_the_rating()
    {
        Judge("", "motors=32 A; loadVolts=240 V", Part).Shortfall.ShouldBe(0, 1e-9);
        Judge("", "motors=36 A; loadVolts=240 V", Part).Shortfall.ShouldBe(0.5, 1e-9);
        Judge("", "motors=40 A; loadVolts=240 V", Part).Shortfall.ShouldBe(1, 1e-9);
    }
}
