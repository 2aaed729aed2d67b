using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.After;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Tests.Motors.Before;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Motors.After;

/// <summary>Readings after the swap: each limit at it, just inside, just outside; and what is likely wrong.</summary>
[Trait("Source", "reading.voltsDrop")]
[Trait("Source", "reading.turn")]
[Trait("Source", "reading.bladeClear")]
[Trait("Source", "reading.runningSpeed")]
[Trait("Source", "reading.split")]
[Trait("Source", "reading.warmBox")]
public sealed class AfterTests
{
    private const string Split = "refrigerant=R-134a; condensingPressure=201.63 psi";

    [Fact]
    public void With_nothing_read_everything_that_proves_a_swap_is_still_to_be_read()
    {
        var report = Swap.Report("");
        report.Readings.Select(check => check.Title).ShouldBe(["Blade", "Running", "Turn", "Volts under load", "Amps", "Condensing split"]);
        report.Readings.ShouldAllBe(check => check.Verdict == ReadingVerdict.CantTell);
        report.Causes.ShouldBeEmpty();
    }

    // Geometry and practice: the air proves a propeller's turn and nothing for a blower wheel.
    [Theory]
    [InlineData("airRightWay=yes", "propeller", ReadingVerdict.Good)]
    [InlineData("airRightWay=no", "propeller", ReadingVerdict.Bad)]
    [InlineData("airRightWay=yes", "blower wheel", ReadingVerdict.NotApplicable)]
    [InlineData("airRightWay=no", "blower wheel", ReadingVerdict.NotApplicable)]
    [InlineData("airRightWay=yes; turnsRightWay=no", "blower wheel", ReadingVerdict.Bad)]
    [InlineData("turnsRightWay=yes", "blower wheel", ReadingVerdict.Good)]
    [InlineData("airRightWay=no; turnsRightWay=yes", "propeller", ReadingVerdict.CantTell)]
    public void The_turn_is_proved_by_the_shaft_and_for_a_propeller_by_its_air(string readings, string fan, ReadingVerdict verdict) => Swap.Verdict<TurnOfFan>(readings, site: $"fanKind={fan}").ShouldBe(verdict);

    [Theory]
    [InlineData("airRightWay=yes")]
    [InlineData("airRightWay=no")]
    public void Of_a_fan_of_an_unknown_kind_the_air_tells_nothing_sure(string readings) => Swap.Verdict<TurnOfFan>(readings).ShouldBe(ReadingVerdict.CantTell);

    [Theory]
    [InlineData("bladeClear=yes", ReadingVerdict.Good)]
    [InlineData("bladeClear=no", ReadingVerdict.Bad)]
    public void The_blade_clears_its_ring(string readings, ReadingVerdict verdict) => Swap.Verdict<BladeInRing>(readings).ShouldBe(verdict);

    // NEMA MG 1 12.44, published: 187.2 V for 208-230 V; any tap of the new motor may be the one that was set.
    [Theory]
    [InlineData("187.2 V", ReadingVerdict.Good)]
    [InlineData("187.1 V", ReadingVerdict.Bad)]
    [InlineData("0 V", ReadingVerdict.Bad)]
    [InlineData("118 V", ReadingVerdict.Good)]
    public void Volts_under_load_are_those_of_a_tap(string volts, ReadingVerdict verdict) =>
        Swap.Verdict<VoltsUnderLoad>($"leadVolts={volts}", "voltage=115/208-230 V; connectedFor=208-230 V").ShouldBe(verdict);

    // Practice: 10 %.
    [Theory]
    [InlineData("216 V", ReadingVerdict.Good)]
    [InlineData("215.9 V", ReadingVerdict.Bad)]
    [InlineData("241 V", ReadingVerdict.Good)]
    public void Volts_hold_within_10_percent_under_load(string volts, ReadingVerdict verdict) => Swap.Verdict<DropUnderLoad>($"standingVolts=240 V; leadVolts={volts}").ShouldBe(verdict);

    [Theory]
    [InlineData("460/462/461 V", ReadingVerdict.Good)]
    [InlineData("460/467/450 V", ReadingVerdict.CantTell)]
    [InlineData("460/400/450 V", ReadingVerdict.Bad)]
    [InlineData("460 V", ReadingVerdict.CantTell)]
    public void All_three_legs_are_alike(string volts, ReadingVerdict verdict) => Swap.Verdict<BalanceUnderLoad>($"leadVolts={volts}", "phase=3; voltage=460 V").ShouldBe(verdict);

