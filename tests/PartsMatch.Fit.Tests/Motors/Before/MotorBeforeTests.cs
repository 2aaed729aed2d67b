using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Before;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors.Before;

/// <summary>The trade's cases before a motor is condemned (practice), each a line of readings, a conclusion and the reading wanted next.</summary>
[Trait("Source", "reading.noVolts")]
[Trait("Source", "reading.protectorOpen")]
[Trait("Source", "reading.binds")]
[Trait("Source", "reading.stalled")]
[Trait("Source", "reading.command")]
[Trait("Source", "reading.split")]
public sealed class MotorBeforeTests
{
    private const string Dead = "circuitCalls=yes; leadVolts=0 V";
    private const string Alive = "circuitCalls=yes; leadVolts=228 V";
    private const string Hums = $"{Alive}; hums=yes; motorAmps=4.8 A";
    // R-134a condenses at 131 °F there (its curve's own tests): 35 °F over the air, and 30 °F is the ceiling.
    private const string LargeSplit = "refrigerant=R-134a; condensingPressure=201.63 psi; enteringAir=96 °F";
    private const string Whole = "ohmsCommonToRun=14 Ω; ohmsCommonToStart=26 Ω; ohmsRunToStart=40 Ω";

    [Theory]
    [InlineData("", Conclusion.ReadNext, "leadVolts")]
    [InlineData("leadVolts=0 V", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("leadVolts=0 V; circuitCalls=no", Conclusion.ReadNext, "leadVolts")]
    [InlineData(Dead, Conclusion.NotThePart, "control")]
    [InlineData($"{Dead}; control=fan-cycling switch open", Conclusion.NotThePart, null)]
    [InlineData($"{Dead}; control=high-pressure control tripped", Conclusion.ReadNext, "spinsFreely")]
    [InlineData($"{Dead}; control=high-pressure control tripped; spinsFreely=yes", Conclusion.NotThePart, null)]
    [InlineData($"{Dead}; control=high-pressure control tripped; spinsFreely=no", Conclusion.ReadNext, "bladeClear")]
    [InlineData($"{Dead}; control=high-pressure control tripped; spinsFreely=no; bladeClear=yes", Conclusion.PartHasFailed, null)]
    [InlineData($"{Dead}; control=high-pressure control tripped; spinsFreely=no; bladeClear=no", Conclusion.NotThePart, null)]
    [InlineData($"{Dead}; control=fan-cycling switch open; spinsFreely=no", Conclusion.ReadNext, "bladeClear")]
    [InlineData("spinsFreely=no", Conclusion.ReadNext, "bladeClear")]
    [InlineData($"{Dead}; control=fuse blown", Conclusion.ReadNext, "insulationToEarth")]
    [InlineData($"{Dead}; control=fuse blown; insulationToEarth=20 MΩ", Conclusion.ReadNext, "ohmsCommonToRun")]
    [InlineData($"{Dead}; control=fuse blown; insulationToEarth=20 MΩ; {Whole}", Conclusion.NotThePart, null)]
    [InlineData($"{Dead}; control=fuse blown; insulationToEarth=0.2 MΩ", Conclusion.PartHasFailed, null)]
    [InlineData(Alive, Conclusion.ReadNext, "motorAmps")]
    [InlineData($"{Alive}; motorAmps=0 A", Conclusion.ReadNext, "shellHot")]
    [InlineData($"{Alive}; motorAmps=0 A; shellHot=yes", Conclusion.ReadNext, "motorAmps")]
    [InlineData($"{Alive}; motorAmps=0 A; shellHot=no", Conclusion.ReadNext, "ohmsCommonToRun")]
    [InlineData($"{Alive}; motorAmps=0 A; shellHot=no; ohmsCommonToRun=open; ohmsCommonToStart=open; ohmsRunToStart=40 Ω", Conclusion.PartHasFailed, null)]
    [InlineData($"{Alive}; motorAmps=0 A; shellHot=no; {Whole}", Conclusion.ReadNext, "leadVolts")]
    [InlineData($"{Alive}; motorAmps=4.8 A", Conclusion.ReadNext, "spinsFreely")]
    [InlineData($"{Alive}; motorAmps=1.9 A", Conclusion.ReadNext, "turns")]
    [InlineData(Hums, Conclusion.ReadNext, "spinsFreely")]
    [InlineData($"{Hums}; spinsFreely=no", Conclusion.ReadNext, "bladeClear")]
    [InlineData($"{Hums}; spinsFreely=no; bladeClear=yes", Conclusion.PartHasFailed, null)]
    [InlineData($"{Hums}; spinsFreely=no; bladeClear=no", Conclusion.NotThePart, null)]
    [InlineData($"{Hums}; spinsFreely=yes", Conclusion.ReadNext, "capacitorMicrofarads")]
    [InlineData($"{Hums}; spinsFreely=yes; capacitorMicrofarads=0 µF", Conclusion.NotThePart, null)]
    [InlineData($"{Hums}; spinsFreely=yes; capacitorMicrofarads=5 µF", Conclusion.ReadNext, "ohmsCommonToRun")]
    [InlineData($"{Hums}; spinsFreely=yes; capacitorMicrofarads=5 µF; {Whole}", Conclusion.PartHasFailed, null)]
    [InlineData($"{Alive}; turns=yes; motorAmps=2 A", Conclusion.NothingWrongFound, null)]
    [InlineData($"{Alive}; turns=yes; motorAmps=2.6 A", Conclusion.ReadNext, "capacitorAmps")]
    [InlineData($"{Alive}; turns=yes; motorAmps=2.6 A; capacitorMicrofarads=5 µF", Conclusion.ReadNext, "ohmsCommonToRun")]
    [InlineData($"{Alive}; turns=yes; motorAmps=2.6 A; capacitorMicrofarads=5 µF; {Whole}", Conclusion.ReadNext, "runningSpeed")]
    [InlineData($"{Alive}; turns=yes; motorAmps=2.6 A; capacitorMicrofarads=5 µF; {Whole}; runningSpeed=1020 rpm", Conclusion.NotThePart, null)]
    [InlineData($"{Alive}; turns=yes; motorAmps=2.6 A; capacitorMicrofarads=5 µF; {Whole}; runningSpeed=1085 rpm", Conclusion.NothingWrongFound, null)]
    [InlineData("leadVolts=150 V", Conclusion.NotThePart, null)]
    [InlineData(LargeSplit, Conclusion.ReadNext, "leadVolts")]
    [InlineData($"{Alive}; {LargeSplit}", Conclusion.ReadNext, "motorAmps")]
    [InlineData($"{Alive}; turns=yes; motorAmps=2 A; {LargeSplit}", Conclusion.NotThePart, null)]
    [InlineData($"{Alive}; turns=yes; motorAmps=2.6 A; {LargeSplit}", Conclusion.ReadNext, "capacitorAmps")]
    [InlineData($"{Hums}; spinsFreely=no; {LargeSplit}", Conclusion.ReadNext, "bladeClear")]
    [InlineData($"{Hums}; spinsFreely=no; bladeClear=yes; {LargeSplit}", Conclusion.PartHasFailed, null)]
    public void A_split_capacitor_motor(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Asked.Of(readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        diagnosis.Next?.Field.ShouldBe(next, diagnosis.Sentence);
        (diagnosis.Next is null).ShouldBe(next is null);
    }

    [Fact]
    public void A_large_split_beside_a_motor_that_runs_as_it_should_says_where_to_look()
    {
        var diagnosis = Asked.Of($"{Alive}; turns=yes; motorAmps=2 A; {LargeSplit}");
        diagnosis.Sentence.ShouldStartWith("The split is 35 °F");
        diagnosis.Sentence.ShouldEndWith("look at coil, blade, air and charge.");
    }

    [Fact]
    public void A_large_split_without_the_plate_s_amps_asks_for_them()
    {
        var next = Asked.Of($"{Alive}; turns=yes; motorAmps=2 A; capacitorMicrofarads=5 µF; {LargeSplit}", Asked.Psc.Replace("fullLoadAmps=2.1 A; ", string.Empty, StringComparison.Ordinal)).Next.ShouldNotBeNull();
        (next.Field, next.Side).ShouldBe(("fullLoadAmps", (Side?)Side.Plate));
    }

    [Theory]
    [InlineData("leadVolts=116 V; circuitCalls=yes; motorAmps=0 A", Conclusion.ReadNext, "ohmsCommonToRun")]
    [InlineData("leadVolts=116 V; motorAmps=0 A; ohmsCommonToRun=open", Conclusion.PartHasFailed, null)]
    [InlineData("leadVolts=116 V; hums=yes; motorAmps=1.5 A; spinsFreely=yes", Conclusion.ReadNext, "ohmsCommonToRun")]
    [InlineData("leadVolts=116 V; hums=yes; motorAmps=1.5 A; spinsFreely=yes; ohmsCommonToRun=9 Ω", Conclusion.PartHasFailed, null)]
    public void A_shaded_pole_motor_has_one_winding_no_capacitor_and_here_no_protector(string readings, Conclusion conclusion, string? next) => Is(Asked.Of(readings, Asked.ShadedPole), conclusion, next);

    [Theory]
    [InlineData("leadVolts=116 V; motorAmps=0 A", Conclusion.ReadNext, "signalThere")]
    [InlineData("leadVolts=116 V; motorAmps=0 A; signalThere=no", Conclusion.NotThePart, null)]
    [InlineData("leadVolts=116 V; motorAmps=0 A; signalThere=yes", Conclusion.PartHasFailed, null)]
    [InlineData("leadVolts=116 V; motorAmps=0.2 A; turns=no; signalThere=yes", Conclusion.ReadNext, "spinsFreely")]
    [InlineData("leadVolts=116 V; motorAmps=0.2 A; turns=no; signalThere=yes; spinsFreely=yes", Conclusion.PartHasFailed, null)]
    [InlineData("leadVolts=0 V; circuitCalls=yes; control=fuse blown", Conclusion.NotThePart, null)]
    public void An_electronically_commutated_motor_is_judged_by_volts_and_command_never_by_its_windings(string readings, Conclusion conclusion, string? next) => Is(Asked.Of(readings, Asked.Electronic), conclusion, next);

    [Theory]
    [InlineData("leadVolts=460 V; motorAmps=6 A; turns=no; spinsFreely=yes", Conclusion.ReadNext, "leadVolts")]
    [InlineData("leadVolts=460/462/461 V; motorAmps=6 A; turns=no; spinsFreely=yes", Conclusion.ReadNext, "ohmsOneToTwo")]
    [InlineData("leadVolts=460/235/230 V; motorAmps=6 A; turns=no; spinsFreely=yes", Conclusion.NotThePart, null)]
    [InlineData("leadVolts=460/0/461 V", Conclusion.NotThePart, null)]
    [InlineData("leadVolts=460/462/461 V; turns=yes; motorAmps=1.8/1.8/1.2 A", Conclusion.ReadNext, "ohmsOneToTwo")]
    [InlineData("leadVolts=460/462/461 V; turns=yes; motorAmps=1.8/1.8/1.2 A; ohmsOneToTwo=10 Ω; ohmsTwoToThree=10 Ω; ohmsOneToThree=10 Ω", Conclusion.NothingWrongFound, null)]
    [InlineData("leadVolts=460 V; turns=yes; motorAmps=1.8/1.8/1.2 A; ohmsOneToTwo=10 Ω; ohmsTwoToThree=10 Ω; ohmsOneToThree=10 Ω", Conclusion.ReadNext, "leadVolts")]
    [InlineData("leadVolts=470/455/455 V; turns=yes; motorAmps=2/1.8/1.5 A; ohmsOneToTwo=10 Ω; ohmsTwoToThree=10 Ω; ohmsOneToThree=10 Ω", Conclusion.NotThePart, null)]
    [InlineData("leadVolts=470/455/455 V; turns=yes; motorAmps=2/2/1.2 A; ohmsOneToTwo=10 Ω; ohmsTwoToThree=10 Ω; ohmsOneToThree=10 Ω", Conclusion.NothingWrongFound, null)]
    [InlineData("leadVolts=460/462/461 V; turns=yes; motorAmps=2.6/2.5/1.8 A; ohmsOneToTwo=10 Ω; ohmsTwoToThree=10 Ω; ohmsOneToThree=10 Ω; runningSpeed=1000 rpm", Conclusion.NothingWrongFound, null)]
    [InlineData($"leadVolts=460/462/461 V; turns=yes; motorAmps=1.8/1.8/1.2 A; ohmsOneToTwo=10 Ω; ohmsTwoToThree=10 Ω; ohmsOneToThree=10 Ω; {LargeSplit}", Conclusion.NothingWrongFound, null)]
    public void A_three_phase_motor_wants_all_three_legs(string readings, Conclusion conclusion, string? next) => Is(Asked.Of(readings, Asked.Three), conclusion, next);

    // From memory, MG 1 14.36: amps at full load are six to ten times as far out of balance as the volts. Worked by hand: 470, 455, 455 V are 2.17 % out, and 21.7 % of the amps are explained by that.
    [Theory]
    [InlineData("2/1.8/1.5 A", ReadingVerdict.Bad)]
    [InlineData("2/2/1.3 A", ReadingVerdict.CantTell)]
    public void Unlike_amps_that_unlike_volts_explain_are_the_supply_s_others_are_open_until_the_lines_are_rolled(string amps, ReadingVerdict verdict)
    {
        var check = Asked.Of($"leadVolts=470/455/455 V; turns=yes; motorAmps={amps}; ohmsOneToTwo=10 Ω; ohmsTwoToThree=10 Ω; ohmsOneToThree=10 Ω", Asked.Three).Checks.Single(check => check.Title == "Balance of the amps");
        check.Verdict.ShouldBe(verdict);
        check.Sentence.Contains("roll the three lines by one", StringComparison.Ordinal).ShouldBe(verdict == ReadingVerdict.CantTell);
    }

    [Fact]
    public void Three_amps_with_a_leg_of_none_at_a_single_phase_plate_are_no_reason_to_clear_it() =>
        Asked.Verdict<AmpsBalance>($"leadVolts=230/222/229 V; turns=yes; motorAmps=2/2/0 A; {Whole}").ShouldBe(ReadingVerdict.CantTell);

    [Fact]
    public void An_electronic_motor_s_unlike_amps_never_ask_for_windings() =>
        Is(Asked.Of("leadVolts=460/462/461 V; turns=yes; motorAmps=1.8/1.8/1.2 A", "type=ECM; phase=3; voltage=460 V; fullLoadAmps=2 A"), Conclusion.NothingWrongFound, null);

    // Practice: a protector opens all three legs together, so ohms between two of them show that it is closed; where all are open, heat tells.
    [Theory]
    [InlineData("ohmsOneToTwo=5.4 Ω; ohmsTwoToThree=open; ohmsOneToThree=open", Conclusion.PartHasFailed, null)]
    [InlineData("ohmsOneToTwo=open; ohmsTwoToThree=open; ohmsOneToThree=open", Conclusion.ReadNext, "shellHot")]
    [InlineData("ohmsOneToTwo=open; ohmsTwoToThree=open; ohmsOneToThree=open; shellHot=yes", Conclusion.ReadNext, "ohmsOneToTwo")]
    [InlineData("ohmsOneToTwo=open; ohmsTwoToThree=open; ohmsOneToThree=open; shellHot=no", Conclusion.PartHasFailed, null)]
    public void An_open_winding_is_the_protector_s_only_while_the_shell_is_hot_and_all_legs_are_open(string ohms, Conclusion conclusion, string? next) =>
        Is(Asked.Of($"circuitCalls=yes; leadVolts=0/0/0 V; control=fuse blown; insulationToEarth=20 MΩ; {ohms}", "type=three-phase induction; phase=3; voltage=460 V; fullLoadAmps=1.8 A"), conclusion, next);

    // The case of a motor that hums on two legs with its third winding broken.
    [Fact]
    public void Current_and_ohms_through_two_leads_and_none_through_the_third_show_a_broken_winding() =>
        Is(Asked.Of("circuitCalls=yes; leadVolts=460/461/462 V; hums=yes; motorAmps=0/8/8 A; ohmsOneToTwo=open; ohmsTwoToThree=5.4 Ω; ohmsOneToThree=open", "type=three-phase induction; phase=3; voltage=460 V; fullLoadAmps=1.8 A"), Conclusion.PartHasFailed, null);

    [Theory]
    [InlineData("", Conclusion.ReadNext, "shellHot")]
    [InlineData("; shellHot=yes", Conclusion.ReadNext, "ohmsCommonToRun")]
    [InlineData("; shellHot=no", Conclusion.PartHasFailed, null)]
    public void An_open_common_lead_behind_a_blown_fuse_asks_whether_the_shell_is_hot(string shell, Conclusion conclusion, string? next) =>
        Is(Asked.Of($"{Dead}; control=fuse blown; insulationToEarth=20 MΩ; ohmsCommonToRun=open; ohmsCommonToStart=open; ohmsRunToStart=40 Ω{shell}"), conclusion, next);

    // Practice: a motor on two legs of three; the supply's leg is looked at first, and only ohms condemn the motor.
    [Theory]
    [InlineData("leadVolts=460 V; turns=yes; motorAmps=1.9/0/1.9 A", Conclusion.ReadNext, "leadVolts")]
    [InlineData("leadVolts=460 V; hums=yes; motorAmps=3/0/3 A", Conclusion.ReadNext, "leadVolts")]
    [InlineData("leadVolts=460/230/230 V; turns=yes; motorAmps=1.9/0/1.9 A", Conclusion.NotThePart, null)]
    [InlineData("leadVolts=460/462/461 V; turns=yes; motorAmps=1.9/0/1.9 A", Conclusion.ReadNext, "ohmsOneToTwo")]
    [InlineData("leadVolts=460/462/461 V; hums=yes; motorAmps=3/0/3 A", Conclusion.ReadNext, "ohmsOneToTwo")]
    [InlineData("leadVolts=460/462/461 V; hums=yes; motorAmps=3/0.09/3 A; spinsFreely=yes", Conclusion.ReadNext, "ohmsOneToTwo")]
    [InlineData("leadVolts=460/462/461 V; hums=yes; motorAmps=3/0/3 A; ohmsOneToTwo=open; ohmsTwoToThree=open; ohmsOneToThree=10 Ω", Conclusion.PartHasFailed, null)]
    [InlineData("leadVolts=460/462/461 V; hums=yes; spinsFreely=yes; motorAmps=3/0/3 A; ohmsOneToTwo=10 Ω; ohmsTwoToThree=10 Ω; ohmsOneToThree=10 Ω", Conclusion.NotThePart, null)]
    public void A_three_phase_motor_with_a_leg_without_current_runs_on_two(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Asked.Of(readings, Asked.Three);
        Is(diagnosis, conclusion, next);
        diagnosis.MendFirst.Count(mend => mend.Mend.Contains("contactor pole", StringComparison.Ordinal)).ShouldBe(1);
        string[] said = [diagnosis.Sentence, diagnosis.Next?.Why ?? "", .. diagnosis.Checks.Select(check => check.Sentence)];
        said.ShouldAllBe(sentence => !sentence.Contains("capacitor", StringComparison.Ordinal) && !sentence.Contains("shorted", StringComparison.Ordinal));
    }

    [Fact]
    public void Three_amps_at_a_plate_that_does_not_say_its_phases_are_those_of_a_three_phase_motor() =>
        Is(Asked.Of("leadVolts=460/462/461 V; hums=yes; motorAmps=3/0/3 A", "voltage=460 V"), Conclusion.ReadNext, "ohmsOneToTwo");

    [Theory]
    [InlineData(Asked.ShadedPole, "leadVolts=116 V; hums=yes; motorAmps=1.5 A")]
    [InlineData(Asked.ShadedPole, "leadVolts=116 V; hums=yes; motorAmps=1.5 A; spinsFreely=yes")]
    [InlineData(Asked.Three, "leadVolts=460/462/461 V; motorAmps=6 A; turns=no")]
    [InlineData(Asked.Three, "leadVolts=460/462/461 V; motorAmps=6 A; turns=no; spinsFreely=yes")]
    public void A_motor_without_a_capacitor_is_never_asked_about_one(string plate, string readings) => Asked.Of(readings, plate).Sentence.ShouldNotContain("capacitor");

    [Fact]
    public void What_condemns_stands_before_what_clears_a_blown_fuse_does_not_clear_the_winding_that_blew_it() =>
        Asked.Of($"{Dead}; insulationToEarth=0 MΩ").Conclusion.ShouldBe(Conclusion.PartHasFailed);

    [Fact]
    public void A_plate_that_nobody_can_read_condemns_nothing_by_elimination()
    {
        var diagnosis = Asked.Of($"{Hums}; spinsFreely=yes; capacitorMicrofarads=5 µF; {Whole}", "type=PSC; phase=1; runCapacitor=5/370");
        diagnosis.Conclusion.ShouldBe(Conclusion.ReadNext);
        diagnosis.Next.ShouldBe(new NextReading("voltage", diagnosis.Next!.Why, Side.Plate));
    }

    [Fact]
    public void The_sites_volts_are_those_of_the_leads() => Asked.Of("", site: "volts=228 V").Next!.Field.ShouldBe("motorAmps");

    [Fact]
    public void Every_rule_has_a_title_of_its_own_and_a_source_and_is_listed_once()
    {
        MotorBefore.Rules.Select(rule => rule.Title).ShouldBeUnique();
        MotorBefore.Rules.ShouldAllBe(rule => rule.Source.Text.Length > 0);
        var written = typeof(MotorBefore).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(ReadingRule<MotorCase>)));
        MotorBefore.Rules.Select(rule => rule.GetType()).ShouldBe(written, ignoreOrder: true);
    }

