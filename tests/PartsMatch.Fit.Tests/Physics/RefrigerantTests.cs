using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Physics;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Physics;

/// <summary>Saturation against tables of a second program, and against itself.</summary>
[Trait("Source", "refrigerants.csv")]
public sealed class RefrigerantTests
{
    /// <summary>What the tables' gauges read zero at, kPa, and kPa a psi (published, NIST SP 811).</summary>
    private const double Atmosphere = 101.325;
    private const double KilopascalsInAPsi = 6.894757293;

    private static readonly Length SeaLevel = Length.Zero;

    public static TheoryData<string> WithCurve => [.. Refrigerants.All.Where(one => one.HasCurve).Select(one => one.Name)];

    // Computed by a second program from the same published equations, 16 points a refrigerant. Tolerance: half of the last printed digit, and a hair for its rounding.
    [Fact]
    public void Bubble_and_dew_pressures_are_those_of_the_check_points()
    {
        var rows = RefrigerantFacts.Read("checkpoints");
        rows.Count.ShouldBe(144);
        foreach (var row in rows)
        {
            var (bubble, dew) = PressuresAt(row, Temperature.FromDegreesFahrenheit(row.Number("t_F")));
            bubble.ShouldBe(row.Number("bubble_kPa_abs"), 0.00051, row.ToString());
            dew.ShouldBe(row.Number("dew_kPa_abs"), 0.00051, row.ToString());
            ((bubble - Atmosphere) / KilopascalsInAPsi).ShouldBe(row.Number("bubble_psig"), 0.00501, row.ToString());
            ((dew - Atmosphere) / KilopascalsInAPsi).ShouldBe(row.Number("dew_psig"), 0.00501, row.ToString());
        }
    }

    // Computed by a second program that solves the full equations of state. Tolerance: 0.03 %, what the short equations promise here, and the printed digit.
    [Fact]
    public void Bubble_and_dew_pressures_keep_within_three_ten_thousandths_of_the_full_equations()
    {
        foreach (var row in RefrigerantFacts.Read("checkpoints"))
        {
            var (bubble, dew) = PressuresAt(row, Temperature.FromDegreesFahrenheit(row.Number("t_F")));
            bubble.ShouldBe(row.Number("bubble_kPa_abs_full_model"), (row.Number("bubble_kPa_abs_full_model") * 3e-4) + 0.0005, row.ToString());
            dew.ShouldBe(row.Number("dew_kPa_abs_full_model"), (row.Number("dew_kPa_abs_full_model") * 3e-4) + 0.0005, row.ToString());
        }
    }

    [Fact]
    public void Every_ten_degrees_from_minus_40_to_60_the_pressures_are_those_of_the_full_equations()
    {
        var rows = RefrigerantFacts.Read("saturation");
        rows.Count.ShouldBe(99);
        foreach (var row in rows)
        {
            var (bubble, dew) = PressuresAt(row, Temperature.FromDegreesCelsius(row.Number("t_C")));
            bubble.ShouldBe(row.Number("bubble_kPa_abs"), (row.Number("bubble_kPa_abs") * 3e-4) + 0.0005, row.ToString());
            dew.ShouldBe(row.Number("dew_kPa_abs"), (row.Number("dew_kPa_abs") * 3e-4) + 0.0005, row.ToString());
        }
    }

    // Computed by a second program. Tolerance: half of the last printed digit (0.01 K), and a hair for the rounding.
    [Fact]
    public void Gauge_pressures_give_the_temperatures_of_the_inverse_table()
    {
        var rows = RefrigerantFacts.Read("inverse");
        rows.Count.ShouldBe(72);
        foreach (var row in rows)
        {
            var saturation = Find(row.Refrigerant).SaturationAtGauge(Pressure.FromPoundsForcePerSquareInch(row.Number("psig")), SeaLevel)!.Value;
            saturation.Bubble.DegreesCelsius.ShouldBe(row.Number("bubble_C"), 0.0051, row.ToString());
            saturation.Dew.DegreesCelsius.ShouldBe(row.Number("dew_C"), 0.0051, row.ToString());
        }
    }

