using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Running;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>Does the fan, at the volts that are there, load the motor to no more than its rating?</summary>
/// <remarks>
/// On high speed, and on each lower one in use of which both plates tell power and speed: the fan that weighs on high weighs on low. The old fan's load is a band unless it was measured; the whole band within the rating meets, the whole band over it fails, and one that straddles it is to be measured.
/// A motor that is loaded no more than the old one was at the same volts is not worse, whatever the figure, and falls short of nothing: else a larger motor would rank before an equal one. Plate speeds are true only within a fifth of the slip
/// (MG 1 12.46, from memory), which is some 5 % of power: so much over the rating is not told apart from it (practice), and the sentence says so. The service factor counts only at rated volts and balance.
/// </remarks>
public sealed class FanLoad() : Aspect<MotorSpec, MotorSite, RunningFacet>("Fan load", isDeciding: false, MotorSources.FanLoad, new(0.8, 0.4, 0.2))
{
    /// <summary>Up to here nobody would give the load a thought.</summary>
    private const double Easy = 0.9;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["power", "speed", "breakdownTorque"], ["measuredSpeed", "measuredAmps", "volts"]) { Besides = RatingFields.All };

    /// <inheritdoc/>
    public override RunningFacet Read(MotorSpec part) => RunningFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, RunningFacet facet) => PossibleTypes.Sure(need, facet, JudgeOf);

    private static Finding JudgeOf(MotorNeed need, RunningFacet facet)
    {
        var (run, missing) = OnTheFan.Of(need, facet);
        if (run is null) return Lacking(missing!);
        return EverySpeed.Of(Judge(need, run), Lower(need, facet, run));
    }

    private static List<Finding> Lower(MotorNeed need, RunningFacet facet, OnTheFan run)
    {
        List<Finding> all = [];
        foreach (var pair in SpeedPairs.Of(need, facet.Lower, facet.Means))
        {
            if (run.On(need, facet, pair) is { } lower) all.Add(Judge(need, lower).On(pair.Name));
        }

        return all;
    }

    private static Finding Judge(MotorNeed need, OnTheFan run)
    {
        var (loading, loaded) = (run.Hardest, new Loaded(run));
        var shortfall = Math.Max(0, (loading - Easy) / (run.Limit - Easy));
        var margin = new Margin((run.Limit - loading) * 100, "%");
        if (run.Carries)
        {
            return Finding.Meets($"The fan loads it to {loaded}.{new OverRating(run)}") with { Shortfall = Math.Clamp(run.Harder(Easy) / (run.Limit - Easy), 0, 1), Margin = margin, CautionWords = Caution(run) };
        }

        var finding = run.MayCarry
            ? Finding.Unknown(Side.Site, "measuredSpeed", $"The fan may load it over its rating, to {loaded}. The speed or power of the old fan or a sister fan, measured, will tell, or its amps after the start.")
            : need.Site.Volts is null ? Finding.Unknown(Side.Site, "volts", $"At {(need.Site.NeutralVolts is null ? "its plate's volts" : "the volts to neutral")} the fan would load it over its rating, to {loaded}; the volts between lines were not measured.")
            : run.MayBeOnNeutral ? Finding.Unknown(Side.Site, "neutralVolts", $"At the volts between lines the fan would load it over its rating, to {loaded}; a plate is not for them, and line to neutral may suit, if a neutral is there.")
            : run.OldLacks is { } lacks ? Finding.Unknown(Side.Plate, lacks, $"Reckoned from {run.Fan.From} the fan would load it over its rating, to {loaded}; what was measured tells its load only beside the old plate's volts and amps.")
            : need.Site.Drive is null && run.SpeedsDiffer ? Finding.Unknown(Side.Site, "drive", $"Driven directly, the fan would load it over its rating, to {loaded}; a belt's sheaves can make up for its speed.")
            : Finding.Fails($"The fan would load it over its rating, to {loaded}.");
        return finding with { Shortfall = shortfall, Margin = margin };
    }

    private static FormattableString? Caution(OnTheFan run) => run.IsWithinRating ? null
        : (FormattableString)$"The fan may work it to {run.Hardest * 100:0} % of its rating: clamp its amps, and if they stand above its plate, it is too small for this fan.";

    private static Finding Lacking(Missing missing) => missing switch
    {
        { Side: Side.Site } => Finding.Unknown(Side.Site, missing.Field, $"How the new blade loads the motor cannot be told without both blades' diameters."),
        { Side: Side.Part } => Finding.Unknown(Side.Part, missing.Field, $"How the fan loads the part cannot be told without its {missing.Field}."),
        _ => Finding.Unknown(missing.Side, missing.Field, $"How heavy the fan is cannot be told without the old motor's {missing.Field}."),
    };

    /// <summary>How the fan loads it; formed only when it is shown.</summary>
    private readonly record struct Loaded(OnTheFan Run)
    {
        public override string ToString()
        {
            var (rpm, air) = (Run.Over(one => one.NewRpm).ToString("0"), (Run.Over(one => one.Airflow) * 100).ToString("0"));
            return FormattableString.Invariant(Run.MayBePulledDown
                ? (FormattableString)$"as much as {Run.Hardest * 100:0} % of its rated torque, which pulls it down to {rpm} rpm, with {air} % of the old airflow; reckoned from {Run.Fan.From}"
                : $"{(Run.Over(one => one.NewShare) * 100).ToString("0")} % of its rating at {rpm} rpm, with {air} % of the old airflow; reckoned from {Run.Fan.From}");
        }
    }

    /// <summary>What makes a load over the plate bearable, nothing for one within it; formed only when it is shown.</summary>
    private readonly record struct OverRating(OnTheFan Run)
    {
        public override string ToString() => FormattableString.Invariant((Run.IsWithinRating, Run.Hardest) switch
        {
            (true, < 1.005) => $"",
            (true, _) => $" Its service factor covers what lies over 100 %.",
            (_, var hardest) when hardest <= Run.Limit + 1e-9 => $" It may be worked to {hardest * 100:0} %, and {Run.Rating * 100:0} % is its limit: up to 5 % over it cannot be told apart from it (practice).",
            (_, var hardest) => $" It may be worked to {hardest * 100:0} %, over its limit of {Run.Rating * 100:0} %, but no harder than the old motor was.",
        });
    }
}
