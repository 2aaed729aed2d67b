namespace PartsMatch.Browser.Tests.Support;

/// <summary>The job of the README's first command, as links hold it.</summary>
internal static class Job
{
    public const string Plate = "HP 1/4 RPM 1075 V 208-230 PH 1 HZ 60 A 2.1 FR 48Y ROT CCW LE INS B AMB 60C CAP 5/370 TEAO";

    /// <summary>First in the README's list.</summary>
    public const string FittingPart = "V1U45-C7";

    /// <summary>A 230 V motor of seed-data/motors.csv with 3/4 hp: 202 V is too little for it.</summary>
    public const string UnfitPart = "02-ZEM-24A";

    /// <summary>What was typed into fields: the options of the README's command.</summary>
    public static IReadOnlyList<(string Field, string Text)> Typed { get; } =
    [
        ("plate.shaftDiameter", "1/2 in"), ("plate.shaftLength", "4 in"), ("plate.shaftForm", "flat"), ("plate.shaftEnds", "1"),
        ("plate.mounts", "belly band"), ("plate.bodyDiameter", "5.6 in"), ("site.volts", "202"),
    ];

    /// <summary>The link of a page about this job.</summary>
    public static string At(string path, params IEnumerable<string> more) =>
        $"{path}?{string.Join('&', [.. more, $"text={Uri.EscapeDataString(Plate)}", .. Typed.Where(one => !more.Any(other => other.StartsWith($"{one.Field}=", StringComparison.Ordinal))).Select(one => $"{one.Field}={Uri.EscapeDataString(one.Text)}")])}";
}
