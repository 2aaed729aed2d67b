using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Motors.Running;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Drawings;

/// <summary>The fan's torque over the speed of the motor's shaft, as it is drawn: in percent of the old motor's rated torque.</summary>
/// <param name="OldRated">The old motor's rated point.</param>
/// <param name="Load">Its torque at the old motor's rated speed, in percent.</param>
/// <param name="Middle">The value that is drawn as a line.</param>
internal sealed record FanCurve(RatedPoint OldRated, Band Load, double Middle)
{
    /// <summary>The fan as the old motor had it.</summary>
    public static FanCurve Old(OnTheFan run)
    {
        var curve = new FanCurve(run.Old, default, 100 * run.Fan.LoadAt(run.Old.Breakdown.Middle).Middle);
        return curve with { Load = run.Over(one => curve.LoadOf(curve.OldTorque(one), one.OldRpm)) };
    }

    /// <summary>The fan as the new motor will have it: heavier or lighter where blade or sheaves are changed.</summary>
    public static FanCurve New(OnTheFan run, FanCurve old)
    {
        // By how much is the same in every case: a matter of diameters.
        var heavier = run.Over(one => old.LoadOf(old.NewTorque(one), one.NewRpm) / old.LoadOf(old.OldTorque(one), one.OldRpm)).Middle;
        return old with { Load = old.Load * heavier, Middle = old.Middle * heavier };
    }

    /// <summary>The old motor's torque in a case: its share of the rated power, at that speed.</summary>
    public double OldTorque(FanCase one) => 100 * one.OldShare * OldRated.Rpm / one.OldRpm;

    /// <summary>The new motor's torque in a case.</summary>
    public double NewTorque(FanCase one) => OldTorque(one) * (one.NewWatts / one.NewRpm) / (one.OldWatts / one.OldRpm);

    /// <summary>Where a motor's line meets it, both in the middle of what is known.</summary>
    public Point Crossing(DrawnLine line)
    {
        var load = TorqueAt(line.Motor.Rpm, Middle) / line.Rated.Middle;
        var rpm = line.Motor.SpeedOn(load, line.Motor.Breakdown.Middle);
        return new(rpm, TorqueAt(rpm, Middle));
    }

    /// <summary>The curve.</summary>
    public IReadOnlyList<Point> Through(IReadOnlyList<double> rpms, double load) => [.. rpms.Select(rpm => new Point(rpm, TorqueAt(rpm, load)))];

    /// <summary>Where it may lie; null when it is known.</summary>
    public Area? Area(string label, IReadOnlyList<double> rpms) =>
        Load.High - Load.Low < 1e-6 ? null : new(label, Role.Load, Through(rpms, Load.Low), Through(rpms, Load.High));

    private double TorqueAt(double rpm, double load) => load * Math.Pow(rpm / OldRated.Rpm, 2);

    private double LoadOf(double torque, double rpm) => torque * Math.Pow(OldRated.Rpm / rpm, 2);
}
