using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Temperatures and pressures on plates of switches. Expected values are worked by hand: what opens as it falls closes as it rises.</summary>
public sealed class SettingsOnPlatesTests
{
    private const string Thermostat = "thermostat";
    private const string PressureControl = "pressureControl";

    [Theory]
    [InlineData(Thermostat, "OPENS ON FALL AT 36 F", "action=closes on rise; cutOut=36 °F")]
    [InlineData(Thermostat, "OPENS ON FALL AT 36 F RES 10A 240V", "action=closes on rise; cutOut=36 °F; ratedVolts=240 V; resistiveAmps=10 A")]
    [InlineData(Thermostat, "OPEN ON TEMP FALL 36 F", "action=closes on rise; cutOut=36 °F")]
    [InlineData(Thermostat, "FAN DELAY CLOSES ON FALL AT 20 F OPENS ON RISE AT 40 F", "function=fan delay; action=opens on rise; cutOut=40 °F; cutIn=20 °F")]
    [InlineData(Thermostat, "FAN DELAY CLOSES ON FALL 20 F OPENS ON RISE 40 F", "function=fan delay; action=opens on rise; cutOut=40 °F; cutIn=20 °F")]
    [InlineData(Thermostat, "BREAKS ON RISE AT 55 F MAKES ON FALL AT 35 F", "action=opens on rise; cutOut=55 °F; cutIn=35 °F")]
    [InlineData(PressureControl, "OPENS ON FALL AT 20 PSI CLOSES ON RISE AT 40 PSI", "action=opens on fall; cutOut=20 psi; cutIn=40 psi")]
    [InlineData(PressureControl, "CLOSES ON FALL AT 300 PSI OPENS ON RISE AT 400 PSI", "action=opens on rise; cutOut=400 psi; cutIn=300 psi")]
    public void What_a_switch_does_on_rise_or_on_fall_announces_where_it_does_so(string kind, string plate, string read) => ReadPlate.Fields(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(Thermostat, "RES 10 A AT 36 F", "resistiveAmps=10 A")]
    [InlineData(Thermostat, "TRIPS AT 36 F", "")]
    [InlineData(Thermostat, "TRIPS AT 36", "")]
    [InlineData(PressureControl, "TRIPS AT 36 PSI", "")]
    [InlineData(Thermostat, "FLA 16/8 LRA 96/48 AT 120/240", "ratedVolts=120/240 V; fullLoadAmps=16/8 A; lockedRotorAmps=96/48 A")]
    [InlineData(Thermostat, "FLA 16 A AT 240 OPENS AT 36 F", "cutOut=36 °F; ratedVolts=240 V; fullLoadAmps=16 A")]
    [InlineData(Thermostat, "16 FLA AT 240 V", "ratedVolts=240 V; fullLoadAmps=16 A")]
    [InlineData("contactor", "AC-3 25A AT 400", "acThreeAmps=25 A; ratedVolts=400 V")]
    [InlineData("contactor", "COIL 24 V AT 400", "coilVolts=24 V")]
    [InlineData("defrostTimer", "40 A RES AT 240", "ratedVolts=240 V; resistiveAmps=40 A")]
    [InlineData("defrostTimer", "3 HP AT 240 RES 40A CLOCK 240V 60HZ", "clockVolts=240 V; clockFrequency=60 Hz; ratedVolts=240 V; resistiveAmps=40 A; singlePhaseHorsepower=3 hp")]
    [InlineData(Thermostat, "2 HP AT 240 RANGE 10-80 F", "range=10 to 80 °F; ratedVolts=240 V; singlePhaseHorsepower=2 hp")]
    [InlineData(Thermostat, "HP 1-1/2 AT 120 OPENS AT 36 F", "cutOut=36 °F; ratedVolts=120 V; singlePhaseHorsepower=1-1/2 hp")]
    [InlineData(Thermostat, "PILOT DUTY 125 VA AT 240", "ratedVolts=240 V")]
    [InlineData(PressureControl, "125 VA PILOT DUTY AT 120/240", "ratedVolts=120/240 V")]
    [InlineData("contactor", "COIL 24V 10 VA AT 240", "coilVolts=24 V; coilVa=10 VA")]
    [InlineData("contactor", "3PH HP 7-1/2 HP AT 230", "ratedVolts=230 V; threePhaseHorsepower=7-1/2 hp")]
    public void Behind_AT_stand_volts_only_where_the_figure_says_so_or_a_rating_stands_before_it(string kind, string plate, string read) => ReadPlate.Fields(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(Thermostat, "OPENS +2C CLOSES +8C", "cutOut=2 °C; cutIn=8 °C")]
    [InlineData(Thermostat, "CUT-OUT: +2C CUT-IN: +8C DIFF 6K CLOSES ON RISE", "action=closes on rise; differential=6 K; cutOut=2 °C; cutIn=8 °C")]
    [InlineData(Thermostat, "+2C CUT-OUT +8C CUT-IN", "cutOut=2 °C; cutIn=8 °C")]
    [InlineData(Thermostat, "RANGE -30/+15 C DIFF 1.5/16 K", "range=-30 to 15 °C; differential=1.5 to 16 K")]
    [InlineData(Thermostat, "RANGE -30 / +15 C DIFF 1.5/16 K", "range=-30 to 15 °C; differential=1.5 to 16 K")]
    [InlineData(Thermostat, "RANGE -30C/+15C DIFF 1.5/16 K", "range=-30 to 15 °C; differential=1.5 to 16 K")]
    [InlineData(Thermostat, "RANGE -30-+15C", "range=-30 to 15 °C")]
    [InlineData(Thermostat, "RANGE +5/+35 C", "range=5 to 35 °C")]
    [InlineData(Thermostat, "RANGE -30/-10 C DIFF 1.5/16 K", "range=-30 to -10 °C; differential=1.5 to 16 K")]
    [InlineData(Thermostat, "MAX BULB +60C RANGE -30/+15C", "range=-30 to 15 °C; bulbMost=60 °C")]
    [InlineData(PressureControl, "CUT-OUT +0.5 BAR CUT-IN +2 BAR", "cutOut=0.5 bar; cutIn=2 bar")]
    [InlineData(PressureControl, "RANGE -0.2/+7.5 BAR DIFF 0.7/4 BAR", "range=-0.2 to 7.5 bar; differential=0.7 to 4 bar")]
    [InlineData(Thermostat, "CUT-OUT + 2C CUT-IN + 8C", "cutOut=2 °C; cutIn=8 °C")]
    [InlineData(Thermostat, "OPENS + 2 C CLOSES + 8 C", "cutOut=2 °C; cutIn=8 °C")]
    [InlineData(Thermostat, "CUT-OUT: + 2 C CUT-IN: + 8 C", "cutOut=2 °C; cutIn=8 °C")]
    [InlineData(Thermostat, "+ 2C CUT-OUT + 8C CUT-IN", "cutOut=2 °C; cutIn=8 °C")]
    [InlineData(Thermostat, "240V +2C CUT-OUT +8C CUT-IN", "cutOut=2 °C; cutIn=8 °C; ratedVolts=240 V")]
    [InlineData(PressureControl, "LOW PRESSURE CUT-OUT + 0.5 BAR CUT-IN + 2 BAR", "function=low pressure; cutOut=0.5 bar; cutIn=2 bar")]
    [InlineData("capacitor", "45 UF + 5 UF 440 V", "rating=45+5 µF 440 V")]
    [InlineData("contactor", "AUX 1 NO +1 NC COIL +24 VDC", "auxiliaries=1 NO + 1 NC; coilVolts=24 V; coilCurrent=DC")]
    [InlineData("capacitor", "45+5/440", "rating=45+5 µF 440 V")]
    [InlineData("capacitor", "45 UF +5 UF 440 V", "rating=45+5 µF 440 V")]
    public void A_plus_before_a_figure_is_its_sign(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    /// <summary>Three dots between two figures are a span on European plates (IEC style; practice).</summary>
    [Theory]
    [InlineData(Thermostat, "RANGE -30...+15 °C DIFF 1.5...16 K", "range=-30 to 15 °C; differential=1.5 to 16 K")]
    [InlineData(Thermostat, "RANGE 5…35 °C", "range=5 to 35 °C")]
    [InlineData(PressureControl, "RANGE -0.2...+7.5 BAR", "range=-0.2 to 7.5 bar")]
    [InlineData("motor", "V 220...240 HZ 50", "voltage=220-240 V; frequency=50 Hz")]
    [InlineData(Thermostat, "RANGE 20 ±2 F TO 80 ±2 F", "range=20 to 80 °F")]
    [InlineData(Thermostat, "RANGE 20F ±2F TO 80F ±2F", "range=20 to 80 °F")]
    public void Figures_with_dots_between_or_tolerances_behind_are_a_span(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(Thermostat, "RANGE -30°C +15°C DIFF 2K", "differential=2 K")]
    [InlineData(Thermostat, "RANGE -30C + 15C", "")]
    [InlineData(Thermostat, "RANGE -30 + 15 C", "")]
    [InlineData(Thermostat, "RANGE -30 ... +15 °C", "")]
    [InlineData(Thermostat, "RANGE 20 F 80 F", "")]
    [InlineData(Thermostat, "RANGE 80 TO 20 F", "")]
    [InlineData(Thermostat, "RANGE 80 F TO 20 F DIFF 4 F", "differential=4 °F")]
    [InlineData(Thermostat, "RANGE 20 80 F DIFF 4 F", "differential=4 °F")]
    [InlineData(Thermostat, "CUT-OUT +2C +8C CUT-IN", "")]
    [InlineData(PressureControl, "RANGE -0.2BAR +7.5BAR", "")]
    public void Of_two_figures_at_one_label_neither_is_read_alone_and_nothing_follows_from_it(string kind, string plate, string read)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Complaints.ShouldHaveSingleItem().Message.ShouldContain("cannot be read as a whole");
        Families.Find(kind)!.ReadNeed(new(plate, [], [])).Deductions.ShouldNotContain(deduction => deduction.Field == "isAdjustable");
    }

