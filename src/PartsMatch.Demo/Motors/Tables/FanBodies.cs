namespace PartsMatch.Demo.Motors.Tables;

/// <summary>Body of a fan motor: practice, from memory, unchecked; no standard fixes it.</summary>
/// <param name="Diameter">Across the shell.</param>
/// <param name="StudCircle">Across opposite studs.</param>
/// <param name="LeastLength">Shell length of the smallest motor in it, in inches.</param>
/// <param name="InchesPerHorsepower">How much longer it grows with power.</param>
public sealed record FanBody(string Diameter, string StudCircle, double LeastLength, double InchesPerHorsepower);

/// <summary>Bodies by frame; the smallest motors have none and are known by their diameter.</summary>
public static class FanBodies
{
    /// <summary>42Y, 48Y and 56Y; Y promises only the shaft height.</summary>
    public static IReadOnlyDictionary<string, FanBody> ByFrame { get; } = new Dictionary<string, FanBody>
    {
        ["42Y"] = new("5 in", "4-3/8 in", 2.75, 6),
        ["48Y"] = new("5.6 in", "4-15/16 in", 2.9, 5),
        ["56Y"] = new("6.5 in", "5-7/8 in", 3.5, 3.4),
    };

    /// <summary>Shaded pole motors of a few watts.</summary>
    public static FanBody Small { get; } = new("3.3 in", "2-13/16 in", 1.75, 22);

    /// <summary>The larger of them.</summary>
    public static FanBody Medium { get; } = new("4.4 in", "3-3/4 in", 2.0, 18);

    /// <summary>Speeds that makers print for a fan motor of so many poles at 60 Hz (NEMA MG 1 part 18 lists such speeds; clause not verified), the usual one first.</summary>
    public static IReadOnlyList<int> Speeds(int poles) => poles switch
    {
        4 => [1625, 1625, 1625, 1600, 1650],
        6 => [1075, 1075, 1075, 1075, 1075, 1075, 1100, 1050, 1090],
        _ => [825, 825, 825, 825, 840, 810],
    };
}
