using PartsMatch.Fit.Switches.Contactors.Aspects;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Sums of locked-rotor amps: 73 + 2 x 7 = 87 A, worked by hand. Unmarked, 8 times AC-3 amps, which are opened, and 6 times AC-8 amps (IEC 60947-4-1 table 7) or those of horsepower (UL 60947-4-1): from memory; 28 A for 10 hp at 230 V on three phases: NFPA 70 table 430.250.</summary>
[Trait("Source", "contactor.lockedRotor")]
public sealed class LockedRotorTests : ContactorAspectTests<LockedRotor, LockedRotorFacet>
{
    [Theory]
    [InlineData("14/73 + 2 x 1.4/7 A", "87", "Meets")]
    [InlineData("14/73 + 2 x 1.4/7 A", "86.9", "Fails")]
    [InlineData("14/73 + 2 x 1.4/7 A", "87.1", "Meets")]
    [InlineData("14/73 + 2 x 1.4 A", "150", "Unknown Site motors")] // those of the small ones are nobody's guess
    public void All_motors_together_stay_within_the_marked_ones(string motors, string amps, string answer) =>
        Answer("", $"motors={motors}; loadVolts=240 V", $"ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps={amps} A").ShouldBe(answer);

    /// <summary>Definite-purpose contactors bear six times their full-load amps at 240 V, mostly five times at 480 V and four times at 600 V (practice, from memory): none of it follows from their full-load amps.</summary>
    [Theory]
    [InlineData("40/240 A", "240 V")]
    [InlineData("40/160 A", "480 V")]
    [InlineData("1/4 A", "240 V")]
    public void Full_load_amps_alone_tell_of_none(string motors, string volts) =>
        Answer("", $"motors={motors}; loadVolts={volts}", "ratedVolts=240/480 V; fullLoadAmps=40 A").ShouldBe("Unknown Part lockedRotorAmps");

    [Theory]
    [InlineData("35/320 A", "acThreeAmps=40 A", "Meets")] // 8 x 40
    [InlineData("35/320.1 A", "acThreeAmps=40 A", "Unknown Part lockedRotorAmps")]
    [InlineData("35/320.1 A", "acThreeAmps=40 A; lockedRotorAmps=330 A", "Meets")]
    [InlineData("35/320 A", "acThreeAmps=40 A; lockedRotorAmps=300 A", "Fails")]
    [InlineData("25/168 A", "poleCount=3 poles; threePhaseHorsepower=10 hp", "Meets")] // 6 x 28
    [InlineData("25/168.1 A", "poleCount=3 poles; threePhaseHorsepower=10 hp", "Unknown Part lockedRotorAmps")]
    [InlineData("25/168 A", "threePhaseHorsepower=10 hp", "Unknown Part lockedRotorAmps")] // for how many phases is not known
    public void Category_and_horsepower_tell_of_some(string motors, string part, string answer) =>
        Answer("", $"motors={motors}; loadVolts=230 V", $"ratedVolts=230 V; {part}").ShouldBe(answer);

    /// <summary>NEMA size 1 is for 7-1/2 hp at 230 V on three phases (NEMA ICS 2), which take 22 A (NFPA 70 table 430.250): 6 x 22 = 132 A.</summary>
    [Theory]
    [InlineData("20/132 A", "Meets")]
    [InlineData("20/132.1 A", "Unknown Part lockedRotorAmps")]
    public void A_NEMA_size_tells_by_its_horsepower(string motors, string answer) => Answer("", $"motors={motors}; loadVolts=230 V", "size=NEMA 1; poleCount=3 poles").ShouldBe(answer);

    [Theory]
    [InlineData("loads=compressor; motors=43/200 A", "acEightAmps=45 A", "Meets")]
    [InlineData("loads=compressor; motors=43/270 A", "acThreeAmps=40 A; acEightAmps=45 A", "Meets")] // 6 x 45
    [InlineData("loads=compressor; motors=43/270.1 A", "acThreeAmps=40 A; acEightAmps=45 A", "Unknown Part lockedRotorAmps")]
    [InlineData("loads=compressor; motors=35/170 A", "acThreeAmps=40 A", "Unknown Part lockedRotorAmps")]
    [InlineData("loads=motor; motors=35/170 A", "acEightAmps=45 A", "Unknown Part lockedRotorAmps")]
    [InlineData("loads=compressor, motor; motors=35/240 A", "acThreeAmps=40 A; acEightAmps=45 A", "Meets")]
    [InlineData("loads=compressor, motor; motors=35/270 A", "acThreeAmps=40 A; acEightAmps=45 A", "Meets")] // 6 x 45, the lower of the two
    [InlineData("loads=compressor, motor; motors=35/270.1 A", "acThreeAmps=40 A; acEightAmps=45 A", "Unknown Part lockedRotorAmps")]
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
    [InlineData("ratedVolts=240 V; fullLoadAmps=5 A", "Unknown Plate lockedRotorAmps")]
    [InlineData("ratedVolts=240 V; acThreeAmps=18.75 A", "Meets")] // 8 x 18.75 = 150
    [InlineData("ratedVolts=240 V; acThreeAmps=18.8 A", "Unknown Site motors")]
    [InlineData("ratedVolts=240 V; resistiveAmps=30 A", "Meets")] // it was for no motor
    [InlineData("", "Unknown Site motors")]
    public void Where_nobody_named_what_is_on_it_the_old_rating_is_enough(string plate, string answer) =>
        Answer(plate, "", "ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps=150 A").ShouldBe(answer);

    [Theory]
    [InlineData("ratedVolts=240 V; resistiveAmps=50 A")]
    [InlineData("pilotDuty=A300")]
    public void Neither_resistive_amps_nor_pilot_duty_stand_in(string part) => Answer("", "motors=5/25 A; loadVolts=240 V", part).ShouldBe("Unknown Part lockedRotorAmps");

    [Theory]
    [InlineData("", "motors=5/40 A", "acThreeAmps=5 A", "Its own are not marked: eight times its AC-3 amps are taken for them.")]
    [InlineData("acThreeAmps=5 A", "", "lockedRotorAmps=40 A", "The old one's are not marked: eight times its AC-3 amps are taken for them.")]
    [InlineData("acThreeAmps=5 A", "", "acThreeAmps=5 A", "Its own are not marked: eight times its AC-3 amps are taken for them. The old one's are not marked: eight times its AC-3 amps are taken for them.")]
    [InlineData("", "motors=5/30 A", "fullLoadAmps=5 A; lockedRotorAmps=30 A", "30 A are on it.")]
    public void What_is_taken_for_amps_that_are_not_marked_is_told(string plate, string site, string part, string says)
    {
        var (was, there) = (plate.Length > 0 ? $"ratedVolts=240 V; {plate}" : plate, site.Length > 0 ? $"{site}; loadVolts=240 V" : site);
        Answer(was, there, $"ratedVolts=240 V; {part}").ShouldBe("Meets");
        Judge(was, there, $"ratedVolts=240 V; {part}").Sentence.ShouldEndWith(says);
    }
}
