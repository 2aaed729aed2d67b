using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Tests.Published;

[Trait("Source", "nec-430-248.csv")]
[Trait("Source", "nec-430-250.csv")]
public sealed class FullLoadCurrentsTests
{
    [Theory]

    // Retyped from a second copy of NFPA 70 tables 430.248 and 430.250 (public pages).
    [InlineData(Phases.Single, 0.25, 115, 5.8)]
    [InlineData(Phases.Single, 0.75, 230, 6.9)]
    [InlineData(Phases.Single, 10, 208, 55)]
    [InlineData(Phases.Three, 0.5, 575, 0.9)]
    [InlineData(Phases.Three, 1.5, 575, 2.4)]
    [InlineData(Phases.Three, 5, 230, 15.2)]
    public void Currents_are_those_of_a_second_copy(Phases phases, double horsepower, double volts, double amps) =>
        FullLoadCurrents.All.Single(cell => cell.Phases == phases && cell.Volts.Volts == volts && Math.Abs(((double)cell.Power.Watts / 746) - horsepower) < 1e-9)
            .Amps.Amperes.ShouldBe(amps, 1e-9);

    [Fact]
    public void The_200_and_208_volt_columns_are_115_and_110_percent_of_the_230_volt_column()
    {
        // Published arithmetic of the tables, within their rounding: half of the last printed digit.
        var rows = FullLoadCurrents.All.GroupBy(cell => (cell.Phases, Watts: (double)cell.Power.Watts)).ToList();
        rows.Count.ShouldBe(24);
        foreach (var row in rows)
        {
            double At(double volts) => row.Single(cell => cell.Volts.Volts == volts).Amps.Amperes;
            At(208).ShouldBe(At(230) * 1.10, 0.051, row.Key.ToString());
            At(200).ShouldBe(At(230) * 1.15, 0.051, row.Key.ToString());
        }
    }

    [Fact]
    public void Half_the_volts_take_twice_the_amps_in_the_three_phase_table()
    {
        foreach (var row in FullLoadCurrents.All.Where(cell => cell.Phases == Phases.Three).GroupBy(cell => (double)cell.Power.Watts))
        {
            double At(double volts) => row.Single(cell => cell.Volts.Volts == volts).Amps.Amperes;
            At(460).ShouldBe(At(230) / 2, 1e-9);
        }
    }
}