    // Published anchors: a page computed with another program gives R-404A at 25 °C 12.546 bar and 12.412 bar; R-134a boils at −26.07 °C and R-22 at −40.81 °C under one atmosphere.
    [Fact]
    public void Well_known_points_are_met()
    {
        Find("R-404A").BubblePressure(Temperature.FromDegreesCelsius(25))!.Value.Bars.ShouldBe(12.546, 0.001);
        Find("R-404A").DewPressure(Temperature.FromDegreesCelsius(25))!.Value.Bars.ShouldBe(12.412, 0.001);
        Find("R-134a").BubbleTemperature(Pressure.FromAtmospheres(1))!.Value.DegreesCelsius.ShouldBe(-26.07, 0.01);
        Find("R-22").DewTemperature(Pressure.FromAtmospheres(1))!.Value.DegreesCelsius.ShouldBe(-40.81, 0.01);
    }

    // Worked by hand from the equation: R-134a at 0 °C is 292.81 kPa.
    [Fact]
    public void The_point_worked_by_hand_is_met() => Find("R-134a").BubblePressure(Temperature.FromDegreesCelsius(0))!.Value.Kilopascals.ShouldBe(292.81, 0.005);

    [Property]
    public Property A_temperature_comes_back_from_its_pressure_within_a_hundredth_of_a_kelvin() => Prop.ForAll(
        Anywhere(),
        one =>
        {
            var (refrigerant, temperature) = one;
            refrigerant.BubbleTemperature(refrigerant.BubblePressure(temperature)!.Value)!.Value.Kelvins.ShouldBe(temperature.Kelvins, 0.01);
            refrigerant.DewTemperature(refrigerant.DewPressure(temperature)!.Value)!.Value.Kelvins.ShouldBe(temperature.Kelvins, 0.01);
        });

    [Property]
    public Property Liquid_boils_at_no_less_pressure_than_vapour_condenses_and_warmer_is_always_higher() => Prop.ForAll(
        Anywhere(),
        one =>
        {
            var (refrigerant, temperature) = one;
            var (bubble, dew) = (refrigerant.BubblePressure(temperature)!.Value.Pascals, refrigerant.DewPressure(temperature)!.Value.Pascals);
            bubble.ShouldBeGreaterThanOrEqualTo(dew);
            var warmer = Temperature.FromKelvins(temperature.Kelvins + 0.05);
            if (refrigerant.BubblePressure(warmer) is { } above) above.Pascals.ShouldBeGreaterThan(bubble);
            if (refrigerant.DewPressure(warmer) is { } higher) higher.Pascals.ShouldBeGreaterThan(dew);
        });

    [Theory]
    [MemberData(nameof(WithCurve))]
    public void Nothing_is_extrapolated(string name)
    {
        var refrigerant = Find(name);
        var (least, most) = (refrigerant.LeastTemperature!.Value.Kelvins, refrigerant.MostTemperature!.Value.Kelvins);
        refrigerant.BubblePressure(Temperature.FromKelvins(least))!.Value.Pascals.ShouldBePositive();
        refrigerant.DewPressure(Temperature.FromKelvins(most))!.Value.Pascals.ShouldBePositive();
        refrigerant.BubblePressure(Temperature.FromKelvins(least - 0.01)).ShouldBeNull();
        refrigerant.DewPressure(Temperature.FromKelvins(most + 0.01)).ShouldBeNull();
        refrigerant.BubbleTemperature(Pressure.FromBars(60)).ShouldBeNull();
        refrigerant.DewTemperature(Pressure.FromBars(60)).ShouldBeNull();
        refrigerant.DewTemperature(Pressure.Zero).ShouldBeNull();
        refrigerant.BubbleTemperature(Pressure.FromBars(-1)).ShouldBeNull();
    }

    private static (double Bubble, double Dew) PressuresAt(RefrigerantFact row, Temperature temperature)
    {
        var refrigerant = Find(row.Refrigerant);
        return (refrigerant.BubblePressure(temperature)!.Value.Kilopascals, refrigerant.DewPressure(temperature)!.Value.Kilopascals);
    }

    private static Arbitrary<(Refrigerant, Temperature)> Anywhere() =>
        (from refrigerant in Gen.Elements(Refrigerants.All.Where(one => one.HasCurve).ToArray())
         from share in Gen.Choose(0, 100_000)
         let least = refrigerant.LeastTemperature!.Value.Kelvins
         let span = refrigerant.MostTemperature!.Value.Kelvins - least
         select (refrigerant, Temperature.FromKelvins(least + (span * share / 100_000)))).ToArbitrary();

    private static Refrigerant Find(string name) => Refrigerants.Find(name)!;
}
