using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Physics;

/// <summary>
/// Against refrigerants-duty.csv: computed from the full equations of state by a second program at 100 °F liquid and 40, 20 and −20 °F evaporating, none of which is a row of the table that is read between.
/// </summary>
[Trait("Source", "refrigerant-properties.csv")]
public sealed class SaturatedStatesTests
{
    public static TheoryData<string, double> Duties { get; } = [.. RefrigerantFacts.Read("duty").Select(row => (row.Refrigerant, row.Number("evaporating_t_F_dew")))];

    /// <summary>Published digits: densities to five figures, enthalpies to 0.01 kJ/kg; the cubic between rows adds at most 0.05 %.</summary>
    [Theory]
    [MemberData(nameof(Duties))]
    public void Between_the_rows_of_the_table_density_enthalpy_and_flow_agree_with_the_equations_of_state(string name, double evaporatingFahrenheit)
    {
        var fact = RefrigerantFacts.Read("duty").Single(row => row.Refrigerant == name && row.Number("evaporating_t_F_dew") == evaporatingFahrenheit);
        var refrigerant = Refrigerants.Find(name)!;
        var (liquid, evaporating) = (Celsius(fact.Number("liquid_t_F_bubble")), Celsius(evaporatingFahrenheit));
        refrigerant.LiquidDensity(liquid)!.Value.ShouldBe(fact.Number("liquid_density_kg_m3"), 0.0005 * fact.Number("liquid_density_kg_m3"));
        refrigerant.LiquidEnthalpy(liquid)!.Value.ShouldBe(fact.Number("h_liquid_kJ_kg"), 0.06);
        refrigerant.VapourEnthalpy(evaporating)!.Value.ShouldBe(fact.Number("h_vapour_saturated_kJ_kg"), 0.06);

        // 1 ton is 3516.85 W (12 000 Btu/h).
        RefrigerantFlow.KilogramsAnHour(refrigerant, 3516.85, evaporating, liquid)!.Value.ShouldBe(fact.Number("mass_flow_per_ton_kg_h"), 0.001 * fact.Number("mass_flow_per_ton_kg_h"));
    }

    /// <summary>Kv for one ton at 2 and 4 psi, worked in the same second program by the liquid form of IEC 60534-2-1 with 1000 kg/m³ for water.</summary>
    [Theory]
    [MemberData(nameof(Duties))]
    public void The_flow_coefficient_for_a_ton_agrees_with_the_second_programs(string name, double evaporatingFahrenheit)
    {
        var fact = RefrigerantFacts.Read("duty").Single(row => row.Refrigerant == name && row.Number("evaporating_t_F_dew") == evaporatingFahrenheit);
        var flow = fact.Number("liquid_flow_per_ton_m3_h");
        var density = fact.Number("liquid_density_kg_m3");
        ValveFlow.LiquidKv(flow, density, 2 * 6.894757).ShouldBe(fact.Number("Kv_for_1_ton_at_2_psi"), 0.002 * fact.Number("Kv_for_1_ton_at_2_psi"));
        ValveFlow.LiquidKv(flow, density, 4 * 6.894757).ShouldBe(fact.Number("Kv_for_1_ton_at_4_psi"), 0.002 * fact.Number("Kv_for_1_ton_at_4_psi"));
        (FlowCoefficient.CvPerKv * ValveFlow.LiquidKv(flow, density, 2 * 6.894757)).ShouldBe(fact.Number("Cv_for_1_ton_at_2_psi"), 0.002 * fact.Number("Cv_for_1_ton_at_2_psi"));
    }

