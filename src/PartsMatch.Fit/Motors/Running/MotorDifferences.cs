using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>What will be different once a new motor runs the old fan.</summary>
public static class MotorDifferences
{
    private const string Lines = "each motor's torque line goes through its rated point (Kloss), with the square of the volts; the fan's torque goes with the square of speed";

    /// <summary>Speed, airflow, shaft power, share of the rating, amps and condensing split, each old against new; none when the plates tell too little.</summary>
    public static IReadOnlyList<Difference> Of(MotorNeed need, MotorSpec part)
    {
        if (OnTheFan.Of(need, RunningFacet.Of(part)).Run is not { } run) return [];

        // Volts so far from the old motor's plate that it cannot have run on them: plate or volts are wrong, and nothing is to be told from them.
        if (run.Old.Tap is { } tap && tap.Off(run.Old.VoltsRatio * tap.High) > SupplyWindows.FurthestOff) return [];
        var assumed = Assumptions(need, run);
        var facet = RunningFacet.Of(part);
        return
        [
            .. OnOneSpeed(need, part, run, assumed),
            Split(need.Site, run.Over(one => one.Airflow), assumed),
            .. SpeedPairs.Of(need, facet.Lower, facet.Means).SelectMany(pair => run.On(need, facet, pair) is { } lower ? OnLower(need, part, lower, pair.Name) : []),
        ];
    }

    private static IEnumerable<Difference> OnOneSpeed(MotorNeed need, MotorSpec part, OnTheFan run, IReadOnlyList<string> assumed)
    {
        var airflow = run.Over(one => one.Airflow);
        yield return new("speed", "Speed", "rpm", run.Over(one => one.OldRpm), run.Over(one => one.NewRpm), run.Over(one => one.NewRpm / one.OldRpm), assumed);
        yield return new("airflow", "Airflow", "%", Band.Exactly(100), airflow * 100, airflow, [.. assumed, "airflow goes with speed (fan laws) while coil and ducts stay as they are"]);
        yield return new("shaftPower", "Shaft power", "W", run.Over(one => one.OldWatts), run.Over(one => one.NewWatts), run.Over(one => one.NewWatts / one.OldWatts), assumed);
        yield return new("shareOfRating", "Share of its rating", "%", run.Over(one => one.OldShare) * 100, run.Over(one => one.NewShare) * 100, run.Over(one => one.NewShare / one.OldShare), assumed);
        if (RunningAmps.Of(need.Plate, run.Old, run.Over(one => one.OldWatts)) is { } old && RunningAmps.Of(part, run.New, run.Over(one => one.NewWatts)) is { } now)
        {
            yield return new("amps", "Amps", "A", old, now, null, [.. assumed, RunningAmps.Assumption]);
        }
    }

    /// <summary>The same on a lower speed in use, each figure named after it: speedOnLow. Airflow is against the old motor's on that speed.</summary>
    private static IEnumerable<Difference> OnLower(MotorNeed need, MotorSpec part, OnTheFan run, SpeedName speed)
    {
        List<string> assumed = [.. Assumptions(need, run), "the fan is as heavy as on high: its torque goes with the square of speed"];
        return OnOneSpeed(need, part, run, assumed).Select(one => one with { Name = $"{one.Name}On{speed.Name}", Title = $"{one.Title} on {speed.Word}" });
    }

    /// <summary>With several fans on the coil only one of them is changed.</summary>
    private static Difference Split(MotorSite site, Band airflow, IReadOnlyList<string> assumed)
    {
        var fans = Math.Max(1, site.FansOnCoil ?? 1);
        var overCoil = new Band((airflow.Low + fans - 1) / fans, (airflow.High + fans - 1) / fans);
        var ratio = CondenserSplit.SplitRatio(overCoil, CondenserSplit.UsualEffectiveness, CondenserSplit.UsualExponent);
        return new("condensingSplit", "Condensing split, if the coil is a condenser's", "%", Band.Exactly(100), ratio * 100, ratio,
        [
            .. assumed,
            FormattableString.Invariant($"the same heat; effectiveness {CondenserSplit.UsualEffectiveness.ToString("0.##")}, conductance with the power {CondenserSplit.UsualExponent.ToString("0.##")} of airflow (practice)"),
            fans > 1 ? FormattableString.Invariant($"one of {fans} fans on the coil is changed") : "the one fan of the coil is changed",
        ]);
    }

    private static List<string> Assumptions(MotorNeed need, OnTheFan run)
    {
        List<string> all = [$"fan load: {run.Fan.From}", Lines];
        all.Add(need.Site.Volts is null && need.Site.NeutralVolts is null ? "both run at their plates' volts: none were measured" : "both run at the volts measured");
        if (run.Old.Tap is { Low: var low, High: var high } && low < high || run.New.Tap is { Low: var from, High: var to } && from < to) all.Add("a span's figures hold at its high end (practice)");
        if (BreakdownWords("old", run.Old, need.Plate.BreakdownTorque is not null) is { } old) all.Add(old);
        if (BreakdownWords("new", run.New, run.New.Breakdown.Ends.Count == 1) is { } now) all.Add(now);
        if (run.Old.SynchronousRpm is null || run.New.SynchronousRpm is null) all.Add("an electronically commutated motor holds its speed whatever the volts, up to its torque limit");
        return all;
    }

    private static string? BreakdownWords(string which, RatedPoint motor, bool isKnown) =>
        isKnown || motor.SynchronousRpm is null ? null : $"breakdown torque of the {which} motor {motor.Breakdown.ToString("0.##")} times the rated (band of its type, from memory)";
}
