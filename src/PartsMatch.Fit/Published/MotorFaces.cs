using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Fit.Published;

/// <summary>A face or flange.</summary>
/// <param name="System">NEMA or IEC.</param>
/// <param name="Name">56C, 143TC/145TC, FF130, FT85.</param>
/// <param name="Frames">The frames that have it: 56, 143T, 80.</param>
/// <param name="BoltCircle">NEMA AJ, IEC M.</param>
/// <param name="Pilot">Diameter of the centring rim: NEMA AK, IEC N.</param>
/// <param name="ShaftDiameter">NEMA U; null for IEC.</param>
/// <param name="ShaftBeyondFace">Shaft length from the face: NEMA AH; null for IEC.</param>
/// <param name="Source">Where the row comes from.</param>
public sealed record MotorFace(
    FrameSystem System, string Name, IReadOnlyList<string> Frames, Length BoltCircle, Length Pilot, Length? ShaftDiameter, Length? ShaftBeyondFace, Source Source)
{
    /// <summary>Whether bolts go through it from behind (IEC FF, IM B5) rather than into it (NEMA C, IEC FT, IM B14).</summary>
    public bool HasClearanceHoles => Name.StartsWith("FF", StringComparison.Ordinal);
}

/// <summary>Faces and flanges: NEMA MG 1 4.4.4 type C, and IEC 60072-1 from memory.</summary>
public static class MotorFaces
{
    /// <summary>All rows.</summary>
    public static IReadOnlyList<MotorFace> All { get; } = [.. PublishedTable.Read("motor-faces").Select(Row)];

    /// <summary>The face that a NEMA frame's C suffix promises (56C, 143TC, 184TCH); null when it promises none.</summary>
    public static MotorFace? Find(FrameSize frame)
    {
        if (frame.System != FrameSystem.Nema || !frame.PromisesDimensions || !frame.Suffix.Contains('C', StringComparison.Ordinal)) return null;
        var name = FormattableString.Invariant($"{frame.Number}{frame.Suffix}");
        return All.FirstOrDefault(face => face.System == FrameSystem.Nema && face.Name.Split('/').Contains(name));
    }

    private static MotorFace Row(PublishedRow row)
    {
        Length? Of(string column) => row.Number(column) is { } number ? Length.From(number, row.Text("unit") == "in" ? LengthUnit.Inch : LengthUnit.Millimeter) : null;
        return new(
            row.Text("system") == "NEMA" ? FrameSystem.Nema : FrameSystem.Iec,
            row.Text("face"),
            row.Text("for_frame").Split([" and ", " "], StringSplitOptions.RemoveEmptyEntries),
            Of("bolt_circle")!.Value,
            Of("pilot")!.Value,
            Of("shaft_diameter"),
            Of("shaft_beyond_face"),
            row.Source);
    }
}
