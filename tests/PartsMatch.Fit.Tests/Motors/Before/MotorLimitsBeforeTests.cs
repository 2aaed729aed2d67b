using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Before;

namespace PartsMatch.Fit.Tests.Motors.Before;

/// <summary>Each limit before a motor is condemned: at it, just inside, just outside.</summary>
[Trait("Source", "reading.noCurrent")]
[Trait("Source", "reading.insulation")]
[Trait("Source", "reading.windingSum")]
[Trait("Source", "reading.windingSpread")]
[Trait("Source", "reading.capacitorUnderLoad")]
[Trait("Source", "reading.ampsAgainstPlate")]
[Trait("Source", "reading.ampsUnbalance")]
[Trait("Source", "reading.voltsUnbalance")]
[Trait("Source", "reading.killers")]
public sealed class MotorLimitsBeforeTests
{
    // IEEE 43, from memory: 5 MΩ; under 1 MΩ condemned by practice.
    [Theory]
    [InlineData("5 MΩ", ReadingVerdict.Good)]
    [InlineData("open", ReadingVerdict.Good)]
    [InlineData("4.99 MΩ", ReadingVerdict.CantTell)]
    [InlineData("1 MΩ", ReadingVerdict.CantTell)]
    [InlineData("1000 kΩ", ReadingVerdict.CantTell)]
    [InlineData("0.99 MΩ", ReadingVerdict.Bad)]
    [InlineData("0 Ω", ReadingVerdict.Bad)]
    public void Insulation_of_5_megohms_is_good_and_under_1_condemns(string ohms, ReadingVerdict verdict) =>
        Asked.Verdict<InsulationToEarth>($"insulationToEarth={ohms}").ShouldBe(verdict);

    [Fact]
    public void An_insulation_reading_at_an_electronically_commutated_motor_is_no_reading()
    {
        var diagnosis = Asked.Of("insulationToEarth=0 MΩ", Asked.Electronic);
        diagnosis.Conclusion.ShouldBe(Conclusion.ReadNext);
        diagnosis.Checks.Single().Verdict.ShouldBe(ReadingVerdict.NotApplicable);
        diagnosis.Checks.Single().Sentence.ShouldStartWith("Never put an insulation tester on an electronically commutated motor");
    }

    // Practice: 5 % of 14 + 26 = 40 Ω is 2 Ω either way. A meter's last digit makes 0.1 Ω of each of three readings, and 0.3 Ω of its leads are twice in the sum and once in the other.
    [Theory]
    [InlineData("40 Ω", ReadingVerdict.Good)]
    [InlineData("42 Ω", ReadingVerdict.Good)]
    [InlineData("38 Ω", ReadingVerdict.Good)]
    [InlineData("42.01 Ω", ReadingVerdict.CantTell)]
    [InlineData("42.3 Ω", ReadingVerdict.CantTell)]
    [InlineData("42.31 Ω", ReadingVerdict.Bad)]
    [InlineData("37.99 Ω", ReadingVerdict.CantTell)]
    [InlineData("37.4 Ω", ReadingVerdict.CantTell)]
    [InlineData("37.39 Ω", ReadingVerdict.Bad)]
    [InlineData("open", ReadingVerdict.Bad)]
    [InlineData("0 Ω", ReadingVerdict.Bad)]
    public void Run_to_start_is_within_5_percent_of_the_other_two_together(string ohms, ReadingVerdict verdict) =>
        Asked.Verdict<SinglePhaseWindings>($"ohmsCommonToRun=14 Ω; ohmsCommonToStart=26 Ω; ohmsRunToStart={ohms}").ShouldBe(verdict);

