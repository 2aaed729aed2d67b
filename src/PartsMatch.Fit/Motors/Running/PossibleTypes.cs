using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>The types that the old motor may be where its plate does not say.</summary>
internal static class PossibleTypes
{
    /// <summary>The finding where the part passes whatever the type; else what the types one by one come to: it fails only where it fails beside a motor of each of them.</summary>
    /// <remarks>An unknown type is judged at the ends of bands that hold every type. How hard the old motor is worked counts for the part as well as against it, so that a type between the ends may pass where both ends fail.</remarks>
    /// <param name="need">The need.</param>
    /// <param name="part">The part.</param>
    /// <param name="judge">Judges the part: for the need at the ends of the bands, and for needs in which the type is known.</param>
    public static Finding Sure(MotorNeed need, RunningFacet part, Func<MotorNeed, RunningFacet, Finding> judge)
    {
        var ofBands = judge(need, part);
        if (ofBands.Verdict is not (Verdict.Fails or Verdict.Unknown)) return ofBands;
        var typed = Of(need);
        if (typed.Length == 0) return ofBands;
        var isSure = FailsBeside(typed, part, judge);
        if (isSure == (ofBands.Verdict == Verdict.Fails)) return ofBands;
        return isSure ? judge(typed[0], part)
            : Finding.Unknown(Side.Plate, "type", $"Whether it is strong enough for the fan depends on the old motor's type, which the plate does not tell.") with { Shortfall = ofBands.Shortfall, Margin = ofBands.Margin };
    }

    /// <summary>By itself, since its capture would be made for every judgement, and most need no types.</summary>
    private static bool FailsBeside(MotorNeed[] all, RunningFacet part, Func<MotorNeed, RunningFacet, Finding> judge) => Array.TrueForAll(all, one => judge(one, part).Verdict == Verdict.Fails);

    /// <summary>The same need with each type that its plate leaves; none where the type is known.</summary>
    private static MotorNeed[] Of(MotorNeed need) => need.Once(static need => (MotorNeed[])[.. TypeFigures.Possible(need.PlateAsRead).Select(plate => new MotorNeed(plate, MotorDeductions.DeduceSite(plate, need.Site).Site))]);
}
