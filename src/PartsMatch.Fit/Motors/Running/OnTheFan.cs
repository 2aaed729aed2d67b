using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>Old and new motor on the same fan, at the volts that are there.</summary>
/// <remarks>
/// Where each motor's torque line meets the fan's, which goes with the square of speed. What is only known as a band is taken at both its ends, the same for both motors
/// where it is the same thing: the fan's weight. Air's density is the same for both. A new blade's power goes with the fifth power of its diameter (fan laws).
/// </remarks>
public sealed record OnTheFan
{
    /// <summary>Sheaves are changed when speeds differ by more (<see cref="Aspects.Speed"/>'s limit).</summary>
    private const double SameSpeed = 0.05;

    /// <summary>
    /// Plate speeds are true only within a fifth of the slip (NEMA MG 1 12.46, from memory): some 5 % of power, and so much over a rating is not told apart from it (practice).
    /// </summary>
    private const double NotToldApart = 0.05;

    private readonly List<FanCase> cases;

    private OnTheFan(OldOnFan[] olds, IReadOnlyList<RatedPoint> news, Func<RatedPoint, RatedPoint, double> sheave, double diameter)
    {
        (Old, New, Fan, cases) = (olds[0].Rated, news[0], olds[0].Fan, new(olds[0].CountWith(news[0]) * olds.Length * news.Count));
        foreach (var old in olds)
        {
            for (var one = 0; one < news.Count; one++)
            {
                old.AddCasesWith(news[one], sheave(old.Rated, news[one]), diameter, cases);
                SpeedsDiffer |= Differ(old.Rated, news[one]);
            }
        }

        foreach (var one in cases) Hardest = Math.Max(Hardest, one.NewLoading);
    }

    /// <summary>The old motor's rated point.</summary>
    public RatedPoint Old { get; }

    /// <summary>The new motor's rated point.</summary>
    public RatedPoint New { get; }

    /// <summary>How heavy the fan is.</summary>
    public FanOnShaft Fan { get; }

    /// <summary>Every combination of the bands' ends; at least one.</summary>
    public IReadOnlyList<FanCase> Cases => cases;

    /// <summary>Whether rated speeds differ, or may, so much that a belt's sheaves would be changed.</summary>
    public bool SpeedsDiffer { get; }

    /// <summary>How hard the new motor may be worked: 1, or its service factor where that counts, times what unbalanced volts leave of its power (NEMA MG 1 14.36).</summary>
    public double Rating { get; private init; }

    /// <summary>How hard it may be worked before it is told apart from its rating: 5 % over it (practice).</summary>
    public double Limit => Rating * (1 + NotToldApart);

    /// <summary>How hard the fan may work it: the worst of all cases.</summary>
    public double Hardest { get; }

    /// <summary>How much harder it may be worked than the old motor was, or than a load that nobody would give a thought.</summary>
    /// <param name="easy">That load.</param>
    public double Harder(double easy)
    {
        var most = double.NegativeInfinity;
        foreach (var one in cases) most = Math.Max(most, one.NewLoading - Math.Max(easy, one.OldLoading));
        return most;
    }

    /// <summary>Whether the load may stall it: then its power falls while it burns, and the torque tells.</summary>
    public bool MayBePulledDown => cases.Exists(one => one.NewLoading > Limit && one.NewShare < 1);

    /// <summary>Whether every case leaves the new motor within its limit, or no harder worked than the old one was.</summary>
    public bool Carries
    {
        get
        {
            foreach (var one in cases)
            {
                if (!IsCarried(one)) return false;
            }

            return true;
        }
    }

    /// <summary>Whether a case does.</summary>
    public bool MayCarry => cases.Exists(IsCarried);

    /// <summary>Whether every case leaves the new motor within its rating itself, to the whole percent that is shown.</summary>
    public bool IsWithinRating => cases.TrueForAll(IsRated);

    /// <summary>Whether a case does.</summary>
    public bool MayBeWithinRating => cases.Exists(IsRated);

    /// <summary>Whether unbalanced volts take something of a motor's power: then being no worse than the old motor is not enough, for that may have killed it.</summary>
    private bool IsDerated { get; init; }

    /// <summary>Whether either may be on volts to neutral that nobody measured, since it does not take those between lines.</summary>
    public bool MayBeOnNeutral { get; private init; }

    /// <summary>The field of the old motor's plate without which volts or amps that were measured do not tell how heavy the fan is; null where none lacks.</summary>
    public string? OldLacks { get; private init; }