    // True windings of 1.0 and 2.5 Ω with 0.2 Ω of meter leads; and three alike of a 5 hp motor, as a meter with tenths shows them.
    [Theory]
    [InlineData("voltage=115 V; phase=1; type=PSC; fullLoadAmps=11 A; runCapacitor=20/370", "leadVolts=116 V; turns=yes; motorAmps=10 A; ohmsCommonToRun=1.2 Ω; ohmsCommonToStart=2.7 Ω; ohmsRunToStart=3.7 Ω")]
    [InlineData("voltage=230 V; phase=3; fullLoadAmps=14 A", "leadVolts=230/231/230 V; turns=yes; motorAmps=13/13/13 A; ohmsOneToTwo=1.1 Ω; ohmsTwoToThree=1.2 Ω; ohmsOneToThree=1.1 Ω")]
    public void A_meter_s_last_digit_and_its_leads_do_not_condemn_a_good_winding(string plate, string readings)
    {
        var diagnosis = Asked.Of(readings, plate);
        diagnosis.Conclusion.ShouldBe(Conclusion.NothingWrongFound, diagnosis.Sentence);
        diagnosis.Sentence.ShouldContain("Touch the meter's leads together, subtract what they show, and measure again");
    }

    // The same windings where they would decide: nothing is cleared by them, and nobody is sent to measure them again without end.
    [Theory]
    [InlineData("circuitCalls=yes; leadVolts=0 V; control=fuse blown; insulationToEarth=20 MΩ")]
    [InlineData("leadVolts=230/231/230 V; turns=yes; motorAmps=17/17/17 A; runningSpeed=1600 rpm")]
    [InlineData("leadVolts=230/231/230 V; turns=yes; motorAmps=13/13/9 A")]
    [InlineData("leadVolts=230/231/230 V; turns=yes; motorAmps=13/13/0 A")]
    [InlineData("leadVolts=230/231/230 V; hums=yes; motorAmps=60/60/60 A; spinsFreely=yes")]
    public void Windings_that_do_not_tell_clear_and_condemn_nothing_and_are_not_asked_for_again(string readings)
    {
        var diagnosis = Asked.Of($"{readings}; ohmsOneToTwo=1.1 Ω; ohmsTwoToThree=1.2 Ω; ohmsOneToThree=1.1 Ω", "voltage=230 V; phase=3; speed=1725 rpm; frequency=60 Hz; fullLoadAmps=14 A; protection=none");
        diagnosis.Conclusion.ShouldBe(Conclusion.NothingWrongFound, diagnosis.Sentence);
        diagnosis.Next.ShouldBeNull();
    }

    [Fact]
    public void Leads_taken_for_one_another_do_not_condemn_a_whole_winding()
    {
        var diagnosis = Asked.Of("ohmsCommonToRun=40 Ω; ohmsCommonToStart=26 Ω; ohmsRunToStart=14 Ω");
        diagnosis.Checks[0].Verdict.ShouldBe(ReadingVerdict.Good);
        diagnosis.Checks[0].Sentence.ShouldContain("run and start are the leads that show it");
    }

    [Theory]
    [InlineData("", Conclusion.ReadNext)]
    [InlineData("; shellHot=yes", Conclusion.ReadNext)]
    [InlineData("; shellHot=no", Conclusion.PartHasFailed)]
    public void A_hot_protector_in_the_common_lead_is_not_a_broken_winding(string shell, Conclusion conclusion) =>
        Asked.Of($"ohmsCommonToRun=open; ohmsCommonToStart=open; ohmsRunToStart=40 Ω{shell}").Conclusion.ShouldBe(conclusion);

    [Fact]
    public void A_manual_protector_is_set_back_before_the_winding_is_condemned() =>
        Asked.Of("ohmsCommonToRun=open; ohmsCommonToStart=open; ohmsRunToStart=40 Ω; shellHot=no", $"{Asked.Psc}; protection=manual").Next!.Why.ShouldContain("reset");

