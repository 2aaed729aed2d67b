using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Figures that belong together by their place, by the name of their step or by a mark. Expected values are worked by hand; delta takes 1/√3 of star's volts (IEC 60034-8).</summary>
public sealed class PlateRowsTests
{
    private static string Fields(string plate) => string.Join("; ", MotorFamily.Motor.ReadNameplate(plate).Fields.Select(field => $"{field.Field.Name}={field.Text}"));

    private static string Leftovers(string plate) => string.Join(" | ", MotorFamily.Motor.ReadNameplate(plate).Leftovers.Select(leftover => leftover.Text));

    [Theory]
    [InlineData("1075/3SPD", "speed=1075 rpm; speeds=3")]
    [InlineData("1075/3 SPD", "speed=1075 rpm; speeds=3")]
    [InlineData("1075 / 3 SPEED", "speed=1075 rpm; speeds=3")]
    [InlineData("1075 RPM 3 SPD", "speed=1075 rpm; speeds=3")]
    [InlineData("1075RPM/3SPD", "speed=1075 rpm; speeds=3")]
    [InlineData("3SPD", "speeds=3")]
    [InlineData("115/2SPD", "speeds=2; voltage=115 V")]
    [InlineData("460/3SPD", "")] // 460 V, or a slow motor's 460 rpm
    [InlineData("1075/3", "")]
    [InlineData("1075/825 SPEED", "speed=1075/825 rpm")]
    public void A_figure_before_the_number_of_speeds_is_the_highest_speed(string plate, string read) => Fields(plate).ShouldBe(read);

    [Theory]
    [InlineData("HI 1/3 HP 1075 LO 1/6 HP 825", "power=1/3 / 1/6 hp; speed=1075/825 rpm")]
    [InlineData("HI 1/3 HP 1075 RPM LO 1/6 HP 825 RPM", "power=1/3 / 1/6 hp; speed=1075/825 rpm")]
    [InlineData("HI 1/3 HP 1075 RPM\nLO 1/6 HP 825 RPM", "power=1/3 / 1/6 hp; speed=1075/825 rpm")]
    [InlineData("LO 1/6 HP 825 HI 1/3 HP 1075 V 115", "power=1/3 / 1/6 hp; speed=1075/825 rpm; voltage=115 V")]
    [InlineData("HI HP 1/3 RPM 1075 LO HP 1/6 RPM 825", "power=1/3 / 1/6 hp; speed=1075/825 rpm")]
    [InlineData("HIGH 1/2 HP 1100 RPM MED 1/3 HP 950 RPM LOW 1/4 HP 800 RPM", "power=1/2 / 1/3 / 1/4 hp; speed=1100/950/800 rpm")]
    [InlineData("HI 1075 RPM 2.1A LO 825 RPM 1.5A", "speed=1075/825 rpm; fullLoadAmps=2.1/1.5 A")]
    [InlineData("LO 825 HI 1075 RPM", "speed=1075/825 rpm")]
    [InlineData("RPM HI 1100 MED HI 1000 MED 950 LO 800", "speed=1100/1000/950/800 rpm")]
    public void What_stands_at_the_same_place_behind_each_step_is_one_row(string plate, string read)
    {
        Fields(plate).ShouldBe(read);
        Leftovers(plate).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("HP 1/6-1/8-1/10 RPM 1050 3SPD 208-230V 1.3-1.0-0.8A", "power=1/6 / 1/8 / 1/10 hp; speed=1050 rpm; speeds=3; voltage=208-230 V; fullLoadAmps=1.3/1/0.8 A")]
    [InlineData("HP 1/6-1/8-1/10 A 1.3-1.0-0.8", "power=1/6 / 1/8 / 1/10 hp; fullLoadAmps=1.3/1/0.8 A")]
    [InlineData("V 208-230/460 A 5.0-4.8/2.4", "voltage=208-230/460 V; fullLoadAmps=5-4.8/2.4 A")]
    [InlineData("V 208-230-460 A 5.0-4.8-2.4", "voltage=208-230/460 V; fullLoadAmps=5-4.8/2.4 A")]
    public void Amps_pair_with_the_powers_or_the_volts_beside_them_whatever_joins_them(string plate, string read)
    {
        Fields(plate).ShouldBe(read);
        Leftovers(plate).ShouldBeEmpty();
        MotorFamily.Motor.ReadNeed(new(plate, [], [], null)).Contradictions.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("HI 1075 2.1A LO 825 1.5A")] // watts or revolutions
    [InlineData("HI 480 LOW 277")] // volts or revolutions
    [InlineData("HI 1/3 HP 1075 LO 1/6 HP")]
    [InlineData("HI 1/3 HP 1075 RPM HI 1/6 HP 825 RPM")]
    public void Rows_that_do_not_pair_or_are_not_certain_are_left_over(string plate)
    {
        Fields(plate).ShouldBeEmpty();
        Leftovers(plate).ShouldBe(plate);
    }

    [Fact]
    public void Steps_with_something_between_them_stay_a_contradiction() =>
        MotorFamily.Motor.ReadNameplate("HI 1/3 HP 1075 RPM, 208-230V, LO 1/6 HP 825 RPM").Contradictions.SelectMany(contradiction => contradiction.Fields).ShouldBe(["power", "speed"]);

    [Theory]
    [InlineData("400 V Y / 230 V Δ")]
    [InlineData("230/400 V Δ/Y")]
    [InlineData("Δ 230 V Y 400 V")]
    [InlineData("Δ230/Y400 V")]
    [InlineData("230V Δ 400V Y")]
    [InlineData("230 V D / 400 V Y")]
    [InlineData("230Δ/400Y V")]
    [InlineData("V 230Δ / 400Y")]
    [InlineData("230 V (Δ) / 400 V (Y)")]
    [InlineData("230 V DELTA / 400 V STAR")]
    [InlineData("Y/Δ 400/230 V")]
    public void Delta_and_star_tell_two_voltages_apart(string plate)
    {
        Fields(plate).ShouldBe("voltage=230/400 V; starDelta=yes");
        Leftovers(plate).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("LOW VOLTS 115 HIGH VOLTS 230", "voltage=115/230 V")]
    [InlineData("HIGH VOLTS 460 LOW VOLTS 230", "voltage=230/460 V")]
    [InlineData("VOLTS LO 230 HI 460", "voltage=230/460 V")]
    [InlineData("115 V LOW 230 V HIGH", "voltage=115/230 V")]
    [InlineData("A 1,9Δ/1,1Y", "starDelta=yes; fullLoadAmps=1.9/1.1 A")]
    public void Low_and_high_volts_and_amps_in_delta_and_star_do_likewise(string plate, string read) => Fields(plate).ShouldBe(read);

    [Theory]
    [InlineData("400 V Δ / 230 V Y", "")]
    [InlineData("LOW VOLTS 230 HIGH VOLTS 115", "")]
    [InlineData("Y/Δ 230/400 V", "voltage=230/400 V")]
    [InlineData("230Δ/400Y", "")]
    [InlineData("400 V Y", "voltage=400 V")]
    public void Marks_the_wrong_way_round_or_by_themselves_say_nothing(string plate, string read) => Fields(plate).ShouldBe(read);
}
