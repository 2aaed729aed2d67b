using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>High speed against high speed, and what drive and blade make of a difference.</summary>
internal static class HighSpeedMatch
{
    /// <summary>A few percent (practice): 5 % in speed is 16 % in fan power.</summary>
    public const double Same = 0.05;

    /// <summary>Nobody would give it a thought: motors of one plate differ by as much.</summary>
    public const double Easy = 0.02;

    /// <summary>Compares high speeds; what else is to be changed goes with a part that meets.</summary>
    public static Finding Judge(MotorNeed need, SpeedFacet facet, IReadOnlyList<Change> also)
    {
        var news = SpeedRange.Of(facet, SupplyVolts.HertzOf(need));
        if (news.Count == 0) return Finding.Unknown(Side.Part, "speed", $"The part's speed is not given.");

        // Where the old motor's poles and speed contradict one another, a part must suit both: neither is picked.
        var (olds, byPoles) = need.Once(static need => (SpeedRange.Of(SpeedFacet.OfOld(need), SupplyVolts.HertzOf(need)), SpeedRange.OfPoles(SpeedFacet.OfOld(need), SupplyVolts.HertzOf(need))));
        if (byPoles is { } possible && Refused(need, possible, news, also) is { } refused) return refused;
        if (olds.Count == 0) return Finding.Unknown(Side.Plate, "speed", $"The part runs at {news[0]}; the old motor's speed is not known.");
        return olds.Count == 1 && news.Count == 1 ? Compare(need, olds[0], news[0], also) : AnyOf(need, olds, news, also);
    }

    /// <summary>Why none of the part's speeds suits the old motor's poles; null where one does.</summary>
    private static Finding? Refused(MotorNeed need, SpeedRange byPoles, Sequence<SpeedRange> news, IReadOnlyList<Change> also)
    {
        Finding? first = null;
        foreach (var speed in news.AsSpan())
        {
            var finding = Compare(need, byPoles, speed, also);
            if (finding.Verdict != Verdict.Fails) return null;
            first ??= finding;
        }

        return first;
    }

    /// <summary>What every speed that is possible comes to.</summary>
    private static Finding AnyOf(MotorNeed need, Sequence<SpeedRange> olds, Sequence<SpeedRange> news, IReadOnlyList<Change> also) =>
        OneVerdict.Of(
            olds.SelectMany(old => news.Select(speed => Compare(need, old, speed, also))),
            () => SupplyVolts.HertzOf(need) is null ? Finding.Unknown(Side.Site, "supplyFrequency", $"The speeds differ between 50 and 60 Hz, and the supply's frequency is not known.")
                : olds.Count > 1 ? Finding.Unknown(Side.Plate, "frequency", $"Whether the old speeds are two speeds or two frequencies is not known.")
                : Finding.Unknown(Side.Part, "frequency", $"Whether the part's speeds are two speeds or two frequencies is not given."));

    private static Finding Compare(MotorNeed need, SpeedRange old, SpeedRange speed, IReadOnlyList<Change> also)
    {
        var (slowest, fastest) = ((speed.Least / old.Most) - 1, (speed.Most / old.Least) - 1);
        var off = old.IsKnown && speed.IsKnown ? Math.Abs(fastest) : Math.Max(Math.Max(slowest, -fastest), 0);
        var shortfall = SupplyWindows.Shortfall(off, Easy, Same);
        var margin = new Margin((Same - off) * 100, "%");
        if (slowest > Same + 1e-9 || fastest < -Same - 1e-9)
        {
            var differs = Differs(need, old, speed, also, Math.Max(slowest, -fastest));
            return differs with { Shortfall = differs.Verdict == Verdict.MeetsWithChanges ? 1 : shortfall, Margin = margin };
        }

        if (!old.IsKnown) return Finding.Unknown(Side.Plate, "speed", $"By its poles the old motor ran at {old}; the part runs at {speed}, and within 5 % counts as the same.");
        if (!speed.IsKnown) return Finding.Unknown(Side.Part, "speed", $"By its poles the part runs at {speed}; the old motor ran at {old}, and within 5 % counts as the same.");
        return Finding.MeetsWith(also, $"It runs at {speed}, the old motor ran at {old}; {old.Least * (1 - Same):0} to {old.Least * (1 + Same):0} rpm counts as the same.") with { Shortfall = shortfall, Margin = margin };
    }

    private static Finding Differs(MotorNeed need, SpeedRange old, SpeedRange speed, IReadOnlyList<Change> also, double by)
    {
        if (need.Site.Drive == Drive.Belt)
        {
            return Finding.MeetsWith([new(SupplyChanges.ChangeSheave, $"choose sheaves that keep the fan's speed: the motor runs at {speed}, the old one at {old}") { Kit = [new($"motor sheave for {speed}, and a belt to suit")] }, .. also], $"{speed} in place of {old}: a belt's sheaves make up for it.");
        }

        if (need.Site.BladeStays == false)
        {
            return Finding.MeetsWith([new(SupplyChanges.MatchBlade, $"choose the new blade for {speed}") { Kit = [new($"blade chosen for {speed}")] }, .. also], $"{speed} in place of {old}: choose the new blade for it.");
        }

        var faster = speed.Least > old.Most;
        FormattableString comes = faster
            ? (FormattableString)$"the blade would need {Math.Pow(speed.Least / old.Most, 3):0.00} times the power, which goes with the cube of speed"
            : $"the blade would move {100 * speed.Most / old.Least:0} % of the air";
        return need.Site.Drive is null
            ? Finding.Unknown(Side.Site, "drive", $"{speed} in place of {old} is {by * 100:0.0} % off, and 5 % is the limit: driven directly, {comes}.")
            : Finding.Fails($"{speed} in place of {old} is {by * 100:0.0} % off, and 5 % is the limit: {comes}.");
    }
}