    /// <summary>Random readings, at the edges more often than not: each field left out or one of a few values.</summary>
    private static Gen<IReadOnlyList<NamedText>> SomeReadings()
    {
        (string Field, string[] Texts)[] choices =
        [
            ("circuitCalls", ["yes", "no"]), ("leadVolts", ["0 V", "150 V", "187.2 V", "228 V", "230/231/229 V", "230/0/229 V", "230/222/229 V"]), ("control", ["fuse blown", "high-pressure control tripped", "delay", "all closed"]),
            ("turns", ["yes", "no"]), ("hums", ["yes", "no"]), ("motorAmps", ["0 A", "2 A", "2.6 A", "5 A", "2/2/1 A", "2/2/0 A"]), ("shellHot", ["yes", "no"]), ("spinsFreely", ["yes", "no"]), ("bladeClear", ["yes", "no"]),
            ("capacitorVolts", ["0 V", "340 V"]), ("capacitorAmps", ["0 A", "0.64 A"]), ("capacitorMicrofarads", ["0 µF", "4.7 µF", "5 µF"]), ("signalThere", ["yes", "no"]), ("insulationToEarth", ["0 MΩ", "1 MΩ", "5 MΩ", "open"]),
            ("ohmsCommonToRun", ["0 Ω", "14 Ω", "open"]), ("ohmsCommonToStart", ["26 Ω", "open"]), ("ohmsRunToStart", ["40 Ω", "45 Ω", "open"]),
            ("ohmsOneToTwo", ["10 Ω", "open"]), ("ohmsTwoToThree", ["10 Ω", "11 Ω"]), ("ohmsOneToThree", ["10 Ω", "0 Ω"]),
        ];
        return choices.Select(choice => Gen.OneOf(Gen.Constant((NamedText?)null), Gen.Elements(choice.Texts).Select(text => (NamedText?)new NamedText(choice.Field, text))))
            .Aggregate(Gen.Constant<IReadOnlyList<NamedText>>([]), (all, one) => all.SelectMany(texts => one.Select(text => text is null ? texts : (IReadOnlyList<NamedText>)[.. texts, text])));
    }

