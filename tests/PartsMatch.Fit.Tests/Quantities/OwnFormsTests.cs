using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Quantities;

/// <summary>Quantities with a meaning of their own: flow coefficients, pressure differences, cooling loads, lists of refrigerants.</summary>
public sealed class OwnFormsTests
{
    /// <summary>Cv 1 is Kv 0.865 (published: Kv = 0.865 Cv).</summary>
    [Theory]
    [InlineData("1 Cv", 0.865)]
    [InlineData("Cv 1", 0.865)]
    [InlineData("CV1.2", 1.038)]
    [InlineData("1 Kv", 1)]
    [InlineData("Kvs 0.8", 0.8)]
    [InlineData("0.8 m³/h", 0.8)]
    public void A_flow_coefficient_is_read_either_way_round(string text, double kv) => FlowCoefficient.Form.Read(text).Value.Kv.ShouldBe(kv, 0.0005);

    [Theory]
    [InlineData("1.2")]
    [InlineData("Cv")]
    [InlineData("Cv 1.2 Kv")]
    [InlineData("0 Kv")]
    [InlineData("5000 Kv")]
    public void A_flow_coefficient_needs_its_sign_and_a_size_that_can_be(string text) => FlowCoefficient.Form.Read(text).IsRead.ShouldBeFalse();

    [Fact]
    public void A_flow_coefficient_is_written_in_the_units_that_are_chosen()
    {
        var one = FlowCoefficient.Form.Read("1 Kv").Value;
        FlowCoefficient.Form.Write(one).ShouldBe("1 Kv");
        FlowCoefficient.Form.Write(one, Units.Us).ShouldBe("1.1561 Cv");
        FlowCoefficient.Form.Write(one, Units.Si).ShouldBe("1 Kv");
    }

    /// <summary>1 ton is 12 000 Btu/h, 3.51685 kW (published).</summary>
    [Theory]
    [InlineData("1 ton", 3516.85)]
    [InlineData("12000 Btu/h", 3516.85)]
    [InlineData("3.51685 kW", 3516.85)]
    [InlineData("1/2 ton", 1758.43)]
    public void A_cooling_load_is_read_in_tons_btu_and_kilowatts(string text, double watts) => CoolingLoad.Form.Read(text).Value.Watts.ShouldBe(watts, 0.1);

    [Theory]
    [InlineData("300 psi", 2068.4)]
    [InlineData("21 bar", 2100)]
    [InlineData("0 psi", 0)]
    public void A_pressure_difference_is_read(string text, double kilopascals) => PressureDifference.Form.Read(text).Value.Value.Kilopascals.ShouldBe(kilopascals, 0.05);

    [Fact]
    public void A_pressure_difference_is_never_negative() => PressureDifference.Form.Read("-3 psi").IsRead.ShouldBeFalse();

    [Fact]
    public void A_list_of_refrigerants_has_each_once_by_rising_number_and_refuses_what_it_does_not_know()
    {
        RefrigerantList.Form.Write(RefrigerantList.Form.Read("R507A, 404a; propane/R-404A").Value!).ShouldBe("R-290, R-404A, R-507A");
        RefrigerantList.Form.Read("R-404A, R-404").Wrong!.ShouldContain("“R-404”");
    }
}
