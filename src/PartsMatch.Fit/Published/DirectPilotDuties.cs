using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Published;

/// <summary>What a pilot-duty designation for direct current says at some volts.</summary>
/// <param name="Designation">R300.</param>
/// <param name="ThermalAmps">Amps that it carries all day.</param>
/// <param name="Volts">The volts.</param>
/// <param name="Amps">Amps that it closes on and opens.</param>
/// <param name="Va">VA that it closes on and opens, up to 300 V.</param>
/// <param name="Source">The table.</param>
public sealed record DirectPilotDutyRating(string Designation, double ThermalAmps, double Volts, double Amps, double Va, Source Source);

/// <summary>Pilot-duty ratings for direct current: NEMA ICS 5, IEC 60947-5-1 annex A.</summary>
public static class DirectPilotDuties
{
    /// <summary>All rows.</summary>
    public static IReadOnlyList<DirectPilotDutyRating> All { get; } = [.. PublishedTable.Read("pilot-duty-direct").Select(row => new DirectPilotDutyRating(
        row.Text("designation"),
        row.Needed("thermal_A"),
        row.Needed("volts"),
        row.Needed("make_break_A"),
        row.Needed("make_break_VA"),
        row.Source))];

    /// <summary>The designations, in the table's order.</summary>
    public static IReadOnlyList<string> Designations { get; } = [.. All.Select(row => row.Designation).Distinct(StringComparer.Ordinal)];

    /// <summary>The rows of a designation, by rising volts; none when there is no such.</summary>
    /// <param name="designation">The designation, such as R300.</param>
    public static IReadOnlyList<DirectPilotDutyRating> Of(string designation) => [.. All.Where(row => row.Designation == designation)];
}
