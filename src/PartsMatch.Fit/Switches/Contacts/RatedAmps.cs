using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>A contact's amps of one kind at one voltage.</summary>
/// <param name="Volts">Rated volts, V; null when not known.</param>
/// <param name="Amps">Amps, A.</param>
public readonly record struct AmpsAt(double? Volts, double Amps);

/// <summary>A contact's amps of one kind at each of its rated volts, as facets hold them.</summary>
public static class RatedAmps
{
    /// <summary>A contact for 240 V is used on a supply that wanders up to a tenth over it (practice).</summary>
    public const double Wander = 1.1;

    /// <summary>Volts and figures of a plate, paired by position; none where no amps are known, or where the two do not pair.</summary>
    /// <param name="volts">The rated volts.</param>
    /// <param name="amps">The figures beside them.</param>
    public static Sequence<AmpsAt> Of(Figures<ElectricPotential>? volts, Figures<ElectricCurrent>? amps)
    {
        if (amps is null) return [];
        if (volts is null) return [.. amps.Select(one => new AmpsAt(null, Rounded.To(one.Amperes, 2)))];
        return Pair(volts.Count, amps.Count) ? [.. volts.Select((one, row) => new AmpsAt(Rounded.To(one.Volts, 1), Rounded.To(amps.Of(row).Amperes, 2)))] : [];
    }

    /// <summary>The amps at some volts: the most of any row for those volts or higher ones; null above all rows.</summary>
    /// <param name="rows">The ratings.</param>
    /// <param name="volts">The volts, V.</param>
    public static double? At(Sequence<AmpsAt> rows, double volts)
    {
        double? most = null;
        foreach (var row in rows.AsSpan())
        {
            if (row.Volts is { } rated && Within.AtMost(volts, rated * Wander) && !(most >= row.Amps)) most = row.Amps;
        }

        return most;
    }

    /// <summary>The highest rated volts; null where none are known.</summary>
    /// <param name="rows">The ratings.</param>
    public static double? MostVolts(Sequence<AmpsAt> rows) => rows.Max(row => row.Volts);

    /// <summary>The most amps at any volts; null of none.</summary>
    /// <param name="rows">The ratings.</param>
    public static double? MostAmps(Sequence<AmpsAt> rows) => rows.Count == 0 ? null : rows.Max(row => row.Amps);

    /// <summary>Whether figures pair by position: as many, or one for all.</summary>
    internal static bool Pair(int volts, int figures) => volts == figures || figures == 1;
}