    [Property(MaxTest = 400)]
    public Property Whatever_is_read_the_answer_names_a_field_that_there_is_and_nothing_bad_is_called_nothing_wrong() => Prop.ForAll(
        SomeReadings().Zip(Gen.Elements(Asked.Psc, Asked.ShadedPole, Asked.Electronic, Asked.Three, "phase=1", "")).ToArbitrary(),
        given =>
        {
            var readings = Shape<MotorReadings>.Of.Read(given.Item1).Record;
            var diagnosis = MotorFamily.Motor.BeforeCondemning(MotorFamily.Motor.ReadNeed(new(null, Named.Texts(given.Item2), [])).Need, readings);
            diagnosis.Sentence.ShouldNotBeNullOrWhiteSpace();
            if (diagnosis.Conclusion == Conclusion.ReadNext) diagnosis.Next.ShouldNotBeNull();
            if (diagnosis.Next is { } next) (next.Side switch { null => (Shape)Shape<MotorReadings>.Of, Side.Site => Shape<MotorSite>.Of, _ => Shape<MotorSpec>.Of }).Find(next.Field).ShouldNotBeNull();
            if (diagnosis.Conclusion == Conclusion.NothingWrongFound) diagnosis.Checks.ShouldAllBe(check => check.Verdict != ReadingVerdict.Bad);
            if (diagnosis.Conclusion == Conclusion.PartHasFailed) diagnosis.Checks.ShouldContain(check => check.Verdict == ReadingVerdict.Bad && check.Sentence == diagnosis.Sentence);
        });

    private static void Is(Diagnosis diagnosis, Conclusion conclusion, string? next)
    {
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }
}
