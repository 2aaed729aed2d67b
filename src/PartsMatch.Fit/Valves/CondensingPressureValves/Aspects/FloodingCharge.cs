using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

/// <summary>What is read of whether a valve floods.</summary>
/// <param name="Floods">Whether it holds liquid back in the condenser; null where not given.</param>
public readonly record struct FloodsFacet(bool? Floods);

/// <summary>Does the receiver hold what floods the condenser?</summary>
/// <remarks>A differential check valve floods nothing by itself. For the others the receiver has to hold the flooding charge; where that is not known it is to be found out.</remarks>
public sealed class FloodingCharge() : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, FloodsFacet>("Flooding charge", isDeciding: false, CondensingPressureValveSources.FloodingCharge, new(0.2, 0.3, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["arrangement"], ["receiverHoldsFlooding"]);

    /// <inheritdoc/>
    public override FloodsFacet Read(CondensingPressureValveSpec part) => new(part.Arrangement is { } how ? how != Arrangement.DifferentialCheck : null);

    /// <inheritdoc/>
    public override Finding Judge(HeadNeed need, FloodsFacet facet) => (facet.Floods, need.Site.ReceiverHoldsFlooding) switch
    {
        (null, _) => Finding.Unknown(Side.Part, "arrangement", $"Whether it floods the condenser is not given."),
        (false, _) => Finding.Meets($"It holds no liquid back in the condenser."),
        (true, true) => Finding.Meets($"The receiver holds what floods the condenser."),
        (true, false) => Finding.Fails($"The receiver does not hold what floods the condenser: in the heat the head would rise beyond all limits."),
        (true, null) => Finding.Unknown(Side.Site, "receiverHoldsFlooding", $"Whether the receiver holds what floods the condenser is not known."),
    };
}