    // Practice: spread at most 5 % of the mean. Worked by hand: 9.75, 10, 10.25 spread 0.5 of a mean of 10; a meter's last digit makes 0.1 Ω of the greatest and of the least.
    [Theory]
    [InlineData("9.75 Ω", "10 Ω", "10.25 Ω", ReadingVerdict.Good)]
    [InlineData("9.76 Ω", "10 Ω", "10.25 Ω", ReadingVerdict.Good)]
    [InlineData("9.74 Ω", "10 Ω", "10.25 Ω", ReadingVerdict.CantTell)]
    [InlineData("9.65 Ω", "10 Ω", "10.35 Ω", ReadingVerdict.CantTell)]
    [InlineData("9.64 Ω", "10 Ω", "10.36 Ω", ReadingVerdict.Bad)]
    [InlineData("97.5 Ω", "100 Ω", "102.5 Ω", ReadingVerdict.Good)]
    [InlineData("97.3 Ω", "100 Ω", "102.7 Ω", ReadingVerdict.Bad)]
    [InlineData("open", "10 Ω", "10 Ω", ReadingVerdict.Bad)]
    public void Three_windings_differ_by_at_most_5_percent_of_their_mean(string one, string two, string three, ReadingVerdict verdict) =>
        Asked.Verdict<ThreePhaseWindings>($"ohmsOneToTwo={one}; ohmsTwoToThree={two}; ohmsOneToThree={three}", Asked.Three).ShouldBe(verdict);

    [Fact]
    public void An_open_winding_of_a_hot_protected_three_phase_motor_waits_until_it_is_cold() =>
        Asked.Of("ohmsOneToTwo=open; shellHot=yes", "phase=3; protection=automatic").Conclusion.ShouldBe(Conclusion.ReadNext);

    // EIA-456-A practice, ±6 %: 5 µF take 4.7 to 5.3 µF.
    [Theory]
    [InlineData("5 µF", ReadingVerdict.Good)]
    [InlineData("4.7 µF", ReadingVerdict.Good)]
    [InlineData("5.3 µF", ReadingVerdict.Good)]
    [InlineData("4.69 µF", ReadingVerdict.Bad)]
    [InlineData("5.31 µF", ReadingVerdict.Bad)]
    [InlineData("0 µF", ReadingVerdict.Bad)]
    public void A_run_capacitor_is_within_6_percent_of_the_plate(string microfarads, ReadingVerdict verdict) =>
        Asked.Verdict<CapacitorUnderLoad>($"capacitorMicrofarads={microfarads}").ShouldBe(verdict);

    // Published worked example: 8.3 A at 240 V and 60 Hz are 91.7 µF; a 90 µF part is +1.9 %.
    [Fact]
    public void Under_load_8_3_amps_at_240_volts_are_91_7_microfarads_and_good_for_90()
    {
        var check = Asked.Of("capacitorAmps=8.3 A; capacitorVolts=240 V", "type=PSC; frequency=60 Hz; runCapacitor=90/370").Checks.Single();
        check.Verdict.ShouldBe(ReadingVerdict.Good);
        check.Sentence.ShouldContain("91.7");
        check.Limit.ShouldBe("84.6 to 95.4 µF");
    }

    // Worked by hand: 1.7 A at 340 V are 13.26 µF at 60 Hz and 15.92 µF at 50 Hz; 15 µF takes 14.1 to 15.9.
    [Fact]
    public void Without_the_frequency_a_reading_that_hangs_on_it_asks_for_it()
    {
        var diagnosis = Asked.Of("leadVolts=228 V; motorAmps=1 A; turns=yes; capacitorAmps=1.6 A; capacitorVolts=340 V", "type=PSC; voltage=230 V; runCapacitor=15/370");
        diagnosis.Next.ShouldBe(new NextReading("supplyFrequency", diagnosis.Next!.Why, Side.Site));
    }

    // Practice: the section that has what the motor's plate asks for is the fan's, else the smaller, in whatever order they are written.
    [Theory]
    [InlineData("type=PSC", "capacitorThere=45+5 µF 440 V", "5 µF")]
    [InlineData("type=PSC", "capacitorThere=5+45 µF 440 V", "5 µF")]
    [InlineData("type=PSC; runCapacitor=45+5/370", "", "5 µF")]
    [InlineData("type=PSC; runCapacitor=5+45/370", "", "5 µF")]
    [InlineData("type=PSC; runCapacitor=10/370", "capacitorThere=10+5 µF 440 V", "10 µF")]
    [InlineData("type=PSC; runCapacitor=10/370", "capacitorThere=5+10 µF 440 V", "10 µF")]
    public void The_fans_section_of_a_shared_capacitor_goes_by_the_plate_and_else_is_the_smaller(string plate, string site, string microfarads)
    {
        var diagnosis = Asked.Of($"capacitorMicrofarads={microfarads}", plate, site);
        diagnosis.Checks.Single(check => check.Title == "Run capacitor").Verdict.ShouldBe(ReadingVerdict.Good);
        diagnosis.MendFirst.ShouldBeEmpty();
    }

