namespace PartsMatch.Fit.Judging;

/// <summary>What an edge was given about a failed part and its place.</summary>
/// <param name="PlateText">The plate's text as typed; null or blank when there is none.</param>
/// <param name="Plate">Fields of the plate that were typed one by one.</param>
/// <param name="Site">Fields of the site.</param>
/// <param name="OldPart">The old part's catalogue entry, when its number was given and is known.</param>
public sealed record NeedTexts(string? PlateText, IReadOnlyList<NamedText> Plate, IReadOnlyList<NamedText> Site, Spec? OldPart = null);

/// <summary>A need made of what was given: typed fields outrank the plate's text, that outranks the catalogue's entry, and all of them outrank deductions.</summary>
/// <param name="Need">Plate and site, with what could be deduced.</param>
/// <param name="Nameplate">How the plate's text was read; null when there was none.</param>
/// <param name="Deductions">What was deduced, and from what.</param>
/// <param name="Contradictions">What disagrees.</param>
/// <param name="PlateComplaints">What could not be read of the plate's typed fields; the need stands all the same, without it.</param>
/// <param name="SiteComplaints">What could not be read of the site.</param>
public sealed record NeedReading(
    Need Need,
    NameplateReading? Nameplate,
    IReadOnlyList<Deduction> Deductions,
    IReadOnlyList<Contradiction> Contradictions,
    IReadOnlyList<Complaint> PlateComplaints,
    IReadOnlyList<Complaint> SiteComplaints)
{
    /// <summary>All that could not be read, of the plate's text too.</summary>
    public IEnumerable<Complaint> Complaints => [.. Nameplate?.Complaints ?? [], .. PlateComplaints, .. SiteComplaints];
}
