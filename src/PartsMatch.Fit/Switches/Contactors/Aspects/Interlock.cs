using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What the interlock reads of a contactor.</summary>
/// <param name="Has">Whether it has one, or takes one; null when not known.</param>
public readonly record struct InterlockFacet(bool? Has);

/// <summary>Is the contactor interlocked as the old one was?</summary>
/// <remarks>Where the old one was kept from being in together with another, one that cannot be fails. An old one of which nothing is said asks for none.</remarks>
public sealed class Interlock() : Aspect<ContactorSpec, ContactorSite, InterlockFacet>("Interlock", isDeciding: false, ContactorSources.Interlock, new(0.2, 0.5, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["hasInterlock"], []);

    /// <inheritdoc/>
    public override InterlockFacet Read(ContactorSpec part) => new(part.HasInterlock);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, InterlockFacet facet) => (need.Plate.HasInterlock, facet.Has) switch
    {
        (not true, _) => Finding.Meets($"Nothing tells of a mechanical interlock on the old one."),
        (_, true) => Finding.Meets($"It is interlocked, or takes an interlock, as the old one did."),
        (_, false) => Finding.Fails($"The old one was interlocked with a second one, so that never both were in; this one takes no interlock."),
        _ => Finding.Unknown(Side.Part, "hasInterlock", $"The old one was interlocked with a second one; whether this one takes an interlock is not known."),
    };
}