    // NEMA MG 1 12.44, published: 187.2 to 253 V for 208-230 V.
    [Theory]
    [InlineData("187.2 V", ReadingVerdict.Good)]
    [InlineData("187.1 V", ReadingVerdict.Bad)]
    [InlineData("253 V", ReadingVerdict.Good)]
    [InlineData("253.1 V", ReadingVerdict.Bad)]
    public void Volts_are_within_10_percent_of_the_tap(string volts, ReadingVerdict verdict) => Asked.Verdict<SupplyAtLeads>($"leadVolts={volts}").ShouldBe(verdict);

    // Practice: a tenth of the lowest tap, 20.8 V of 208-230, counts as none.
    [Theory]
    [InlineData("20.7 V", ReadingVerdict.Bad)]
    [InlineData("20.8 V", ReadingVerdict.Good)]
    public void Stray_volts_are_no_volts(string volts, ReadingVerdict verdict) => Asked.Verdict<VoltsAtLeads>($"circuitCalls=yes; leadVolts={volts}").ShouldBe(verdict);

    // Practice: a twentieth of full-load amps, 0.105 A of 2.1, counts as none.
    [Theory]
    [InlineData("0.104 A", "shellHot")]
    [InlineData("0.105 A", "turns")]
    public void A_clamp_meters_stray_amps_are_no_amps(string amps, string next) => Asked.Of($"leadVolts=228 V; motorAmps={amps}").Next!.Field.ShouldBe(next);

    // NEMA MG 1 12.45 and 14.36, published: 460, 467, 450 V are 1.96 %; 1 % and 5 % worked by hand: 300, 303, 297 average 300; 300, 315, 285 likewise.
    [Theory]
    [InlineData("300/303/297 V", ReadingVerdict.Good)]
    [InlineData("300/303.1/296.9 V", ReadingVerdict.CantTell)]
    [InlineData("460/467/450 V", ReadingVerdict.CantTell)]
    [InlineData("300/315/285 V", ReadingVerdict.CantTell)]
    [InlineData("300/315.1/284.9 V", ReadingVerdict.Bad)]
    public void Legs_are_alike_within_1_percent_and_never_over_5(string volts, ReadingVerdict verdict) => Asked.Verdict<SupplyBalance>($"leadVolts={volts}", "phase=3").ShouldBe(verdict);

    [Fact]
    public void The_standards_example_is_1_96_percent() => Asked.Of("leadVolts=460/467/450 V", "phase=3").Checks.Single(check => check.Title == "Balance of the volts").Sentence.ShouldContain("1.96 %");

    // Practice: full-load amps, 2.1 A; with a marked service factor of 1.1, 2.31 A.
    [Theory]
    [InlineData("2.1 A", "", ReadingVerdict.Good)]
    [InlineData("2.11 A", "", ReadingVerdict.Bad)]
    [InlineData("2.31 A", "; serviceFactor=1.1", ReadingVerdict.Good)]
    [InlineData("2.32 A", "; serviceFactor=1.1", ReadingVerdict.Bad)]
    public void Running_amps_stay_within_the_plate(string amps, string factor, ReadingVerdict verdict) =>
        Asked.Verdict<AmpsOverPlate>($"leadVolts=228 V; turns=yes; motorAmps={amps}", Asked.Psc + factor).ShouldBe(verdict);

