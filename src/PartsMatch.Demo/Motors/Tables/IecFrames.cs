namespace PartsMatch.Demo.Motors.Tables;

/// <summary>Shaft, flange and face of an IEC frame, in mm.</summary>
/// <param name="Shaft">D, shaft diameter.</param>
/// <param name="ShaftLength">E, shaft length.</param>
/// <param name="FlangeCircle">M of the FF flange customary on IM B5.</param>
/// <param name="FlangePilot">N of the same.</param>
/// <param name="FaceCircle">M of the FT face customary on IM B14.</param>
/// <param name="FacePilot">N of the same.</param>
/// <param name="Body">Body diameter: practice, no standard.</param>
public sealed record IecFrame(int Shaft, int ShaftLength, int FlangeCircle, int FlangePilot, int FaceCircle, int FacePilot, int Body);

/// <summary>One line of an IEC catalogue: which power comes in which frame at how many poles, and how fast it then turns at 50 Hz.</summary>
public sealed record IecRating(int Poles, double Kilowatts, string Frame, int Speed);

/// <summary>IEC 60072-1 (shafts, FF and FT flanges), and the powers that EN 50347 puts into the frames: both from memory, unchecked. Speeds are practice.</summary>
public static class IecFrames
{
    /// <summary>Dimensions by frame number.</summary>
    public static IReadOnlyDictionary<string, IecFrame> All { get; } = new Dictionary<string, IecFrame>
    {
        ["56"] = new(9, 20, 100, 80, 65, 50, 110),
        ["63"] = new(11, 23, 115, 95, 75, 60, 124),
        ["71"] = new(14, 30, 130, 110, 85, 70, 140),
        ["80"] = new(19, 40, 165, 130, 100, 80, 158),
        ["90S"] = new(24, 50, 165, 130, 115, 95, 178),
        ["90L"] = new(24, 50, 165, 130, 115, 95, 178),
        ["100L"] = new(28, 60, 215, 180, 130, 110, 198),
    };

    /// <summary>The usual powers.</summary>
    public static IReadOnlyList<IecRating> Ratings { get; } =
    [
        new(4, 0.06, "56", 1350), new(4, 0.09, "56", 1350), new(4, 0.12, "63", 1360), new(4, 0.18, "63", 1360),
        new(4, 0.25, "71", 1370), new(4, 0.37, "71", 1380), new(4, 0.55, "80", 1400), new(4, 0.75, "80", 1410),
        new(4, 1.1, "90S", 1420), new(4, 1.5, "90L", 1420), new(4, 2.2, "100L", 1430), new(4, 3, "100L", 1430),
        new(2, 0.18, "63", 2740), new(2, 0.25, "63", 2750), new(2, 0.37, "71", 2780), new(2, 0.55, "71", 2800),
        new(2, 0.75, "80", 2830), new(2, 1.1, "80", 2840), new(2, 1.5, "90S", 2850), new(2, 2.2, "90L", 2860),
        new(6, 0.18, "71", 890), new(6, 0.25, "71", 890), new(6, 0.37, "80", 910), new(6, 0.55, "80", 915),
        new(6, 0.75, "90S", 925), new(6, 1.1, "90L", 930), new(6, 1.5, "100L", 940),
        new(8, 0.12, "71", 660), new(8, 0.18, "80", 680), new(8, 0.25, "80", 680), new(8, 0.37, "90S", 690), new(8, 0.55, "90L", 690), new(8, 0.75, "100L", 700),
    ];
}
