namespace PartsMatch.Demo.Motors.Tables;

/// <summary>Shaft and face of a NEMA frame, as texts.</summary>
/// <param name="Frame">The frame, with C or TC for a face.</param>
/// <param name="ShaftDiameter">U.</param>
/// <param name="ShaftLength">N-W of a foot-mounted one, AH of a face-mounted one.</param>
/// <param name="ShaftForm">Flat or keyway.</param>
/// <param name="FaceCircle">AJ, or null without a face.</param>
/// <param name="FacePilot">AK, or null without a face.</param>
/// <param name="Body">Body diameter: practice, no standard.</param>
public sealed record NemaFrame(string Frame, string ShaftDiameter, string ShaftLength, string ShaftForm, string? FaceCircle, string? FacePilot, string Body);

/// <summary>NEMA MG 1 clause 4.4.1 (foot-mounted) and 4.4.4 (type C face): the rows that small motors use.</summary>
public static class NemaFrames
{
    /// <summary>The frames; dimensions are the standard's, body diameters are practice.</summary>
    public static IReadOnlyDictionary<string, NemaFrame> All { get; } = new NemaFrame[]
    {
        new("42", "0.375 in", "1.12 in", "flat", null, null, "5 in"),
        new("48", "0.5 in", "1.5 in", "flat", null, null, "5.6 in"),
        new("56", "0.625 in", "1.88 in", "keyway", null, null, "6.5 in"),
        new("56H", "0.625 in", "1.88 in", "keyway", null, null, "6.5 in"),
        new("143T", "0.875 in", "2.25 in", "keyway", null, null, "6.9 in"),
        new("145T", "0.875 in", "2.25 in", "keyway", null, null, "6.9 in"),
        new("182T", "1.125 in", "2.75 in", "keyway", null, null, "8.6 in"),
        new("184T", "1.125 in", "2.75 in", "keyway", null, null, "8.6 in"),
        new("48C", "0.5 in", "1.69 in", "flat", "3.75 in", "3 in", "5.6 in"),
        new("56C", "0.625 in", "2.06 in", "keyway", "5.875 in", "4.5 in", "6.5 in"),
        new("143TC", "0.875 in", "2.12 in", "keyway", "5.875 in", "4.5 in", "6.9 in"),
        new("145TC", "0.875 in", "2.12 in", "keyway", "5.875 in", "4.5 in", "6.9 in"),
        new("182TC", "1.125 in", "2.62 in", "keyway", "7.25 in", "8.5 in", "8.6 in"),
        new("184TC", "1.125 in", "2.62 in", "keyway", "7.25 in", "8.5 in", "8.6 in"),
    }.ToDictionary(row => row.Frame);
}
