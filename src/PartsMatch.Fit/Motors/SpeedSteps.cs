using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors;

/// <summary>Wiring and proving the speeds of a motor of which the site uses several.</summary>
internal static class SpeedSteps
{
    /// <summary>Which lead goes where; none while one speed is used.</summary>
    public static IEnumerable<Step> Wiring(MotorNeed need, MotorSpec part)
    {
        var (lower, pairs) = Pairs(need, part);
        if (pairs.Count == 0) yield break;
        if (part.SpeedMeans == SpeedMeans.Electronic)
        {
            yield return new(Stage.Wire, $"set its speeds by its own sheet: its fastest for high, {string.Join(", ", pairs.Select(pair => $"{Rated(lower[pair.Row!.Value]) ?? "the next"} for {pair.Name.Word}"))}", "Its electronics take speeds by signal, tap or setting; the old motor's live speed leads go to none of these unless its sheet says so.");
            yield break;
        }

        var capped = Enumerable.Range(0, lower.Count).Except(pairs.Select(pair => pair.Row!.Value)).Select(row => Rated(lower[row])).OfType<string>().ToList();
        IEnumerable<string> joined = ["its fastest lead where the old high lead was", .. pairs.Select(pair => $"the lead for {Rated(lower[pair.Row!.Value]) ?? pair.Name.Word} where the old {pair.Name.Word} lead was")];
        yield return new(
            Stage.Wire,
            $"join its speed leads by the motor's own diagram: {string.Join(", ", joined)}{(capped.Count > 0 ? $"; cap the lead for {string.Join(" and ", capped)} by itself" : string.Empty)}",
            "One contact a speed, and never two closed at once: two live speed leads burn the winding. What is not used is capped by itself.");
    }

    /// <summary>What every lower speed in use is to show once it runs.</summary>
    public static IEnumerable<Step> Proof(MotorNeed need, MotorSpec part, ChosenTap? chosen)
    {
        var (lower, pairs) = Pairs(need, part);
        var amps = LowerSpeeds.FullLoadAmps(part);
        foreach (var pair in pairs)
        {
            var row = pair.Row!.Value;
            var most = chosen is { Tap: var tap } ? amps[row].Rows.Where(one => one.Tap == tap).Max(one => (double?)Math.Max(one.AtLow, one.AtHigh)) : null;
            yield return new(
                Stage.StartAndCheck,
                most is { } known
                    ? FormattableString.Invariant($"switch it to {pair.Name.Word} and clamp its amps again: not above {known:0.###} A (its plate{(Rated(lower[row]) is { } rated ? $", {rated}" : string.Empty)} at {chosen!.Value.Tap})")
                    : $"switch it to {pair.Name.Word} and clamp its amps again: not above what its plate says for that speed",
                "See that it slows down. Over the plate there while high is right: two speed leads are live or changed over, or the winding of that speed is too weak for the fan.");
        }
    }

    /// <summary>"on high, ", where there is another speed to prove; else nothing.</summary>
    public static string OnHigh(MotorNeed need, MotorSpec part) => Pairs(need, part).Pairs.Count > 0 ? "on high, " : string.Empty;

    private static (Sequence<LowerSpeed> Lower, IReadOnlyList<SpeedPair> Pairs) Pairs(MotorNeed need, MotorSpec part)
    {
        var lower = LowerSpeeds.Of(part);
        return (lower, [.. SpeedPairs.Of(need, lower, part.SpeedMeans).Where(pair => pair.Row is not null)]);
    }

    private static string? Rated(LowerSpeed speed) => speed.Rpm is { } rpm ? FormattableString.Invariant($"{rpm:0} rpm") : null;
}
