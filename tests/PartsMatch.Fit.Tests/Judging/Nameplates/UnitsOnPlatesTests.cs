namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Figures without a unit on plates of switches and valves. Expected values are worked by hand: a plate is in one unit, American ones in °F and psi (practice).</summary>
public sealed class UnitsOnPlatesTests
{
    private const string Thermostat = "thermostat";
    private const string PressureControl = "pressureControl";
    private const string SolenoidValve = "solenoidValve";
    private const string ExpansionValve = "expansionValve";
    private const string CondensingPressureValve = "condensingPressureValve";

    [Theory]
    [InlineData(Thermostat, "RANGE -30/+15 C CUT-OUT 2 CUT-IN 8", "range=-30 to 15 °C; cutOut=2 °C; cutIn=8 °C")]
    [InlineData(Thermostat, "2 CUT-OUT 8 CUT-IN RANGE -30 TO 15 C", "range=-30 to 15 °C; cutOut=2 °C; cutIn=8 °C")]
    [InlineData(Thermostat, "CUT-OUT:+2/CUT-IN:+8 C", "cutOut=2 °C; cutIn=8 °C")]
    [InlineData(Thermostat, "RANGE -30/+15 C DIFF 2", "range=-30 to 15 °C; differential=2 K")]
    [InlineData(Thermostat, "DIFF 1.5/16 K RANGE -30/+15 C CUT-OUT 2", "range=-30 to 15 °C; differential=1.5 to 16 K; cutOut=2 °C")]
    [InlineData(Thermostat, "OPENS ON RISE 13C CLOSES ON FALL 5", "action=opens on rise; cutOut=13 °C; cutIn=5 °C")]
    [InlineData(PressureControl, "RANGE -0.2/7.5 BAR CUT-OUT 0.5 CUT-IN 2", "range=-0.2 to 7.5 bar; cutOut=0.5 bar; cutIn=2 bar")]
    [InlineData(PressureControl, "RANGE 0.2 TO 0.75 MPA CUT-OUT 0.3", "range=0.2 to 0.75 MPa; cutOut=0.3 MPa")]
    [InlineData(CondensingPressureValve, "SETTING 12.4 PS 31 BAR", "setting=12.4 bar; workingPressure=31 bar")]
    [InlineData(CondensingPressureValve, "RANGE 7-15 BAR SETTING 12.4 DROP 0.1", "setting=12.4 bar; settingLeast=7 bar; settingMost=15 bar; ratedDrop=0.1 bar")]
    [InlineData(ExpansionValve, "RANGE FROM -40 TO +10 C MOP 15 PS 28 BAR", "workingPressure=28 bar; evaporatingLeast=-40 °C; evaporatingMost=10 °C; limitsAt=15 °C")]
    [InlineData(SolenoidValve, "MOPD 21 MIN OPD 0.05 BAR PS 35", "openingDifferential=21 bar; leastDifferential=0.05 bar; workingPressure=35 bar")]
    [InlineData(SolenoidValve, "MAX OPD 2100 KPA PS 4500", "openingDifferential=2100 kPa; workingPressure=4500 kPa")]
    public void A_figure_without_a_unit_has_that_of_the_others(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(Thermostat, "RANGE 20 TO 80 CUT-OUT 35 CUT-IN 39", "range=20 to 80 °F; cutOut=35 °F; cutIn=39 °F")]
    [InlineData(Thermostat, "RANGE 20 TO 80 F CUT-OUT 35 DIFF 4", "range=20 to 80 °F; differential=4 °F; cutOut=35 °F")]
    [InlineData(Thermostat, "CUT-OUT 35 CUT-IN 39 P/N 12C", "cutOut=35 °F; cutIn=39 °F")]
    [InlineData(PressureControl, "RANGE 5-100 PSIG DIFF 10-40 CUT-IN 30", "range=5 to 100 psi; differential=10 to 40 psi; cutIn=30 psi")]
    [InlineData(PressureControl, "RANGE 20 IN HG TO 100 PSI DIFF 10", "range=20 inHg to 100 psi; differential=10 psi")]
    [InlineData(SolenoidValve, "MOPD 300 PSI MWP 500", "openingDifferential=300 psi; workingPressure=500 psi")]
    [InlineData(ExpansionValve, "MOP 55 MWP 450", "workingPressure=450 psi; limitsAt=55 °F")]
    [InlineData(ExpansionValve, "MOP 55 PSI MWP 450", "workingPressure=450 psi; limitPressure=55 psi")]
    [InlineData(ExpansionValve, "MOP 55 PSIG R134a", "refrigerants=R-134a; limitPressure=55 psi")]
    [InlineData(ExpansionValve, "MOP 35 F R134a", "refrigerants=R-134a; limitsAt=35 °F")]
    [InlineData(PressureControl, "CUT-OUT 10 IN HG CUT-IN 10", "cutOut=10 inHg; cutIn=10 psi")]
    public void It_has_the_usual_one_where_the_others_have_it_or_there_are_none(string kind, string plate, string read) => ReadPlate.Fields(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(Thermostat, "RANGE 20 TO 80 F MAX BULB 60 C CUT-OUT 35", "range=20 to 80 °F; bulbMost=60 °C", "CUT-OUT 35")]
    [InlineData(Thermostat, "DIFF 6 K CUT-OUT 2", "differential=6 K", "CUT-OUT 2")]
    [InlineData(PressureControl, "RANGE 20-100 PSI PS 28 BAR CUT-IN 30", "range=20 to 100 psi; pressureMost=28 bar", "CUT-IN 30")]
    [InlineData(SolenoidValve, "MOPD 300 PSI PS 35 BAR MIN OPD 2", "openingDifferential=300 psi; workingPressure=35 bar", "MIN OPD 2")]
    public void It_is_asked_for_where_the_others_do_not_agree(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        var reading = Families.Find(kind)!.ReadNameplate(plate);
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
        reading.Complaints.ShouldHaveSingleItem().Message.ShouldContain("with its unit");
    }

