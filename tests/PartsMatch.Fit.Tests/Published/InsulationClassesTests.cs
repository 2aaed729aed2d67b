using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Tests.Published;

[Trait("Source", "insulation.csv")]
public sealed class InsulationClassesTests
{
    [Theory]

    // Published: IEC 60085 limits and NEMA MG 1 12.42.1 rises, retyped from an electrical handbook's page.
    [InlineData(InsulationClass.A, 105, 60.0)]
    [InlineData(InsulationClass.E, 120, null)]
    [InlineData(InsulationClass.B, 130, 80.0)]
    [InlineData(InsulationClass.F, 155, 105.0)]
    [InlineData(InsulationClass.H, 180, 125.0)]
    public void Limits_and_rises_are_those_of_the_handbook(InsulationClass insulation, double limit, double? rise)
    {
        var row = InsulationClasses.Of(insulation);
        row.Limit.DegreesCelsius.ShouldBe(limit, 1e-9);
        row.Rise?.Kelvins.ShouldBe(rise!.Value, 1e-9);
        (row.Rise is null).ShouldBe(rise is null);
    }

    [Fact]
    public void A_rise_over_40_degrees_stays_under_the_limit() =>
        InsulationClasses.All.Where(row => row.Rise is not null).ShouldAllBe(row => 40 + row.Rise!.Value.Kelvins <= row.Limit.DegreesCelsius);

    [Fact]
    public void A_marked_service_factor_allows_ten_kelvins_more() =>
        InsulationClasses.All.Where(row => row.RiseWithServiceFactor is not null).ShouldAllBe(row => row.RiseWithServiceFactor!.Value.Kelvins - row.Rise!.Value.Kelvins == 10);
}
