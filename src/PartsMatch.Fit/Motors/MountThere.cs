using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>What holds the old motor, and will hold the new one; lengths in mm, null where not known.</summary>
internal sealed record MountThere
{
    private MountThere(MotorSpec plate, MotorSite site)
    {
        if ((site.MountThere ?? plate.Mounts) is { } kinds) (Places, Kinds) = ([.. kinds], MountFacet.Bits(kinds));
        (Room, OldBody) = (Rounded.Millimetres(site.BodyDiameterRoom), Rounded.Millimetres(plate.BodyDiameter));
        Band = Rounded.Millimetres(site.MountDiameter ?? plate.BodyDiameter);
        StudCircle = Rounded.Millimetres(site.BracketStudCircle ?? plate.StudCircle);
        FaceCircle = Rounded.Millimetres(site.FaceBoltCircleThere ?? plate.FaceBoltCircle);
        FacePilot = Rounded.Millimetres(plate.FacePilot);
        OldFeet = FootPattern.Of(plate.Frame);
    }

    /// <summary>The ways in which a motor can be held there; null when none is known.</summary>
    public MountKind[]? Places { get; }

    /// <summary>The same, a bit each.</summary>
    public int Kinds { get; }

    /// <summary>For how wide a body there is room.</summary>
    public double? Room { get; }

    /// <summary>Across the old body.</summary>
    public double? OldBody { get; }

    /// <summary>Which body the band there takes.</summary>
    public double? Band { get; }

    /// <summary>The bracket's stud circle.</summary>
    public double? StudCircle { get; }

    /// <summary>Bolt circle of the face there.</summary>
    public double? FaceCircle { get; }

    /// <summary>Pilot of the old motor's face.</summary>
    public double? FacePilot { get; }

    /// <summary>The old motor's feet, as far as its frame promises them.</summary>
    public FootPattern? OldFeet { get; }

    /// <summary>What is there for a need.</summary>
    public static MountThere Of(MotorNeed need) => need.Once(static need => new MountThere(need.Plate, need.Site));
}