    /// <summary>13 °C is 55 °F and 28 bar are 406 psi, so that such a plate has its first figures in °C or in bar, and one without brackets may be in either unit.</summary>
    [Theory]
    [InlineData(Thermostat, "OPENS 13 (55 F) DIFF 10", "cutOut=55 °F", "DIFF 10")]
    [InlineData(Thermostat, "DIFF 10 OPENS 13 (55 F)", "cutOut=55 °F", "DIFF 10")]
    [InlineData(Thermostat, "OPENS 13 (55 F) CLOSES 2 (35 F) MAX BULB 60", "cutOut=55 °F; cutIn=35 °F", "MAX BULB 60")]
    [InlineData(Thermostat, "OPENS 13 (55 F) RANGE 0-40", "cutOut=55 °F", "RANGE 0-40")]
    [InlineData(Thermostat, "AUTO RESET 3 (38 F) OPENS 17", "reset=automatic; cutIn=38 °F", "OPENS 17")]
    [InlineData(PressureControl, "CUT-OUT 28 (406 PSI) CUT-IN 20", "cutOut=406 psi", "CUT-IN 20")]
    [InlineData(PressureControl, "HIGH PRESSURE CUT-OUT 28 (406 PSI) DIFF 4", "function=high pressure; cutOut=406 psi", "DIFF 4")]
    [InlineData(CondensingPressureValve, "SETTING 12.4 (180 PSI) RANGE 7-15.5", "setting=180 psi", "RANGE 7-15.5")]
    [InlineData(Thermostat, "13 (55 F) CUT-OUT 10 DIFF", "cutOut=55 °F", "10 DIFF")]
    [InlineData(Thermostat, "OPENS 13 (55 F) DIFF 10 F RANGE 0-40", "differential=10 °F; cutOut=55 °F", "RANGE 0-40")]
    public void It_is_asked_for_where_another_without_one_is_told_by_its_brackets_to_have_not_the_usual_one(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        var reading = Families.Find(kind)!.ReadNameplate(plate);
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
        reading.Complaints.ShouldHaveSingleItem().Message.ShouldContain("unit, such as");
    }

