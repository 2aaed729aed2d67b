using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What the mount reads of a contactor.</summary>
/// <param name="Mounts">What may hold it.</param>
public readonly record struct ContactorMountFacet(ChoiceSet<ContactorMount> Mounts);

/// <summary>Is the contactor held by what holds the old one?</summary>
/// <remarks>One of what held the old one meets; anything else is a change.</remarks>
public sealed class MountOfContactor() : Aspect<ContactorSpec, ContactorSite, ContactorMountFacet>("Mount", isDeciding: false, ContactorSources.Mount, new(0.2, 0.6, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["mounts"], []);

    /// <inheritdoc/>
    public override ContactorMountFacet Read(ContactorSpec part) => new(ChoiceSet<ContactorMount>.Of(part.Mounts));

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, ContactorMountFacet facet)
    {
        var old = ChoiceSet<ContactorMount>.Of(need.Plate.Mounts);
        if (old.IsUnknown) return Finding.Unknown(Side.Plate, "mounts", $"What holds the old one is not known.");
        if (facet.Mounts.IsUnknown) return Finding.Unknown(Side.Part, "mounts", $"The old one is held by {old}; what holds this one is not known.");
        if (facet.Mounts.SharedWith(old) is { } same) return Finding.Meets($"It mounts by {new Spelt<ContactorMount>(same)}, as the old one does.");
        return facet.Mounts.First switch
        {
            ContactorMount.Rail => Change(old, facet, $"fit a piece of 35 mm rail for it", new($"35 mm rail, 4 in, with screws")),
            ContactorMount.Socket => Change(old, facet, $"fit a socket for it, and wire that", new($"socket for it")),
            _ => Change(old, facet, $"drill new holes for its {new Spelt<ContactorMount>(facet.Mounts.First)}", new($"self-tapping screws for its base")),
        };
    }

    private static Finding Change(ChoiceSet<ContactorMount> old, ContactorMountFacet facet, FormattableString words, Notes.KitItem kit) =>
        Finding.MeetsWith([new(ContactorChanges.FitMount, words) { Kit = [kit] }], $"It is held by {facet.Mounts}; the old one is held by {old}.");
}