    [Theory]
    [InlineData(Thermostat, "RANGE -30 +15 C DIFF 1.5/16 K", "differential=1.5 to 16 K")]
    [InlineData("capacitor", "45 +5/440", "")]
    [InlineData("motor", "60 HZ 208/-230 V", "frequency=60 Hz")]
    [InlineData("motor", "230+N V 50 HZ", "frequency=50 Hz")]
    public void Of_figures_that_a_sign_joins_in_no_known_way_no_part_is_read(string kind, string plate, string read)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Complaints.ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData(PressureControl, "OPENS @ 400 PSIG CLOSES @ 300 PSIG", "cutOut=400 psi; cutIn=300 psi")]
    [InlineData(PressureControl, "OPENS@400PSI CLOSES@300PSI", "cutOut=400 psi; cutIn=300 psi")]
    [InlineData(Thermostat, "CUT-OUT @ 35F CUT-IN @ 45F", "cutOut=35 °F; cutIn=45 °F")]
    [InlineData(Thermostat, "OPEN ON RISE 160F AUTO RESET 120F", "action=opens on rise; reset=automatic; cutOut=160 °F; cutIn=120 °F")]
    [InlineData(Thermostat, "AUTO RESET 240 V", "reset=automatic; ratedVolts=240 V")]
    [InlineData("condensingPressureValve", "SET@150 PSI HOLDBACK", "arrangement=inlet regulator; setting=150 psi")]
    public void A_label_takes_the_figure_behind_its_sign_and_not_the_next_ones(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(PressureControl, "HIGH PRESSURE 28 BAR CUT-OUT 24 CUT-IN 18", "function=high pressure; cutOut=24 bar; cutIn=18 bar", "28 BAR")]
    [InlineData(PressureControl, "TEST 500 PSI CUT-OUT 400 CUT-IN 300 PSI", "cutOut=400 psi; cutIn=300 psi", "TEST 500 PSI")]
    [InlineData(PressureControl, "TEST PRESSURE 500 PSI CUT-OUT 400 PSI CUT-IN 300 PSI", "cutOut=400 psi; cutIn=300 psi", "TEST PRESSURE 500 PSI")]
    [InlineData(PressureControl, "MAX 42 BAR TEST 46 BAR CUT-OUT 38 CUT-IN 30", "cutOut=38 bar; cutIn=30 bar; pressureMost=42 bar", "TEST 46 BAR")]
    [InlineData(PressureControl, "LP -0.2 TO 7.5 BAR, CUT-IN 2 CUT-OUT 1 BAR", "function=low pressure; cutOut=1 bar; cutIn=2 bar", "-0.2 TO 7.5 BAR")]
    [InlineData(PressureControl, "-0.2 TO 7.5 BAR CUT-IN", "", "-0.2 TO 7.5 BAR CUT-IN")]
    [InlineData(Thermostat, "FAN DELAY 60 C CUT-OUT 5 CUT-IN 2", "function=fan delay; cutOut=5 °C; cutIn=2 °C", "60 C")]
    [InlineData(Thermostat, "FAN DELAY 60 C CUT-OUT 5 FLA 16 A 240 V", "function=fan delay; cutOut=5 °C; ratedVolts=240 V; fullLoadAmps=16 A", "60 C")]
    public void A_figure_without_a_label_shifts_none_of_the_settings_behind_it(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    /// <summary>What follows AUTO RESET without a unit may be a temperature, a pressure or the volts of the contacts; it is none of the next label's, which has one of its own.</summary>
    [Theory]
    [InlineData(Thermostat, "AUTO RESET 35 DIFF: 14 16 FLA 96 LRA", "reset=automatic; differential=14 °F; fullLoadAmps=16 A; lockedRotorAmps=96 A", "35")]
    [InlineData(Thermostat, "CUT-OUT 55 AUTO RESET 35 DIFF 14 16 FLA", "reset=automatic; differential=14 °F; cutOut=55 °F; fullLoadAmps=16 A", "35")]
    [InlineData(Thermostat, "AUTO RESET 35 CUT-OUT: 55 16 FLA 240 V", "reset=automatic; cutOut=55 °F; ratedVolts=240 V; fullLoadAmps=16 A", "35")]
    [InlineData(Thermostat, "AUTO RESET 35 DIFF 14 F 16 FLA", "reset=automatic; differential=14 °F; fullLoadAmps=16 A", "35")]
    [InlineData(PressureControl, "AUTO RESET 300 CUT-OUT 400 16 FLA", "reset=automatic; cutOut=400 psi; fullLoadAmps=16 A", "300")]
    [InlineData(PressureControl, "AUTO RESET 300 CUT-OUT 400 DIFF 100 16 FLA", "reset=automatic; differential=100 psi; cutOut=400 psi; fullLoadAmps=16 A", "300")]
    [InlineData(Thermostat, "HIGH LIMIT 35 DIFF 14 16 FLA", "function=high limit; differential=14 °F; fullLoadAmps=16 A", "35")]
    [InlineData(PressureControl, "MAX 42 CUT-OUT 400 16 FLA", "cutOut=400 psi; fullLoadAmps=16 A", "MAX 42")]
    public void Nor_does_one_without_a_unit_slide_past_its_label_to_the_next(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    /// <summary>Amps are printed as 16 FLA beside labels that stand before their settings (practice).</summary>
    [Theory]
    [InlineData("35 DIFF 14 16 FLA 240 V", "ratedVolts=240 V; fullLoadAmps=16 A")]
    [InlineData("OFF 35 CUT-IN 40 10 FLA", "fullLoadAmps=10 A")]
    public void Of_two_figures_with_one_label_between_neither_is_taken_whatever_amps_stand_elsewhere(string plate, string read)
    {
        ReadPlate.Fields(Thermostat, plate).ShouldBe(read);
        Families.Find(Thermostat)!.ReadNameplate(plate).Complaints.ShouldHaveSingleItem().Code.ShouldBe(ComplaintCode.Ambiguous);
    }

    [Theory]
    [InlineData("35 DIFF 14 CUT-OUT 16 FLA 240 V", "differential=35 °F; cutOut=14 °F; ratedVolts=240 V; fullLoadAmps=16 A")]
    [InlineData("55 CUT-OUT AUTO RESET 35 DIFF 16 FLA", "reset=automatic; differential=35 °F; cutOut=55 °F; fullLoadAmps=16 A")]
    public void One_before_a_label_that_has_no_other_is_its_own(string plate, string read) => ReadPlate.Whole(Thermostat, plate).ShouldBe(read);

    [Theory]
    [InlineData("28 BAR CUT-OUT 24 BAR CUT-IN 650 PSI MAX", "cutOut=28 bar; cutIn=24 bar; pressureMost=650 psi")]
    [InlineData("28 BAR CUT-OUT 24 CUT-IN 16 FLA 240 V", "cutOut=28 bar; cutIn=24 bar; ratedVolts=240 V; fullLoadAmps=16 A")]
    [InlineData("MAX 42 BAR CUT-OUT 38 CUT-IN 30", "cutOut=38 bar; cutIn=30 bar; pressureMost=42 bar")]
    public void A_plate_with_its_labels_behind_keeps_its_figures(string plate, string read) => ReadPlate.Whole(PressureControl, plate).ShouldBe(read);

    [Fact]
    public void Where_every_figure_has_its_unit_and_one_has_no_label_none_is_taken()
    {
        var reading = Families.Find(PressureControl)!.ReadNameplate("28 BAR CUT-OUT 24 BAR CUT-IN 18 BAR");
        reading.Fields.ShouldBeEmpty();
        reading.Complaints.ShouldHaveSingleItem().Code.ShouldBe(ComplaintCode.Ambiguous);
    }

    /// <summary>That TON stands behind its figure says nothing of where the labels of pressures stand.</summary>
    [Theory]
    [InlineData("5 TON 180 PSI MWP 450 PSI", "ratedCapacity=5 tons")]
    [InlineData("CAPACITY 2 TONS 180 PSI MWP 450 PSI", "ratedCapacity=2 tons")]
    [InlineData("2 TON (7 KW) 180 PSI MWP 450 PSI", "ratedCapacity=2 tons")]
    [InlineData("5/8 ODF 1 TON 180 PSI MWP 450 PSI", "ratedCapacity=1 tons; joint=solder; condenserPort=5/8 in")]
    [InlineData("180 PSI MWP 450 PSI THREE WAY 5 TON", "arrangement=three-way; ratedCapacity=5 tons")]
    public void Of_two_figures_with_one_label_between_neither_is_taken_whatever_units_stand_elsewhere(string plate, string read)
    {
        ReadPlate.Fields("condensingPressureValve", plate).ShouldBe(read);
        Families.Find("condensingPressureValve")!.ReadNameplate(plate).Complaints.ShouldHaveSingleItem().Code.ShouldBe(ComplaintCode.Ambiguous);
    }

    [Theory]
    [InlineData("LIQUID TEMP 35 PSI R22", "refrigerants=R-22", "LIQUID TEMP 35 PSI")]
    [InlineData("EVAPORATING AT 35 PSIG EXT EQ", "equaliser=external", "EVAPORATING AT 35 PSIG")]
    public void A_figure_with_another_unit_has_not_the_one_that_its_label_means(string plate, string read, string left)
    {
        ReadPlate.Fields("expansionValve", plate).ShouldBe(read);
        Families.Find("expansionValve")!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    [Theory]
    [InlineData("expansionValve", "R404A CAP 60 IN CAP 2 TONS", "refrigerants=R-404A; ratedCapacity=2 tons; capillary=60 in")]
    [InlineData("defrostTimer", "4-110 MIN FAILSAFE 1-6 CYCLES 60 CYCLES", "clockFrequency=60 Hz; starts=1 to 6 a day; failSafe=4 to 110 min")]
    [InlineData("defrostTimer", "DEFROSTS 4 / DAY FAIL SAFE 30 MIN", "starts=4 a day; failSafe=30 min")]
    public void A_word_of_two_fields_is_told_by_its_figure(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);
}