    // A plate's figures belong together row by row: 6 A at 115 V are 3 A at 230 V.
    [Theory]
    [InlineData("voltage=115/230 V; fullLoadAmps=6.0/3.0 A", "230 V", "3 A", ReadingVerdict.Good)]
    [InlineData("voltage=115/230 V; fullLoadAmps=6.0/3.0 A", "230 V", "3.01 A", ReadingVerdict.Bad)]
    [InlineData("voltage=115/230 V; fullLoadAmps=6.0/3.0 A", "116 V", "6 A", ReadingVerdict.Good)]
    [InlineData("voltage=115/230 V; fullLoadAmps=6.0/3.0 A; connectedFor=230 V", "230 V", "5 A", ReadingVerdict.Bad)]
    [InlineData("voltage=115/208-230 V; fullLoadAmps=6.0/3.0 A; connectedFor=230 V", "150 V", "3.01 A", ReadingVerdict.Bad)]
    [InlineData("voltage=230/460 V; phase=3; fullLoadAmps=3.6/1.8 A", "461 V", "3.1 A", ReadingVerdict.Bad)]
    [InlineData("voltage=230/460 V; phase=3; fullLoadAmps=3.6/1.8 A", "460/235/230 V", "3.1 A", ReadingVerdict.Bad)]
    [InlineData("voltage=230/460 V; phase=3; fullLoadAmps=3.6/1.8 A", "231 V", "3.1 A", ReadingVerdict.Good)]
    public void Amps_are_held_against_the_row_of_the_tap_in_use(string plate, string volts, string amps, ReadingVerdict verdict) =>
        Asked.Verdict<AmpsOverPlate>($"leadVolts={volts}; turns=yes; motorAmps={amps}", plate).ShouldBe(verdict);

    // The same: 1140 rpm and 1.9 A at 60 Hz, 950 rpm and 2.1 A at 50 Hz.
    [Theory]
    [InlineData("50 Hz", ReadingVerdict.Good)]
    [InlineData("60 Hz", ReadingVerdict.Bad)]
    public void Amps_are_held_against_the_row_of_the_supply_s_frequency(string hertz, ReadingVerdict verdict) =>
        Asked.Verdict<AmpsOverPlate>("leadVolts=230 V; turns=yes; motorAmps=2 A", "voltage=230 V; speed=950/1140 rpm; frequency=50/60 Hz; fullLoadAmps=2.1/1.9 A", $"supplyFrequency={hertz}").ShouldBe(verdict);

    // Practice: locked from 80 % of its locked-rotor amps on, 12 A of 15 at 230 V; no current under a twentieth of full load, 0.3 A of 6 at 115 V.
    [Theory]
    [InlineData("230 V", "12 A", "spinsFreely")]
    [InlineData("230 V", "11.9 A", "turns")]
    [InlineData("116 V", "12 A", "turns")]
    [InlineData("116 V", "0.29 A", "shellHot")]
    [InlineData("230 V", "0.29 A", "turns")]
    public void What_stands_still_or_takes_nothing_is_told_by_the_row_of_the_tap_in_use(string volts, string amps, string next) =>
        Asked.Of($"leadVolts={volts}; motorAmps={amps}", "voltage=115/230 V; phase=1; fullLoadAmps=6.0/3.0 A; lockedRotorAmps=30/15 A").Next!.Field.ShouldBe(next);

    // Practice: 10 %. Worked by hand: 2, 2.2, 1.8 average 2.
    [Theory]
    [InlineData("2/2.2/1.8 A", ReadingVerdict.Good)]
    [InlineData("2/2.21/1.79 A", ReadingVerdict.Bad)]
    [InlineData("2/2/0 A", ReadingVerdict.Bad)]
    public void Legs_take_like_currents_within_10_percent(string amps, ReadingVerdict verdict) =>
        Asked.Verdict<AmpsBalance>($"leadVolts=460/461/459 V; turns=yes; motorAmps={amps}", Asked.Three).ShouldBe(verdict);

