using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Running;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>Does the motor give at least the old one's shaft power, and not far more?</summary>
/// <remarks>
/// High speed against high speed, at the site's frequency, and each lower speed in use against the one that serves it: none may be below the old motor's. A plate that gives one power beside several speeds
/// asks for it on high alone: on its lower ones the fan takes less, with the cube of speed (fan laws). Speeds that the part does not have are <see cref="Speed"/>'s question. Equal or one step up in the standard series is ordinary, two steps or more are to be checked (practice).
/// Where a plate gives input watts, or amps alone, the type's efficiency and power factor leave an interval: what every power in it says is said.
/// </remarks>
public sealed class OutputPower() : Aspect<MotorSpec, MotorSite, RunningFacet>("Output power", isDeciding: true, MotorSources.NotLessPower, new(0.8, 0.5, 1.2))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["power", "powerMeaning", "serviceFactor"], ["volts", "measuredAmps"]) { Besides = RatingFields.All };

    /// <inheritdoc/>
    public override RunningFacet Read(MotorSpec part) => RunningFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, RunningFacet facet)
    {
        var hertz = need.Site.SupplyFrequency?.Hertz;
        var old = RunningFacet.Of(need.Plate);
        var news = RatedPoint.ShaftWattsOf(facet, hertz);
        if (news.Count == 0) return Finding.Unknown(Side.Part, "power", $"The part's power is not given.");
        var olds = RatedPoint.ShaftWattsOf(old, hertz);
        if (olds.Count == 0) return Finding.Unknown(Side.Plate, "power", $"The part gives {Words(news[0])}; the old motor's power is not known.");
        var high = OneVerdict.Of(
            olds.SelectMany(before => news.Select(now => Compare(need, null, old, before, facet, now))),
            () => hertz is null ? Finding.Unknown(Side.Site, "supplyFrequency", $"The powers differ between 50 and 60 Hz, and the supply's frequency is not known.")
                : olds.Count > 1 ? Finding.Unknown(Side.Plate, "frequency", $"Whether the old powers are two speeds or two frequencies is not known.")
                : Finding.Unknown(Side.Part, "frequency", $"Whether the part's powers are two speeds or two frequencies is not given."));
        return EverySpeed.Of(high, need.Plate.Power is { Count: > 1 } ? Lower(need, old, facet) : []);
    }

    private static IEnumerable<Finding> Lower(MotorNeed need, RunningFacet old, RunningFacet facet)
    {
        foreach (var pair in SpeedPairs.Of(need, facet.Lower, facet.Means))
        {
            if (pair is not { Row: { } row, Old.Watts: { } before } || facet.Lower[row].Watts is not { } now) continue;
            yield return Compare(need, pair, old, RatedPoint.AtShaft(old, before), facet, RatedPoint.AtShaft(facet, now)).On(pair.Name);
        }
    }

    private static Finding Compare(MotorNeed need, SpeedPair? lower, RunningFacet oldFacet, Band old, RunningFacet facet, Band watts)
    {
        if (!Within.AtLeast(watts.High, Least(old.Low))) return EnoughForTheFan(need, lower, facet, old, watts) ?? Less(old.Low, watts.High);
        if (!Within.AtLeast(watts.Low, Least(old.High)))
        {
            return IsExact(old)
                ? Finding.Unknown(Side.Part, MissingOf(facet), $"As far as its plate tells, the part gives {Words(watts)} at the shaft; the old motor gave {Words(old)}.")
                : Finding.Unknown(Side.Plate, MissingOf(oldFacet), $"As far as its plate tells, the old motor gave {Words(old)} at the shaft; the part gives {Words(watts)}.");
        }

        if (IsExact(old)) return AtLeastAsMuch(lower, old.High, watts.Low);
        Change check = new(SupplyChanges.CheckOversize, $"check that {Words(watts)}{new OnSpeed(lower)} is not far too much: the old motor gave {Words(old)}");
        return Finding.MeetsWith([check], $"It gives {Words(watts)} at the shaft, the old motor gave {Words(Band.Exactly(old.High))} at most; less than that could be too little.");
    }

    private static bool IsExact(Band watts) => watts.Ends.Count == 1;

    private static string MissingOf(RunningFacet motor) => motor.Watts.Count > 0 && motor.Meaning is null ? "powerMeaning" : "power";

    private static string Words(Band watts) => IsExact(watts) ? new RatedWatts(watts.Low).ToString() : $"{watts.ToString("0")} W";

    /// <summary>Less than this is less; a little under the old figure counts as the same rating.</summary>
    private static double Least(double old) => old * (1 - HorsepowerSeries.SameRating);

    private static Finding Less(double old, double watts) =>
        Finding.Fails($"{new RatedWatts(watts)} is less than the old motor's {new RatedWatts(old)}.") with { Shortfall = (old - watts) / (old - Least(old)), Margin = new(watts - Least(old), "W") };

    /// <summary>Less than the old power is enough where something measured shows that the fan asks for less; null where nothing was measured, or it asks for more.</summary>
    private static Finding? EnoughForTheFan(MotorNeed need, SpeedPair? lower, RunningFacet facet, Band old, Band watts)
    {
        if (need.Site is { MeasuredSpeed: null, MeasuredInput: null, MeasuredAmps: null }) return null;
        var (run, missing) = OnTheFan.Of(need, facet);
        if (run is null) return Finding.Unknown(missing!.Side, missing.Field, $"{Words(watts)} is less than the old motor's {Words(old)}; whether it is enough for the fan that was measured cannot be told yet.");
        if (lower is { } pair) run = run.On(need, facet, pair);
        if (run is null) return null;
        if (run.Fan.IsMeasured && run.Cases.All(run.IsWithinRating))
        {
            return Finding.Meets($"{Words(watts)} is less than the old motor's {Words(old)}, but by {run.Fan.From} the fan takes no more than {run.Over(one => one.NewWatts).High:0} W.") with { Shortfall = 0.8 };
        }

        if (run.Fan.IsMeasured && run.Cases.Any(run.IsWithinRating)) return Finding.Unknown(Side.Site, "measuredSpeed", $"{Words(watts)} is less than the old motor's {Words(old)}; by {run.Fan.From} the fan may take more than that.");
        if (need.Site.Volts is null && need.Site.NeutralVolts is null) return Finding.Unknown(Side.Site, "volts", $"{Words(watts)} is less than the old motor's {Words(old)}; at which volts the fan was measured is not known.");
        if (!run.Fan.IsMeasured && need.Site.MeasuredAmps is not null && need.Plate.FullLoadAmps is null) return Finding.Unknown(Side.Plate, "fullLoadAmps", $"{Words(watts)} is less than the old motor's {Words(old)}; the amps measured tell the fan's load only beside the old plate's.");
        return run.Fan.IsMeasured && need.Site.Drive is null && run.SpeedsDiffer
            ? Finding.Unknown(Side.Site, "drive", $"{Words(watts)} is less than the old motor's {Words(old)}; driven directly the fan would take more, a belt's sheaves can make up for its speed.")
            : null;
    }

    private static Finding AtLeastAsMuch(SpeedPair? lower, double old, double watts)
    {
        var steps = HorsepowerSeries.StepsUp(old, watts);
        FormattableString sentence = steps == 0
            ? (FormattableString)$"It gives {new RatedWatts(watts)}, the old motor gave {new RatedWatts(old)}; up to {HorsepowerSeries.SameRating * 100:0} % less counts as the same."
            : $"{new RatedWatts(watts)} is {steps} standard size{(steps == 1 ? string.Empty : "s")} over the old {new RatedWatts(old)}; one is ordinary.";
        Change[] changes = steps > 1 ? [new(SupplyChanges.CheckOversize, $"check that circuit, mount and low speed suit {new RatedWatts(watts)}{new OnSpeed(lower)} in place of {new RatedWatts(old)}")] : [];

        // Just under the old figure counts as the same rating; over it each size makes a poorer match: worse power factor, more weight.
        var under = Math.Max(0, (old - watts) / (old * HorsepowerSeries.SameRating));
        return Finding.MeetsWith(changes, sentence) with { Shortfall = steps > 0 ? Math.Min(1, 0.3 * steps) : Math.Min(1, under), Margin = new(watts - Least(old), "W") };
    }

    /// <summary>" on low", of a lower speed; nothing, of the highest.</summary>
    private readonly record struct OnSpeed(SpeedPair? Lower)
    {
        public override string ToString() => Lower is { } lower ? $" on {lower.Name.Word}" : string.Empty;
    }
}
