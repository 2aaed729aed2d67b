using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>Each lower speed in use against the part's speed that serves it.</summary>
/// <remarks>
/// Between motors that have a winding for each speed the limit is high speed's. A tap's speed is a matter of load: further off it is to be checked. Which of both it is decides, where the plates do not say.
/// </remarks>
internal static class LowerSpeedMatch
{
    /// <summary>The findings, as far as the plates give speeds.</summary>
    /// <param name="need">The need.</param>
    /// <param name="facet">The part.</param>
    public static IReadOnlyCollection<Finding> Judge(MotorNeed need, SpeedFacet facet)
    {
        var pairs = SpeedPairs.Of(need, facet.Lower, facet.Means);
        if (pairs.Count == 0 || SheaveRatio(need, facet) is not { } sheave) return [];
        List<Finding> all = [];
        foreach (var pair in pairs)
        {
            if (pair.Old.Rpm is not { } old) continue;
            if (pair.Row is { } row && facet.Lower[row].Rpm is { } rpm) all.Add(Compare(need, facet, pair.Name, old, rpm, rpm / sheave));
            else if (facet.Speeds >= need.Site.SpeedsUsed) all.Add(Finding.Unknown(Side.Part, "speed", $"On {pair.Name}: the part's speed is not given."));
        }

        return all;
    }

    /// <summary>By how much sheaves that are chosen for high speed slow the fan, on every speed; 1 where none are changed; null while that is not known.</summary>
    private static double? SheaveRatio(MotorNeed need, SpeedFacet facet)
    {
        var olds = need.Once(static need => HighSpeed.At(SpeedFacet.OfOld(need).Rpm, SupplyVolts.HertzOf(need)));
        var news = HighSpeed.At(facet.Rpm, SupplyVolts.HertzOf(need));
        if (olds.Count != 1 || news.Count != 1 || Within.AtMost(Math.Abs((news[0] / olds[0]) - 1), HighSpeedMatch.Same)) return 1;
        return need.Site.Drive switch { Drive.Belt => news[0] / olds[0], Drive.Direct => 1, _ => null };
    }

    private static Finding Compare(MotorNeed need, SpeedFacet facet, SpeedName name, double old, double rated, double rpm)
    {
        var off = Math.Abs((rpm / old) - 1);
        var (shortfall, margin) = (SupplyWindows.Shortfall(off, HighSpeedMatch.Easy, HighSpeedMatch.Same), new Margin((HighSpeedMatch.Same - off) * 100, "%"));
        var isTapForWinding = facet.Means == SpeedMeans.TappedWinding && need.Plate.SpeedMeans == SpeedMeans.SeparateWindings;
        Change check = new(SupplyChanges.CheckLowSpeed, isTapForWinding
            ? (FormattableString)$"see what {new Called(name)} comes to: the old motor had a winding of its own for {old:0} rpm, this one a tap rated {rated:0} rpm, which slips more"
            : $"see what {new Called(name)} comes to: this motor is rated {rated:0} rpm there, the old one was for {old:0} rpm");
        if (Within.AtMost(off, HighSpeedMatch.Same))
        {
            return Finding.MeetsWith(isTapForWinding ? [check] : [], $"On {name}: {rated:0} rpm, and the old motor ran at {old:0} rpm; {old * (1 - HighSpeedMatch.Same):0} to {old * (1 + HighSpeedMatch.Same):0} rpm is the same.") with { Shortfall = shortfall, Margin = margin };
        }

        Reason sentence = $"On {name}: {rated:0} rpm in place of {old:0} rpm is {off * 100:0.0} % off, and 5 % is the limit.";
        if (need.Site.BladeStays == false || MayVary(facet.Means) || MayVary(need.Plate.SpeedMeans)) return Finding.MeetsWith([check], $"On {name}: {rated:0} rpm in place of {old:0} rpm is more than 5 % off: what the fan comes to there is to be seen.") with { Shortfall = 1, Margin = margin };
        var finding = need.Plate.SpeedMeans is null ? Finding.Unknown(Side.Plate, "speedMeans", sentence)
            : facet.Means is null ? Finding.Unknown(Side.Part, "speedMeans", sentence)
            : Finding.Fails(sentence);
        return finding with { Shortfall = shortfall, Margin = margin };
    }

    private static bool MayVary(SpeedMeans? means) => means is SpeedMeans.TappedWinding or SpeedMeans.Electronic;
}
