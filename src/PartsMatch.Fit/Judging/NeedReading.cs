namespace PartsMatch.Fit.Judging;

/// <summary>What an edge was given about a failed part and its place.</summary>
/// <param name="PlateText">The plate's text as typed; null or blank when there is none.</param>
/// <param name="Plate">Fields of the plate that were typed one by one.</param>
/// <param name="Site">Fields of the site.</param>
/// <param name="OldPart">The old part's catalogue entry, when its number was given and is known.</param>
public sealed record NeedTexts(string? PlateText, IReadOnlyList<NamedText> Plate, IReadOnlyList<NamedText> Site, Spec? OldPart = null);

/// <summary>A need made of what was given: typed fields outrank the plate's text, that outranks the catalogue's entry, and all of them outrank deductions.</summary>
/// <param name="need">Plate and site, with what could be deduced.</param>
/// <param name="contradictions">Finds what disagrees.</param>
public sealed class NeedReading(Need need, Func<IReadOnlyList<Contradiction>> contradictions)
{
    private readonly Lazy<IReadOnlyList<Contradiction>> found = new(contradictions);

    /// <summary>Plate and site, with what could be deduced.</summary>
    public Need Need => need;

    /// <summary>How the plate's text was read; null when there was none.</summary>
    public NameplateReading? Nameplate { get; init; }

    /// <summary>What was deduced, and from what.</summary>
    public required IReadOnlyList<Deduction> Deductions { get; init; }

    /// <summary>What disagrees. Looked for when first asked: it takes longer than all the rest, and ranking does not need it.</summary>
    public IReadOnlyList<Contradiction> Contradictions => found.Value;

    /// <summary>What could not be read of the plate's typed fields; the need stands all the same, without it.</summary>
    public required IReadOnlyList<Complaint> PlateComplaints { get; init; }

    /// <summary>What could not be read of the site.</summary>
    public required IReadOnlyList<Complaint> SiteComplaints { get; init; }

    /// <summary>All that could not be read, of the plate's text too.</summary>
    public IEnumerable<Complaint> Complaints => [.. Nameplate?.Complaints ?? [], .. PlateComplaints, .. SiteComplaints];
}
