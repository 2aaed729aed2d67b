using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Physics;

namespace PartsMatch.Fit.Tests.Physics;

[Trait("Source", "formula.capacitor")]
public sealed class CapacitorFormulaTests
{
    // Published article, worked example: 8.3 A, 240 V, 60 Hz are 91.7 µF. Tolerance: its printed digits.
    [Fact]
    public void The_worked_example_of_8_3_amps_at_240_volts_is_91_7_microfarads() =>
        CapacitorFormula.Microfarads(8.3, 240, 60).ShouldBe(91.7, 0.05);

    // Arithmetic: 10⁶ / (2π·60) and 10⁶ / (2π·50); the trade rounds them to 2652 and 3183.
    [Theory]
    [InlineData(60, 2652.58)]
    [InlineData(50, 3183.10)]
    public void The_trade_s_constant_follows_from_the_frequency(double hertz, double constant) =>
        CapacitorFormula.ConstantAt(hertz).ShouldBe(constant, 0.005);

    // Physics, computed from I = 2πfCV: 5 µF, 370 V, 60 Hz. Tolerance: the printed digits.
    [Fact]
    public void Five_microfarads_take_0_697_amps_at_370_volts() => CapacitorFormula.Amps(5, 370, 60).ShouldBe(0.697, 0.0005);

    // Physics, computed from ½CV² at the peak: 7.5 µF, 440 V. Tolerance: the printed digits.
    [Fact]
    public void Seven_and_a_half_microfarads_hold_1_45_joules_at_440_volts() => CapacitorFormula.Joules(7.5, 440).ShouldBe(1.45, 0.005);

    // Physics: side by side they add; two equal ones in a row give half (published page).
    [Fact]
    public void Capacitors_add_side_by_side_and_halve_in_a_row()
    {
        CapacitorFormula.Parallel(45, 5).ShouldBe(50);
        CapacitorFormula.Series(10, 10).ShouldBe(5, 1e-12);
    }

    [Property]
    public Property What_is_measured_is_what_took_the_current() => Prop.ForAll(
        Gen.Choose(1, 100_000).Zip(Gen.Choose(1, 1000)).Zip(Gen.Elements(50.0, 60.0)).ToArbitrary(),
        one =>
        {
            var (microfarads, volts, hertz) = (one.Item1.Item1 / 100.0, (double)one.Item1.Item2, one.Item2);
            CapacitorFormula.Microfarads(CapacitorFormula.Amps(microfarads, volts, hertz), volts, hertz).ShouldBe(microfarads, microfarads * 1e-12);
        });

    [Property]
    public Property In_a_row_they_hold_less_than_the_least_and_side_by_side_more_than_the_most() => Prop.ForAll(
        Gen.Choose(1, 10_000).Zip(Gen.Choose(1, 10_000)).ToArbitrary(),
        pair =>
        {
            var (one, other) = (pair.Item1 / 100.0, pair.Item2 / 100.0);
            CapacitorFormula.Series(one, other).ShouldBeLessThan(Math.Min(one, other));
            CapacitorFormula.Parallel(one, other).ShouldBeGreaterThan(Math.Max(one, other));
            CapacitorFormula.Series(one, other).ShouldBe(CapacitorFormula.Series(other, one), 1e-12);
        });

    [Theory]
    [InlineData(0, 240, 60)]
    [InlineData(8.3, 0, 60)]
    [InlineData(8.3, 240, 0)]
    [InlineData(8.3, -240, 60)]
    [InlineData(double.NaN, 240, 60)]
    [InlineData(8.3, double.PositiveInfinity, 60)]
    public void What_is_no_number_above_0_is_refused(double amps, double volts, double hertz) =>
        Should.Throw<ArgumentOutOfRangeException>(() => CapacitorFormula.Microfarads(amps, volts, hertz));

    [Fact]
    public void No_capacitor_is_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => CapacitorFormula.Parallel());
        Should.Throw<ArgumentOutOfRangeException>(() => CapacitorFormula.Series());
        Should.Throw<ArgumentOutOfRangeException>(() => CapacitorFormula.Series(5, 0));
    }
}
