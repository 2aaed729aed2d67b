using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>Whether one way of holding a motor goes with what is there.</summary>
internal static class MountMatch
{
    /// <summary>How far a band or strap gives, mm: 0.06 in (practice).</summary>
    internal const double BodyTolerance = 1.52;

    /// <summary>How far studs give in their holes, mm: 1/16 in (practice).</summary>
    internal const double StudTolerance = 1.59;

    /// <summary>How far a face's bolt circle and pilot may differ, mm (practice; MG 1 4.4.4 is tighter still on the pilot).</summary>
    internal const double FaceTolerance = 0.5;

    /// <summary>How far two shaft heights may differ, mm: less than a shim's thickness (practice).</summary>
    private const double HeightTolerance = 0.5;

    /// <summary>The finding for one kind of place and one way of holding; null when they have nothing to do with each other.</summary>
    /// <remarks>Any round body without a base can be held by a band; studs stand in for a missing band and a band's motor takes a stud kit; faces have no stand-in (practice).</remarks>
    public static Finding? Judge(MountThere there, MountFacet part, MountKind place, MountKind way) => (place, way) switch
    {
        (MountKind.BellyBand, MountKind.BellyBand) => Band(there, part),
        (MountKind.BellyBand, MountKind.Studs or MountKind.Ears or MountKind.ThreePoint) => BandRound(part),
        (MountKind.Studs, MountKind.Studs) => Studs(there, part),
        (MountKind.Studs, MountKind.BellyBand) => StudKit(there),
        (MountKind.RigidBase, MountKind.RigidBase) or (MountKind.ResilientCradle, MountKind.ResilientCradle) => Feet(there, part),
        (MountKind.RigidBase, MountKind.ResilientCradle) or (MountKind.ResilientCradle, MountKind.RigidBase) => OtherBase(there, part, way),
        (MountKind.TappedFace, MountKind.TappedFace) or (MountKind.Flange, MountKind.Flange) => Face(there, part),
        (MountKind.Ears, MountKind.Ears) or (MountKind.ThreePoint, MountKind.ThreePoint) => Alike(there, part, way),
        _ => null,
    };

    private static Finding Band(MountThere there, MountFacet part)
    {
        if (there.Band is not { } takes) return Finding.Unknown(Side.Plate, "bodyDiameter", $"The diameter that the band there takes is not known.");
        if (part.BodyDiameter is not { } body) return Finding.Unknown(Side.Part, "bodyDiameter", $"The band there takes {new Shown(takes)}; the body's diameter is not known.");
        return Math.Abs(body - takes) is var apart && Within.AtMost(apart, BodyTolerance)
            ? Near(Finding.Meets($"Its body is {new Shown(body)} across; the band there takes {new Shown(takes)}, 0.06 in more or less."), apart, BodyTolerance)
            : Finding.MeetsWith([new(BodyChanges.FitBand, $"fit a belly band for a body of {new Shown(body)}; the one there takes {new Shown(takes)}") { Kit = [BandFor(body)] }], $"Its body is {new Shown(body)} across; the band there takes {new Shown(takes)}, 0.06 in more or less, so it needs another band.");
    }

    private static KitItem BandFor(double body) => new($"belly band for a body of {new Shown(body)}");

    private static Finding BandRound(MountFacet part) => part.BodyDiameter is { } body
        ? Finding.MeetsWith([new(BodyChanges.FitBand, $"hold it by a belly band round its body of {new Shown(body)}") { Kit = [BandFor(body)] }], $"It is not made for a band, but a band for {new Shown(body)} holds its body.")
        : Finding.MeetsWith([new(BodyChanges.FitBand, $"measure round its body and hold it by a belly band of that diameter") { Kit = [new($"belly band of the body's diameter, once measured")] }], $"It is not made for a band, but a band of its diameter holds its body.");

    private static Finding Studs(MountThere there, MountFacet part)
    {
        if (there.StudCircle is not { } circle) return Finding.Unknown(Side.Plate, "studCircle", $"The stud circle of the bracket there is not known.");
        if (part.StudCircle is not { } studs) return Finding.Unknown(Side.Part, "studCircle", $"The bracket there has a stud circle of {new Shown(circle)}; the motor's is not known.");
        return Math.Abs(studs - circle) is var apart && Within.AtMost(apart, StudTolerance)
            ? Near(Finding.Meets($"Its stud circle of {new Shown(studs)} goes into the bracket's {new Shown(circle)} within 1/16 in."), apart, StudTolerance)
            : Finding.MeetsWith([new(BodyChanges.FitStuds, $"fit an adapter from a stud circle of {new Shown(studs)} to {new Shown(circle)}") { Kit = [new($"stud adapter, {new Shown(studs)} to {new Shown(circle)} circle")] }], $"Its stud circle is {new Shown(studs)}, the bracket's {new Shown(circle)}: more than 1/16 in apart, so it needs an adapter.");
    }

