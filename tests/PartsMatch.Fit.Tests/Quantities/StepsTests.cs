using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Quantities;

/// <summary>How far apart two values of a field lie: a quarter more is a step (practice), worked by hand.</summary>
public sealed class StepsTests
{
    [Theory]
    [InlineData(100, 100, 0)]
    [InlineData(100, 125, 1)]
    [InlineData(100, 80, 1)]
    [InlineData(100, 400, 1)]
    [InlineData(1075, 1100, 0.1030)] // ln(1100/1075) / ln 1.25 = 0.022990 / 0.223144
    public void A_quarter_more_or_a_fifth_less_is_another_thing_and_what_lies_between_is_part_of_a_step(double one, double other, double apart) =>
        Apart(one, other).ShouldBe(apart, 1e-4);

    [Theory]
    [InlineData(0, 5)]
    [InlineData(0, 0)]
    public void Nothing_is_a_number_of_steps_from_zero(double one, double other) => Apart(one, other).ShouldBe(1);

    [Fact]
    public void Of_several_figures_that_one_counts_that_lies_furthest_apart()
    {
        Steps.Apart([.. Form("115/230 V")], [.. Form("115/240 V")]).ShouldBe(Math.Log(240.0 / 230) / Math.Log(1.25), 1e-9);
        Steps.Apart([.. Form("115/230 V")], [.. Form("230 V")]).ShouldBe(1);

        static IReadOnlyList<double> Form(string volts) => TextForms.Of<Figures<Spread<ElectricPotential>>>() is var form ? form.StepsOf(form.Read(volts).Value!) : [];
    }

    [Fact]
    public void Half_an_inch_and_as_many_millimetres_are_alike_and_ten_degrees_are_a_step_wherever_they_begin()
    {
        Steps.Apart([.. QuantityForms.Length.StepsOf(Length.FromInches(0.5))], [.. QuantityForms.Length.StepsOf(Length.FromMillimeters(12.7))]).ShouldBe(0, 1e-12);
        foreach (var from in (double[])[-30, 0, 40])
        {
            Steps.Apart([.. QuantityForms.Temperature.StepsOf(Temperature.FromDegreesCelsius(from))], [.. QuantityForms.Temperature.StepsOf(Temperature.FromDegreesCelsius(from + 5))]).ShouldBe(0.5, 1e-9);
        }
    }

    private static double Apart(double one, double other) => Steps.Apart([.. Steps.Of(one)], [.. Steps.Of(other)]);
}