    // The row of the tap in use decides: 4.2 A at 115 V, 2.1 A at 208-230 V. Practice: at most the plate's.
    [Theory]
    [InlineData("118 V", "4.2 A", ReadingVerdict.Good)]
    [InlineData("118 V", "4.21 A", ReadingVerdict.Bad)]
    [InlineData("228 V", "2.1 A", ReadingVerdict.Good)]
    [InlineData("228 V", "2.11 A", ReadingVerdict.Bad)]
    [InlineData("228 V", "0 A", ReadingVerdict.Bad)]
    public void Amps_are_held_against_the_new_plate_at_the_tap_in_use(string volts, string amps, ReadingVerdict verdict) =>
        Swap.Verdict<AmpsUnderLoad>($"leadVolts={volts}; motorAmps={amps}", "voltage=115/208-230 V; fullLoadAmps=4.2/2.1 A").ShouldBe(verdict);

    [Theory]
    [InlineData("2.31 A", ReadingVerdict.Good)]
    [InlineData("2.32 A", ReadingVerdict.Bad)]
    public void A_service_factor_counts_only_where_it_is_marked(string amps, ReadingVerdict verdict) =>
        Swap.Verdict<AmpsUnderLoad>($"leadVolts=228 V; motorAmps={amps}", $"{Asked.Psc}; serviceFactor=1.1").ShouldBe(verdict);

    [Theory]
    [InlineData("2/2.2/1.8 A", ReadingVerdict.Good)]
    [InlineData("2/2.21/1.79 A", ReadingVerdict.Bad)]
    public void Legs_take_like_currents_within_10_percent(string amps, ReadingVerdict verdict) => Swap.Verdict<BalanceOfAmps>($"leadVolts=460/461/459 V; motorAmps={amps}", Asked.Three).ShouldBe(verdict);

    // Practice: 5 % under 1075 rpm is 1021.25 rpm. Derived: six poles at 60 Hz turn 1200 rpm at most.
    [Theory]
    [InlineData("1021.25 rpm", ReadingVerdict.Good)]
    [InlineData("1021 rpm", ReadingVerdict.Bad)]
    [InlineData("1190 rpm", ReadingVerdict.Good)]
    [InlineData("1200 rpm", ReadingVerdict.Good)]
    [InlineData("1201 rpm", ReadingVerdict.CantTell)]
    public void It_runs_at_least_at_95_percent_of_its_speed(string speed, ReadingVerdict verdict) => Swap.Verdict<SpeedUnderLoad>($"runningSpeed={speed}").ShouldBe(verdict);

    [Fact]
    public void Between_two_speeds_nothing_follows_and_electronics_run_as_told()
    {
        Swap.Verdict<SpeedUnderLoad>("runningSpeed=950 rpm", $"{Asked.Psc}; speeds=2").ShouldBe(ReadingVerdict.CantTell);
        Swap.Verdict<SpeedUnderLoad>("runningSpeed=500 rpm", "type=ECM; speed=1550 rpm").ShouldBe(ReadingVerdict.NotApplicable);
    }

    // Computed from the published equation: R-134a condenses at 131.0 °F at 201.63 psig. Practice: +25 % over a design of 20 °F is 25 °F.
    [Theory]
    [InlineData("106.1 °F", ReadingVerdict.Good)]
    [InlineData("105.9 °F", ReadingVerdict.Bad)]
    [InlineData("140 °F", ReadingVerdict.CantTell)]
    public void A_split_over_a_quarter_above_the_design_is_flagged(string air, ReadingVerdict verdict) => Swap.Verdict<CondensingSplit>($"{Split}; enteringAir={air}; designSplit=20 °F").ShouldBe(verdict);

    // The same: 30 °F is the ceiling where no design is known; a design whose quarter more lies above it leaves the answer open.
    [Theory]
    [InlineData("101.1 °F", "", ReadingVerdict.Good)]
    [InlineData("100.9 °F", "", ReadingVerdict.Bad)]
    [InlineData("99 °F", "; designSplit=28 °F", ReadingVerdict.CantTell)]
    [InlineData("95 °F", "; designSplit=28 °F", ReadingVerdict.Bad)]
    [InlineData("104 °F", "; designSplit=28 °F", ReadingVerdict.Good)]
    public void Thirty_degrees_are_only_the_ceiling(string air, string design, ReadingVerdict verdict) => Swap.Verdict<CondensingSplit>($"{Split}; enteringAir={air}{design}").ShouldBe(verdict);

