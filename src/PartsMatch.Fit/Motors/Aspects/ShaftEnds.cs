using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the shaft's ends read of a motor.</summary>
/// <param name="Count">1 or 2; null when not known.</param>
public readonly record struct EndsFacet(int? Count);

/// <summary>Does a shaft come out at as many ends as there are fans to drive?</summary>
/// <remarks>One end for two fans fails; a second end that drives nothing is guarded. A propeller sits alone on its motor unless the plate says otherwise (practice).</remarks>
public sealed class ShaftEnds() : Aspect<MotorSpec, MotorSite, EndsFacet>("Shaft ends", isDeciding: true, BodySources.ShaftEnds, new(0.3, 0.8, 0.7))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["shaftEnds"], ["fanKind"]);

    /// <inheritdoc/>
    public override EndsFacet Read(MotorSpec part) => new(part.ShaftEnds);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, EndsFacet facet)
    {
        var needed = need.Plate.ShaftEnds ?? (need.Site.FanKind == FanKind.Propeller ? 1 : null);
        return (needed, facet.Count) switch
        {
            (null, >= 2) => Finding.MeetsWith([new(BodyChanges.GuardSecondShaft, $"see whether both shaft ends drive something; guard the one that does not, and see that it clears")], $"A shaft comes out at both ends: enough for one fan or two."),
            (null, _) => Finding.Unknown(Side.Plate, "shaftEnds", $"Whether the old motor drove one fan or one at each end is not known."),
            ( <= 1, null) => Finding.MeetsWith([new(BodyChanges.GuardSecondShaft, $"see whether a shaft comes out at the other end; guard it, and see that it clears")], $"One shaft end is needed; whether the motor has a second is not known."),
            (_, null) => Finding.Unknown(Side.Part, "shaftEnds", $"Two shaft ends are needed; how many the motor has is not known."),
            ({ } fans, { } ends) when ends < fans => Finding.Fails($"It has {ends} shaft end; {fans} are needed."),
            ({ } fans, { } ends) when ends > fans => Finding.MeetsWith([new(BodyChanges.GuardSecondShaft, $"guard the second shaft end, and see that there is room for it") { Kit = [new($"guard for a bare shaft end")] }], $"One shaft end is needed; it has a second that drives nothing."),
            ({ } fans, _) => Finding.Meets($"It has {fans} shaft end{(fans == 1 ? string.Empty : "s")}, as needed."),
        };
    }
}
