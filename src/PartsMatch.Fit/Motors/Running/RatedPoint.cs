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
    /// <param name="site">The site.</param>
    /// <param name="oldBetween">What the old motor was connected between; null when unknown.</param>
    /// <returns>At least one point, or the name of the field that is missing.</returns>
    public static (IReadOnlyList<RatedPoint> Points, string? MissingField) Possible(RunningFacet motor, MotorSite site, Between? oldBetween)
    {
        if (motor.Rpm.Count == 0) return ([], "speed");
        var powers = ShaftWattsOf(motor, site.SupplyFrequency?.Hertz);
        if (powers.Count == 0) return ([], "power");
        var hertz = site.SupplyFrequency?.Hertz;
        var bands = TypeBands.Likely(motor.Type, motor.Connections.Phases, motor.HasRunCapacitor);
        var choice = TapChoice.Best(motor.Connections.Taps, SupplyVolts.Of(site, motor.Connections.Phases ?? Phases.Single), oldBetween);
        var points = new List<RatedPoint>();
        foreach (var rpm in HighSpeed.At(motor.Rpm, hertz))
        {
            var isElectronic = motor.Type == MotorType.ElectronicallyCommutated;
            if (SynchronousOf(motor, rpm, hertz) is not { } synchronous && !isElectronic) return ([], "poles");
            else synchronous = SynchronousOf(motor, rpm, hertz) ?? 0;
            points.AddRange(powers.Select(watts => new RatedPoint(
                choice?.Tap,
                choice is { } there ? there.Supply.Volts / there.Tap.High : 1,
                rpm,
                isElectronic ? null : synchronous,
                watts,
                motor.Breakdown is { } known and >= 1 ? Band.Exactly(known) : bands.Breakdown,
                motor.ServiceFactor ?? 1)));
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
        var own = PoleCounts.Of(rpm, HertzAt(motor, Rpm, supplyHertz)).Select(poles => (double?)PoleCounts.Synchronous(poles, HertzAt(motor, Rpm, supplyHertz))).FirstOrDefault();
        double?[] possible = motor.Means switch
        {
            SpeedMeans.TappedWinding => [SynchronousRpm],
            SpeedMeans.SeparateWindings => [own],
            _ => [SynchronousRpm, own],
        };
        return [.. possible.OfType<double>().Where(synchronous => synchronous > rpm).Distinct().Select(synchronous => slower with { SynchronousRpm = synchronous })];
    }

    /// <summary>The speed at which it runs a fan, rpm.</summary>
    /// <param name="load">The fan's torque at this motor's rated speed over its rated torque; above 0.</param>
    /// <param name="breakdown">One value of its breakdown torque's band.</param>
    public double SpeedOn(double load, double breakdown) =>
        SynchronousRpm is { } synchronous ? new TorqueLine(synchronous, Rpm, 1, breakdown).SpeedOnFan(load, VoltsRatio)
        : load <= breakdown ? Rpm : Rpm * Math.Sqrt(breakdown / load);

    /// <summary>How hard a load works it: the greater of torque and power over the rated ones, and the load itself once the motor has fallen through its breakdown torque.</summary>
    /// <remarks>A motor pulled far down gives less than its rated power and is being burnt all the same: the torque tells.</remarks>
    /// <param name="load">The fan's torque at its rated speed over its rated torque.</param>
    /// <param name="rpm">The speed at which it runs that fan.</param>
    /// <param name="breakdown">One value of its breakdown torque's band.</param>
    public double Loading(double load, double rpm, double breakdown)
    {
        var stalls = SynchronousRpm is { } synchronous ? rpm < new TorqueLine(synchronous, Rpm, 1, breakdown).BreakdownRpm - 1e-6 : load > breakdown;
        var speed = rpm / Rpm;
        return stalls ? load : load * Math.Max(Math.Pow(speed, 2), Math.Pow(speed, 3));
    }

    /// <summary>The load on which it runs at a measured speed; null where the speed tells nothing: at or above synchronous, or of a motor that holds its speed.</summary>
    /// <param name="rpm">The measured speed.</param>
    /// <param name="breakdown">One value of its breakdown torque's band.</param>
    public double? LoadAt(double rpm, double breakdown) =>
        SynchronousRpm is { } synchronous && rpm > 0 && rpm < synchronous
            ? new TorqueLine(synchronous, Rpm, 1, breakdown).TorqueAt(rpm, VoltsRatio) * Math.Pow(Rpm / rpm, 2) : null;

    private static double? SynchronousOf(RunningFacet motor, double rpm, double? supplyHertz)
    {
        var hertz = HertzAt(motor, rpm, supplyHertz);
        if (double.IsNaN(hertz)) return null;
        var possible = motor.Poles is { } known ? [known] : PoleCounts.Of(rpm, hertz);
        return possible.Count > 0 && PoleCounts.Synchronous(possible[0], hertz) is var synchronous && synchronous > rpm ? synchronous : null;
    }

    /// <summary>The frequency at which a motor is rated for a speed, or else the supply's, Hz; NaN when neither is known.</summary>
    private static double HertzAt(RunningFacet motor, double rpm, double? supplyHertz) =>
        motor.Rpm.First(point => point.Value.Equals(rpm)).Hertz is var hertz && double.IsNaN(hertz) ? supplyHertz ?? double.NaN : hertz;

    /// <summary>The rated shaft powers that are possible at a supply's frequency, W: bands where the plate gives, or may give, what the motor takes, or gives amps alone.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="supplyHertz">The supply's frequency; null when unknown.</param>
    /// <returns>None when nothing tells.</returns>
    public static IReadOnlyList<Band> ShaftWattsOf(RunningFacet motor, double? supplyHertz)
    {
        if (motor.Watts.Count == 0) return motor.WattsByAmps is { } byAmps ? [byAmps] : [];
        return [.. HighSpeed.At(motor.Watts, supplyHertz).Select(watts => motor.Meaning == PowerMeaning.Output ? Band.Exactly(watts) : Narrowed(AtShaft(motor, watts)))];

        // Where both tell something the truth lies in both; where they share nothing the plate contradicts itself, and its power is taken.
        Band Narrowed(Band byPower) => motor.WattsByAmps is { } byAmps && byPower.Shared(byAmps) is { } shared ? shared : byPower;
    }

    /// <summary>What a power on its plate comes to at the shaft, W: a band where it is, or may be, what the motor takes.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="watts">The power on its plate, W.</param>
    public static Band AtShaft(RunningFacet motor, double watts)
    {
        var efficiency = TypeBands.Likely(motor.Type, motor.Connections.Phases, motor.HasRunCapacitor).Efficiency;
        return motor.Meaning switch
        {
            PowerMeaning.Output => Band.Exactly(watts),
            PowerMeaning.Input => efficiency * watts,
            _ => new(efficiency.Low * watts, watts),
        };
    }
}
