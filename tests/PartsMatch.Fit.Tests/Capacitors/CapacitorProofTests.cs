using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Capacitors;

/// <summary>Run capacitors before they are condemned and after the swap.</summary>
[Trait("Source", "reading.capacitorLook")]
[Trait("Source", "reading.capacitorVolts")]
public sealed class CapacitorProofTests
{
    [Theory]
    [InlineData("rating=5/370", "", Conclusion.ReadNext, "microfarads")]
    [InlineData("rating=5/370", "microfarads=5 µF", Conclusion.NothingWrongFound, null)]
    [InlineData("rating=5/370", "microfarads=0 µF", Conclusion.PartHasFailed, null)]
    [InlineData("rating=5/370", "microfarads=5 µF; bulges=yes", Conclusion.PartHasFailed, null)]
    [InlineData("rating=5/370; frequency=60 Hz", "acrossVolts=340 V", Conclusion.ReadNext, "leadAmps")]
    [InlineData("rating=5/370; frequency=60 Hz", "leadAmps=0.6 A", Conclusion.ReadNext, "acrossVolts")]
    [InlineData("rating=5/370; frequency=60 Hz", "acrossVolts=340 V; leadAmps=0 A", Conclusion.PartHasFailed, null)]
    [InlineData("rating=5/370; frequency=60 Hz", "acrossVolts=0 V; leadAmps=0 A", Conclusion.ReadNext, "microfarads")]
    [InlineData("rating=45+5/440", "microfarads=45 µF", Conclusion.ReadNext, "secondMicrofarads")]
    [InlineData("rating=45+5/440", "microfarads=45 µF; secondMicrofarads=5 µF", Conclusion.NothingWrongFound, null)]
    [InlineData("rating=45+5/440", "microfarads=45 µF; secondMicrofarads=2 µF", Conclusion.PartHasFailed, null)]
    [InlineData("", "microfarads=5 µF", Conclusion.ReadNext, "rating")]
    [InlineData("rating=5/370", "microfarads=5 µF; acrossVolts=408 V", Conclusion.NotThePart, null)]
    public void Its_marking_decides(string plate, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose(plate, readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    // Published worked example: 8.3 A at 240 V and 60 Hz are 91.7 µF; +1.9 % of 90 µF, and 6 % is usual, 1 % marked would fail it.
    [Theory]
    [InlineData("rating=90/370; frequency=60 Hz", Conclusion.NothingWrongFound)]
    [InlineData("rating=90/370; frequency=60 Hz; tolerance=1 %", Conclusion.PartHasFailed)]
    public void Under_load_the_worked_example_is_91_7_microfarads(string plate, Conclusion conclusion)
    {
        var diagnosis = Diagnose(plate, "leadAmps=8.3 A; acrossVolts=240 V");
        diagnosis.Conclusion.ShouldBe(conclusion);
        diagnosis.Checks[0].Sentence.ShouldContain("91.7");
    }

    // EIA-456-A practice, ±6 % of 5 µF; a marked ±10 % goes to 4.5 µF.
    [Theory]
    [InlineData("4.7 µF", "", ReadingVerdict.Good)]
    [InlineData("4.69 µF", "", ReadingVerdict.Bad)]
    [InlineData("4.5 µF", "; tolerance=10 %", ReadingVerdict.Good)]
    [InlineData("4.49 µF", "; tolerance=10 %", ReadingVerdict.Bad)]
    public void An_old_one_is_held_to_its_own_tolerance(string microfarads, string tolerance, ReadingVerdict verdict) =>
        Diagnose($"rating=5/370{tolerance}", $"microfarads={microfarads}").Checks[0].Verdict.ShouldBe(verdict);

    // IEC 60252-1, from memory: 110 % of 370 V is 407 V.
    [Theory]
    [InlineData("407 V", ReadingVerdict.Good)]
    [InlineData("407.1 V", ReadingVerdict.Bad)]
    public void It_bears_110_percent_of_its_marked_volts(string volts, ReadingVerdict verdict) =>
        Report("rating=5/370", "rating=5/370", $"acrossVolts={volts}").Readings.Single(check => check.Title == "Volts across it").Verdict.ShouldBe(verdict);

    [Fact]
    public void A_new_one_is_held_to_what_the_motor_asks_for_not_to_its_own_marking()
    {
        Report("rating=5/370", "rating=7.5/370", "microfarads=7.5 µF").Readings[0].Verdict.ShouldBe(ReadingVerdict.Bad);
        Report("rating=5/370; tolerance=10 %", "rating=5/370", "microfarads=4.6 µF").Readings[0].Verdict.ShouldBe(ReadingVerdict.Bad);
        Report("rating=5/370", "rating=5/370", "microfarads=4.9 µF").Readings[0].Verdict.ShouldBe(ReadingVerdict.Good);
    }

    [Fact]
    public void An_old_one_that_was_the_wrong_one_is_named() =>
        Diagnose("rating=7.5/370", "microfarads=7.5 µF", "motorAsksFor=5/370").MendFirst.Single().Name.ShouldBe("capacitorWrong");

    // Derived: a can has the same two sections in whatever order they are written or measured.
    [Theory]
    [InlineData("rating=45+5/440", "rating=5+45/440", "microfarads=5 µF; secondMicrofarads=45 µF", ReadingVerdict.Good, ReadingVerdict.Good)]
    [InlineData("rating=45+5/440", "rating=5+45/440", "microfarads=45 µF; secondMicrofarads=5 µF", ReadingVerdict.Good, ReadingVerdict.Good)]
    [InlineData("rating=5+45/440", "rating=45+5/440", "microfarads=45 µF; secondMicrofarads=5 µF", ReadingVerdict.Good, ReadingVerdict.Good)]
    [InlineData("rating=45+5/440", "rating=45+5/440", "microfarads=5 µF; secondMicrofarads=40 µF", ReadingVerdict.Bad, ReadingVerdict.Good)]
    [InlineData("rating=45+5/440", "rating=45+5/440", "microfarads=4 µF; secondMicrofarads=45 µF", ReadingVerdict.Good, ReadingVerdict.Bad)]
    [InlineData("rating=45+5/440", "rating=45+5/440", "microfarads=5 µF; secondMicrofarads=5 µF", ReadingVerdict.Bad, ReadingVerdict.Good)]
    [InlineData("rating=5+5/440", "rating=5+5/440", "microfarads=3 µF; secondMicrofarads=5 µF", ReadingVerdict.Bad, ReadingVerdict.Good)]
    public void Sections_are_measured_in_either_order(string plate, string part, string readings, ReadingVerdict first, ReadingVerdict second) =>
        Report(plate, part, readings).Readings.Select(check => check.Verdict).ShouldBe([first, second]);

    // Published, worked by hand: 2652 × 6.36 A ÷ 375 V are 45 µF, 2652 × 0.707 ÷ 375 are 5 µF, at 60 Hz. Under load the order tells which motor hangs on which section.
    [Fact]
    public void Under_load_sections_that_read_the_other_way_round_neither_pass_nor_fail()
    {
        const string crossed = "acrossVolts=375 V; leadAmps=0.707 A; secondAcrossVolts=375 V; secondLeadAmps=6.36 A";
        Report("rating=45+5/440; frequency=60 Hz", "rating=45+5/440", crossed).Readings.Take(2).ShouldAllBe(check => check.Verdict == ReadingVerdict.CantTell);
        var diagnosis = Diagnose("rating=45+5/440; frequency=60 Hz", crossed);
        diagnosis.Conclusion.ShouldBe(Conclusion.ReadNext);
        Diagnose("rating=45+5/440; frequency=60 Hz", $"{crossed}; microfarads=5 µF; secondMicrofarads=45 µF").Conclusion.ShouldBe(Conclusion.NothingWrongFound);
    }

    // Trade rule: the section that the fit told to use is measured; the other one is left unused.
    [Theory]
    [InlineData("microfarads=45 µF; secondMicrofarads=5 µF", ReadingVerdict.Good)]
    [InlineData("microfarads=5 µF; secondMicrofarads=45 µF", ReadingVerdict.Good)]
    [InlineData("microfarads=5 µF", ReadingVerdict.Good)]
    [InlineData("secondMicrofarads=5 µF", ReadingVerdict.Good)]
    [InlineData("microfarads=40 µF; secondMicrofarads=5 µF", ReadingVerdict.Good)]
    [InlineData("microfarads=45 µF; secondMicrofarads=4 µF", ReadingVerdict.Bad)]
    [InlineData("microfarads=4 µF", ReadingVerdict.Bad)]
    [InlineData("microfarads=45 µF", ReadingVerdict.CantTell)]
    [InlineData("acrossVolts=375 V; leadAmps=6.36 A", ReadingVerdict.Bad)]
    public void Of_two_sections_the_one_in_use_is_proved(string readings, ReadingVerdict verdict) =>
        Report("rating=5/370; frequency=60 Hz", "rating=45+5/440", readings).Readings[0].Verdict.ShouldBe(verdict);

    [Theory]
    [InlineData("microfarads=5 µF", Conclusion.ReadNext, "secondMicrofarads")]
    [InlineData("secondMicrofarads=45 µF", Conclusion.ReadNext, "microfarads")]
    [InlineData("microfarads=5 µF; secondMicrofarads=45 µF", Conclusion.NothingWrongFound, null)]
    public void An_old_one_may_be_measured_in_either_order(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("rating=45+5/440", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next);
    }

    [Theory]
    [InlineData("rating=45+5/440")]
    [InlineData("rating=5+45/440")]
    public void A_can_that_has_the_motors_section_was_no_wrong_one(string plate) => Diagnose(plate, "bulges=yes", "motorAsksFor=5/370").MendFirst.ShouldBeEmpty();

    private static Diagnosis Diagnose(string plate, string readings, string site = "")
    {
        var need = CapacitorFamily.Capacitor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
        need.Complaints.ShouldBeEmpty();
        return CapacitorFamily.Capacitor.BeforeCondemning(need.Need, Named.Record<CapacitorReadings>(readings));
    }

    private static AfterSwapReport Report(string plate, string part, string readings) =>
        CapacitorFamily.Capacitor.AfterSwap(CapacitorFamily.Capacitor.ReadNeed(new(null, Named.Texts(plate), [])).Need, Named.Record<CapacitorSpec>(part), Named.Record<CapacitorReadings>(readings));
}
