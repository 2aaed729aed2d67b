using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>Poles, frequency and speed of induction motors: n = 120 f / p.</summary>
public static class PoleCounts
{
    /// <summary>Fan motors slip up to about 16 % at full load: shaded pole 1550 of 1800 rpm is 14 % (memory).</summary>
    public const double MostSlip = 0.16;

    /// <summary>Pole counts that fan motors are wound for.</summary>
    public static IReadOnlyList<int> All { get; } = [2, 4, 6, 8, 10, 12, 14, 16];

    private static readonly int[] Wound = [.. All];

    /// <summary>Synchronous speed in rpm.</summary>
    public static double Synchronous(int poles, double hertz) => 120 * hertz / poles;

    /// <summary>Pole counts whose full-load speed this can be; empty when it can be none.</summary>
    /// <param name="rpm">Full-load speed, in rpm.</param>
    /// <param name="hertz">Frequency, in Hz.</param>
    public static Sequence<int> Of(double rpm, double hertz)
    {
        Span<int> counts = stackalloc int[Wound.Length];
        var count = 0;
        foreach (var poles in Wound)
        {
            if (Fits(rpm, poles, hertz)) counts[count++] = poles;
        }

        return Sequence.Of<int>(counts[..count]);
    }

    /// <summary>The least of them; null when it can be none.</summary>
    /// <param name="rpm">Full-load speed, in rpm.</param>
    /// <param name="hertz">Frequency, in Hz.</param>
    public static int? Fewest(double rpm, double hertz)
    {
        foreach (var poles in Wound)
        {
            if (Fits(rpm, poles, hertz)) return poles;
        }

        return null;
    }

    /// <summary>Whether two full-load speeds can be of one pole count.</summary>
    /// <param name="rpm">One, in rpm.</param>
    /// <param name="other">The other, in rpm.</param>
    /// <param name="hertz">Frequency, in Hz.</param>
    public static bool CanBeAlike(double rpm, double other, double hertz) => Array.Exists(Wound, poles => Fits(rpm, poles, hertz) && Fits(other, poles, hertz));

    /// <summary>Whether a motor of so many poles can have this full-load speed.</summary>
    public static bool Fits(double rpm, int poles, double hertz)
    {
        var synchronous = Synchronous(poles, hertz);
        return Within.Span(rpm, (1 - MostSlip) * synchronous, synchronous);
    }
}
