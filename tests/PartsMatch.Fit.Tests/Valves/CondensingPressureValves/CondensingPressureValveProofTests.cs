using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Valves.CondensingPressureValves;

namespace PartsMatch.Fit.Tests.Valves.CondensingPressureValves;

/// <summary>Condensing-pressure valves before they are condemned and after the swap. Limits are practice.</summary>
[Trait("Source", "reading.headHeld")]
[Trait("Source", "reading.headCharge")]
[Trait("Source", "reading.headDifference")]
[Trait("Source", "reading.regulatorHeld")]
public sealed class CondensingPressureValveProofTests
{
    [Theory]
    [InlineData("", Conclusion.ReadNext, "headPressure")]
    [InlineData("headPressure=170 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("headPressure=169 psi", Conclusion.ReadNext, "enoughCharge")]
    [InlineData("headPressure=150 psi; enoughCharge=no", Conclusion.NotThePart, null)]
    [InlineData("headPressure=150 psi; enoughCharge=yes", Conclusion.PartHasFailed, null)]
    [InlineData("headPressure=200 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("headPressure=201 psi", Conclusion.ReadNext, "bypassHot")]
    [InlineData("headPressure=260 psi; bypassHot=yes", Conclusion.PartHasFailed, null)]
    [InlineData("headPressure=260 psi; bypassHot=no", Conclusion.NotThePart, null)]
    public void Readings_tell_whether_it_is_the_valve(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("arrangement=three-way; setting=180 psi; settingLeast=180 psi; settingMost=180 psi", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>Its setting is a difference, and may be normal while the head is what it is: 180 psi of head are over ten times 20 psi.</summary>
    [Theory]
    [InlineData("headPressure=180 psi; bypassHot=yes; enoughCharge=yes")]
    [InlineData("headPressure=5 psi; enoughCharge=yes")]
    [InlineData("headPressure=5 psi")]
    public void A_head_says_nothing_of_a_valve_that_opens_at_a_difference(string readings)
    {
        var diagnosis = Diagnose("arrangement=differential check; setting=20 psi", readings);
        diagnosis.Conclusion.ShouldBe(Conclusion.ReadNext, diagnosis.Sentence);
        diagnosis.Next!.Field.ShouldBe("hotGasPressure");
        diagnosis.Checks.ShouldContain(check => check.Verdict == ReadingVerdict.CantTell && check.Sentence.Contains("difference", StringComparison.Ordinal));
    }

    /// <summary>20 psi open it; within 5 psi of that either is right: practice.</summary>
    [Theory]
    [InlineData("", Conclusion.ReadNext, "hotGasPressure")]
    [InlineData("hotGasPressure=200 psi", Conclusion.ReadNext, "headPressure")]
    [InlineData("hotGasPressure=200 psi; headPressure=180 psi", Conclusion.ReadNext, "bypassHot")]
    [InlineData("hotGasPressure=205 psi; headPressure=180 psi; bypassHot=no", Conclusion.NothingWrongFound, null)]
    [InlineData("hotGasPressure=206 psi; headPressure=180 psi; bypassHot=no", Conclusion.PartHasFailed, null)]
    [InlineData("hotGasPressure=206 psi; headPressure=180 psi; bypassHot=yes", Conclusion.NothingWrongFound, null)]
    [InlineData("hotGasPressure=195 psi; headPressure=180 psi; bypassHot=yes", Conclusion.NothingWrongFound, null)]
    [InlineData("hotGasPressure=194 psi; headPressure=180 psi; bypassHot=yes", Conclusion.PartHasFailed, null)]
    [InlineData("hotGasPressure=194 psi; headPressure=180 psi; bypassHot=no", Conclusion.NothingWrongFound, null)]
    public void A_check_valve_is_told_by_its_own_difference(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("arrangement=differential check; setting=20 psi; settingLeast=20 psi; settingMost=20 psi", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    [Fact]
    public void A_check_valve_is_not_told_by_gauges_that_cannot_be_right_nor_without_its_difference()
    {
        Diagnose("arrangement=differential check; setting=20 psi", "hotGasPressure=170 psi; headPressure=180 psi; bypassHot=yes").Checks.Single().Verdict.ShouldBe(ReadingVerdict.CantTell);
        Diagnose("arrangement=differential check", "hotGasPressure=206 psi; headPressure=180 psi; bypassHot=no").Next!.Field.ShouldBe("settingNeeded");
        Diagnose("arrangement=three-way; setting=180 psi", "hotGasPressure=206 psi; headPressure=180 psi; bypassHot=no").Checks.ShouldNotContain(check => check.Title == "Difference and by-pass");
    }

    [Fact]
    public void A_new_check_valve_is_told_and_never_condemned()
    {
        var family = CondensingPressureValveFamily.CondensingPressureValve;
        var need = family.ReadNeed(new(null, Named.Texts("arrangement=differential check; setting=20 psi"), [])).Need;
        family.AfterSwap(need, Named.Record<CondensingPressureValveSpec>("arrangement=differential check; setting=20 psi"), Named.Record<CondensingPressureValveReadings>("hotGasPressure=194 psi; headPressure=180 psi; bypassHot=yes"))
            .Readings.Single().Verdict.ShouldBe(ReadingVerdict.Bad);
    }

    /// <summary>What an old one that can be set is set to nobody knows, whatever it is marked with: it is set anew first, and condemned where it does not follow.</summary>
    [Theory]
    [InlineData("three-way; settingLeast=100 psi; settingMost=225 psi", "180 psi", "headPressure=150 psi; enoughCharge=yes")]
    [InlineData("three-way; setting=180 psi; settingLeast=100 psi; settingMost=225 psi", "180 psi", "headPressure=140 psi; enoughCharge=yes")]
    [InlineData("three-way; setting=180 psi; settingLeast=100 psi; settingMost=225 psi", "210 psi", "headPressure=185 psi; enoughCharge=yes")]
    [InlineData("three-way; setting=180 psi; settingLeast=100 psi; settingMost=225 psi", "210 psi", "headPressure=165 psi; enoughCharge=yes")]
    [InlineData("three-way; setting=180 psi; settingLeast=100 psi", "210 psi", "headPressure=165 psi; enoughCharge=yes")] // the other end of its range was not read
    [InlineData("three-way; setting=180 psi; settingLeast=100 psi; settingMost=225 psi", "150 psi", "headPressure=175 psi; bypassHot=yes")]
    [InlineData("three-way; setting=180 psi; settingLeast=100 psi; settingMost=225 psi", "150 psi", "headPressure=205 psi; bypassHot=yes")]
    [InlineData("differential check; settingLeast=10 psi; settingMost=40 psi", "20 psi", "hotGasPressure=210 psi; headPressure=180 psi; bypassHot=no")]
    [InlineData("differential check; setting=30 psi; settingLeast=10 psi; settingMost=50 psi", "20 psi", "hotGasPressure=206 psi; headPressure=180 psi; bypassHot=no")]
    [InlineData("differential check; setting=30 psi; settingLeast=10 psi; settingMost=50 psi", "20 psi", "hotGasPressure=216 psi; headPressure=180 psi; bypassHot=no")]
    [InlineData("differential check; setting=20 psi; settingLeast=10 psi; settingMost=50 psi", "30 psi", "hotGasPressure=202 psi; headPressure=180 psi; bypassHot=yes")]
    [InlineData("differential check; setting=20 psi; settingLeast=10 psi; settingMost=50 psi", "30 psi", "hotGasPressure=194 psi; headPressure=180 psi; bypassHot=yes")]
    public void An_old_one_that_can_be_set_is_condemned_only_where_it_does_not_follow_its_setting(string plate, string needed, string readings)
    {
        var need = CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(null, Named.Texts($"arrangement={plate}"), Named.Texts($"settingNeeded={needed}"))).Need;
        ShouldBeTried(need, readings);
    }

    [Theory]
    [InlineData("setting=180 psi", "headPressure=150 psi; enoughCharge=yes; followsSetting=no")] // none to turn
    [InlineData("setting=180 psi; settingLeast=180 psi; settingMost=180 psi", "headPressure=150 psi; enoughCharge=yes")] // a fixed one
    [InlineData("setting=180 psi; settingLeast=180 psi; settingMost=180 psi", "headPressure=260 psi; bypassHot=yes")]
    public void One_that_cannot_be_set_is_condemned_as_it_stands(string plate, string readings) =>
        Diagnose($"arrangement=three-way; {plate}", readings).Conclusion.ShouldBe(Conclusion.PartHasFailed);

    [Theory]
    [InlineData("3-WAY R404A SETTING 180 PSI FIXED")]
    [InlineData("3-WAY R404A NON-ADJUSTABLE SETTING 180 PSI")]
    [InlineData("3-WAY R404A NON ADJ 180 PSI")]
    public void One_that_is_marked_as_fixed_is_condemned_as_it_stands(string plate) =>
        CondensingPressureValveFamily.CondensingPressureValve.BeforeCondemning(
            CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(plate, [], Named.Texts("settingNeeded=180 psi"))).Need,
            Named.Record<CondensingPressureValveReadings>("headPressure=150 psi; enoughCharge=yes")).Conclusion.ShouldBe(Conclusion.PartHasFailed);

    /// <summary>A plate of which no range was read, or none stands on, says nothing of whether it can be set: one that follows can be.</summary>
    [Theory]
    [InlineData("INLET REGULATOR 7/8 ODF", "condenserPressure=150 psi; enoughCharge=yes")]
    [InlineData("3-WAY R404A", "headPressure=150 psi; enoughCharge=yes")]
    [InlineData("3-WAY R404A SETTING 180 PSI", "headPressure=150 psi; enoughCharge=yes")]
    [InlineData("3-WAY R404A SETTING 180 PSI", "headPressure=260 psi; bypassHot=yes")]
    [InlineData("3-WAY R404A RANGE 100-225 PSI SETTING 180 PSI 5/8 ODF", "headPressure=150 psi; enoughCharge=yes")]
    [InlineData("3-WAY R404A ADJUSTABLE SETTING 180 PSI", "headPressure=150 psi; enoughCharge=yes")]
    public void One_of_which_it_is_not_known_whether_it_can_be_set_is_tried_before_it_is_condemned(string plate, string readings)
    {
        var need = CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(plate, [], Named.Texts("settingNeeded=180 psi"))).Need;
        ShouldBeTried(need, readings);
    }

    [Fact]
    public void A_check_valve_of_which_it_is_not_known_whether_it_can_be_set_is_tried_before_it_is_condemned() =>
        ShouldBeTried(CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new("DIFFERENTIAL CHECK 7/8 ODF", [], Named.Texts("settingNeeded=20 psi"))).Need, "hotGasPressure=210 psi; headPressure=180 psi; bypassHot=no");

    /// <summary>Turned to what is needed it does what it should, or it does not: both cannot be read of it, and what its pressures show is not asked for again.</summary>
    [Theory]
    [InlineData("three-way; settingLeast=100 psi; settingMost=225 psi", "180 psi", "headPressure=185 psi")]
    [InlineData("three-way", "180 psi", "headPressure=185 psi")]
    [InlineData("inlet regulator; settingLeast=65 psi; settingMost=225 psi", "180 psi", "condenserPressure=185 psi")]
    [InlineData("differential check; settingLeast=10 psi; settingMost=40 psi", "20 psi", "hotGasPressure=210 psi; headPressure=180 psi; bypassHot=yes")]
    public void One_that_does_what_it_should_and_is_said_not_to_follow_is_told_to_hold(string plate, string needed, string readings)
    {
        var family = CondensingPressureValveFamily.CondensingPressureValve;
        var need = family.ReadNeed(new(null, Named.Texts($"arrangement={plate}"), Named.Texts($"settingNeeded={needed}"))).Need;
        family.BeforeCondemning(need, Named.Record<CondensingPressureValveReadings>(readings)).Conclusion.ShouldBe(Conclusion.NothingWrongFound);
        family.BeforeCondemning(need, Named.Record<CondensingPressureValveReadings>($"{readings}; followsSetting=yes")).Conclusion.ShouldBe(Conclusion.NothingWrongFound);
        var both = family.BeforeCondemning(need, Named.Record<CondensingPressureValveReadings>($"{readings}; followsSetting=no"));
        (both.Conclusion, both.Next).ShouldBe((Conclusion.NothingWrongFound, null), both.Sentence);
        both.Checks.ShouldContain(check => check.Verdict == ReadingVerdict.CantTell && check.Sentence.Contains("said not to follow", StringComparison.Ordinal));
    }

    [Fact]
    public void A_fixed_one_that_holds_its_pressure_has_nothing_to_follow() =>
        Diagnose("arrangement=three-way; setting=180 psi; settingLeast=180 psi; settingMost=180 psi", "headPressure=185 psi; followsSetting=no").Conclusion.ShouldBe(Conclusion.NothingWrongFound);

    [Theory]
    [InlineData("", "or is not set to that")]
    [InlineData("; followsSetting=yes", "set it to that")]
    [InlineData("; followsSetting=no", "does not follow")]
    public void A_new_one_is_told_by_whether_it_follows(string turned, string said)
    {
        var family = CondensingPressureValveFamily.CondensingPressureValve;
        var need = family.ReadNeed(new(null, [], Named.Texts("needsArrangement=three-way; settingNeeded=180 psi"))).Need;
        family.AfterSwap(need, Named.Record<CondensingPressureValveSpec>("arrangement=three-way; settingLeast=100 psi; settingMost=225 psi"), Named.Record<CondensingPressureValveReadings>($"headPressure=150 psi; enoughCharge=yes{turned}"))
            .Readings.Single(check => check.Title == "Head and by-pass").Sentence.ShouldContain(said);
    }

    /// <summary>What is out of its bounds or cannot be true never ends in a sentence that nothing is wrong.</summary>
    [Fact]
    public void Gauges_that_cannot_be_right_are_read_again() =>
        Diagnose("arrangement=differential check; setting=20 psi", "hotGasPressure=170 psi; headPressure=180 psi; bypassHot=yes").Next!.Field.ShouldBe("hotGasPressure");

    /// <summary>30 psi open it, whatever is said to be needed there: at 26 psi it is right that none goes by, and at 14 psi it does not close.</summary>
    [Theory]
    [InlineData("differential check; setting=30 psi", "20 psi", "hotGasPressure=206 psi; headPressure=180 psi; bypassHot=no", Conclusion.NothingWrongFound)]
    [InlineData("differential check; setting=30 psi; settingLeast=30 psi; settingMost=30 psi", "20 psi", "hotGasPressure=216 psi; headPressure=180 psi; bypassHot=no", Conclusion.PartHasFailed)]
    [InlineData("differential check; setting=30 psi; settingLeast=30 psi; settingMost=30 psi", "10 psi", "hotGasPressure=194 psi; headPressure=180 psi; bypassHot=yes", Conclusion.PartHasFailed)]
    [InlineData("differential check", "20 psi", "hotGasPressure=206 psi; headPressure=180 psi; bypassHot=no; followsSetting=no", Conclusion.PartHasFailed)] // what was needed stands for a plate that cannot be read
    [InlineData("three-way; setting=150 psi", "180 psi", "headPressure=145 psi; enoughCharge=yes", Conclusion.NothingWrongFound)]
    public void An_old_one_is_told_by_its_own_setting(string plate, string needed, string readings, Conclusion conclusion)
    {
        var need = CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(null, Named.Texts($"arrangement={plate}"), Named.Texts($"settingNeeded={needed}"))).Need;
        var diagnosis = CondensingPressureValveFamily.CondensingPressureValve.BeforeCondemning(need, Named.Record<CondensingPressureValveReadings>(readings));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
    }

    /// <summary>Its catalogue says what it came set to; what it was set to since is what was needed, as near as it comes to that.</summary>
    [Theory]
    [InlineData("inlet regulator; setting=100 psi; settingLeast=65 psi; settingMost=225 psi", "settingNeeded=180 psi", "headPressure=105 psi", ReadingVerdict.CantTell)]
    [InlineData("three-way; setting=180 psi; settingLeast=100 psi; settingMost=225 psi", "settingNeeded=150 psi", "headPressure=155 psi; enoughCharge=yes", ReadingVerdict.Good)]
    [InlineData("three-way; setting=180 psi; settingLeast=100 psi; settingMost=225 psi", "settingNeeded=150 psi", "headPressure=139 psi; enoughCharge=yes", ReadingVerdict.Bad)]
    [InlineData("three-way; setting=180 psi; settingLeast=100 psi; settingMost=225 psi", "settingNeeded=175 psi", "headPressure=165 psi; enoughCharge=yes", ReadingVerdict.Good)] // however near what it came set to is
    [InlineData("three-way; setting=180 psi; settingLeast=100 psi; settingMost=225 psi", "settingNeeded=250 psi", "headPressure=215 psi; enoughCharge=yes", ReadingVerdict.Good)] // no more can be had of it
    [InlineData("three-way; setting=180 psi; settingLeast=100 psi; settingMost=225 psi", "", "headPressure=155 psi; enoughCharge=yes", ReadingVerdict.Bad)] // nothing else is known
    [InlineData("three-way; setting=180 psi; settingLeast=180 psi; settingMost=180 psi", "settingNeeded=150 psi", "headPressure=155 psi; enoughCharge=yes", ReadingVerdict.Bad)] // a fixed one
    public void An_old_one_that_can_be_set_is_told_by_what_was_needed(string plate, string site, string readings, ReadingVerdict verdict)
    {
        var family = CondensingPressureValveFamily.CondensingPressureValve;
        var need = family.ReadNeed(new(null, Named.Texts($"arrangement={plate}"), Named.Texts(site))).Need;
        family.BeforeCondemning(need, Named.Record<CondensingPressureValveReadings>(readings)).Checks.Single(check => check.Title == "Head and by-pass").Verdict.ShouldBe(verdict);
    }

    /// <summary>One that cannot be set does what it came for; one that can be set is set to what is needed, as near as it comes to that.</summary>
    [Theory]
    [InlineData("differential check", "20 psi", "setting=35 psi", "hotGasPressure=208 psi; headPressure=180 psi; bypassHot=no", ReadingVerdict.Good)]
    [InlineData("differential check", "20 psi", "setting=35 psi", "hotGasPressure=221 psi; headPressure=180 psi; bypassHot=no", ReadingVerdict.Bad)]
    [InlineData("differential check", "20 psi", "setting=35 psi; settingLeast=10 psi; settingMost=50 psi", "hotGasPressure=208 psi; headPressure=180 psi; bypassHot=no", ReadingVerdict.Bad)]
    [InlineData("differential check", "20 psi", "setting=35 psi; settingLeast=35 psi; settingMost=50 psi", "hotGasPressure=208 psi; headPressure=180 psi; bypassHot=no", ReadingVerdict.Good)]
    [InlineData("differential check", "20 psi", "setting=29 psi; settingLeast=10 psi; settingMost=50 psi", "hotGasPressure=208 psi; headPressure=180 psi; bypassHot=no", ReadingVerdict.Good)] // near enough, and so left as it came
    [InlineData("three-way", "180 psi", "setting=150 psi", "headPressure=145 psi; enoughCharge=yes", ReadingVerdict.Good)]
    [InlineData("three-way", "180 psi", "setting=150 psi; settingLeast=100 psi; settingMost=225 psi", "headPressure=145 psi; enoughCharge=yes", ReadingVerdict.Bad)]
    public void A_new_one_is_told_by_what_it_is_set_to(string arrangement, string needed, string part, string readings, ReadingVerdict verdict)
    {
        var family = CondensingPressureValveFamily.CondensingPressureValve;
        var need = family.ReadNeed(new(null, [], Named.Texts($"needsArrangement={arrangement}; settingNeeded={needed}"))).Need;
        family.AfterSwap(need, Named.Record<CondensingPressureValveSpec>($"arrangement={arrangement}; {part}"), Named.Record<CondensingPressureValveReadings>(readings))
            .Readings[^1].Verdict.ShouldBe(verdict);
    }

    [Fact]
    public void Its_notes_name_the_difference_that_it_opens_at_and_not_the_one_that_was_needed()
    {
        var need = CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(null, [], Named.Texts("needsArrangement=differential check; settingNeeded=20 psi"))).Need;
        CondensingPressureValveSteps.Of(new(need), Named.Record<CondensingPressureValveSpec>("arrangement=differential check; setting=35 psi"))
            .After.ShouldContain(step => step.Words.Contains("a difference of 35 psi (241 kPa)", StringComparison.Ordinal));
    }

    /// <summary>The by-pass is its check valve's, and the receiver lies lower than the condenser by what that one takes.</summary>
    [Theory]
    [InlineData("headPressure=260 psi; bypassHot=yes")]
    [InlineData("headPressure=160 psi; enoughCharge=yes")]
    public void An_inlet_regulator_is_not_condemned_for_what_its_check_valve_may_do(string readings) =>
        Diagnose("arrangement=inlet regulator; setting=180 psi", readings).Checks.ShouldContain(check => check.Verdict == ReadingVerdict.CantTell && check.Sentence.Contains("check valve", StringComparison.Ordinal));

    /// <summary>It holds the pressure before it, at the condenser: 10 psi under its setting it does not, and 20 psi above it, wide open, it takes at most 10 psi. Practice.</summary>
    [Theory]
    [InlineData("headPressure=160 psi; enoughCharge=yes", Conclusion.ReadNext, "condenserPressure")]
    [InlineData("headPressure=160 psi", Conclusion.ReadNext, "enoughCharge")]
    [InlineData("headPressure=160 psi; enoughCharge=yes; condenserPressure=170 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("headPressure=160 psi; enoughCharge=yes; condenserPressure=169 psi", Conclusion.PartHasFailed, null)]
    [InlineData("condenserPressure=169 psi", Conclusion.ReadNext, "enoughCharge")]
    [InlineData("condenserPressure=169 psi; enoughCharge=no", Conclusion.NotThePart, null)]
    [InlineData("condenserPressure=180 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("headPressure=170 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("headPressure=260 psi", Conclusion.ReadNext, "bypassHot")]
    [InlineData("headPressure=260 psi; bypassHot=no", Conclusion.NotThePart, null)]
    [InlineData("headPressure=260 psi; bypassHot=yes", Conclusion.ReadNext, "condenserPressure")]
    [InlineData("condenserPressure=260 psi", Conclusion.ReadNext, "headPressure")]
    [InlineData("condenserPressure=270 psi; headPressure=260 psi; bypassHot=yes", Conclusion.NotThePart, null)] // its check valve leaks
    [InlineData("condenserPressure=271 psi; headPressure=260 psi; bypassHot=yes", Conclusion.PartHasFailed, null)]
    [InlineData("condenserPressure=270 psi; headPressure=260 psi; bypassHot=no", Conclusion.NotThePart, null)] // another cause of a high head
    [InlineData("condenserPressure=240 psi; headPressure=260 psi; bypassHot=yes", Conclusion.ReadNext, "condenserPressure")] // one gauge is misread
    public void An_inlet_regulator_is_told_by_the_pressure_before_it(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("arrangement=inlet regulator; setting=180 psi; settingLeast=180 psi; settingMost=180 psi", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    [Theory]
    [InlineData("condenserPressure=169 psi; enoughCharge=yes")]
    [InlineData("condenserPressure=271 psi; headPressure=260 psi; bypassHot=yes")]
    public void An_inlet_regulator_that_can_be_set_is_set_anew_before_it_is_condemned(string readings)
    {
        const string plate = "arrangement=inlet regulator; setting=180 psi; settingLeast=65 psi; settingMost=225 psi";
        Diagnose(plate, readings).Next!.Field.ShouldBe("followsSetting");
        Diagnose(plate, $"{readings}; followsSetting=no").Conclusion.ShouldBe(Conclusion.PartHasFailed);
        Diagnose(plate, $"{readings}; followsSetting=yes").Conclusion.ShouldBe(Conclusion.NotThePart);
    }

    [Theory]
    [InlineData("headPressure=260 psi; bypassHot=yes")]
    [InlineData("headPressure=150 psi; enoughCharge=yes")]
    public void Nothing_is_condemned_before_it_is_known_what_its_setting_is_of(string readings)
    {
        var diagnosis = Diagnose("setting=180 psi", readings);
        diagnosis.Conclusion.ShouldBe(Conclusion.ReadNext, diagnosis.Sentence);
        (diagnosis.Next!.Field, diagnosis.Next.Side).ShouldBe(("arrangement", Side.Plate));
    }

    [Theory]
    [InlineData("three-way", true)]
    [InlineData("inlet regulator", true)]
    [InlineData("differential check", false)]
    public void Its_notes_speak_of_a_charge_only_where_a_condenser_is_flooded(string arrangement, bool charged)
    {
        var need = CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(null, Named.Texts($"arrangement={arrangement}; setting=20 psi"), [])).Need;
        var steps = CondensingPressureValveSteps.Of(new(need), Named.Record<CondensingPressureValveSpec>($"arrangement={arrangement}; setting=20 psi"));
        steps.After.Any(step => step.Words.Contains("floods the condenser", StringComparison.Ordinal)).ShouldBe(charged);
        steps.After.Any(step => step.Words.Contains("a difference of 20 psi (138 kPa)", StringComparison.Ordinal)).ShouldBe(!charged);
    }

    [Fact]
    public void Without_a_setting_no_head_condemns_it() => Diagnose("", "headPressure=100 psi").Next!.Field.ShouldBe("settingNeeded");

    [Fact]
    public void A_new_one_is_told_and_never_condemned()
    {
        var need = CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(null, Named.Texts("setting=180 psi"), [])).Need;
        CondensingPressureValveFamily.CondensingPressureValve.AfterSwap(need, Named.Record<CondensingPressureValveSpec>("setting=180 psi"), Named.Record<CondensingPressureValveReadings>("headPressure=150 psi; enoughCharge=yes"))
            .Readings.Select(check => check.Verdict).ShouldBe([ReadingVerdict.Good, ReadingVerdict.Bad]);
    }

    [Theory]
    [InlineData("settingLeast=225 psi; settingMost=100 psi", "", "settingLeast settingMost")]
    [InlineData("settingLeast=180 psi; settingMost=180 psi", "", "")] // a fixed one
    [InlineData("arrangement=three-way", "needsArrangement=inlet regulator", "arrangement")]
    [InlineData("setting=180 psi", "settingNeeded=100 psi", "setting")]
    [InlineData("setting=180 psi", "settingNeeded=190 psi", "")]
    [InlineData("refrigerants=R-22", "refrigerant=R-404A", "refrigerants")]
    public void What_cannot_all_be_true_is_said(string plate, string site, string fields) =>
        string.Join(' ', CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Contradictions.SelectMany(one => one.Fields)).ShouldBe(fields);

    private static void ShouldBeTried(Need need, string readings)
    {
        var (notTurned, follows, stuck) = (Before(""), Before("; followsSetting=yes"), Before("; followsSetting=no"));
        (notTurned.Conclusion, notTurned.Next?.Field).ShouldBe((Conclusion.ReadNext, "followsSetting"), notTurned.Sentence);
        (follows.Conclusion, follows.Next?.Field).ShouldBe((Conclusion.NotThePart, null), follows.Sentence);
        follows.Sentence.ShouldContain("set it to that");
        (stuck.Conclusion, stuck.Next?.Field).ShouldBe((Conclusion.PartHasFailed, null), stuck.Sentence);

        Diagnosis Before(string turned) => CondensingPressureValveFamily.CondensingPressureValve.BeforeCondemning(need, Named.Record<CondensingPressureValveReadings>(readings + turned));
    }

    private static Diagnosis Diagnose(string plate, string readings)
    {
        var need = CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(null, Named.Texts(plate), []));
        need.Complaints.ShouldBeEmpty();
        return CondensingPressureValveFamily.CondensingPressureValve.BeforeCondemning(need.Need, Named.Record<CondensingPressureValveReadings>(readings));
    }
}
