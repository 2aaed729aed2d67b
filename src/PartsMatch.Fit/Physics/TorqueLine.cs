namespace PartsMatch.Fit.Physics;

/// <summary>An induction motor's torque against its speed: Kloss's curve put through the rated point.</summary>
/// <remarks>
/// T / T_breakdown = 2 / (s/s_b + s_b/s), s the slip. Anchored at the rated point and not at breakdown, since with real stator resistance a curve
/// anchored at breakdown is 14 to 21 % low where motors run (worked from Chapman's wound-rotor example). Torque goes with the square of the volts
/// at the same slip (NEMA MG 1 12.44.2); the slip at breakdown does not change with them.
/// </remarks>
public readonly record struct TorqueLine
{
    private readonly double breakdownTorque;
    private readonly double breakdownSlip;

    /// <summary>A curve through a rated point.</summary>
    /// <param name="synchronousRpm">120 f / p, in rpm; above the rated speed.</param>
    /// <param name="ratedRpm">Full-load speed, in rpm; above 0.</param>
    /// <param name="ratedTorque">Full-load torque in any unit, or 1 for torque as a share of the rated.</param>
    /// <param name="breakdownRatio">Breakdown over rated torque; at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of its range: callers check plates before they compute.</exception>
    public TorqueLine(double synchronousRpm, double ratedRpm, double ratedTorque, double breakdownRatio)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ratedRpm);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(synchronousRpm, ratedRpm);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ratedTorque);
        ArgumentOutOfRangeException.ThrowIfLessThan(breakdownRatio, 1);
        SynchronousRpm = synchronousRpm;
        RatedRpm = ratedRpm;
        breakdownTorque = ratedTorque * breakdownRatio;

        // The rated slip solves 1/ratio = 2 / (s/s_b + s_b/s); of its two roots the one with s below s_b is the running one.
        breakdownSlip = SlipAt(ratedRpm) * (breakdownRatio + Math.Sqrt((breakdownRatio * breakdownRatio) - 1));
    }

    /// <summary>Synchronous speed, rpm.</summary>
    public double SynchronousRpm { get; }

    /// <summary>Full-load speed, rpm.</summary>
    public double RatedRpm { get; }

    /// <summary>Speed at which it gives its most torque, rpm; 0 where it does so standing.</summary>
    public double BreakdownRpm => SynchronousRpm * Math.Max(0, 1 - breakdownSlip);

    /// <summary>Torque at a speed.</summary>
    /// <param name="rpm">From 0 (locked) to synchronous; above it the motor gives none.</param>
    /// <param name="voltsRatio">Volts at its terminals over rated volts of the tap in use.</param>
    public double TorqueAt(double rpm, double voltsRatio = 1)
    {
        var slip = SlipAt(rpm);
        return slip <= 0 ? 0 : breakdownTorque * voltsRatio * voltsRatio * 2 / ((slip / breakdownSlip) + (breakdownSlip / slip));
    }

    /// <summary>The speed at which it runs a fan: the highest at which its torque meets k·n².</summary>
    /// <param name="fanTorqueAtRatedRpm">The fan's torque at this motor's rated speed, in the unit of the rated torque; above 0.</param>
    /// <param name="voltsRatio">Volts over rated volts; above 0.</param>
    /// <returns>The speed in rpm: there always is one, since a standing fan asks for no torque and a motor at synchronous speed gives none.</returns>
    public double SpeedOnFan(double fanTorqueAtRatedRpm, double voltsRatio)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(fanTorqueAtRatedRpm);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(voltsRatio);
        var (load, most) = (fanTorqueAtRatedRpm / (RatedRpm * RatedRpm), breakdownTorque * voltsRatio * voltsRatio);
        return HasTorqueOver(BreakdownRpm, load, most) ? RunningOnFan(load, most) : StalledOnFan(load, most);
    }

    /// <summary>
    /// From breakdown up the torque only falls and the fan's only grows: one crossing lies there. Kloss's curve is concave up to √3 times the slip at breakdown, and so is what is over:
    /// from synchronous speed Newton's steps only come down to the crossing, and end where they come down no more.
    /// </summary>
    private double RunningOnFan(double load, double most)
    {
        for (var rpm = SynchronousRpm; ;)
        {
            var slip = SlipAt(rpm);
            var (square, breakdownSquare) = (slip * slip, breakdownSlip * breakdownSlip);
            var torqueOfSlip = 2 * most * breakdownSlip / (square + breakdownSquare);
            var over = (torqueOfSlip * slip) - (load * rpm * rpm);
            var fall = (torqueOfSlip * (breakdownSquare - square) / (square + breakdownSquare) / SynchronousRpm) + (2 * load * rpm);
            var next = rpm + (over / fall);
            if (!(next < rpm)) return rpm;
            rpm = next;
        }
    }

    /// <summary>With no torque over at breakdown: down to the first speed at which it has some.</summary>
    private double StalledOnFan(double load, double most)
    {
        const int Steps = 200;
        var (low, high) = (BreakdownRpm, SynchronousRpm);
        for (var step = 1; step <= Steps && !HasTorqueOver(low, load, most); step++)
        {
            high = low;
            low = BreakdownRpm * (Steps - step) / Steps;
        }

        for (var halving = 0; halving < 60; halving++)
        {
            var middle = (low + high) / 2;
            if (HasTorqueOver(middle, load, most)) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Whether its torque is at least the fan's.</summary>
    private bool HasTorqueOver(double rpm, double load, double most)
    {
        var slip = SlipAt(rpm);
        return 2 * most * slip * breakdownSlip >= load * rpm * rpm * ((slip * slip) + (breakdownSlip * breakdownSlip));
    }

    private double SlipAt(double rpm) => (SynchronousRpm - rpm) / SynchronousRpm;
}