    // Practice: a motor that runs at all runs on volts within a quarter of its plate's. 208 V is 54.8 % under 460 V, 202 V 12.2 % under 230 V.
    [Theory]
    [InlineData("460 V", "208 V", "A 460 V motor does not belong on 208 V: find out why it was there first.", "See why that motor was on these volts")]
    [InlineData("230 V", "202 V", "Mend the supply or set the right tap first.", "Set the tap for the volts that are there")]
    public void A_motor_on_volts_it_cannot_have_run_on_is_wondered_at_and_not_reset(string plate, string volts, string says, string mend)
    {
        var diagnosis = Asked.Of($"leadVolts={volts}", $"voltage={plate}; phase=1");
        diagnosis.Conclusion.ShouldBe(Conclusion.NotThePart);
        diagnosis.Sentence.ShouldEndWith(says);
        diagnosis.MendFirst.Single(one => one.Name == "supplyOffTap").Mend.ShouldStartWith(mend);
    }

    // Practice: legs more than a quarter apart are a lost leg. 0.75 × 460 = 345 V.
    [Theory]
    [InlineData("460/230/230 V", true)]
    [InlineData("460/344.9/460 V", true)]
    [InlineData("460/345/460 V", false)]
    [InlineData("460/0/460 V", true)]
    public void A_lost_leg_is_not_taken_for_the_wrong_supply(string volts, bool isLost)
    {
        var diagnosis = Asked.Of($"leadVolts={volts}", Asked.Three);
        diagnosis.Conclusion.ShouldBe(Conclusion.NotThePart);
        diagnosis.Sentence.Contains("Look at fuses and contactor poles upstream", StringComparison.Ordinal).ShouldBe(isLost, diagnosis.Sentence);
        diagnosis.MendFirst.Any(mend => mend.Name == "legLost").ShouldBe(isLost);
        if (isLost) diagnosis.MendFirst.ShouldHaveSingleItem().Cause.ShouldEndWith("far hotter than it stands.");
        if (isLost) diagnosis.Checks.Select(check => check.Sentence).ShouldAllBe(sentence => !sentence.Contains("does not belong", StringComparison.Ordinal));
    }

    // NEMA MG 1 14.36, from memory: 2 × 5² = 50 % at 5 %; beyond it the formula says nothing.
    [Theory]
    [InlineData("300/315/285 V", "about 50 % hotter by that.")]
    [InlineData("300/316/284 V", "far hotter by that than it stands.")]
    public void The_heat_of_unlike_legs_is_worked_out_up_to_5_percent_only(string volts, string heat) =>
        Asked.Of($"leadVolts={volts}", "phase=3").MendFirst.Single(mend => mend.Name == "supplyUnbalanced").Cause.ShouldEndWith(heat);

    [Fact]
    public void What_killed_it_is_named_with_what_to_mend()
    {
        var mends = Asked.Of(
            "leadVolts=460/467/450 V; contactBurnt=yes; drainsWrong=yes; bladeUnbalanced=yes; coilDirty=yes; shortCycles=yes; control=high-pressure control tripped; capacitorMicrofarads=3 µF",
            "phase=3; voltage=230 V; bearings=sleeve; runCapacitor=5/370",
            "shaftPosition=up; capacitorThere=7.5 µF 370 V").MendFirst;
        mends.Select(mend => mend.Name).ShouldBe(
            ["supplyOffTap", "supplyUnbalanced", "contactBurnt", "capacitorBad", "capacitorWrong", "sleeveShaftUp", "drainsWrong", "bladeUnbalanced", "coilDirty", "shortCycles", "highPressureTripped"]);
        mends.ShouldAllBe(mend => mend.Cause.EndsWith('.') && mend.Mend.EndsWith('.') && mend.Source.Text.Length > 0);

        // NEMA MG 1 14.36, from memory: 2 u², 2 × 1.96² = 7.7 %.
        mends[1].Cause.ShouldContain("8 % hotter");
    }

    [Fact]
    public void Nothing_is_mended_that_was_not_found() => Asked.Of("leadVolts=228 V; turns=yes; motorAmps=2 A; coilDirty=no; bladeUnbalanced=no", site: "shaftPosition=up").MendFirst.ShouldBeEmpty();
}
