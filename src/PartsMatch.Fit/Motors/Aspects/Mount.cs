using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>Can what is there hold the motor, and is there room for its body?</summary>
/// <remarks>
/// Of all the ways in which it can be held the best counts. A band for another diameter, a stud kit or other holes for its feet are changes; a face that does not match fails,
/// and so does a body larger than the room round it.
/// </remarks>
public sealed class Mount() : Aspect<MotorSpec, MotorSite, MountFacet>("Mount", isDeciding: true, BodySources.Mount, new(0.8, 1.2, 1.2))
{
    private static readonly MountKind[] Kinds = Enum.GetValues<MountKind>();

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["mounts", "bodyDiameter", "frame"], ["mountThere", "mountDiameter", "bodyDiameterRoom"]) { Besides = ["facePilot", "faceBoltCircle", "facePilotThere", "studCircle", "bracketStudCircle", "faceBoltCircleThere"] };

    /// <inheritdoc/>
    public override MountFacet Read(MotorSpec part) => MountFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, MountFacet facet)
    {
        var there = MountThere.Of(need);
        var room = there.Room;
        if (room is { } most && facet.BodyDiameter is { } body && !Within.AtMost(body, most))
        {
            return Finding.Fails($"Its body is {new Shown(body)} across; there is room for {new Shown(most)}.") with { Margin = new(most - body, "mm") };
        }

        var held = Held(there, facet);
        if (held.Verdict is Verdict.Unknown or Verdict.Fails) return held;
        if (room is { } known)
        {
            return facet.BodyDiameter is null
                ? Finding.Unknown(Side.Part, "bodyDiameter", $"There is room for a body of {new Shown(known)}; its diameter is not known.")
                : held;
        }

        return facet.BodyDiameter is { } wide && there.OldBody is { } old && !Within.AtMost(wide, old + MountMatch.BodyTolerance)
            ? Finding.MeetsWith([.. held.Changes, new(BodyChanges.CheckBodyRoom, $"see that a body of {new Shown(wide)} clears what is round it; the old one had {new Shown(old)}")], $"It can be held there, but its body of {new Shown(wide)} is larger than the old one's {new Shown(old)}, and the room round it is not known.") with { Shortfall = held.Shortfall, Margin = held.Margin }
            : held;
    }

    private static Finding Held(MountThere there, MountFacet facet)
    {
        if (there.Places is not { } places) return Finding.Unknown(Side.Plate, "mounts", $"It must be held as the old motor was, and how that was is not known.");
        if (facet.Kinds == 0) return Finding.Unknown(Side.Part, "mounts", $"The place holds a motor by {new ListedMounts(there.Kinds)}; this one's mounts are not given.");
        Finding? best = null;
        foreach (var place in places)
        {
            foreach (var kind in Kinds)
            {
                if (facet.Has(kind) && MountMatch.Judge(there, facet, place, kind) is { } finding && (best is null || IsBetter(finding, best))) best = finding;
            }
        }

        return best ?? Finding.Fails($"The place holds a motor by {new ListedMounts(there.Kinds)}; this one by {new ListedMounts(facet.Kinds)}, and no adapter joins them.");
    }

    private static bool IsBetter(Finding one, Finding other) => one.Verdict != other.Verdict
        ? one.Verdict < other.Verdict
        : Effort(one) < Effort(other);

    private static double Effort(Finding finding)
    {
        var effort = 0.0;
        for (var change = 0; change < finding.Changes.Count; change++) effort += finding.Changes[change].Kind.Effort;
        return effort;
    }
}
