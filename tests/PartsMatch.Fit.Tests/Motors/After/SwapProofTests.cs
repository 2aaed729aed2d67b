using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.After;
using PartsMatch.Fit.Tests.Motors.Before;

namespace PartsMatch.Fit.Tests.Motors.After;

/// <summary>A new motor turns, on the capacitor that its own plate asks for, and its service factor makes up for no bad supply.</summary>
[Trait("Source", "reading.turnsUp")]
[Trait("Source", "reading.capacitorUnderLoad")]
[Trait("Source", "reading.ampsAgainstPlate")]
public sealed class SwapProofTests
{
    private const string Three = $"{Asked.Three}; serviceFactor=1.25";

    // Practice: a new motor turns up. Locked amps are no running amps: 80 % of the marked 5 A and more.
    [Theory]
    [InlineData("turns=yes", ReadingVerdict.Good)]
    [InlineData("turnsRightWay=yes", ReadingVerdict.Good)]
    [InlineData("runningSpeed=1080 rpm", ReadingVerdict.Good)]
    [InlineData("turns=no", ReadingVerdict.Bad)]
    [InlineData("hums=yes", ReadingVerdict.Bad)]
    [InlineData("hums=yes; turnsRightWay=yes", ReadingVerdict.Bad)]
    [InlineData("turns=no; motorAmps=0 A; leadVolts=228 V", ReadingVerdict.Bad)]
    [InlineData("motorAmps=4 A", ReadingVerdict.Bad)]
    [InlineData("motorAmps=3.9 A", ReadingVerdict.CantTell)]
    [InlineData("turns=no; leadVolts=0 V", ReadingVerdict.CantTell)]
    [InlineData("turnsRightWay=no", ReadingVerdict.CantTell)]
    public void A_new_motor_must_turn(string readings, ReadingVerdict verdict) => Swap.Verdict<TurnsUp>(readings).ShouldBe(verdict);

    [Theory]
    [InlineData("propeller", ReadingVerdict.Good)]
    [InlineData("blower wheel", ReadingVerdict.CantTell)]
    public void The_air_of_a_propeller_shows_that_it_turns(string fan, ReadingVerdict verdict) => Swap.Verdict<TurnsUp>("airRightWay=yes", site: $"fanKind={fan}").ShouldBe(verdict);

    // Practice: electronics stand still without their command, as they should.
    [Theory]
    [InlineData("turns=no", ReadingVerdict.CantTell)]
    [InlineData("turns=no; signalThere=no", ReadingVerdict.CantTell)]
    [InlineData("turns=no; signalThere=yes", ReadingVerdict.Bad)]
    public void Electronics_that_stand_still_have_their_command_first(string readings, ReadingVerdict verdict) => Swap.Verdict<TurnsUp>(readings, Asked.Electronic).ShouldBe(verdict);

    [Fact]
    public void What_a_motor_takes_standing_still_is_no_running_current_and_its_turn_does_not_show()
    {
        var report = Swap.Report("leadVolts=228 V; turns=no; hums=yes; motorAmps=5 A; airRightWay=no; runningSpeed=200 rpm", site: "fanKind=propeller");
        report.Readings.Single(check => check.Title == "Amps").Verdict.ShouldBe(ReadingVerdict.NotApplicable);
        report.Readings.Single(check => check.Title == "Speed").Verdict.ShouldBe(ReadingVerdict.NotApplicable);
        report.Readings.Single(check => check.Title == "Turn").Verdict.ShouldBe(ReadingVerdict.CantTell);
        report.Causes.ShouldBeEmpty();
    }

    // Published (facts on capacitors): the new motor's own µF; ±6 % of 7.5 µF are 7.05 to 7.95 µF. Worked by hand: 2652 × 0.64 A ÷ 340 V are 4.99 µF, and 2652 × 0.96 ÷ 340 are 7.49 µF, at 60 Hz.
    [Theory]
    [InlineData("capacitorMicrofarads=7.05 µF", ReadingVerdict.Good)]
    [InlineData("capacitorMicrofarads=7.04 µF", ReadingVerdict.Bad)]
    [InlineData("capacitorMicrofarads=7.95 µF", ReadingVerdict.Good)]
    [InlineData("capacitorMicrofarads=7.96 µF", ReadingVerdict.Bad)]
    [InlineData("capacitorMicrofarads=2 µF", ReadingVerdict.Bad)]
    [InlineData("capacitorVolts=340 V; capacitorAmps=0.64 A", ReadingVerdict.Bad)]
    [InlineData("capacitorVolts=340 V; capacitorAmps=0.96 A", ReadingVerdict.Good)]
    [InlineData("capacitorVolts=340 V", ReadingVerdict.CantTell)]
    [InlineData("", null)]
    public void The_capacitor_has_what_the_new_plate_asks_for(string readings, ReadingVerdict? verdict) =>
        Swap.Verdict<CapacitorAfter>(readings, "type=PSC; voltage=208-230 V; frequency=60 Hz; runCapacitor=7.5 µF 370 V", "capacitorThere=5 µF 370 V").ShouldBe(verdict);

