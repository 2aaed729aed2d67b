namespace PartsMatch.Store;

/// <summary>An outcome as it was recorded, for good.</summary>
/// <param name="Sequence">Grows by 1 with every record; the first is 1.</param>
/// <param name="At">When it was recorded.</param>
/// <param name="By">Who recorded it.</param>
/// <param name="Said">What it says.</param>
/// <param name="CorrectedBy">The id of the record that took its place; null while it counts.</param>
public sealed record StoredOutcome(long Sequence, DateTimeOffset At, string By, OutcomeDraft Said, string? CorrectedBy);
