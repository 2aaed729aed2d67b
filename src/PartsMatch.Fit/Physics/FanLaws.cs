namespace PartsMatch.Fit.Physics;

/// <summary>What a change of speed, diameter and air density does to one fan design at the same point of its curve.</summary>
/// <param name="Flow">Volume flow, new over old.</param>
/// <param name="Pressure">Pressure, new over old.</param>
/// <param name="Power">Shaft power, new over old.</param>
/// <param name="Torque">Shaft torque, new over old.</param>
/// <remarks>ASHRAE Handbook, HVAC Systems and Equipment, fan laws; AMCA 201, 203. The fifth power of the diameter follows from flow times pressure.</remarks>
public readonly record struct FanLaws(double Flow, double Pressure, double Power, double Torque)
{
    /// <summary>The ratios for given ratios of speed, diameter and density, all positive.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A ratio is not positive.</exception>
    public static FanLaws Of(double speed, double diameter = 1, double density = 1)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(speed);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(diameter);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(density);
        var flow = speed * Math.Pow(diameter, 3);
        var pressure = speed * speed * diameter * diameter * density;
        return new(flow, pressure, flow * pressure, speed * speed * Math.Pow(diameter, 5) * density);
    }
}