    [Theory]
    [InlineData(25, ReadingVerdict.Good)]
    [InlineData(25.001, ReadingVerdict.Bad)]
    public void Exactly_a_quarter_over_the_design_still_passes(double split, ReadingVerdict verdict)
    {
        var refrigerant = Refrigerants.Find("R-134a")!;
        var readings = new MotorReadings
        {
            Refrigerant = refrigerant,
            EnteringAir = Temperature.FromDegreesFahrenheit(100),
            CondensingPressure = refrigerant.BubblePressure(Temperature.FromDegreesFahrenheit(100 + split))!.Value - Pressure.FromKilopascals(101.325),
            DesignSplit = TemperatureDelta.FromDegreesFahrenheit(20),
        };
        MotorAfter.Report(new(new MotorSpec(), new MotorSite()), new MotorSpec(), readings).Readings.Single(check => check.Title == "Condensing split").Verdict.ShouldBe(verdict);
    }

    // Computed from the published equations: R-407C at 250 psig, bubble 107.16 °F, dew 115.84 °F.
    [Theory]
    [InlineData("90 °F", ReadingVerdict.Good)]
    [InlineData("81.5 °F", ReadingVerdict.CantTell)]
    [InlineData("76 °F", ReadingVerdict.Bad)]
    public void With_glide_what_straddles_the_limit_cannot_be_told(string air, ReadingVerdict verdict)
    {
        var check = Swap.Check<CondensingSplit>($"refrigerant=R-407C; condensingPressure=250 psi; enteringAir={air}");
        check!.Verdict.ShouldBe(verdict, check.Sentence);
        check.Sentence.ShouldContain("at bubble");
        check.Sentence.ShouldContain("at dew");
    }

    // Derived: 5000 ft take 17 kPa of the air, so the same gauge pressure is a lower temperature; 201.63 psi are 129.7 °F there, worked from the curve's slope (2.4 psi a °F).
    [Fact]
    public void Altitude_changes_what_a_gauge_means()
    {
        Swap.Check<CondensingSplit>($"{Split}; enteringAir=105.5 °F; designSplit=20 °F")!.Sentence.ShouldContain("taken at sea level");
        Swap.Verdict<CondensingSplit>($"{Split}; enteringAir=105.5 °F; designSplit=20 °F").ShouldBe(ReadingVerdict.Bad);
        Swap.Verdict<CondensingSplit>($"{Split}; enteringAir=105.5 °F; designSplit=20 °F; altitude=5000 ft").ShouldBe(ReadingVerdict.Good);
        Swap.Verdict<CondensingSplit>($"{Split}; enteringAir=105.5 °F; designSplit=20 °F", site: "altitude=5000 ft").ShouldBe(ReadingVerdict.Good);
    }

    // Computed: R-134a at 132.74 psig condenses at 104.0 °F; with a design of 20 °F the control holds it below 84 °F entering air.
    [Theory]
    [InlineData("83.9 °F", ReadingVerdict.NotApplicable)]
    [InlineData("84.1 °F", ReadingVerdict.Bad)]
    public void A_controlled_condenser_on_a_cold_day_has_a_large_split_by_design(string air, ReadingVerdict verdict) =>
        Swap.Verdict<CondensingSplit>($"{Split}; enteringAir={air}; designSplit=20 °F; headControlSetting=132.74 psi").ShouldBe(verdict);

    // Without a design: not applicable below 104 − 30 °F, open below 104 − 10 °F (practice), judged above.
    [Theory]
    [InlineData("73.9 °F", ReadingVerdict.NotApplicable)]
    [InlineData("74.1 °F", ReadingVerdict.CantTell)]
    [InlineData("93.9 °F", ReadingVerdict.CantTell)]
    [InlineData("94.1 °F", ReadingVerdict.Bad)]
    public void Without_a_design_a_control_leaves_more_open(string air, ReadingVerdict verdict) =>
        Swap.Verdict<CondensingSplit>($"{Split}; enteringAir={air}; headControlSetting=132.74 psi").ShouldBe(verdict);

    [Theory]
    [InlineData("enteringAir=95 °F")]
    [InlineData("condensingPressure=200 psi")]
    [InlineData("condensingPressure=200 psi; enteringAir=95 °F")]
    [InlineData("condensingPressure=200 psi; enteringAir=95 °F; refrigerant=R-717")]
    [InlineData("condensingPressure=2500 psi; enteringAir=95 °F; refrigerant=R-134a")]
    public void What_is_missing_for_the_split_is_said(string readings) => Swap.Verdict<CondensingSplit>(readings).ShouldBe(ReadingVerdict.CantTell);

    [Fact]
    public void On_a_warm_box_nothing_is_judged_until_the_evaporator_fans_run()
    {
        var check = Swap.Check<EvaporatorAfter>("evaporatorFansRun=no; refrigerant=R-134a; suctionPressure=60 psi; designEvaporating=0 °F")!;
        check.Verdict.ShouldBe(ReadingVerdict.NotApplicable);
        check.Sentence.ShouldContain("add no refrigerant");
    }

