using PartsMatch.Fit.Physics;

namespace PartsMatch.Fit.Tests.Physics;

/// <summary>Fan laws, air and condenser against handbook examples.</summary>
[Trait("Source", "reading.addedRise")]
[Trait("Source", "formula.fanLaws")]
[Trait("Source", "formula.air")]
[Trait("Source", "formula.unbalance")]
public sealed class AirAndFanTests
{
    // Inputs: Fox, McDonald and Pritchard, Introduction to Fluid Mechanics, Example 10.11 (published as a companion data file): 36 in, 600 rpm, 0.075 lb/ft³
    // to 42 in, 1150 rpm, 0.045 lb/ft³. Factors worked by hand: flow 3.0436, pressure 3.0001, power 9.1311.
    [Fact]
    public void A_fan_scaled_in_size_speed_and_density_follows_the_textbook()
    {
        var laws = FanLaws.Of(1150.0 / 600, 42.0 / 36, 0.045 / 0.075);
        laws.Flow.ShouldBe(3.0436, 5e-5);
        laws.Pressure.ShouldBe(3.0001, 5e-5);
        laws.Power.ShouldBe(9.1311, 5e-5);
        (40_000 * laws.Flow).ShouldBe(121_744, 1);
        (23.1 * laws.Power).ShouldBe(210.9, 0.05);
    }

    // The same example's seven points of the fan's curve: cfm, inches of water, hp. Tolerance: half of the last printed digit of the result.
    [Theory]
    [InlineData(0, 3.68, 11.1, 0, 11.04, 101.4)]
    [InlineData(10_000, 3.75, 15.1, 30_436, 11.25, 137.9)]
    [InlineData(20_000, 3.50, 18.6, 60_872, 10.50, 169.8)]
    [InlineData(30_000, 2.96, 21.4, 91_308, 8.88, 195.4)]
    [InlineData(40_000, 2.12, 23.1, 121_744, 6.36, 210.9)]
    [InlineData(50_000, 1.02, 23.1, 152_180, 3.06, 210.9)]
    [InlineData(60_000, 0, 21.0, 182_616, 0, 191.8)]
    public void Every_point_of_the_textbooks_curve_moves_with_the_laws(double flow, double pressure, double power, double newFlow, double newPressure, double newPower)
    {
        var laws = FanLaws.Of(1150.0 / 600, 42.0 / 36, 0.045 / 0.075);
        (flow * laws.Flow).ShouldBe(newFlow, 2);
        (pressure * laws.Pressure).ShouldBe(newPressure, 0.005);
        (power * laws.Power).ShouldBe(newPower, 0.06);
    }

    // Published page: a 50 hp fan slowed by a tenth takes 0.729 of it, 36.45 hp (the page rounds to 37); a tenth more flow takes a third more power.
    [Fact]
    public void A_tenth_of_the_speed_is_a_quarter_less_or_a_third_more_power()
    {
        (50 * FanLaws.Of(0.9).Power).ShouldBe(36.45, 1e-9);
        FanLaws.Of(1.1).Power.ShouldBe(1.331, 1e-12);
    }

    // Power is torque times speed, whatever changes (identity).
    [Theory]
    [InlineData(1.2, 1, 1)]
    [InlineData(0.8, 1.1, 0.9)]
    public void Power_goes_with_torque_times_speed(double speed, double diameter, double density)
    {
        var laws = FanLaws.Of(speed, diameter, density);
        laws.Power.ShouldBe(laws.Torque * speed, 1e-12);
    }

    // Worked by hand from the laws: flow, pressure, power.
    [Theory]
    [InlineData(1075, 1140, 1.0605, 1.1246, 1.1926)]
    [InlineData(1075, 825, 0.7674, 0.5890, 0.4520)]
    [InlineData(1725, 1140, 0.6609, 0.4367, 0.2886)]
    [InlineData(1140, 1725, 1.5132, 2.2896, 3.4646)]
    [InlineData(1550, 1625, 1.0484, 1.0991, 1.1523)]
    public void A_change_of_speed_changes_flow_pressure_and_power(double old, double now, double flow, double pressure, double power)
    {
        var laws = FanLaws.Of(now / old);
        laws.Flow.ShouldBe(flow, 5e-5);
        laws.Pressure.ShouldBe(pressure, 5e-5);
        laws.Power.ShouldBe(power, 5e-5);
        laws.Torque.ShouldBe(laws.Pressure, 1e-12);
    }

