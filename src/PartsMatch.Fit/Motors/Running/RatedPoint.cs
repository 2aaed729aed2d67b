using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>A motor's rated point, and the volts that it would get at a site.</summary>
/// <param name="Tap">The tap that the site's volts suit best; null when its volts are unknown.</param>
/// <param name="VoltsRatio">Volts there over the volts it is rated at; 1 when either is unknown. A spanned tap's figures are taken to hold at its high end (practice).</param>
/// <param name="Rpm">Full-load speed, rpm.</param>
/// <param name="SynchronousRpm">Synchronous speed, rpm; null for an electronically commutated motor, which holds its speed by itself.</param>
/// <param name="ShaftWatts">Rated shaft power, W: a band where the plate's power is, or may be, what the motor takes.</param>
/// <param name="Breakdown">Breakdown torque over rated torque.</param>
/// <param name="ServiceFactor">Service factor; 1 when not given.</param>
public sealed record RatedPoint(VoltTap? Tap, double VoltsRatio, double Rpm, double? SynchronousRpm, Band ShaftWatts, Band Breakdown, double ServiceFactor)
{
    /// <summary>The rated points that are possible at a site: one, unless it is unknown whether figures are two speeds or two frequencies.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="need">Plate and site: the old motor's connection counts as well.</param>
    /// <returns>At least one point, or the name of the field that is missing.</returns>
    public static (IReadOnlyList<RatedPoint> Points, string? MissingField) Possible(RunningFacet motor, MotorNeed need)
    {
        if (motor.Rpm.Count == 0) return ([], "speed");
        var hertz = SupplyVolts.HertzOf(need);
        var powers = ShaftWattsOf(motor, hertz);
        if (powers.Count == 0) return ([], "power");
        var isElectronic = motor.Type == MotorType.ElectronicallyCommutated;
        var bands = TypeBands.Likely(motor.Type, motor.Connections.Phases, motor.HasRunCapacitor);
        var choice = TapChoice.Best(motor.Connections.Taps, SupplyVolts.Of(need, motor.Connections.Phases ?? Phases.Single), TapChoice.Old(need));
        var speeds = HighSpeed.At(motor.Rpm, hertz);
        var points = new List<RatedPoint>(speeds.Count * powers.Count);
        foreach (var rpm in speeds.AsSpan())
        {
            Sequence<double> fields = isElectronic ? [double.NaN] : SynchronousSpeeds.Of(motor, rpm, hertz);
            if (fields.Count == 0) return ([], "poles");
            foreach (var synchronous in fields.AsSpan())
            {
                foreach (var watts in powers.AsSpan())
                {
                    points.Add(new(
                        choice?.Tap,
                        choice is { } there ? there.Supply.Volts / there.Tap.High : 1,
                        rpm,
                        isElectronic ? null : synchronous,
                        watts,
                        motor.Breakdown is { } known and >= 1 ? Band.Exactly(known) : bands.Breakdown,
                        motor.ServiceFactor ?? 1));
                }
            }
        }

        return (points, null);
    }

    /// <summary>The same motor on one of its lower speeds.</summary>
    /// <remarks>
    /// A tap keeps the field's speed and slips more; a winding of its own has its own poles. Where the plate does not say which, both are possible. What amps tell of the power is of high speed only.
    /// </remarks>
    /// <param name="motor">The motor.</param>
    /// <param name="lower">The lower speed.</param>
    /// <param name="supplyHertz">The supply's frequency; null when unknown.</param>
    /// <returns>None where its speed or power is not known, or its speed is of no pole count.</returns>
    public IReadOnlyList<RatedPoint> OnLower(RunningFacet motor, LowerSpeed lower, double? supplyHertz)
    {
        if (lower is not { Rpm: > 0 and var rpm, Watts: > 0 and var watts }) return [];
        var slower = this with { Rpm = rpm, ShaftWatts = AtShaft(motor, watts) };
        if (SynchronousRpm is null) return [slower];
        var own = SynchronousSpeeds.HertzAt(motor, Rpm, supplyHertz).Select(hertz => PoleCounts.Fewest(rpm, hertz) is { } poles ? PoleCounts.Synchronous(poles, hertz) : (double?)null);
        IEnumerable<double?> possible = motor.Means switch
        {
            SpeedMeans.TappedWinding => [SynchronousRpm],
            SpeedMeans.SeparateWindings => own,
            _ => [SynchronousRpm, .. own],
        };
        return [.. possible.OfType<double>().Where(synchronous => synchronous > rpm).Distinct().Select(synchronous => slower with { SynchronousRpm = synchronous })];
    }

