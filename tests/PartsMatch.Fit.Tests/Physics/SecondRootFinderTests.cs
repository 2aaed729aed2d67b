using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using MathNet.Numerics.RootFinding;
using PartsMatch.Fit.Physics;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Physics;

/// <summary>The same roots by a second program: Brent's method of MathNet.Numerics.</summary>
public sealed class SecondRootFinderTests
{
    [Property]
    public Property A_second_root_finder_puts_the_pressure_at_the_same_temperature() => Prop.ForAll(
        Gen.Elements(Refrigerants.All.Where(one => one.HasCurve).ToArray()).Zip(Gen.Choose(1, 9999)).ToArbitrary(),
        pair =>
        {
            var (one, share) = (pair.Item1, pair.Item2 / 10_000.0);
            var (least, most) = (one.LeastTemperature!.Value.Kelvins, one.MostTemperature!.Value.Kelvins);
            double Bubble(double kelvin) => Math.Log(one.BubblePressure(Temperature.FromKelvins(kelvin))!.Value.Pascals);
            double Dew(double kelvin) => Math.Log(one.DewPressure(Temperature.FromKelvins(kelvin))!.Value.Pascals);

            // Any pressure between the ends, by its logarithm: evenly spread over vacuum and high side.
            var (bubbleAt, dewAt) = (Between(Bubble(least), Bubble(most), share), Between(Dew(least), Dew(most), share));
            one.BubbleTemperature(Pressure.FromPascals(Math.Exp(bubbleAt)))!.Value.Kelvins.ShouldBe(Brent.FindRoot(kelvin => Bubble(kelvin) - bubbleAt, least, most, 1e-9, 1000), 1e-5);
            one.DewTemperature(Pressure.FromPascals(Math.Exp(dewAt)))!.Value.Kelvins.ShouldBe(Brent.FindRoot(kelvin => Dew(kelvin) - dewAt, least, most, 1e-9, 1000), 1e-5);
        });

    // The breakdown slip by root finding instead of the closed form: where Kloss's curve through breakdown passes through the rated point.
    [Property]
    public Property Kloss_is_the_same_with_its_breakdown_slip_found_by_the_second_root_finder() => Prop.ForAll(
        Motors(),
        motor =>
        {
            var line = new TorqueLine(1800, motor.RatedRpm, motor.Torque, motor.Breakdown);
            var breakdownSlip = SlipAtBreakdown(motor);
            foreach (var slip in new[] { 0.01, 0.05, 0.2, 0.5, 1 })
            {
                line.TorqueAt(1800 * (1 - slip)).ShouldBe(Kloss(motor, breakdownSlip, slip), motor.Torque * 1e-6);
            }
        });

    // Only where the fan crosses once between breakdown and synchronous speed, so that Brent's bracket has one root.
    [Property]
    public Property The_second_root_finder_has_the_fan_at_the_same_speed() => Prop.ForAll(
        Motors().Generator.Zip(Gen.Choose(30, 100)).Zip(Gen.Choose(95, 115)).ToArbitrary(),
        one =>
        {
            var (motor, load, volts) = (one.Item1.Item1, one.Item1.Item2 / 100.0, one.Item2 / 100.0);
            var breakdownSlip = SlipAtBreakdown(motor);
            double Surplus(double rpm) => (Kloss(motor, breakdownSlip, 1 - (rpm / 1800)) * volts * volts) - (load * motor.Torque * Math.Pow(rpm / motor.RatedRpm, 2));
            var expected = Brent.FindRoot(Surplus, 1800 * (1 - Math.Min(breakdownSlip, 0.9)), 1800 * (1 - 1e-9), 1e-10, 1000);
            new TorqueLine(1800, motor.RatedRpm, motor.Torque, motor.Breakdown).SpeedOnFan(load * motor.Torque, volts).ShouldBe(expected, 1e-4);
        });

    // Textbook exercise (statement published, result worked by hand): 25 hp at 1750 rpm, 101.77 N·m, starts with 200 %: 203.5 N·m, and on half its volts with 50.9.
    [Fact]
    public void The_textbook_motor_starts_with_50_9_newton_metres_on_half_its_volts()
    {
        var fullLoad = 25 * 746 / (2 * Math.PI * 1750 / 60);
        fullLoad.ShouldBe(101.77, 0.05);
        var breakdown = Brent.FindRoot(ratio => new TorqueLine(1800, 1750, fullLoad, ratio).TorqueAt(0) - (2 * fullLoad), 3, 50, 1e-10, 1000);
        new TorqueLine(1800, 1750, fullLoad, breakdown).TorqueAt(0, 0.5).ShouldBe(50.9, 0.05);
    }

    private static double SlipAtBreakdown((double RatedRpm, double Torque, double Breakdown) motor)
    {
        var rated = 1 - (motor.RatedRpm / 1800);
        return Brent.FindRoot(slip => Kloss(motor, slip, rated) - motor.Torque, rated, rated * 100, 1e-13, 1000);
    }

    private static double Kloss((double RatedRpm, double Torque, double Breakdown) motor, double breakdownSlip, double slip) =>
        2 * motor.Breakdown * motor.Torque / ((slip / breakdownSlip) + (breakdownSlip / slip));

    private static double Between(double low, double high, double share) => low + ((high - low) * share);

    private static Arbitrary<(double RatedRpm, double Torque, double Breakdown)> Motors() =>
        (from slip in Gen.Choose(20, 140)
         from torque in Gen.Choose(1, 5000)
         from breakdown in Gen.Choose(130, 350)
         select (1800 * (1 - (slip / 1000.0)), torque / 100.0, breakdown / 100.0)).ToArbitrary();
}
