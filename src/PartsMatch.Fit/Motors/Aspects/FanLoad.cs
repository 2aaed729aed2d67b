using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Running;
using PartsMatch.Fit.Published;

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
    public override Finding Judge(MotorNeed need, RunningFacet facet)
    {
        var (run, missing) = OnTheFan.Of(need, facet);
        if (run is null) return Lacking(missing!);
        return EverySpeed.Of(Judge(need, run), SpeedPairs.Of(need, facet.Lower, facet.Means)
            .Select(pair => (pair.Name, Run: run.On(need, facet, pair)))
            .Where(one => one.Run is not null)
            .Select(one => Judge(need, one.Run!).On(one.Name)));
    }

    private static Finding Judge(MotorNeed need, OnTheFan run)
    {
        var loading = run.Hardest;
        FormattableString loaded = IsPulledDown(run)
            ? (FormattableString)$"as much as {loading * 100:0} % of its rated torque, which pulls it down to {run.Over(one => one.NewRpm).ToString("0")} rpm, with {(run.Over(one => one.Airflow) * 100).ToString("0")} % of the old airflow; reckoned from {run.Fan.From}"
            : $"{(run.Over(one => one.NewShare) * 100).ToString("0")} % of its rating at {run.Over(one => one.NewRpm).ToString("0")} rpm, with {(run.Over(one => one.Airflow) * 100).ToString("0")} % of the old airflow; reckoned from {run.Fan.From}";
        var shortfall = Math.Max(0, (loading - Easy) / (run.Limit - Easy));
        var margin = new Margin((run.Limit - loading) * 100, "%");
        if (run.Cases.All(run.Carries))
        {
            var harder = run.Cases.Max(one => one.NewLoading - Math.Max(Easy, one.OldLoading));
            return Finding.Meets($"The fan loads it to {loaded}.{Over(run)}") with { Shortfall = Math.Clamp(harder / (run.Limit - Easy), 0, 1), Margin = margin, CautionWords = Caution(run) };
        }

        var finding = run.Cases.Any(run.Carries)
            ? Finding.Unknown(Side.Site, "measuredSpeed", $"The fan may load it over its rating, to {loaded}. The speed or power of the old fan or a sister fan, measured, will tell, or its amps after the start.")
            : need.Site.Volts is null && need.Site.NeutralVolts is null ? Finding.Unknown(Side.Site, "volts", $"At its plate's volts the fan would load it over its rating, to {loaded}; the volts there were not measured.")
            : need.Site.Drive is null && run.SpeedsDiffer ? Finding.Unknown(Side.Site, "drive", $"Driven directly, the fan would load it over its rating, to {loaded}; a belt's sheaves can make up for its speed.")
            : Finding.Fails($"The fan would load it over its rating, to {loaded}.");
        return finding with { Shortfall = shortfall, Margin = margin };
    }

    /// <summary>Whether the load stalls it: then its power falls while it burns, and the torque tells.</summary>
    private static bool IsPulledDown(OnTheFan run) => run.Cases.Any(one => one.NewLoading > run.Limit && one.NewShare < 1);

    /// <summary>What makes a load over the plate bearable; nothing for one within it.</summary>
    private static string Over(OnTheFan run) => FormattableString.Invariant((run.Cases.All(run.IsWithinRating), run.Hardest) switch
    {
        (true, < 1.005) => $"",
        (true, _) => $" Its service factor covers what lies over 100 %.",
        (_, var hardest) when hardest <= run.Limit + 1e-9 => $" It may be worked to {hardest * 100:0} %, and {run.Rating * 100:0} % is its limit: up to 5 % over it cannot be told apart from it (practice).",
        (_, var hardest) => $" It may be worked to {hardest * 100:0} %, over its limit of {run.Rating * 100:0} %, but no harder than the old motor was.",
    });

    private static FormattableString? Caution(OnTheFan run) => run.Cases.All(run.IsWithinRating) ? null
        : (FormattableString)$"The fan may work it to {run.Hardest * 100:0} % of its rating: clamp its amps, and if they stand above its plate, it is too small for this fan.";

    private static Finding Lacking(Missing missing) => missing switch
    {
        { Side: Side.Site } => Finding.Unknown(Side.Site, missing.Field, $"How the new blade loads the motor cannot be told without both blades' diameters."),
        { Side: Side.Part } => Finding.Unknown(Side.Part, missing.Field, $"How the fan loads the part cannot be told without its {missing.Field}."),
        _ => Finding.Unknown(missing.Side, missing.Field, $"How heavy the fan is cannot be told without the old motor's {missing.Field}."),
    };
}
