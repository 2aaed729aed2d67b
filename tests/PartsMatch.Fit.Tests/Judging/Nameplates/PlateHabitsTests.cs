using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Habits of plates from both sides of the sea. Expected values are worked by hand; the meanings of codes are IEC 60034-7 (mounts), IEC 60034-8 and NEMA MG 1 Part 2 (lead marks).</summary>
public sealed class PlateHabitsTests
{
    private static string Fields(string plate) => string.Join("; ", MotorFamily.Motor.ReadNameplate(plate).Fields.Select(field => $"{field.Field.Name}={field.Text}"));

    [Theory]
    [InlineData("115/1/60", "voltage=115 V; phase=single-phase; frequency=60 Hz")]
    [InlineData("115/60/1", "voltage=115 V; phase=single-phase; frequency=60 Hz")]
    [InlineData("208-230/1/60", "voltage=208-230 V; phase=single-phase; frequency=60 Hz")]
    [InlineData("208-230 / 1 / 60", "voltage=208-230 V; phase=single-phase; frequency=60 Hz")]
    [InlineData("230-1-50", "voltage=230 V; phase=single-phase; frequency=50 Hz")]
    [InlineData("208-230/460-3-60", "voltage=208-230/460 V; phase=three-phase; frequency=60 Hz")]
    [InlineData("115/1/60 1/4 HP", "power=1/4 hp; voltage=115 V; phase=single-phase; frequency=60 Hz")]
    [InlineData("115/2/60 1/4 HP", "power=1/4 hp")]
    public void Volts_phases_and_hertz_side_by_side_need_no_label(string plate, string read) => Fields(plate).ShouldBe(read);

    [Theory]
    [InlineData("RPM1075/3SPD", "speed=1075 rpm; speeds=3")]
    [InlineData("RPM 1075/3 SPD V 230", "speed=1075 rpm; speeds=3; voltage=230 V")]
    [InlineData("1075/3SPD", "speed=1075 rpm; speeds=3")]
    public void A_speed_and_how_many_there_are_may_have_both_labels(string plate, string read) => Fields(plate).ShouldBe(read);

    [Theory]
    [InlineData("HI 1075 LO 825 RPM", "speed=1075/825 rpm")]
    [InlineData("HI 1075 RPM LO 825 RPM", "speed=1075/825 rpm")]
    [InlineData("RPM HI 1075 LO 825 A HI 2.1 LO 1.5", "speed=1075/825 rpm; fullLoadAmps=2.1/1.5 A")]
    [InlineData("HIGH 1/3 HP LOW 1/6 HP", "power=1/3 / 1/6 hp")]
    [InlineData("RPM HI 1100 MED 950 LO 800", "speed=1100/950/800 rpm")]
    [InlineData("HI/LO", "speeds=2")]
    [InlineData("HI/MED/LO", "speeds=3")]
    public void Steps_by_name_are_rows(string plate, string read) => Fields(plate).ShouldBe(read);

    [Theory]
    [InlineData("P1 120 W P2 75 W", "power=75 W; powerMeaning=output; inputPower=120 W")]
    [InlineData("INPUT 180W OUTPUT 90W", "power=90 W; powerMeaning=output; inputPower=180 W")]
    [InlineData("OUTPUT 9 W INPUT 38 W", "power=9 W; powerMeaning=output; inputPower=38 W")]
    [InlineData("1/4 HP INPUT 290 W", "power=1/4 hp; inputPower=290 W")]
    [InlineData("INPUT 180/120W OUTPUT 90/60W", "power=90/60 W; powerMeaning=output; inputPower=180/120 W")]
    [InlineData("INPUT 95W", "power=95 W; powerMeaning=input")]
    public void The_shafts_power_stands_before_what_the_motor_draws_and_both_are_kept(string plate, string read)
    {
        Fields(plate).ShouldBe(read);
        MotorFamily.Motor.ReadNameplate(plate).Leftovers.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("U1 V1 W1 230 V", "voltage=230 V; leadMarks=IEC terminals")]
    [InlineData("T1 T2 T3 CODE L", "codeLetter=L; leadMarks=NEMA marks")]
    [InlineData("CODE T1", "leadMarks=NEMA marks")]
    [InlineData("V 1 PH", "phase=single-phase")]
    [InlineData("V 2_0 T 5", "")]
    [InlineData("LOW VOLTS: T1 T3 T8, T2 T4 T5", "leadMarks=NEMA marks")]
    [InlineData("BRN BLK WHT PURPLE", "leadMarks=coloured")]
    [InlineData("T1 BLU T2 WHT", "leadMarks=NEMA marks, coloured")]
    [InlineData("BRN CAP 5 MFD 370V", "runCapacitor=5 µF 370 V; leadMarks=coloured")]
    public void Names_of_leads_are_neither_figures_nor_code_letters(string plate, string read) => Fields(plate).ShouldBe(read);

    [Theory]
    [InlineData("IM B35", "mounts=rigid base, flange")]
    [InlineData("IM B34", "mounts=rigid base, tapped face")]
    [InlineData("Is.Kl. F", "insulation=F")]
    [InlineData("Iso.Kl. B", "insulation=B")]
    [InlineData("CL.F", "insulation=F")]
    [InlineData("TH.CL.155", "insulation=F")]
    [InlineData("CLASS 130", "insulation=B")]
    [InlineData("INS 120 V", "voltage=120 V")]
    [InlineData("M 3~", "phase=three-phase")]
    [InlineData("AC230V", "voltage=230 V")]
    [InlineData("1075 rev/min", "speed=1075 rpm")]
    [InlineData("3x400 V", "voltage=400 V; phase=three-phase")]
    [InlineData("Δ/Y 230/400 V", "voltage=230/400 V; starDelta=yes")]
    [InlineData("1370 1/min", "speed=1370 rpm")]
    [InlineData("1400 U/min", "speed=1400 rpm")]
    [InlineData("1360 min⁻¹", "speed=1360 rpm")]
    [InlineData("EN 60034-1", "standard=IEC")]
    [InlineData("Tamb 60°C", "ambientMost=60 °C")]
    public void European_plates_have_their_own_words(string plate, string read) => Fields(plate).ShouldBe(read);

    [Theory]
    [InlineData("A 2,_ HZ 60")]
    [InlineData("A 2.. HZ 60")]
    [InlineData("A 2.# HZ 60")]
    [InlineData("A #.1 HZ 60")]
    [InlineData("V 23# HZ 60")]
    [InlineData("V 208-... HZ 60")]
    [InlineData("HP 1/... HZ 60")]
    [InlineData("1/# HP 60 HZ")]
    public void A_figure_that_is_cut_off_or_has_a_hole_is_complained_of_and_not_read(string plate)
    {
        Fields(plate).ShouldBe("frequency=60 Hz");
        MotorFamily.Motor.ReadNameplate(plate).Complaints.ShouldHaveSingleItem().Message.ShouldContain("“");
    }
}
