using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Motors.Running;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Drawings;

/// <summary>A motor's torque over speed, as it is drawn: in percent of the old motor's rated torque, at the volts that are there.</summary>
/// <param name="Motor">The motor's rated point.</param>
/// <param name="Rated">Its rated torque in percent of the old motor's.</param>
internal sealed record DrawnLine(RatedPoint Motor, Band Rated)
{
    /// <summary>The speed at which it gives nothing any more, rpm.</summary>
    public double TopRpm => Motor.SynchronousRpm ?? Motor.Rpm;

    /// <summary>The curve for the middle of what is only known as a band.</summary>
    /// <param name="rpms">Speeds, rising.</param>
    public IReadOnlyList<Point> Middle(IReadOnlyList<double> rpms) => Through(rpms, rpm => Rated.Middle * Share(rpm, Motor.Breakdown.Middle));

    /// <summary>Where the curve may lie; null when everything is known.</summary>
    /// <param name="label">What the area comes from.</param>
    /// <param name="role">What the curve stands for.</param>
    /// <param name="rpms">Speeds, rising.</param>
    public Area? Area(string label, Role role, IReadOnlyList<double> rpms)
    {
        if (Motor.Breakdown.Ends.Count == 1 && Rated.Ends.Count == 1) return null;
        return new(label, role, Through(rpms, rpm => Corners(rpm).Min()), Through(rpms, rpm => Corners(rpm).Max()));
    }

    private IEnumerable<double> Corners(double rpm) => Rated.Ends.SelectMany(rated => Motor.Breakdown.Ends.Select(breakdown => rated * Share(rpm, breakdown)));

    /// <summary>An electronically commutated motor holds its speed: there its line falls straight down.</summary>
    private List<Point> Through(IReadOnlyList<double> rpms, Func<double, double> torque)
    {
        List<Point> points = [.. rpms.Where(rpm => rpm <= TopRpm).Select(rpm => new Point(rpm, torque(rpm)))];
        if (Motor.SynchronousRpm is null) points.Add(new(Motor.Rpm, 0));
        return points;
    }

    /// <summary>Its torque over its rated torque.</summary>
    private double Share(double rpm, double breakdown) =>
        Motor.LoadAt(rpm, breakdown) is { } load ? load * Math.Pow(rpm / Motor.Rpm, 2)
        : Motor.SynchronousRpm is null ? breakdown : 0;
}
