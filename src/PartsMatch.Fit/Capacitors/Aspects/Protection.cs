using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Capacitors.Aspects;

/// <summary>What protection reads of a capacitor.</summary>
/// <param name="IsProtected">Whether it disconnects itself when it fails; null when not known.</param>
public readonly record struct ProtectedFacet(bool? IsProtected);

/// <summary>Does the capacitor disconnect itself when it fails?</summary>
/// <remarks>Unprotected fails, even where the old one was: a can that bursts takes what is round it along (practice).</remarks>
public sealed class Protection() : Aspect<CapacitorSpec, CapacitorSite, ProtectedFacet>("Protected type", isDeciding: false, CapacitorSources.CapacitorProtection, new(0.3, 0.5, 0.8))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["isProtected"], []);

    /// <inheritdoc/>
    public override ProtectedFacet Read(CapacitorSpec part) => new(part.IsProtected);

    /// <inheritdoc/>
    public override Finding Judge(CapacitorNeed need, ProtectedFacet facet) => facet.IsProtected switch
    {
        true => Finding.Meets($"It is of a protected type: it disconnects itself when it fails."),
        false => Finding.Fails($"It is not of a protected type; a run capacitor must disconnect itself when it fails."),
        null => Finding.Unknown(Side.Part, "isProtected", $"A protected type is needed; whether it is one is not known: look for P2, S2 or 10000 AFC on the can."),
    };
}