    // 50/60 Hz: 0.833 of the air with 0.579 of the power, 1.2, 1.44 and 1.728 the other way (arithmetic).
    [Fact]
    public void A_60_Hz_fan_on_50_Hz_moves_five_sixths_of_the_air()
    {
        FanLaws.Of(50.0 / 60).Power.ShouldBe(0.579, 5e-4);
        FanLaws.Of(60.0 / 50).Power.ShouldBe(1.728, 1e-12);
    }

    // 70 °F to −10 °F at the same pressure: 529.67 / 449.67 = 1.178 (arithmetic on absolute temperatures). Standard air: 1.225 kg/m³ at 15 °C (ISO 2533, published).
    [Fact]
    public void Cold_air_is_denser_by_the_ratio_of_absolute_temperatures()
    {
        Air.Density(15).ShouldBe(1.225, 5e-4);
        (Air.Density((-10 - 32) / 1.8) / Air.Density((70 - 32) / 1.8)).ShouldBe(529.67 / 449.67, 1e-9);
    }

    // ICAO standard atmosphere, ISO 2533 (published): 89 875 Pa at 1000 m, 70 109 Pa at 3000 m.
    [Theory]
    [InlineData(0, 101_325)]
    [InlineData(1000, 89_875)]
    [InlineData(3000, 70_109)]
    public void Pressure_falls_with_altitude_as_in_the_standard_atmosphere(double metres, double pascal) => Air.Pressure(metres).ShouldBe(pascal, 5);

    // Worked by hand: effectiveness 0.6, exponent 0.5, two of three fans left: split × 1.334.
    [Fact]
    public void One_dead_fan_of_three_raises_the_split_by_a_third()
    {
        CondenserSplit.AirflowLeft(3, 1).ShouldBe(2.0 / 3, 1e-12);
        CondenserSplit.Ratio(2.0 / 3, 0.6, 0.5).ShouldBe(1.334, 5e-4);
        CondenserSplit.Ratio(1, 0.6, 0.5).ShouldBe(1, 1e-12);
    }

    [Fact]
    public void Less_air_always_means_a_larger_split_but_never_more_than_in_proportion()
    {
        for (var airflow = 0.05; airflow < 1; airflow += 0.05)
        {
            CondenserSplit.Ratio(airflow, 0.6, 0.5).ShouldBeInRange(1, 1 / airflow);
        }
    }

    // The standard's worked example (published): 460, 467, 450 V: 1.96 %. Two further published examples: 2.5 % (2.56, printed cut off) and 0.84 %.
    [Theory]
    [InlineData(460, 467, 450, 1.96, 0.005)]
    [InlineData(203, 210, 212, 2.5, 0.07)]
    [InlineData(480, 476, 472, 0.84, 0.005)]
    public void Unbalance_is_the_largest_deviation_from_the_average(double a, double b, double c, double percent, double tolerance) =>
        Unbalance.Percent(a, b, c).ShouldBe(percent, tolerance);

    [Fact]
    public void Two_percent_of_unbalance_adds_about_eight_percent_of_rise() => Unbalance.AddedRisePercent(2).ShouldBe(8);

    [Fact]
    public void Figures_outside_a_formulas_range_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => FanLaws.Of(0));
        Should.Throw<ArgumentOutOfRangeException>(() => Air.Density(500));
        Should.Throw<ArgumentOutOfRangeException>(() => Air.Pressure(20_000));
        (Air.Holds(-500), Air.Holds(11_000), Air.Holds(-501), Air.Holds(11_001), Air.Holds(double.NaN)).ShouldBe((true, true, false, false, false));
        Should.Throw<ArgumentOutOfRangeException>(() => CondenserSplit.Ratio(0, 0.6, 0.5));
        Should.Throw<ArgumentOutOfRangeException>(() => CondenserSplit.Ratio(1, 1, 0.5));
        Should.Throw<ArgumentOutOfRangeException>(() => CondenserSplit.AirflowLeft(3, 3));
        Should.Throw<ArgumentOutOfRangeException>(() => Unbalance.Percent(0, 230, 230));
    }
}
