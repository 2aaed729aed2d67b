using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Before;

namespace PartsMatch.Fit.Tests.Motors.Before;

/// <summary>Too much load slows an induction motor (practice): one that takes more than its plate and is not slowed is not cleared by its load.</summary>
[Trait("Source", "reading.slowedByLoad")]
public sealed class SlowedByLoadTests
{
    private const string Plate = "type=PSC; power=1/4 hp; speed=1075 rpm; voltage=230 V; phase=1; frequency=60 Hz; fullLoadAmps=1.9 A; runCapacitor=5/370";
    private const string Over = "circuitCalls=yes; leadVolts=230 V; turns=yes; motorAmps=2.9 A; capacitorMicrofarads=5 µF; ohmsCommonToRun=14 Ω; ohmsCommonToStart=45 Ω; ohmsRunToStart=59 Ω";

    // Worked by hand: 2.9 A is 1.526 times 1.9 A; six poles turn 1200 rpm at 60 Hz, a slip of 125 rpm, and 1.263 times that leaves 1042.1 rpm.
    [Theory]
    [InlineData("", Conclusion.ReadNext, "runningSpeed")]
    [InlineData("; runningSpeed=1085 rpm", Conclusion.NothingWrongFound, null)]
    [InlineData("; runningSpeed=1043 rpm", Conclusion.NothingWrongFound, null)]
    [InlineData("; runningSpeed=1042 rpm", Conclusion.NotThePart, null)]
    public void A_motor_that_takes_too_much_is_cleared_by_its_load_only_where_that_slows_it(string speed, Conclusion conclusion, string? next)
    {
        var diagnosis = Asked.Of(Over + speed, Plate);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    [Fact]
    public void What_is_not_slowed_is_held_against_a_sister_motor() => Asked.Of($"{Over}; runningSpeed=1085 rpm", Plate).Sentence.ShouldContain("a few shorted turns take more");

    [Fact]
    public void A_plate_without_its_speed_is_asked_for_it()
    {
        var next = Asked.Of($"{Over}; runningSpeed=1085 rpm", Plate.Replace("speed=1075 rpm; ", string.Empty, StringComparison.Ordinal)).Next.ShouldNotBeNull();
        (next.Field, next.Side).ShouldBe(("speed", (Side?)Side.Plate));
    }

    // Worked by hand: four poles turn 1800 rpm at 60 Hz, a slip of 75 rpm; 2.7 A is 1.5 times 1.8 A, and 1.25 times the slip leaves 1706.25 rpm.
    [Theory]
    [InlineData("1706 rpm", ReadingVerdict.Good)]
    [InlineData("1707 rpm", ReadingVerdict.CantTell)]
    public void A_three_phase_plate_that_names_no_type_has_its_slip_by_speed_and_frequency(string speed, ReadingVerdict verdict) =>
        Asked.Verdict<SlowedByLoad>($"leadVolts=460 V; turns=yes; motorAmps=2.7/2.7/2.7 A; runningSpeed={speed}", "speed=1725 rpm; voltage=460 V; phase=3; frequency=60 Hz; fullLoadAmps=1.8 A").ShouldBe(verdict);

    // Between 1075 and 900 rpm a loaded motor on high and a shorted one on low are alike.
    [Theory]
    [InlineData("speed=1075/900 rpm", "950 rpm", ReadingVerdict.CantTell)]
    [InlineData("speed=1075/900 rpm", "890 rpm", ReadingVerdict.Good)]
    [InlineData("speed=1075 rpm; speeds=3", "890 rpm", ReadingVerdict.CantTell)]
    public void Of_several_speeds_only_what_is_slower_than_all_is_slowed(string plate, string speed, ReadingVerdict verdict) =>
        Asked.Verdict<SlowedByLoad>($"{Over}; runningSpeed={speed}", Plate.Replace("speed=1075 rpm", plate, StringComparison.Ordinal)).ShouldBe(verdict);

    [Theory]
    [InlineData("leadVolts=230 V; turns=yes; motorAmps=1.9 A; runningSpeed=1000 rpm", Plate)]
    [InlineData("leadVolts=116 V; turns=yes; motorAmps=1.2 A; runningSpeed=1000 rpm", Asked.Electronic)]
    public void Within_the_plates_amps_and_of_electronics_the_speed_says_nothing(string readings, string plate) => Asked.Verdict<SlowedByLoad>(readings, plate).ShouldBeNull();

    [Fact]
    public void A_large_split_does_not_clear_a_motor_whose_amps_no_load_explains() =>
        Asked.Of($"{Over}; runningSpeed=1085 rpm; refrigerant=R-134a; condensingPressure=201.63 psi; enteringAir=96 °F", Plate).Conclusion.ShouldBe(Conclusion.NothingWrongFound);
}
