namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Tolerances on plates, 20 ±5 °F. Expected values are worked by hand: the figure before the sign is what is meant.</summary>
public sealed class TolerancesOnPlatesTests
{
    private const string Thermostat = "thermostat";
    private const string PressureControl = "pressureControl";

    [Theory]
    [InlineData("CLOSES AT 20 +/- 5 F OPENS AT 40 F")]
    [InlineData("CLOSES AT 20 ± 5 F OPENS AT 40 F")]
    [InlineData("CLOSES AT 20±5F OPENS AT 40±5F")]
    [InlineData("CLOSES 20F +/-5F OPENS 40F +/-5F")]
    [InlineData("CLOSES 20 F ±5 OPENS 40 F ±5")]
    [InlineData("CLOSES 20F(±5) OPENS 40F(±5)")]
    [InlineData("CLOSES 20 (±5) F OPENS 40 (±5) F")]
    [InlineData("20F ±5F CLOSES 40F ±5F OPENS")]
    public void A_tolerance_is_no_setting(string plate)
    {
        ReadPlate.Fields(Thermostat, plate).ShouldBe("cutOut=40 °F; cutIn=20 °F");
        Families.Find(Thermostat)!.ReadNameplate(plate).Leftovers.ShouldBeEmpty();
    }

    [Theory]
    [InlineData(Thermostat, "CLOSES -7 ±3 C OPENS 4 ±3 C", "cutOut=4 °C; cutIn=-7 °C")]
    [InlineData(Thermostat, "RANGE -30 TO 90 ±2 F", "range=-30 to 90 °F")]
    [InlineData(PressureControl, "OPENS 400 ±10 PSI", "cutOut=400 psi")]
    [InlineData(Thermostat, "OPENS ±5 F", "")]
    [InlineData("motor", "230 V ±10% 50 HZ", "voltage=230 V; frequency=50 Hz")]
    [InlineData("capacitor", "5 MFD ±6% 370 V", "rating=5 µF 370 V; tolerance=6 %")]
    [InlineData("capacitor", "5 MFD 370 V ±6%", "rating=5 µF 370 V; tolerance=6 %")]
    public void A_tolerance_does_not_come_between_a_figure_and_its_unit(string kind, string plate, string read) => ReadPlate.Fields(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData("motor", "SHAFT 1/2 X 4 ±1/8 1/6 HP 1075 RPM", "power=1/6 hp; speed=1075 rpm; shaftDiameter=1/2 in; shaftLength=4 in")]
    [InlineData("motor", "BODY DIA 5.6 ±1/16 1/3 HP 1075 RPM 115V 60HZ", "power=1/3 hp; speed=1075 rpm; voltage=115 V; frequency=60 Hz; bodyDiameter=5.6 in")]
    [InlineData("motor", "SHAFT LENGTH 4±1/8 3/4 HP", "power=3/4 hp; shaftLength=4 in")]
    [InlineData("motor", "SHAFT LENGTH 4 ± 1-1/8 IN 3/4 HP", "power=3/4 hp; shaftLength=4 in")]
    [InlineData("motor", "SHAFT LENGTH 4 ±½ IN 3/4 HP", "power=3/4 hp; shaftLength=4 in")]
    [InlineData("motor", "SHAFT LENGTH 4 ±.125 3/4 HP", "power=3/4 hp; shaftLength=4 in")]
    [InlineData(Thermostat, "CUT-OUT 35 ±2/3 F CUT-IN 39 F", "cutOut=35 °F; cutIn=39 °F")]
    [InlineData(Thermostat, "CLOSES 20 ±2,5 C OPENS 40 ±2,5 C", "cutOut=40 °C; cutIn=20 °C")]
    [InlineData(Thermostat, "CLOSES 20 ±5/OPENS 40 ±5", "cutOut=40 °F; cutIn=20 °F")]
    public void A_tolerance_is_the_whole_figure_behind_its_sign(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(Thermostat, "OPENS 55 +-4 F CLOSES 35 +-6 F", "cutOut=55 °F; cutIn=35 °F")]
    [InlineData(Thermostat, "OPENS 55 -/+4 F CLOSES 35 + / - 6 F", "cutOut=55 °F; cutIn=35 °F")]
    [InlineData(Thermostat, "OPENS 55 +4/-4 F CLOSES 35 +6/-6 F", "cutOut=55 °F; cutIn=35 °F")]
    [InlineData(Thermostat, "OPENS 55F +4 -4 CLOSES 35F +6 -6", "cutOut=55 °F; cutIn=35 °F")]
    [InlineData(PressureControl, "OPENS 400 +10 -10 PSI", "cutOut=400 psi")]
    [InlineData("motor", "SHAFT LENGTH 4 +0 -1/8 3/4 HP", "power=3/4 hp; shaftLength=4 in")]
    [InlineData("motor", "SHAFT LENGTH 4 +.125/-.000 3/4 HP", "power=3/4 hp; shaftLength=4 in")]
    public void A_tolerance_may_have_its_signs_apart_or_a_figure_for_each(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData("SHAFT LENGTH 4 ±1/8-3/4 HP", "shaftLength=4 in", "±1/8-3/4 HP")]
    [InlineData("SHAFT LENGTH 4 ±1/_ 3/4 HP", "power=3/4 hp; shaftLength=4 in", "±1/_")]
    public void Of_a_figure_that_goes_on_behind_a_tolerance_no_part_is_read(string plate, string read, string left)
    {
        ReadPlate.Fields("motor", plate).ShouldBe(read);
        Families.Find("motor")!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    [Fact]
    public void Two_figures_with_their_signs_behind_a_label_are_no_tolerance() => ReadPlate.Fields(Thermostat, "RANGE -5/+5 C").ShouldBe("range=-5 to 5 °C");

    [Theory]
    [InlineData("motor", "230V±10% 1~50Hz 0.5A", "voltage=230 V; phase=single-phase; frequency=50 Hz; fullLoadAmps=0.5 A", "±10%")]
    [InlineData("motor", "230V±10%50Hz 0.5A", "voltage=230 V; frequency=50 Hz; fullLoadAmps=0.5 A", "±10%")]
    [InlineData("contactor", "COIL 24V±15% 50/60HZ", "coilVolts=24 V; coilFrequency=50/60 Hz", "±15%")]
    [InlineData("contactor", "COIL 230V +10 -15 % 50HZ", "coilVolts=230 V; coilFrequency=50 Hz", "+10 -15 %")]
    [InlineData("contactor", "COIL 24V +10/-15% 50/60HZ", "coilVolts=24 V; coilFrequency=50/60 Hz", "+10/-15%")]
    [InlineData("contactor", "COIL 230V~ -15% +10% 50HZ", "coilVolts=230 V; coilFrequency=50 Hz", "-15% +10%")]
    [InlineData("contactor", "24V ±10% 60HZ COIL 30 FLA 240V", "coilVolts=24 V; coilFrequency=60 Hz; ratedVolts=240 V; fullLoadAmps=30 A", "±10%")]
    [InlineData("solenoidValve", "COIL 24 VAC +10 -15 % 60HZ", "coilVolts=24 V; coilFrequency=60 Hz", "+10 -15 %")]
    [InlineData("defrostTimer", "CLOCK 230V +10/-15% 50HZ", "clockVolts=230 V; clockFrequency=50 Hz", "+10/-15%")]
    [InlineData("defrostTimer", "240V ±10% 60 HZ 4 PER DAY", "clockVolts=240 V; clockFrequency=60 Hz; starts=4 a day", "±10%")]
    [InlineData("motor", "230V +10%/-15% 50HZ 1075 RPM", "speed=1075 rpm; voltage=230 V; frequency=50 Hz", "+10%/-15%")]
    public void A_share_beside_a_figure_is_left_over_without_it(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }
}
