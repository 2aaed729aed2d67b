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
    public override OwnMeasure Measure { get; } = new("a power", "under the old motor's", 0, 100 * HorsepowerSeries.SameRating, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["power", "powerMeaning", "serviceFactor"], ["volts", "measuredAmps"]) { Besides = RatingFields.All };

    /// <inheritdoc/>
    public override RunningFacet Read(MotorSpec part) => RunningFacet.Of(part);

    /// <inheritdoc/>
    public override bool HasGist => true;

    /// <summary>What tells the power at the shaft, on high and on each lower speed.</summary>
    public override RunningFacet GistOf(RunningFacet facet) => RunningFacet.OfPower(facet);

    /// <summary>How a motor runs on the fan only matters where something of the fan was measured.</summary>
    public override bool AsksBeyondGist(MotorNeed need) => IsFanMeasured(need);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, RunningFacet facet) => PossibleTypes.Sure(need, facet, JudgeOf);

    private static Finding JudgeOf(MotorNeed need, RunningFacet facet)
    {
        var news = RatedPoint.ShaftWattsOf(facet, SupplyVolts.HertzOf(need));
        if (news.Count == 0) return Finding.Unknown(Side.Part, "power", $"The part's power is not given.");
        var olds = need.Once(static need => RatedPoint.ShaftWattsOf(RunningFacet.OfOld(need), SupplyVolts.HertzOf(need)));
        if (olds.Count == 0) return Finding.Unknown(Side.Plate, "power", $"The part gives {new ShownWatts(news[0])}; the old motor's power is not known.");
        var high = olds.Count == 1 && news.Count == 1 ? Compare(need, null, olds[0], facet, news[0]) : AnyOf(need, olds, facet, news);
        return EverySpeed.Of(high, need.Plate.Power is { Count: > 1 } ? Lower(need, facet) : []);
    }

    /// <summary>What every power that is possible comes to.</summary>
    private static Finding AnyOf(MotorNeed need, Sequence<Band> olds, RunningFacet facet, Sequence<Band> news) =>
        OneVerdict.Of(
            olds.SelectMany(before => news.Select(now => Compare(need, null, before, facet, now))),
            () => SupplyVolts.HertzOf(need) is null ? Finding.Unknown(Side.Site, "supplyFrequency", $"The powers differ between 50 and 60 Hz, and the supply's frequency is not known.")
                : olds.Count > 1 ? Finding.Unknown(Side.Plate, "frequency", $"Whether the old powers are two speeds or two frequencies is not known.")
                : Finding.Unknown(Side.Part, "frequency", $"Whether the part's powers are two speeds or two frequencies is not given."));

    private static List<Finding> Lower(MotorNeed need, RunningFacet facet)
    {
        List<Finding> all = [];
        foreach (var pair in SpeedPairs.Of(need, facet.Lower, facet.Means))
        {
            if (pair is not { Row: { } row, Old.Watts: { } before } || facet.Lower[row].Watts is not { } now) continue;
            all.Add(Compare(need, pair, RatedPoint.AtShaft(RunningFacet.OfOld(need), before), facet, RatedPoint.AtShaft(facet, now)).On(pair.Name));
        }

        return all;
    }

    private static Finding Compare(MotorNeed need, SpeedPair? lower, Band old, RunningFacet facet, Band watts)
    {
        if (!Within.AtLeast(watts.High, Least(old.Low))) return EnoughForTheFan(need, lower, facet, old, watts) ?? Less(old.Low, watts.High);
        if (!Within.AtLeast(watts.Low, Least(old.High)))
        {
            return old.IsExact
                ? Finding.Unknown(Side.Part, MissingOf(facet), $"As far as its plate tells, the part gives {new ShownWatts(watts)} at the shaft; the old motor gave {new ShownWatts(old)}.")
                : Finding.Unknown(Side.Plate, MissingOf(RunningFacet.OfOld(need)), $"As far as its plate tells, the old motor gave {new ShownWatts(old)} at the shaft; the part gives {new ShownWatts(watts)}.");
        }

        if (old.IsExact) return AtLeastAsMuch(lower, old.High, watts.Low);
        Change check = new(SupplyChanges.CheckOversize, $"check that {new ShownWatts(watts)}{new OnSpeed(lower)} is not far too much: the old motor gave {new ShownWatts(old)}");
        return Finding.MeetsWith([check], $"It gives {new ShownWatts(watts)} at the shaft, the old motor gave {new ShownWatts(Band.Exactly(old.High))} at most; less than that could be too little.");
    }

    private static string MissingOf(RunningFacet motor) => motor.Watts.Count > 0 && motor.Meaning is null ? "powerMeaning" : "power";

    /// <summary>Less than this is less; a little under the old figure counts as the same rating.</summary>
    private static double Least(double old) => old * (1 - HorsepowerSeries.SameRating);

    private static Finding Less(double old, double watts) =>
        Finding.Fails($"{new RatedWatts(watts)} is less than the old motor's {new RatedWatts(old)}.") with { Shortfall = (old - watts) / (old - Least(old)), Margin = new(watts - Least(old), "W") };

    /// <summary>Less than the old power is enough where something measured shows that the fan asks for less; null where nothing was measured, or it asks for more.</summary>
    private static Finding? EnoughForTheFan(MotorNeed need, SpeedPair? lower, RunningFacet facet, Band old, Band watts)
    {
        if (!IsFanMeasured(need)) return null;
        var (run, missing) = OnTheFan.Of(need, facet);
        if (run is null) return Finding.Unknown(missing!.Side, missing.Field, $"{new ShownWatts(watts)} is less than the old motor's {new ShownWatts(old)}; whether it is enough for the fan that was measured cannot be told yet.");
        if (lower is { } pair) run = run.On(need, facet, pair);
        if (run is null) return null;
        if (run.Fan.IsMeasured && run.IsWithinRating)
        {
            return Finding.Meets($"{new ShownWatts(watts)} is less than the old motor's {new ShownWatts(old)}, but by {run.Fan.From} the fan takes no more than {run.Over(one => one.NewWatts).High:0} W.") with { Shortfall = 0.8 };
        }

        if (run.Fan.IsMeasured && run.MayBeWithinRating) return Finding.Unknown(Side.Site, "measuredSpeed", $"{new ShownWatts(watts)} is less than the old motor's {new ShownWatts(old)}; by {run.Fan.From} the fan may take more than that.");
        if (need.Site.Volts is null) return Finding.Unknown(Side.Site, "volts", $"{new ShownWatts(watts)} is less than the old motor's {new ShownWatts(old)}; at which volts the fan was measured is not known.");
        if (run.MayBeOnNeutral) return Finding.Unknown(Side.Site, "neutralVolts", $"{new ShownWatts(watts)} is less than the old motor's {new ShownWatts(old)}; whether the fan was measured on line and neutral, whose volts would suit better than those between lines, is not known.");
        if (run.OldLacks is { } lacks) return Finding.Unknown(Side.Plate, lacks, $"{new ShownWatts(watts)} is less than the old motor's {new ShownWatts(old)}; what was measured tells the fan's load only beside the old plate's volts and amps.");
        return run.Fan.IsMeasured && need.Site.Drive is null && run.SpeedsDiffer
            ? Finding.Unknown(Side.Site, "drive", $"{new ShownWatts(watts)} is less than the old motor's {new ShownWatts(old)}; driven directly the fan would take more, a belt's sheaves can make up for its speed.")
            : null;
    }

    private static bool IsFanMeasured(MotorNeed need) => need.Site is not { MeasuredSpeed: null, MeasuredInput: null, MeasuredAmps: null };

    private static Finding AtLeastAsMuch(SpeedPair? lower, double old, double watts)
    {
        var steps = HorsepowerSeries.StepsUp(old, watts);
        Reason sentence = steps == 0
            ? (Reason)$"It gives {new RatedWatts(watts)}, the old motor gave {new RatedWatts(old)}; up to {HorsepowerSeries.SameRating * 100:0} % less counts as the same."
            : $"{new RatedWatts(watts)} is {steps} standard size{(steps == 1 ? string.Empty : "s")} over the old {new RatedWatts(old)}; one is ordinary.";
        Change[] changes = steps > 1 ? [new(SupplyChanges.CheckOversize, $"check that circuit, mount and low speed suit {new RatedWatts(watts)}{new OnSpeed(lower)} in place of {new RatedWatts(old)}")] : [];

        // Just under the old figure counts as the same rating; over it each size makes a poorer match: worse power factor, more weight.
        var under = Math.Max(0, (old - watts) / (old * HorsepowerSeries.SameRating));
        return Finding.MeetsWith(changes, sentence) with { Shortfall = steps > 0 ? Math.Min(1, 0.3 * steps) : Math.Min(1, under), Margin = new(watts - Least(old), "W") };
    }

    /// <summary>1/3 hp, or the span of watts that a power is known to lie in; formed only when it is shown.</summary>
    private readonly record struct ShownWatts(Band Watts)
    {
        public override string ToString() => Watts.IsExact ? new RatedWatts(Watts.Low).ToString() : $"{Watts.ToString("0")} W";
    }

    /// <summary>" on low", of a lower speed; nothing, of the highest.</summary>
    private readonly record struct OnSpeed(SpeedPair? Lower)
    {
        public override string ToString() => Lower is { } lower ? $" on {lower.Name.Word}" : string.Empty;
    }
}