    /// <summary>The speed at which it runs a fan, rpm.</summary>
    /// <param name="load">The fan's torque at this motor's rated speed over its rated torque; above 0.</param>
    /// <param name="breakdown">One value of its breakdown torque's band.</param>
    public double SpeedOn(double load, double breakdown) => SpeedOn(load, breakdown, LineAt(breakdown));

    /// <summary>How hard a load works it: the greater of torque and power over the rated ones, and the load itself once the motor has fallen through its breakdown torque.</summary>
    /// <remarks>A motor pulled far down gives less than its rated power and is being burnt all the same: the torque tells.</remarks>
    /// <param name="load">The fan's torque at its rated speed over its rated torque.</param>
    /// <param name="rpm">The speed at which it runs that fan.</param>
    /// <param name="breakdown">One value of its breakdown torque's band.</param>
    public double Loading(double load, double rpm, double breakdown) => Loading(load, rpm, breakdown, LineAt(breakdown));

    /// <summary>The load on which it runs at a measured speed; null where the speed tells nothing: at or above synchronous, or of a motor that holds its speed.</summary>
    /// <param name="rpm">The measured speed.</param>
    /// <param name="breakdown">One value of its breakdown torque's band.</param>
    public double? LoadAt(double rpm, double breakdown) =>
        LineAt(breakdown) is { } line && rpm > 0 && rpm < line.SynchronousRpm
            ? line.TorqueAt(rpm, VoltsRatio) * Math.Pow(Rpm / rpm, 2) : null;

    /// <summary>Its torque line for one value of its breakdown torque's band, torque as a share of the rated; null for a motor that holds its speed by itself.</summary>
    internal TorqueLine? LineAt(double breakdown) => SynchronousRpm is { } synchronous ? new(synchronous, Rpm, 1, breakdown) : null;

    /// <summary>The same with its torque line at hand.</summary>
    internal double SpeedOn(double load, double breakdown, TorqueLine? line) =>
        line is { } torque ? torque.SpeedOnFan(load, VoltsRatio)
        : load <= breakdown ? Rpm : Rpm * Math.Sqrt(breakdown / load);

    /// <summary>The same with its torque line at hand.</summary>
    internal double Loading(double load, double rpm, double breakdown, TorqueLine? line)
    {
        var stalls = line is { } torque ? rpm < torque.BreakdownRpm - 1e-6 : load > breakdown;
        var speed = rpm / Rpm;
        return stalls ? load : load * Math.Max(speed * speed, speed * speed * speed);
    }

    /// <summary>The rated shaft powers that are possible at a supply's frequency, W: bands where the plate gives, or may give, what the motor takes, or gives amps alone.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="supplyHertz">The supply's frequency; null when unknown.</param>
    /// <returns>None when nothing tells.</returns>
    public static Sequence<Band> ShaftWattsOf(RunningFacet motor, double? supplyHertz)
    {
        if (motor.Watts.Count == 0) return motor.WattsByAmps is { } byAmps ? [byAmps] : [];
        var powers = HighSpeed.At(motor.Watts, supplyHertz);
        if (powers.Count == 1) return [HighSpeedWatts(motor, powers[0])];
        var possible = new Band[powers.Count];
        for (var power = 0; power < possible.Length; power++) possible[power] = HighSpeedWatts(motor, powers[power]);
        return Sequence.Of<Band>(possible);
    }

    /// <summary>Where power and amps both tell something the truth lies in both; where they share nothing the plate contradicts itself, and its power is taken.</summary>
    private static Band HighSpeedWatts(RunningFacet motor, double watts) =>
        (motor is { Meaning: not PowerMeaning.Output, WattsByAmps: { } byAmps } ? ShaftByAmps.And(byAmps, watts, motor.Meaning, EfficiencyOf(motor)) : null) ?? AtShaft(motor, watts);

    /// <summary>What a power on its plate comes to at the shaft, W: a band where it is, or may be, what the motor takes.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="watts">The power on its plate, W.</param>
    public static Band AtShaft(RunningFacet motor, double watts)
    {
        if (motor.Meaning == PowerMeaning.Output) return Band.Exactly(watts);
        var efficiency = EfficiencyOf(motor);
        return motor.Meaning switch
        {
            PowerMeaning.Input => efficiency * watts,
            _ => new(efficiency.Low * watts, watts),
        };
    }

    private static Band EfficiencyOf(RunningFacet motor) => TypeBands.Likely(motor.Type, motor.Connections.Phases, motor.HasRunCapacitor).Efficiency;
}
