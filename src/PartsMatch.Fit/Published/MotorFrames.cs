using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Fit.Published;

/// <summary>What a frame's number promises of feet and shaft.</summary>
/// <param name="System">NEMA or IEC.</param>
/// <param name="Name">The frame without a face's letter: 48, 56H, 143T, 90S.</param>
/// <param name="ShaftHeight">From the feet to the shaft's middle.</param>
/// <param name="FootWidth">Between the foot holes across the shaft (NEMA 2E, IEC A).</param>
/// <param name="FootLength">Between the foot holes along the shaft (NEMA 2F, IEC B).</param>
/// <param name="ShaftDiameter">NEMA U, IEC D.</param>
/// <param name="ShaftLength">NEMA N-W, IEC E. For fan motors often made longer, in steps of 1/4 in (MG 1 4.4.1, note 3).</param>
/// <param name="ShaftForm">Flat or keyway.</param>
/// <param name="Source">Where the row comes from.</param>
public sealed record MotorFrame(
    FrameSystem System, string Name, Length ShaftHeight, Length FootWidth, Length FootLength, Length ShaftDiameter, Length ShaftLength, ShaftForm ShaftForm, Source Source);

/// <summary>Foot-mounted frames: NEMA MG 1 4.4.1, and IEC 60072-1 from memory.</summary>
public static class MotorFrames
{
    /// <summary>All rows.</summary>
    public static IReadOnlyList<MotorFrame> All { get; } = [.. PublishedTable.Read("motor-frames").Select(Row)];

    private static readonly Dictionary<(FrameSystem, string), MotorFrame> ByName = All.ToDictionary(row => (row.System, row.Name));

    /// <summary>The row of a frame; null when the table has none, or when a Y or Z takes the promise back.</summary>
    /// <remarks>A face's C adds nothing to feet and shaft diameter. An IEC number without its foot length (90) is found when its rows have the same shaft.</remarks>
    public static MotorFrame? Find(FrameSize frame)
    {
        if (!frame.PromisesDimensions) return null;
        var suffix = frame.System == FrameSystem.Nema ? frame.Suffix.Replace("C", string.Empty, StringComparison.Ordinal) : frame.Suffix;
        var name = FormattableString.Invariant($"{frame.Number}{suffix}");
        if (ByName.TryGetValue((frame.System, name), out var row)) return row;
        return frame.System == FrameSystem.Iec ? All.FirstOrDefault(one => one.System == FrameSystem.Iec && (int)one.ShaftHeight.Millimeters == frame.Number) : null;
    }

    private static MotorFrame Row(PublishedRow row)
    {
        Length Of(string column) => Length.From(row.Needed(column), row.Text("unit") == "in" ? LengthUnit.Inch : LengthUnit.Millimeter);
        return new(
            row.Text("system") == "NEMA" ? FrameSystem.Nema : FrameSystem.Iec,
            row.Text("frame"),
            Of("shaft_height"),
            Of("foot_width"),
            Of("foot_length"),
            Of("shaft_diameter"),
            Of("shaft_length"),
            row.Text("key_or_flat") == "flat" ? ShaftForm.Flat : ShaftForm.Keyway,
            row.Source);
    }
}
