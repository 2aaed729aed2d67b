using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

/// <summary>Practice: figures side by side on a plate are paired by position; one figure stands for every row.</summary>
public sealed class RatingsTests
{
    [Fact]
    public void Two_speeds_pair_with_power_and_amps() =>
        Rows("voltage=115 V; power=3/4-1/3 hp; speed=1725/1140 rpm; fullLoadAmps=5.4/2.8 A; frequency=60 Hz")
            .ShouldBe(["115 V | 60 Hz | 3/4 hp | 1725 rpm | 5.4 A", "115 V | 60 Hz | 1/3 hp | 1140 rpm | 2.8 A"]);

    [Fact]
    public void Amps_beside_two_taps_pair_with_the_taps() =>
        Rows("voltage=115/230 V; power=1/3 hp; fullLoadAmps=4.2/2.1 A").ShouldBe(["115 V |  | 1/3 hp |  | 4.2 A", "230 V |  | 1/3 hp |  | 2.1 A"]);

    [Theory]
    [InlineData("fullLoadAmps=3.9-3.7 A")]
    [InlineData("fullLoadAmps=3.9/3.7 A")]
    public void Two_amps_beside_one_span_are_its_ends(string amps) => Rows($"voltage=208-230 V; {amps}").ShouldBe(["208-230 V |  |  |  | 3.9-3.7 A"]);

    [Theory]
    [InlineData("7.4/3.9-3.7 A")]
    [InlineData("7.4/3.9/3.7 A")]
    public void Amps_beside_a_tap_and_a_span_are_one_and_two(string amps) =>
        Rows($"voltage=115/208-230 V; fullLoadAmps={amps}").ShouldBe(["115 V |  |  |  | 7.4 A", "208-230 V |  |  |  | 3.9-3.7 A"]);

    [Fact]
    public void Every_tap_has_every_speed() =>
        Rows("voltage=115/230 V; speed=1075/900 rpm; fullLoadAmps=4.2/2.1 A; frequency=60 Hz").ShouldBe(
        [
            "115 V | 60 Hz |  | 1075 rpm | 4.2 A", "115 V | 60 Hz |  | 900 rpm | 4.2 A",
            "230 V | 60 Hz |  | 1075 rpm | 2.1 A", "230 V | 60 Hz |  | 900 rpm | 2.1 A",
        ]);

    [Fact]
    public void Amps_that_do_not_halve_at_twice_the_volts_go_with_the_speeds() =>
        Rows("voltage=115/230 V; speed=1075/900 rpm; fullLoadAmps=4.2/3.5 A").Where(row => row.EndsWith("3.5 A", StringComparison.Ordinal)).ShouldAllBe(row => row.Contains("900"));

    [Fact]
    public void Amps_for_every_tap_and_speed_stand_tap_by_tap() =>
        Rows("voltage=115/230 V; speed=1075/900 rpm; fullLoadAmps=4.2/3.4/2.1/1.7 A")[2].ShouldBe("230 V |  |  | 1075 rpm | 2.1 A");

    [Fact]
    public void Frequencies_pair_with_speeds_and_powers_that_step_as_they_do()
    {
        Rows("frequency=50/60 Hz; speed=1425/1725 rpm; power=0.37/0.44 kW").ShouldBe([" | 50 Hz | 0.37 kW | 1425 rpm | ", " | 60 Hz | 0.44 kW | 1725 rpm | "]);
        Rows("frequency=50/60 Hz; speed=1075/900 rpm").ShouldBe([" | 50/60 Hz |  | 1075 rpm | ", " | 50/60 Hz |  | 900 rpm | "]);
    }

    // 340 over 290 W is 1.17, 60 over 50 Hz 1.2. Six speeds are rated at two frequencies, two speeds have a power each.
    [Theory]
    [InlineData("frequency=50/60 Hz; power=290/340 W; speeds=6", " | 50 Hz | 290 W |  | ")]
    [InlineData("frequency=50/60 Hz; power=290/340 W; speeds=2", " | 50/60 Hz | 290 W |  | ")]
    public void Powers_that_are_as_many_as_the_plate_counts_speeds_are_those_of_its_speeds(string plate, string row) => Rows(plate)[0].ShouldBe(row);

    [Fact]
    public void Powers_that_may_be_of_two_frequencies_are_no_speeds_in_use()
    {
        MotorFamily.Motor.ReadNeed(new(null, Named.Texts("power=290/340 W; speeds=6"), [])).Deductions.ShouldNotContain(one => one.Field == "speedsUsed");
        MotorFamily.Motor.ReadNeed(new(null, Named.Texts("power=290/340 W; speeds=2"), [])).Deductions.ShouldContain(one => one.Field == "speedsUsed");
    }

    [Theory]
    [InlineData("power=3/4-1/2-1/3 hp; speed=1725/1140 rpm", "power")]
    [InlineData("voltage=115/230 V; fullLoadAmps=1/2/3 A", "fullLoadAmps")]
    [InlineData("voltage=230 V; lockedRotorAmps=9/10 A", "lockedRotorAmps")]
    public void Counts_that_pair_with_nothing_are_reported_and_give_no_figure(string plate, string field)
    {
        var ratings = Ratings.Of(Read(plate));
        ratings.Unpaired.ShouldBe([field]);
        ratings.Rows.ShouldAllBe(row => !row.Power.HasValue && !row.FullLoadAmps.HasValue && !row.LockedRotorAmps.HasValue);
    }

    [Fact]
    public void An_empty_plate_has_one_row_of_unknowns() => Rows(string.Empty).ShouldBe([" |  |  |  | "]);

    private static MotorSpec Read(string plate) => Named.Record<MotorSpec>(plate);

    private static List<string> Rows(string plate) => [.. Ratings.Of(Read(plate)).Rows.Select(row => string.Join(" | ",
        row.Volts is { } volts ? Deducing.Text(new Figures<Spread<UnitsNet.ElectricPotential>>(volts)) : string.Empty,
        row.Frequencies.Count > 0 ? Deducing.Text(new Figures<UnitsNet.Frequency>(row.Frequencies)) : string.Empty,
        row.Power is { } power ? Deducing.Text(power) : string.Empty,
        row.Speed is { } speed ? Deducing.Text(speed) : string.Empty,
        row.FullLoadAmps is { } amps ? Deducing.Text(new Figures<Spread<UnitsNet.ElectricCurrent>>(amps)) : string.Empty))];
}
