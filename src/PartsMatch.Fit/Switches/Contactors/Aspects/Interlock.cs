using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What the interlock reads of a contactor.</summary>
/// <param name="Has">Whether it has one, or takes one; null when not known.</param>
public readonly record struct InterlockFacet(bool? Has);

/// <summary>Is the contactor interlocked as the old one was?</summary>
/// <remarks>
/// Where the old one is kept from being in together with another, one that cannot be fails, and one that can be is a check: many take an interlock that is sold apart. Of an old one that has or takes one it is asked, for it may take one and have none on.
/// Pairs that reverse a motor, change its speed or start it in star and delta switch three lines (practice): of an old one for three or more it is asked as well, and one for fewer of which nothing is said needs none.
/// </remarks>
public sealed class Interlock() : Aspect<ContactorSpec, ContactorSite, InterlockFacet>("Interlock", isDeciding: false, ContactorSources.Interlock, new(0.2, 0.5, 0.3))
{
    /// <summary>Lines that a contactor of an interlocked pair switches at least (practice).</summary>
    private const int LinesOfPairs = 3;

    private static readonly Change[] Bring = [new(ContactorChanges.BringInterlock, $"bring the interlock for it, where it does not come on it") { Kit = [new($"mechanical interlock for it, where it does not come on it")] }];

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["hasInterlock"], ["isInterlocked"]) { Besides = ["linesSwitched", "poleCount"] };

    /// <inheritdoc/>
    public override InterlockFacet Read(ContactorSpec part) => new(part.HasInterlock);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, InterlockFacet facet) => (need.Site.IsInterlocked, facet.Has) switch
    {
        (false, _) => Finding.Meets($"The old one is interlocked with no other."),
        (null, var has) when need.Plate.HasInterlock == true || need.Site.LinesSwitched >= LinesOfPairs =>
            Finding.Unknown(Side.Site, "isInterlocked", $"Whether the old one is interlocked with a second one is not known{(has switch { true => "; this one is interlocked, or takes an interlock", false => "; this one takes no interlock", null => string.Empty })}."),
        (null, _) => Finding.Meets($"Nothing says that the old one is interlocked with a second one."),
        (_, true) => Finding.MeetsWith(Bring, $"The old one is interlocked with a second one; this one is interlocked, or takes an interlock."),
        (_, false) => Finding.Fails($"The old one is interlocked with a second one, so that never both are in; this one takes no interlock."),
        _ => Finding.Unknown(Side.Part, "hasInterlock", $"The old one is interlocked with a second one; whether this one takes an interlock is not known."),
    };
}
