using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Published;

/// <summary>What a pilot-duty designation says at some volts.</summary>
/// <param name="Designation">A300.</param>
/// <param name="ThermalAmps">Amps that it carries all day.</param>
/// <param name="Volts">The volts.</param>
/// <param name="MakeAmps">Amps that it closes on.</param>
/// <param name="BreakAmps">Amps that it opens.</param>
/// <param name="MakeVa">VA that it closes on, from 120 V up to its greatest volts.</param>
/// <param name="BreakVa">VA that it opens.</param>
/// <param name="Source">The table.</param>
public sealed record PilotDutyRating(string Designation, double ThermalAmps, double Volts, double MakeAmps, double BreakAmps, double MakeVa, double BreakVa, Source Source);

/// <summary>Pilot-duty ratings: NEMA ICS 5 table 1-4-1, IEC 60947-5-1 annex A.</summary>
public static class PilotDuties
{
    /// <summary>All rows.</summary>
    public static IReadOnlyList<PilotDutyRating> All { get; } = [.. PublishedTable.Read("pilot-duty").Select(row => new PilotDutyRating(
        row.Text("designation"),
        row.Needed("thermal_A"),
        row.Needed("volts"),
        row.Needed("make_A"),
        row.Needed("break_A"),
        row.Needed("make_VA"),
        row.Needed("break_VA"),
        row.Source))];

    /// <summary>The designations, in the table's order.</summary>
    public static IReadOnlyList<string> Designations { get; } = [.. All.Select(row => row.Designation).Distinct(StringComparer.Ordinal)];

    /// <summary>The rows of a designation, by rising volts; none when there is no such.</summary>
    /// <param name="designation">The designation, such as A300.</param>
    public static IReadOnlyList<PilotDutyRating> Of(string designation) => [.. All.Where(row => row.Designation == designation)];
}