    [Theory]
    [InlineData(Thermostat, "OPENS 13 (55 F) DIFF 10 F", "differential=10 °F; cutOut=55 °F")]
    [InlineData(Thermostat, "OPENS 13 (55 F) DIFF 10 (18 F)", "differential=18 °F; cutOut=55 °F")]
    [InlineData(Thermostat, "OPENS 55 (13 C) DIFF 10", "differential=10 °F; cutOut=55 °F")]
    [InlineData(Thermostat, "OPENS 13 (55 F) RANGE 0-40 C DIFF 5", "range=0 to 40 °C; differential=5 K; cutOut=13 °C")]
    [InlineData(Thermostat, "OPENS 13 C (55 F) DIFF 10", "differential=10 K; cutOut=13 °C")]
    [InlineData(PressureControl, "CUT-OUT 28 (406 PSI) MAX 42 (609 PSI)", "cutOut=406 psi; pressureMost=609 psi")]
    [InlineData(PressureControl, "CUT-OUT 400 (28 BAR) DIFF 60", "differential=60 psi; cutOut=400 psi")]
    public void A_unit_or_brackets_of_its_own_tell_it_there(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(PressureControl, "28 BAR CUT-OUT 24 CUT-IN", "cutOut=28 bar; cutIn=24 bar")]
    [InlineData(Thermostat, "8 C CUT-IN\n2 CUT-OUT", "cutOut=2 °C; cutIn=8 °C")]
    public void The_first_figure_of_a_line_says_the_unit_as_well(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    /// <summary>A thermostat has no pressures and a pressure control no temperatures; what stands there is none of their settings.</summary>
    [Theory]
    [InlineData(Thermostat, "DIFF 4 F CUT-IN 30 PSI", "differential=4 °F", "CUT-IN 30 PSI")]
    [InlineData(Thermostat, "DIFF 4 F CUT-IN 2 BAR", "differential=4 °F", "CUT-IN 2 BAR")]
    [InlineData(PressureControl, "DIFF 10 PSI CUT-OUT 20 F", "differential=10 psi", "CUT-OUT 20 F")]
    [InlineData(SolenoidValve, "MOPD 300 PSI PS 105 C", "openingDifferential=300 psi", "PS 105 C")]
    [InlineData(CondensingPressureValve, "3-WAY SET 70 F", "arrangement=three-way", "SET 70 F")]
    public void A_figure_with_a_unit_that_the_family_does_not_know_is_left_over_and_told(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        var reading = Families.Find(kind)!.ReadNameplate(plate);
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
        reading.Complaints.ShouldHaveSingleItem();
    }

    /// <summary>1 bar is 14.504 psi, and °F = 32 + 1.8 °C; plates round what they convert.</summary>
    [Theory]
    [InlineData(PressureControl, "RANGE 20-100 PSI (1.4-7 BAR) CUT-IN 30 CUT-OUT 10", "range=20 to 100 psi; cutOut=10 psi; cutIn=30 psi")]
    [InlineData(PressureControl, "RANGE 20-100 PSI DIFF 40-150 MAX 650 PSI 45 BAR", "range=20 to 100 psi; differential=40 to 150 psi; pressureMost=650 psi")]
    [InlineData(PressureControl, "MAX 650 PSI/45 BAR CUT-OUT 400", "cutOut=400 psi; pressureMost=650 psi")]
    [InlineData(PressureControl, "MAX 45 BAR (650 PSI) CUT-OUT 28 BAR (406 PSI) CUT-IN 21", "cutOut=28 bar; cutIn=21 bar; pressureMost=45 bar")]
    [InlineData(PressureControl, "MAX 650 PSI (45 BAR) CUT-OUT 400 PSI (27.6 BAR) CUT-IN 300 PSI (20.7 BAR)", "cutOut=400 psi; cutIn=300 psi; pressureMost=650 psi")]
    [InlineData(Thermostat, "RANGE -30/+50 F (-34/+10 C) DIFF 4 CUT-IN 40", "range=-30 to 50 °F; differential=4 °F; cutIn=40 °F")]
    [InlineData(CondensingPressureValve, "RANGE 100-225 PSI (7-15.5 BAR) SETTING 180", "setting=180 psi; settingLeast=100 psi; settingMost=225 psi")]
    [InlineData("motor", "1/4 HP (187 W) 1075 RPM 115V", "power=1/4 hp; speed=1075 rpm; voltage=115 V")]
    [InlineData("motor", "BODY DIA 5.6 IN 142 MM SHAFT 1/2 IN (12.7 MM)", "bodyDiameter=5.6 in; shaftDiameter=1/2 in")]
    [InlineData("defrostTimer", "FAIL SAFE 30 MIN (0.5 H) RES 40 A", "failSafe=30 min; resistiveAmps=40 A")]
    [InlineData(SolenoidValve, "PS 500 PSI 34.5 BAR MOPD 300", "openingDifferential=300 psi; workingPressure=500 psi")]
    public void A_figure_that_says_the_one_before_it_again_in_another_unit_says_nothing_more(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(PressureControl, "RANGE 20-100 PSI (28 BAR) CUT-IN 30", "range=20 to 100 psi")]
    [InlineData(PressureControl, "MAX 650 PSI 28 BAR CUT-OUT", "cutOut=28 bar; pressureMost=650 psi")]
    public void One_that_is_not_the_same_repeats_nothing(string kind, string plate, string read) => ReadPlate.Fields(kind, plate).ShouldBe(read);

    /// <summary>55 °F is 12.8 °C, 35 °F 1.7 °C, 10 psi 0.69 bar, 400 psi 27.6 bar, 300 psi 20.7 bar.</summary>
    [Theory]
    [InlineData(Thermostat, "DEFROST END OPENS 55 (13 C) CLOSES 35 (2 C)", "function=defrost end; cutOut=55 °F; cutIn=35 °F")]
    [InlineData(Thermostat, "OPENS 55 (+13 C) CLOSES 35 (+2 C) DIFF 20", "differential=20 °F; cutOut=55 °F; cutIn=35 °F")]
    [InlineData(Thermostat, "RANGE -30/+50 (-34/+10 C) CUT-IN 35 (2 C)", "range=-30 to 50 °F; cutIn=35 °F")]
    [InlineData(Thermostat, "OPENS 13 (55 F) CLOSES 2 (35 F)", "cutOut=55 °F; cutIn=35 °F")]
    [InlineData(Thermostat, "RANGE -30/+15 C OPENS 13 (55 F)", "range=-30 to 15 °C; cutOut=13 °C")]
    [InlineData(Thermostat, "55 (13 C) OPENS 35 (2 C) CLOSES", "cutOut=13 °C; cutIn=2 °C")]
    [InlineData(PressureControl, "LOW PRESSURE CUT-OUT 10 (0.7 BAR) CUT-IN 30 (2.1 BAR)", "function=low pressure; cutOut=10 psi; cutIn=30 psi")]
    [InlineData(PressureControl, "HIGH PRESSURE CUT-OUT 400 (28 BAR) CUT-IN 300 (21 BAR) AUTO RESET", "function=high pressure; reset=automatic; cutOut=400 psi; cutIn=300 psi")]
    [InlineData(PressureControl, "HIGH PRESSURE CUT-OUT 400 (28 BAR) AUTO RESET 300 (20.7 BAR) DIFF 100 PSI", "function=high pressure; reset=automatic; differential=100 psi; cutOut=400 psi; cutIn=20.7 bar")]
    [InlineData(Thermostat, "HIGH LIMIT AUTO RESET 38 (3 C) OPENS 62", "function=high limit; reset=automatic; cutOut=62 °F; cutIn=3 °C")]
    [InlineData(PressureControl, "RANGE 20-100 (1.4-7 BAR) DIFF 10 (0.7 BAR)", "range=20 to 100 psi; differential=10 psi")]
    [InlineData(PressureControl, "CUT-OUT 400 [28 BAR] CUT-IN 300 [21 BAR]", "cutOut=400 psi; cutIn=300 psi")]
    [InlineData(SolenoidValve, "MOPD 300 (21 BAR) PS 500 (34.5 BAR)", "openingDifferential=300 psi; workingPressure=500 psi")]
    [InlineData(ExpansionValve, "MOP 55 (13 C) R-22", "refrigerants=R-22; limitsAt=55 °F")]
    [InlineData(CondensingPressureValve, "RANGE 100-225 (7-15.5 BAR) SETTING 180 (12.4 BAR)", "setting=180 psi; settingLeast=100 psi; settingMost=225 psi")]
    [InlineData("motor", "HP 1/4 (187 W) RPM 1075 BODY DIA 5.6 (142 MM)", "power=1/4 hp; speed=1075 rpm; bodyDiameter=5.6 in")]
    public void A_figure_in_brackets_is_what_the_one_before_it_comes_to(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(PressureControl, "CUT-OUT 400 (20 BAR) CUT-IN 300 (21 BAR)", "cutIn=300 psi", "CUT-OUT 400 (20 BAR)")]
    [InlineData(Thermostat, "OPENS 55 (20 C) CLOSES 35 (2 C)", "cutIn=35 °F", "OPENS 55 (20 C)")]
    public void Where_the_two_do_not_agree_neither_is_taken(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        var reading = Families.Find(kind)!.ReadNameplate(plate);
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
        reading.Complaints.ShouldHaveSingleItem();
    }

    [Fact]
    public void Without_a_label_it_shifts_no_setting_behind_it() =>
        ReadPlate.Fields(PressureControl, "HIGH PRESSURE 420 (29 BAR) CUT-OUT 400 CUT-IN 300").ShouldBe("function=high pressure; cutOut=400 psi; cutIn=300 psi");

    [Theory]
    [InlineData(Thermostat, "CUT-OUT 35 (DIFF 4 F)", "differential=4 °F; cutOut=35 °F")]
    [InlineData(Thermostat, "CUT-OUT 35 (4 F DIFF)", "differential=4 °F; cutOut=35 °F")]
    [InlineData(Thermostat, "RES 10 (6 A) 250 V", "ratedVolts=250 V; fullLoadAmps=6 A; resistiveAmps=10 A")]
    public void Other_figures_in_brackets_are_their_own(string kind, string plate, string read) => ReadPlate.Fields(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(ExpansionValve, "R-22 2 TON -40/+10 F", "refrigerants=R-22; ratedCapacity=2 tons")]
    [InlineData(ExpansionValve, "2 TONS -20 F", "ratedCapacity=2 tons")]
    [InlineData(ExpansionValve, "R-22 1 1/2 TON -40/+10 F", "refrigerants=R-22; ratedCapacity=1-1/2 tons")]
    [InlineData(CondensingPressureValve, "5 TON 180 PSI THREE WAY", "arrangement=three-way; ratedCapacity=5 tons")]
    [InlineData(CondensingPressureValve, "2 TONS 5/8 ODF -20 F R-404A", "refrigerants=R-404A; ratedCapacity=2 tons; joint=solder; condenserPort=5/8 in")]
    [InlineData("defrostTimer", "30 MIN 55 F", "failSafe=30 min")]
    public void A_unit_behind_its_figure_announces_no_figure_of_another_kind_behind_it(string kind, string plate, string read) => ReadPlate.Fields(kind, plate).ShouldBe(read);

    /// <summary>1 hp is 746 W, 1/4 hp 186.5 W, sold as 0.18 kW; a ton is 3.517 kW: 7.03 kW are 2 tons, and 0.44 kW, to one digit 0.4, an eighth.</summary>
    [Theory]
    [InlineData("motor", "HP 1/2 KW 0.37 RPM 1140 VOLTS 460 PH 3", "power=1/2 hp; speed=1140 rpm; voltage=460 V; phase=three-phase")]
    [InlineData("motor", "HP 1/2 W 373", "power=1/2 hp")]
    [InlineData("motor", "KW 0.25 HP 1/3", "power=0.25 kW")]
    [InlineData("motor", "HP 1/2 RPM 1140 KW 0.37", "power=1/2 hp; speed=1140 rpm")]
    [InlineData("motor", "HP 1/2 0.37 KW RPM 1140", "power=1/2 hp; speed=1140 rpm")]
    [InlineData("motor", "1/4 HP 0.18 KW 1075 RPM", "power=1/4 hp; speed=1075 rpm")]
    [InlineData("motor", "0.18 KW (1/4 HP) 1075 RPM", "power=0.18 kW; speed=1075 rpm")]
    [InlineData(ExpansionValve, "TONS 2 KW 7 R-22", "refrigerants=R-22; ratedCapacity=2 tons")]
    [InlineData(ExpansionValve, "R-134A 1/2 TON (1.8 KW)", "refrigerants=R-134a; ratedCapacity=1/2 tons")]
    [InlineData(ExpansionValve, "R-134A 1/4 TON (0.9 KW)", "refrigerants=R-134a; ratedCapacity=1/4 tons")]
    [InlineData(ExpansionValve, "R-134A 1/8 TON (0.4 KW)", "refrigerants=R-134a; ratedCapacity=1/8 tons")]
    public void One_figure_in_two_units_is_one_wherever_they_stand(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData("motor", "HP 1/2 KW 0.5")]
    [InlineData("motor", "HP 1 KW 1")]
    [InlineData("motor", "HP 1/2 RPM 1140 KW 0.33")]
    [InlineData("motor", "1/2 HP 0.33 KW")]
    [InlineData(ExpansionValve, "1 TON (3 KW)")]
    [InlineData(ExpansionValve, "1 TON KW 3")]
    public void Two_figures_that_do_not_come_to_the_same_contradict_each_other(string kind, string plate) =>
        Families.Find(kind)!.ReadNameplate(plate).Contradictions.ShouldHaveSingleItem();

    [Fact]
    public void A_figure_with_another_unit_is_told_with_its_own() =>
        Families.Find(SolenoidValve)!.ReadNameplate("PS 105 C MOPD 25 BAR").Complaints.ShouldHaveSingleItem().Message.ShouldStartWith("Working pressure: “105 C” is not a gauge pressure");

    [Fact]
    public void A_figure_that_cannot_be_in_the_others_unit_is_told_with_it() =>
        Families.Find(CondensingPressureValve)!.ReadNameplate("SETTING 180 PS 31 BAR").Complaints.ShouldHaveSingleItem().Message.ShouldBe("Setting: “180 BAR” is not from 5 to 600 psi.");
}