    private static Finding StudKit(MountThere there) => there.StudCircle is { } circle
        ? Finding.MeetsWith([new(BodyChanges.FitStuds, $"fit a stud kit for a stud circle of {new Shown(circle)}") { Kit = [new($"stud kit for a circle of {new Shown(circle)}")] }], $"It has no studs for the bracket's circle of {new Shown(circle)}; a stud kit gives it some.")
        : Finding.MeetsWith([new(BodyChanges.FitStuds, $"measure the bracket's stud circle and fit a stud kit for it") { Kit = [new($"stud kit for the bracket's circle, once measured")] }], $"It has no studs for the bracket there; a stud kit gives it some.");

    private static Finding Feet(MountThere there, MountFacet part)
    {
        if (there.OldFeet is not { } old) return Finding.Unknown(Side.Plate, "frame", $"The old motor's frame, which fixes its feet, is not known.");
        if (part.Feet is not { } feet) return Finding.Unknown(Side.Part, "frame", $"The motor's frame, which fixes its feet, is not known.");
        if (!Within.AtMost(Math.Abs(feet.ShaftHeight - old.ShaftHeight), HeightTolerance)) return Finding.Fails($"Its shaft stands {new Shown(feet.ShaftHeight)} over its feet; the old one stood {new Shown(old.ShaftHeight)}.");
        if (!old.PromisesFeet) return Finding.Unknown(Side.Plate, "frame", $"The old motor's frame promises only the shaft height: measure the holes of its feet.");
        if (!feet.PromisesFeet) return Finding.Unknown(Side.Part, "frame", $"Its frame promises only the shaft height, not the holes of its feet.");
        if (feet.Frame == old.Frame && feet.FootLength == old.FootLength) return Finding.Meets($"Its feet and shaft height are those of the old frame.");
        return feet.Frame == old.Frame && feet.FootLength == 'H'
            ? Finding.MeetsWith([new(BodyChanges.CompareMount, $"see that its longer feet are drilled for the short pattern as well")], $"Its feet are the long ones of the same frame, often drilled for the short pattern as well.")
            : Finding.MeetsWith([new(BodyChanges.DrillBase, $"drill the base for its feet; only the shaft height is that of the old motor") { Kit = [new($"drill and bits for the base")] }], $"Its shaft height is that of the old frame, but its feet have other holes.");
    }

    /// <summary>Rigid feet and a cradle of one frame are bolted down alike (MG 1 4.4.1 gives them the same holes), but the rubber is lost or gained.</summary>
    private static Finding OtherBase(MountThere there, MountFacet part, MountKind way)
    {
        var feet = Feet(there, part);
        return feet.Verdict is Verdict.Unknown or Verdict.Fails ? feet
            : Finding.MeetsWith([.. feet.Changes, new(BodyChanges.CompareMount, $"see that its {new Spelt<MountKind>(way)} bolts down where the old motor's mount did")], $"Its frame goes with the old one's feet, but it is held by {new Spelt<MountKind>(way)}.");
    }

    private static Finding Face(MountThere there, MountFacet part)
    {
        if (there.FaceCircle is not { } circle) return Finding.Unknown(Side.Plate, "faceBoltCircle", $"The bolt circle of the face there is not known.");
        if (part.FaceCircle is not { } face) return Finding.Unknown(Side.Part, "faceBoltCircle", $"The face there has a bolt circle of {new Shown(circle)}; the motor's is not known.");
        if (!Within.AtMost(Math.Abs(face - circle), FaceTolerance)) return Finding.Fails($"Its face has a bolt circle of {new Shown(face)}; the face there has {new Shown(circle)}, and the two must agree within 0.5 mm.");
        if (there.FacePilot is not { } rim) return Finding.Unknown(Side.Plate, "facePilot", $"The bolt circles agree; the pilot of the old face is not known.");
        if (part.FacePilot is not { } pilot) return Finding.Unknown(Side.Part, "facePilot", $"The bolt circles agree; the motor's pilot is not known, the old one was {new Shown(rim)}.");
        return Within.AtMost(Math.Abs(pilot - rim), FaceTolerance)
            ? Near(Finding.Meets($"Its face has the bolt circle of {new Shown(circle)} and the pilot of {new Shown(rim)} that are there, within 0.5 mm."), Math.Max(Math.Abs(face - circle), Math.Abs(pilot - rim)), FaceTolerance)
            : Finding.Fails($"Its pilot is {new Shown(pilot)}; the face there has {new Shown(rim)}, and the two must agree within 0.5 mm.");
    }

    /// <summary>No standard fixes ears and arms: with the old body's diameter they are taken to be alike, else they are held against the place.</summary>
    private static Finding Alike(MountThere there, MountFacet part, MountKind way) =>
        there.Band is { } old && part.BodyDiameter is { } body && Within.AtMost(Math.Abs(body - old), BodyTolerance)
            ? Finding.Meets($"It is held by {new Spelt<MountKind>(way)} like the old motor, at a body of {new Shown(body)} against {new Shown(old)}, within 0.06 in.")
            : Finding.MeetsWith([new(BodyChanges.CompareMount, $"hold its {new Spelt<MountKind>(way)} against the place: no standard fixes them")], $"It is held by {new Spelt<MountKind>(way)} like the old motor; no standard fixes where they sit, and its body is not known to be within 0.06 in of the old one.");

    private static Finding Near(Finding finding, double apart, double tolerance) => finding with { Shortfall = apart / tolerance, Margin = new(tolerance - apart, "mm") };
}
