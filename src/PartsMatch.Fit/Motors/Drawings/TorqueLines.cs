using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Motors.Running;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Drawings;

/// <summary>The torque lines of old and new motor, and where they cross the fan's, which goes with the square of speed.</summary>
/// <remarks>
/// Curves and bands come from <see cref="OnTheFan"/>, as what will differ does. Torque is drawn in percent of the old motor's rated torque: so the old motor's line and the fan's load on it
/// stay free of a doubt about watts, which is none about how they meet.
/// </remarks>
public static class TorqueLines
{
    /// <summary>Speeds at which the curves are computed.</summary>
    private const int Steps = 60;

    /// <summary>As much of the speed as is drawn at most: what lies below 60 % of synchronous says nothing of a running fan.</summary>
    private const double MostDrawn = 0.4;

    /// <summary>At least so much, so that a stiff motor's line is not drawn as a wall.</summary>
    private const double LeastDrawn = 0.15;

    /// <summary>So many times the torque of the higher crossing is drawn at most.</summary>
    private const double MostAbove = 2.2;

    /// <summary>So many times the slip is drawn, so that the crossing lies well inside.</summary>
    private const double Slips = 4;

    /// <summary>The chart; null where speeds cannot be told, or where it is not known which of several rated points is meant: no drawing rather than a false one.</summary>
    public static Chart? Of(MotorNeed need, MotorSpec part)
    {
        if (MotorDifferences.Of(need, part).FirstOrDefault(one => one.Name == "speed") is not { Old: { } oldRpm, New: { } newRpm }) return null;
        if (OnTheFan.Of(need, RunningFacet.Of(part)).Run is not { } run || !IsCertain(need, need.Plate) || !IsCertain(need, part)) return null;
        var old = new DrawnLine(run.Old, Band.Exactly(100));
        var now = new DrawnLine(run.New, run.New.ShaftWatts / run.Old.ShaftWatts * (100 * run.Old.Rpm / run.New.Rpm));
        var fan = FanCurve.Old(run);
        var newFan = FanCurve.New(run, fan);
        var (oldAt, newAt) = (fan.Crossing(old), newFan.Crossing(now));
        var region = Region(old, now, Band.Around(oldRpm.Low, oldRpm.High, newRpm.Low, newRpm.High));
        var rpms = Rpms(region, oldAt.X, newAt.X, run.Old.Rpm, run.New.Rpm);
        var isOneFan = Math.Abs((newFan.Middle / fan.Middle) - 1) < 1e-6;
        var changed = need.Site.BladeStays == false ? "blade" : "sheaves";
        List<Curve> curves =
        [
            new(isOneFan ? "fan" : $"fan, old {changed}", Role.Load, fan.Through(rpms, fan.Middle)),
            new("new motor", Role.New, now.Middle(rpms)),
            new("old motor", Role.Old, old.Middle(rpms)),
        ];
        var (oldTorque, newTorque) = (run.Over(fan.OldTorque), run.Over(fan.NewTorque));
        if (!isOneFan) curves.Insert(1, new($"fan, new {changed}", Role.Load, newFan.Through(rpms, newFan.Middle)));
        List<Area> areas =
        [
            .. new[] { fan.Area($"fan's load: {run.Fan.From}", rpms), isOneFan ? null : newFan.Area($"its load with the new {changed}", rpms) }.OfType<Area>(),
            .. new[] { old.Area($"old motor's breakdown torque: {Times(run.Old)}", Role.Old, rpms), now.Area(NewDoubt(now), Role.New, rpms) }.OfType<Area>(),
        ];
        return new(
            "torqueLines",
            "Where each motor runs the fan",
            FormattableString.Invariant($"Each motor runs where its torque line crosses the fan's: the old one at {oldRpm.ToString("0")} rpm, the new one at {newRpm.ToString("0")} rpm. The fan's load rests on {run.Fan.From}.{(isOneFan ? "" : $" The new {changed} change the fan's line as well.")}"),
            new("Speed", "rpm", region),
            new("Torque", "% of the old motor's rated torque", new(0, Top(curves, areas, region, Math.Max(oldTorque.High, newTorque.High)))),
            areas,
            curves,
            [
                new(FormattableString.Invariant($"old motor: {oldRpm.ToString("0")} rpm"), Role.Old, oldAt, oldRpm, oldTorque),
                new(FormattableString.Invariant($"new motor: {newRpm.ToString("0")} rpm"), Role.New, newAt, newRpm, newTorque),
            ]);
    }

    private static bool IsCertain(MotorNeed need, MotorSpec motor) => RatedPoint.Possible(RunningFacet.Of(motor), need).Points.Count == 1;

    private static string Times(RatedPoint motor) => FormattableString.Invariant($"{motor.Breakdown.ToString("0.##")} times the rated");

    private static string NewDoubt(DrawnLine line) =>
        line.Rated.Ends.Count == 1 ? $"new motor's breakdown torque: {Times(line.Motor)}"
        : line.Motor.Breakdown.Ends.Count == 1 ? "new motor's power, as far as it is known" : "new motor's power and breakdown torque, as far as known";

    private static Band Region(DrawnLine old, DrawnLine now, Band running)
    {
        var top = Math.Max(old.TopRpm, now.TopRpm) * (old.Motor.SynchronousRpm is null && now.Motor.SynchronousRpm is null ? 1.05 : 1);
        var slip = Math.Max(top - running.Low, top - Math.Min(old.Motor.Rpm, now.Motor.Rpm));
        var usual = Math.Clamp(Slips * slip, LeastDrawn * top, MostDrawn * top);
        return new(Math.Min(top - usual, 0.97 * running.Low), Math.Max(top, 1.02 * running.High));
    }

    private static List<double> Rpms(Band region, params double[] besides) =>
        [.. Enumerable.Range(0, Steps + 1).Select(step => region.Low + ((region.High - region.Low) * step / Steps)).Concat(besides.Where(region.Holds)).Distinct().Order()];

    /// <summary>What lies far above both crossings would only press them to the ground, and is cut off.</summary>
    private static double Top(IEnumerable<Curve> curves, IEnumerable<Area> areas, Band region, double crossing) =>
        Math.Min(MostAbove * crossing, 1.05 * curves.SelectMany(curve => curve.Points).Concat(areas.SelectMany(area => area.Upper)).Where(point => region.Holds(point.X)).Max(point => point.Y));
}
