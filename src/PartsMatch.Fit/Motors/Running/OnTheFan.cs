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

    private OnTheFan(RatedPoint old, RatedPoint @new, FanOnShaft fan, IReadOnlyList<FanCase> cases) => (Old, New, Fan, Cases) = (old, @new, fan, cases);

    /// <summary>The old motor's rated point.</summary>
    public RatedPoint Old { get; }

    /// <summary>The new motor's rated point.</summary>
    public RatedPoint New { get; }

    /// <summary>How heavy the fan is.</summary>
    public FanOnShaft Fan { get; }

    /// <summary>Every combination of the bands' ends; at least one.</summary>
    public IReadOnlyList<FanCase> Cases { get; }

    /// <summary>Whether rated speeds differ so much that a belt's sheaves would be changed.</summary>
    public bool SpeedsDiffer => Math.Abs((New.Rpm / Old.Rpm) - 1) > SameSpeed;

    /// <summary>How hard the new motor may be worked: 1, or its service factor where that counts, times what unbalanced volts leave of its power (NEMA MG 1 14.36).</summary>
    public double Rating { get; private init; }

    /// <summary>How hard it may be worked before it is told apart from its rating: 5 % over it (practice).</summary>
    public double Limit => Rating * (1 + NotToldApart);

    /// <summary>How hard the fan may work it: the worst of all cases.</summary>
    public double Hardest => Cases.Max(one => one.NewLoading);

    /// <summary>Whether unbalanced volts take something of a motor's power: then being no worse than the old motor is not enough, for that may have killed it.</summary>
    private bool IsDerated { get; init; }

    /// <summary>Whether a case leaves the new motor within its limit, or no harder worked than the old one was.</summary>
    public bool Carries(FanCase one) => one.NewLoading <= (IsDerated ? Limit : Math.Max(Limit, one.OldLoading * (1 + NotToldApart))) + 1e-9;

    /// <summary>Whether a case leaves the new motor within its rating itself, to the whole percent that is shown.</summary>
    public bool IsWithinRating(FanCase one) => one.NewLoading < Rating + 0.005;

    /// <summary>The band of a figure over all cases.</summary>
    public Band Over(Func<FanCase, double> figure) => Band.Around([.. Cases.Select(figure)]);

    /// <summary>How both run, or what is missing to tell.</summary>
    /// <param name="need">The need.</param>
    /// <param name="part">The new motor.</param>
    public static (OnTheFan? Run, Missing? Missing) Of(MotorNeed need, RunningFacet part)
    {
        var oldBetween = TapChoice.Old(need);
        var (olds, oldLacks) = RatedPoint.Possible(RunningFacet.Of(need.Plate), need.Site, oldBetween);
        if (oldLacks is not null) return (null, new(Side.Plate, oldLacks));
        var (news, newLacks) = RatedPoint.Possible(part, need.Site, oldBetween);
        if (newLacks is not null) return (null, new(Side.Part, newLacks));
        if (DiameterRatio(need.Site) is not { } diameter) return (null, new(Side.Site, need.Site.BladeDiameter is null ? "bladeDiameter" : "newBladeDiameter"));
        var derating = RatedSupply.Derating(need.Site, part.Connections.Phases);
        var cases = olds.SelectMany(old => news.SelectMany(one => CasesOf(FanOnShaft.Of(need, old), old, one, Sheave(need, old, one), diameter))).ToList();
        return (new(olds[0], news[0], FanOnShaft.Of(need, olds[0]), cases)
        {
            Rating = (RatedSupply.ServiceFactorCounts(need.Site, news[0]) ? news[0].ServiceFactor : 1) * derating,
            IsDerated = derating < 1,
        }, null);
    }

    /// <summary>How both run the same fan on a lower speed; null where a rating of either is not known there.</summary>
    /// <remarks>The fan is as heavy as on high speed, where it is known best: its torque goes with the square of speed. Sheaves are chosen for high speed.</remarks>
    /// <param name="need">The need.</param>
    /// <param name="part">The new motor.</param>
    /// <param name="pair">The old motor's speed, and the new one's that serves it.</param>
    public OnTheFan? On(MotorNeed need, RunningFacet part, SpeedPair pair)
    {
        if (pair.Row is not { } row || DiameterRatio(need.Site) is not { } diameter) return null;
        var hertz = need.Site.SupplyFrequency?.Hertz;
        var olds = Old.OnLower(RunningFacet.Of(need.Plate), pair.Old, hertz);
        var news = New.OnLower(part, part.Lower[row], hertz);
        if (olds.Count == 0 || news.Count == 0) return null;
        var onHigh = Band.Around([.. Old.Breakdown.Ends.SelectMany(breakdown => Fan.LoadAt(breakdown).Ends)]);
        var powers = Band.Around(Old.ShaftWatts.Low / olds[0].ShaftWatts.Low, Old.ShaftWatts.High / olds[0].ShaftWatts.High);
        var onLower = onHigh * powers * Math.Pow(olds[0].Rpm / Old.Rpm, 3);
        var fan = Fan with { LoadAt = _ => onLower };
        return new(olds[0], news[0], fan, [.. olds.SelectMany(old => news.SelectMany(one => CasesOf(fan, old, one, Sheave(need, Old, New), diameter)))]) { Rating = Rating, IsDerated = IsDerated };
    }

    /// <summary>Sheaves that keep the fan's speed take the difference of the motors' speeds; a small one is left.</summary>
    private static double Sheave(MotorNeed need, RatedPoint old, RatedPoint one) =>
        need.Site.Drive == Drive.Belt && Math.Abs((one.Rpm / old.Rpm) - 1) > SameSpeed ? one.Rpm / old.Rpm : 1;

    private static IEnumerable<FanCase> CasesOf(FanOnShaft fan, RatedPoint old, RatedPoint one, double sheave, double diameter)
    {
        var speeds = one.Rpm / old.Rpm;
        foreach (var oldBreakdown in old.Breakdown.Ends)
        {
            foreach (var load in fan.LoadAt(oldBreakdown).Ends)
            {
                var oldRpm = old.SpeedOn(load, oldBreakdown);
                var oldShare = load * Math.Pow(oldRpm / old.Rpm, 3);
                foreach (var (oldRated, newRated) in old.ShaftWatts.Ends.SelectMany(_ => one.ShaftWatts.Ends, (a, b) => (a, b)))
                {
                    var newLoad = load * oldRated / newRated * Math.Pow(speeds / sheave, 3) * Math.Pow(diameter, 5);
                    foreach (var newBreakdown in one.Breakdown.Ends)
                    {
                        var newRpm = one.SpeedOn(newLoad, newBreakdown);
                        var newShare = newLoad * Math.Pow(newRpm / one.Rpm, 3);
                        yield return new(
                            oldRpm,
                            newRpm,
                            oldShare * oldRated,
                            newShare * newRated,
                            oldShare,
                            newShare,
                            old.Loading(load, oldRpm, oldBreakdown),
                            one.Loading(newLoad, newRpm, newBreakdown),
                            newRpm / oldRpm / sheave * Math.Pow(diameter, 3));
                    }
                }
            }
        }
    }

    /// <summary>New blade's diameter over the old one's: 1 while the blade stays; null when it goes and a diameter is missing.</summary>
    private static double? DiameterRatio(MotorSite site) =>
        site.BladeStays != false ? 1
        : site is { BladeDiameter: { } old, NewBladeDiameter: { } now } && old.Millimeters > 0 && now.Millimeters > 0 ? now.Millimeters / old.Millimeters : null;
}