    [Property]
    public Property Liquid_is_lighter_and_vapour_denser_the_warmer_it_is() => Prop.ForAll(
        (from name in Gen.Elements<string>([.. Refrigerants.All.Where(one => one.HasStates).Select(one => one.Name)])
         from tenths in Gen.Choose(-400, 599)
         select (Refrigerant: Refrigerants.Find(name)!, Celsius: tenths / 10.0)).ToArbitrary(),
        one =>
        {
            one.Refrigerant.LiquidDensity(one.Celsius + 0.1)!.Value.ShouldBeLessThan(one.Refrigerant.LiquidDensity(one.Celsius)!.Value);
            one.Refrigerant.VapourDensity(one.Celsius + 0.1)!.Value.ShouldBeGreaterThan(one.Refrigerant.VapourDensity(one.Celsius)!.Value);
            one.Refrigerant.LiquidEnthalpy(one.Celsius + 0.1)!.Value.ShouldBeGreaterThan(one.Refrigerant.LiquidEnthalpy(one.Celsius)!.Value);
        });

    [Theory]
    [InlineData(-40.1)]
    [InlineData(60.1)]
    [InlineData(double.NaN)]
    public void Outside_the_table_there_is_no_answer(double celsius)
    {
        var refrigerant = Refrigerants.Find("R-404A")!;
        refrigerant.LiquidDensity(celsius).ShouldBeNull();
        refrigerant.VapourDensity(celsius).ShouldBeNull();
        refrigerant.VapourEnthalpy(celsius).ShouldBeNull();
        RefrigerantFlow.KilogramsAnHour(refrigerant, 1000, celsius, 30).ShouldBeNull();
    }

    [Theory]
    [InlineData("R-744")]
    [InlineData("R-717")]
    [InlineData("R-32")]
    [InlineData("R-1234yf")]
    [InlineData("R-454B")]
    [InlineData("R-455A")]
    public void A_refrigerant_without_tables_is_known_by_name_and_has_no_flow(string name)
    {
        var refrigerant = Refrigerants.Find(name)!;
        refrigerant.HasStates.ShouldBeFalse();
        RefrigerantFlow.KilogramsAnHour(refrigerant, 1000, -10, 30).ShouldBeNull();
        RefrigerantFlow.VapourDensity(refrigerant, -10, 0).ShouldBeNull();
    }

    /// <summary>R-134a at 0 °C dew and 20 °C: 13.2 kg/m³ by a property table (from memory).</summary>
    [Fact]
    public void Superheated_vapour_lies_in_a_band_that_is_exact_at_saturation()
    {
        var refrigerant = Refrigerants.Find("R-134a")!;
        var saturated = RefrigerantFlow.VapourDensity(refrigerant, 0, 0)!.Value;
        saturated.IsExact.ShouldBeTrue();
        saturated.Low.ShouldBe(14.428, 0.0005, "R-134a at 0 °C, from the table's own row");
        var band = RefrigerantFlow.VapourDensity(refrigerant, 0, 20)!.Value;
        band.Holds(13.2).ShouldBeTrue();
        RefrigerantFlow.VapourDensity(refrigerant, 0, -1).ShouldBeNull("colder than its dew point it is not vapour alone");
        RefrigerantFlow.VapourDensity(refrigerant, 0, 40.1).ShouldBeNull();
    }

    /// <summary>R-134a at 1.0, 1.2, 1.4 and 1.6 MPa, condensing at 39.37, 46.29, 52.40 and 57.88 °C, by a property table (from memory): the nearer to its critical point, the more it thins.</summary>
    [Theory]
    [InlineData(39.37, 50, 45.88)]
    [InlineData(39.37, 70, 41.22)]
    [InlineData(46.29, 50, 58.14)]
    [InlineData(46.29, 60, 54.34)]
    [InlineData(46.29, 80, 48.71)]
    [InlineData(52.40, 90, 55.79)]
    [InlineData(57.88, 60, 80.83)]
    [InlineData(57.88, 90, 65.72)]
    public void Hot_gas_lies_in_its_band(double dew, double celsius, double density)
    {
        var band = RefrigerantFlow.VapourDensity(Refrigerants.Find("R-134a")!, dew, celsius)!.Value;
        band.Holds(density).ShouldBeTrue(FormattableString.Invariant($"{density} in {band.Low:0.00} to {band.High:0.00} kg/m³"));
    }

    private static double Celsius(double fahrenheit) => (fahrenheit - 32) / 1.8;
}
