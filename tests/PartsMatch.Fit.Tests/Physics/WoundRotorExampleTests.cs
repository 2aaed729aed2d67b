using PartsMatch.Fit.Physics;

namespace PartsMatch.Fit.Tests.Physics;

/// <summary>
/// Chapman, Electric Machinery Fundamentals, wound-rotor example: 460 V, 25 hp, 60 Hz, 4 poles, star; R1 0.641, X1 1.106, XM 26.3, R2 0.332, X2 0.464 Ω (inputs published).
/// The exact circuit is solved here, apart from the code under test; the book prints results 1 to 2 % off from its own inputs.
/// </summary>
public sealed class WoundRotorExampleTests
{
    private const double Synchronous = 1800;
    private const double BreakdownSlip = 0.2014;
    private const double BreakdownTorque = 230.8;

    // Computed from the inputs by hand: breakdown 230.8 N·m at slip 0.2014, start 106.6 N·m. Tolerance: the printed digits.
    [Fact]
    public void The_exact_circuit_gives_the_worked_figures()
    {
        ExactTorque(BreakdownSlip).ShouldBe(BreakdownTorque, 0.05);
        ExactTorque(BreakdownSlip + 0.001).ShouldBeLessThan(ExactTorque(BreakdownSlip));
        ExactTorque(BreakdownSlip - 0.001).ShouldBeLessThan(ExactTorque(BreakdownSlip));
        ExactTorque(1).ShouldBe(106.6, 0.05);
    }

    // Worked by hand: Kloss put through breakdown, against the exact circuit at the same slip. Tolerance: the printed digits.
    [Theory]
    [InlineData(0.022, 49.8, 62.8)]
    [InlineData(0.05, 107.9, 125.6)]
    [InlineData(0.10, 183.9, 194.3)]
    [InlineData(1, 89.3, 106.6)]
    public void A_curve_put_through_breakdown_is_low_where_motors_run(double slip, double kloss, double exact)
    {
        // The rated point that lies on the curve through breakdown makes the same curve.
        var rated = 2 * BreakdownTorque / ((0.022 / BreakdownSlip) + (BreakdownSlip / 0.022));
        new TorqueLine(Synchronous, Synchronous * (1 - 0.022), rated, BreakdownTorque / rated).TorqueAt(Synchronous * (1 - slip)).ShouldBe(kloss, 0.06);
        ExactTorque(slip).ShouldBe(exact, 0.06);
    }

    // Why the line goes through the rated point: where fan motors run it then keeps within 2 % of the exact circuit, where the other is 14 to 21 % low.
    [Theory]
    [InlineData(0.015)]
    [InlineData(0.022)]
    [InlineData(0.030)]
    public void A_curve_put_through_the_rated_point_is_right_where_motors_run(double slip)
    {
        var line = new TorqueLine(Synchronous, Synchronous * (1 - 0.022), ExactTorque(0.022), BreakdownTorque / ExactTorque(0.022));
        (line.TorqueAt(Synchronous * (1 - slip)) / ExactTorque(slip)).ShouldBe(1, 0.02);
    }

    private static double ExactTorque(double slip)
    {
        var (stator, magnetising, leakage) = (new System.Numerics.Complex(0.641, 1.106), new System.Numerics.Complex(0, 26.3), 0.464);
        var volts = (460 / Math.Sqrt(3) * magnetising / (stator + magnetising)).Magnitude;
        var source = stator * magnetising / (stator + magnetising);
        var amps = volts / new System.Numerics.Complex(source.Real + (0.332 / slip), source.Imaginary + leakage).Magnitude;
        return 3 * amps * amps * 0.332 / slip / (2 * Math.PI * Synchronous / 60);
    }
}
