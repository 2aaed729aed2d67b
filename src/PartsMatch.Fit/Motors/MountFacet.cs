using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>What the mount reads of a motor; lengths in mm, null where not known.</summary>
/// <param name="Kinds">The ways in which it can be held, a bit each; 0 when not known.</param>
/// <param name="BodyDiameter">Across the shell.</param>
/// <param name="StudCircle">Bolt circle of its studs.</param>
/// <param name="FaceCircle">Bolt circle of its face or flange.</param>
/// <param name="FacePilot">Pilot of its face or flange.</param>
/// <param name="Feet">Its feet, as far as its frame promises them.</param>
public readonly record struct MountFacet(int Kinds, double? BodyDiameter, double? StudCircle, double? FaceCircle, double? FacePilot, FootPattern? Feet)
{
    /// <summary>Reads a motor.</summary>
    public static MountFacet Of(MotorSpec part) => new(
        Bits(part.Mounts ?? []),
        Rounded.Millimetres(part.BodyDiameter),
        Rounded.Millimetres(part.StudCircle),
        Rounded.Millimetres(part.FaceBoltCircle),
        Rounded.Millimetres(part.FacePilot),
        FootPattern.Of(part.Frame));

    /// <summary>Whether it can be held in one way.</summary>
    public bool Has(MountKind kind) => (Kinds & Bit(kind)) != 0;

    /// <summary>Kinds of mount, a bit each.</summary>
    public static int Bits(IEnumerable<MountKind> kinds) => kinds.Aggregate(0, (bits, kind) => bits | Bit(kind));

    private static int Bit(MountKind kind) => 1 << (int)kind;
}

/// <summary>Kinds of mount in a sentence; formed only when the sentence is shown.</summary>
/// <param name="Kinds">A bit each.</param>
internal readonly record struct ListedMounts(int Kinds)
{
    /// <summary>Belly band or through-bolt studs.</summary>
    public override string ToString()
    {
        var facet = new MountFacet(Kinds, null, null, null, null, null);
        return string.Join(" or ", Enum.GetValues<MountKind>().Where(facet.Has).Select(kind => new Spelt<MountKind>(kind).ToString()));
    }
}
