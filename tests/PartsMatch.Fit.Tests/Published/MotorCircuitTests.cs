using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Tests.Published;

[Trait("Source", "formula.motorCircuit")]
public sealed class MotorCircuitTests
{
    // Arithmetic on NFPA 70 430.22 and tables 430.248, 430.250: 3/4 hp single-phase and 5 hp three-phase on 230 V.
    [Theory]
    [InlineData(6.9, 8.625)]
    [InlineData(15.2, 19.0)]
    public void Conductors_carry_a_quarter_more_than_the_motor(double fullLoad, double amps) => MotorCircuit.ConductorAmps(fullLoad).ShouldBe(amps, 1e-9);

    // Arithmetic on NFPA 70 430.24 (from memory): 1.25 × 15.2 + 6.9 + 6.9.
    [Fact]
    public void Several_motors_add_with_a_quarter_of_the_largest() => MotorCircuit.ConductorAmps([6.9, 15.2, 6.9]).ShouldBe(32.8, 1e-9);

    // Arithmetic on NFPA 70 430.32(A)(1): 1.8 A × 1.25 and × 1.15; both edges.
    [Theory]
    [InlineData(1.15, null, 2.25)]
    [InlineData(1.14, null, 2.07)]
    [InlineData(1.0, null, 2.07)]
    [InlineData(null, null, 2.07)]
    [InlineData(1.0, 40.0, 2.25)]
    [InlineData(1.0, 41.0, 2.07)]
    public void An_overload_device_is_set_by_service_factor_and_rise(double? serviceFactor, double? rise, double amps) =>
        MotorCircuit.OverloadAmps(1.8, serviceFactor, rise).ShouldBe(amps, 1e-9);

    [Fact]
    public void Currents_that_cannot_be_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => MotorCircuit.ConductorAmps(0));
        Should.Throw<ArgumentOutOfRangeException>(() => MotorCircuit.ConductorAmps([5, -1]));
        Should.Throw<ArgumentOutOfRangeException>(() => MotorCircuit.OverloadAmps(0, 1.15, null));
    }
}