    [Fact]
    public void While_the_evaporator_fans_of_a_warm_box_stand_still_the_split_has_no_verdict_and_no_causes()
    {
        const string warm = $"{Split}; enteringAir=95 °F; fansOnCoil=3; fansRunning=2; bladeClear=yes; leadVolts=228 V; motorAmps=2 A; boxTemperature=70 °F; boxSetpoint=35 °F";
        var waiting = Swap.Report($"{warm}; evaporatorFansRun=no");
        waiting.Readings.Single(check => check.Title == "Condensing split").Verdict.ShouldBe(ReadingVerdict.NotApplicable);
        waiting.Causes.ShouldBeEmpty();
        waiting.Drawings.ShouldBeEmpty();
        waiting.Readings.Where(check => check.Title is "Blade" or "Volts under load" or "Amps").ShouldAllBe(check => check.Verdict == ReadingVerdict.Good);
        Swap.Report($"{warm}; evaporatorFansRun=yes").Causes.ShouldNotBeEmpty();
        Swap.Verdict<CondensingSplit>($"{Split}; enteringAir=95 °F; boxTemperature=36 °F; boxSetpoint=35 °F; evaporatorFansRun=no").ShouldBe(ReadingVerdict.Bad);
    }

    [Fact]
    public void A_fan_that_turns_backwards_is_not_called_too_heavy_for_it() =>
        Swap.Report("leadVolts=228 V; motorAmps=2.6 A; turnsRightWay=no", site: "fanKind=propeller").Causes.Single(cause => cause.Name == "fanTooHeavy").Evidence.ShouldHaveSingleItem();

    // Practice: 10 °F. Computed: R-134a at 18.43 psig evaporates at 20.0 °F.
    [Theory]
    [InlineData("boxTemperature=45 °F; boxSetpoint=35 °F", null)]
    [InlineData("boxTemperature=45.1 °F; boxSetpoint=35 °F", ReadingVerdict.CantTell)]
    [InlineData("refrigerant=R-134a; suctionPressure=18.43 psi; designEvaporating=10.1 °F", ReadingVerdict.Good)]
    [InlineData("refrigerant=R-134a; suctionPressure=18.43 psi; designEvaporating=9.9 °F", ReadingVerdict.Bad)]
    [InlineData("refrigerant=R-134a; suctionPressure=18.43 psi", ReadingVerdict.CantTell)]
    public void A_box_or_suction_10_degrees_over_is_not_the_usual_load(string readings, ReadingVerdict? verdict) => Swap.Verdict<EvaporatorAfter>($"evaporatorFansRun=yes; {readings}").ShouldBe(verdict);

    [Theory]
    [InlineData("fansOnCoil=3; fansRunning=2", "fanOutOrBackwards")]
    [InlineData("turnsRightWay=no", "fanOutOrBackwards")]
    [InlineData("coilDirty=yes", "dirtyCoil")]
    [InlineData("airRecirculates=yes", "recirculation")]
    [InlineData("bypassWarm=yes", "valveByPassing")]
    [InlineData("standingPressure=201.63 psi", "nonCondensables")]
    [InlineData("liquidTemperature=105 °F; coilDirty=no", "overcharge")]
    [InlineData("boxTemperature=60 °F; boxSetpoint=35 °F", "pullingDown")]
    [InlineData("suctionPressure=40 psi; designEvaporating=0 °F; coilDirty=no", "heavyLoad")]
    public void What_the_other_readings_show_comes_first_among_the_causes_of_a_large_split(string evidence, string cause) =>
        Swap.Report($"{Split}; enteringAir=95 °F; {evidence}").Causes[0].Name.ShouldBe(cause);

    [Fact]
    public void A_clean_coil_and_running_fans_are_ruled_out()
    {
        var names = Swap.Report($"{Split}; enteringAir=95 °F; coilDirty=no; fansOnCoil=2; fansRunning=2; turnsRightWay=yes; airRecirculates=no; bypassWarm=no; standingPressure=80 psi").Causes.Select(cause => cause.Name).ToList();
        names.ShouldBe(["overcharge", "pullingDown", "heavyLoad"]);
    }

    [Fact]
    public void A_split_within_its_limit_has_no_causes() => Swap.Report($"{Split}; enteringAir=110 °F; coilDirty=yes; fansOnCoil=3; fansRunning=2").Causes.ShouldBeEmpty();

    [Theory]
    [InlineData("bladeClear=no", "bladeTouching")]
    [InlineData("standingVolts=260 V", "wrongVolts")]
    [InlineData("runningSpeed=900 rpm", "fanTooHeavy")]
    public void Amps_over_the_plate_have_causes_of_their_own(string evidence, string cause) =>
        Swap.Report($"leadVolts=228 V; motorAmps=2.6 A; {evidence}").Causes[0].Name.ShouldBe(cause);
}