    /// <summary>The band of a figure over all cases.</summary>
    public Band Over(Func<FanCase, double> figure) => Band.Around([.. cases.Select(figure)]);

    /// <summary>How both run, or what is missing to tell.</summary>
    /// <param name="need">The need.</param>
    /// <param name="part">The new motor.</param>
    public static (OnTheFan? Run, Missing? Missing) Of(MotorNeed need, RunningFacet part)
    {
        var (olds, oldLacks) = OldOnFan.Possible(need);
        if (oldLacks is not null) return (null, new(Side.Plate, oldLacks));
        var (news, newLacks) = RatedPoint.Possible(part, need);
        if (newLacks is not null) return (null, new(Side.Part, newLacks));
        if (DiameterRatio(need) is not { } diameter) return (null, new(Side.Site, need.Site.BladeDiameter is null ? "bladeDiameter" : "newBladeDiameter"));
        var derating = RatedSupply.Derating(need, part.Connections.Phases);
        return (new(olds, news, need.Site.Drive == Drive.Belt ? Sheave : NoSheave, diameter)
        {
            Rating = (RatedSupply.ServiceFactorCounts(need, news[0]) ? news[0].ServiceFactor : 1) * derating,
            IsDerated = derating < 1,
            MayBeOnNeutral = MayBeOnNeutralOf(need, olds[0].Rated, RunningFacet.OfOld(need)) || MayBeOnNeutralOf(need, news[0], part),
            OldLacks = need.Plate.Voltage is null ? "voltage" : need.Site.MeasuredAmps is not null && !olds[0].Fan.IsMeasured ? "fullLoadAmps" : null,
        }, null);
    }

    /// <summary>How both run the same fan on a lower speed; null where a rating of either is not known there.</summary>
    /// <remarks>The fan is as heavy as on high speed, where it is known best: its torque goes with the square of speed. Sheaves are chosen for high speed.</remarks>
    /// <param name="need">The need.</param>
    /// <param name="part">The new motor.</param>
    /// <param name="pair">The old motor's speed, and the new one's that serves it.</param>
    public OnTheFan? On(MotorNeed need, RunningFacet part, SpeedPair pair)
    {
        if (pair.Row is not { } row || DiameterRatio(need) is not { } diameter) return null;
        var olds = OldOnFan.OnLower(need)[pair.OldRow];
        if (olds.Length == 0) return null;
        var news = New.OnLower(part, part.Lower[row], SupplyVolts.HertzOf(need));
        return news.Count == 0 ? null : new(olds, news, need.Site.Drive == Drive.Belt ? (_, _) => Sheave(Old, New) : NoSheave, diameter) { Rating = Rating, IsDerated = IsDerated, MayBeOnNeutral = MayBeOnNeutral, OldLacks = OldLacks };
    }

    /// <summary>Sheaves that keep the fan's speed take the difference of the motors' speeds; a small one is left.</summary>
    private static double Sheave(RatedPoint old, RatedPoint one) => Differ(old, one) ? one.Rpm / old.Rpm : 1;

    private static bool Differ(RatedPoint old, RatedPoint one) => Math.Abs((one.Rpm / old.Rpm) - 1) > SameSpeed;

    private static double NoSheave(RatedPoint old, RatedPoint one) => 1;

    /// <summary>New blade's diameter over the old one's: 1 while the blade stays; null when it goes and a diameter is missing.</summary>
    private static double? DiameterRatio(MotorNeed need) => need.Site.BladeStays != false ? 1 : need.Once(static need =>
        need.Site is { BladeDiameter: { } old, NewBladeDiameter: { } now } && old.Millimeters > 0 && now.Millimeters > 0 ? now.Millimeters / old.Millimeters : (double?)null);

    private static bool MayBeOnNeutralOf(MotorNeed need, RatedPoint point, RunningFacet motor) =>
        point.Tap is { } tap && !tap.Takes(tap.High * point.VoltsRatio)
        && SupplyVolts.Of(need, motor.Connections.Phases ?? Phases.Single).NeutralMayHelpAny(motor.Connections.Taps, SupplyWindows.MostVoltsOff);

    private bool IsCarried(FanCase one) => one.NewLoading <= (IsDerated ? Limit : Math.Max(Limit, one.OldLoading * (1 + NotToldApart))) + 1e-9;

    private bool IsRated(FanCase one) => one.NewLoading < Rating + 0.005;
}