    [Fact]
    public void Where_the_new_plate_is_silent_the_old_can_is_no_measure() =>
        Swap.Verdict<CapacitorAfter>("capacitorMicrofarads=5 µF", "type=PSC", "capacitorThere=5 µF 370 V").ShouldBe(ReadingVerdict.CantTell);

    [Theory]
    [InlineData("capacitorAmps=0.6 A; capacitorVolts=340 V", ReadingVerdict.Bad)]
    [InlineData("capacitorMicrofarads=5 µF", ReadingVerdict.NotApplicable)]
    public void A_motor_without_a_run_capacitor_has_none_beside_it(string readings, ReadingVerdict verdict) => Swap.Verdict<CapacitorAfter>(readings, Asked.ShadedPole).ShouldBe(verdict);

    // Derived: a three-phase or shaded-pole motor has no run capacitor, and a single-phase one no legs to be unlike.
    [Theory]
    [InlineData(Asked.Three, "leadVolts=460/461/459 V; motorAmps=2.5/2.5/2.5 A; runningSpeed=1000 rpm", "wrongCapacitor")]
    [InlineData(Asked.ShadedPole, "leadVolts=115 V; motorAmps=1.3 A", "wrongCapacitor")]
    [InlineData(Asked.Psc, "leadVolts=228 V; motorAmps=2.6 A; capacitorMicrofarads=5 µF", "wrongCapacitor")]
    [InlineData(Asked.Psc, "leadVolts=228 V; motorAmps=2.6 A", "unlikeLegs")]
    [InlineData(Asked.ShadedPole, "leadVolts=115 V; motorAmps=1.3 A", "unlikeLegs")]
    public void No_cause_is_named_that_the_motor_cannot_have(string part, string readings, string cause)
    {
        var causes = Swap.Report($"turns=yes; {readings}", part).Causes.Select(one => one.Name).ToList();
        causes.ShouldNotBeEmpty();
        causes.ShouldNotContain(cause);
    }

    [Fact]
    public void A_capacitor_measured_wrong_comes_first_among_the_causes() =>
        Swap.Report("leadVolts=228 V; motorAmps=2.6 A; capacitorMicrofarads=3 µF").Causes[0].Name.ShouldBe("wrongCapacitor");

    [Theory]
    [InlineData(Asked.Three, false)]
    [InlineData(Asked.Psc, true)]
    public void Slowness_is_laid_to_a_capacitor_only_where_there_is_one(string part, bool isNamed) =>
        Swap.Check<SpeedUnderLoad>("runningSpeed=900 rpm", part)!.Sentence.Contains("capacitor", StringComparison.Ordinal).ShouldBe(isNamed);

    // NEMA MG 1 14.37 and trade rule: credited only at rated volts and frequency and unbalance of 1 % or less. 2 × 1.25 = 2.5 A. Practice: 2 % of 460 V is 9.2 V. 460, 467, 450 V are 1.96 % apart (NEMA's own example).
    [Theory]
    [InlineData("460/461/459 V", "2.5/2.5/2.5 A", "", ReadingVerdict.Good)]
    [InlineData("460/461/459 V", "2.51/2.51/2.51 A", "", ReadingVerdict.Bad)]
    [InlineData("450.8/450.8/450.8 V", "2.5/2.5/2.5 A", "", ReadingVerdict.Good)]
    [InlineData("450.7/450.7/450.7 V", "2.5/2.5/2.5 A", "", ReadingVerdict.Bad)]
    [InlineData("420/418/430 V", "2.2/2.2/2.2 A", "", ReadingVerdict.Bad)]
    [InlineData("460/467/450 V", "2.2/2.2/2.2 A", "", ReadingVerdict.Bad)]
    [InlineData("460/467/450 V", "2/2/2 A", "", ReadingVerdict.Good)]
    [InlineData("460/461/459 V", "2.2/2.2/2.2 A", "supplyFrequency=57.5 Hz", ReadingVerdict.Bad)]
    [InlineData("460/461/459 V", "2.2/2.2/2.2 A", "altitude=1500 m", ReadingVerdict.Bad)]
    [InlineData("460 V", "2.2/2.2/2.2 A", "", ReadingVerdict.CantTell)]
    [InlineData("", "2.2/2.2/2.2 A", "", ReadingVerdict.CantTell)]
    public void A_service_factor_is_credited_on_a_rated_supply_only(string volts, string amps, string site, ReadingVerdict verdict) =>
        Swap.Verdict<AmpsUnderLoad>($"turns=yes; motorAmps={amps}{(volts.Length > 0 ? $"; leadVolts={volts}" : string.Empty)}", Three, site).ShouldBe(verdict);
}
