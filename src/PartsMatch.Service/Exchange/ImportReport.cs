using System.Text.Json.Serialization;

namespace PartsMatch.Service.Exchange;

/// <summary>What a row of a table says, beside what the catalogue says.</summary>
public enum RowState
{
    /// <summary>The catalogue has nothing of it.</summary>
    New,

    /// <summary>The catalogue says something else.</summary>
    Changed,

    /// <summary>The catalogue says the same: there is nothing to write.</summary>
    Same,

    /// <summary>It cannot be taken as it is.</summary>
    Bad,

    /// <summary>It differs from the catalogue, and someone else wrote there since the preview: it is not taken.</summary>
    Conflict,
}

/// <summary>What is wrong with a row.</summary>
/// <param name="Column">In which column; empty for the row as a whole.</param>
/// <param name="Code">One of <see cref="Counter.Codes"/>.</param>
/// <param name="Message">What is wrong, and what would be right.</param>
public sealed record RowComplaint(string Column, string Code, string Message)
{
    internal static RowComplaint Of(Counter.Refusal refusal) => new(refusal.At, refusal.Code, refusal.Message);
}

/// <summary>A column whose text becomes another; an empty text is unknown.</summary>
public sealed record FieldChange(string Column, string Old, string New);

/// <summary>What one row says. A row that says the same is counted and not told.</summary>
/// <param name="Row">Its number in the file as spreadsheets count, the header being 1.</param>
/// <param name="Number">The part number in it.</param>
/// <param name="State">What it says, beside what the catalogue says.</param>
/// <param name="Changes">For a changed row or a conflict: what would be another.</param>
/// <param name="Wrong">For a bad row or a conflict: all that is wrong.</param>
public sealed record RowTold(int Row, string Number, RowState State, IReadOnlyList<FieldChange> Changes, IReadOnlyList<RowComplaint> Wrong);

/// <summary>How far an import has come.</summary>
/// <param name="Rows">How many rows the file has.</param>
/// <param name="Read">How many of them were compared with the catalogue.</param>
/// <param name="Written">How many of them were written and are on the disk.</param>
public readonly record struct ImportProgress(int Rows, int Read, int Written);

/// <summary>What a table says beside the catalogue, and, when it was taken, what was written.</summary>
/// <param name="Kind">Which table: motor, stock.</param>
/// <param name="IsTaken">Whether the good rows were written; false for a preview.</param>
/// <param name="Seen">The state of the catalogue that this was compared with: hand it to the taking, and what others wrote since is a conflict.</param>
/// <param name="Rows">How many rows there are, blank ones aside.</param>
/// <param name="New">How many the catalogue has nothing of.</param>
/// <param name="Changed">How many say something else than the catalogue.</param>
/// <param name="Same">How many say the same.</param>
/// <param name="Bad">How many cannot be taken.</param>
/// <param name="Conflicts">How many were not taken because someone else wrote there since the preview.</param>
/// <param name="Notes">What is to be known of the file as a whole.</param>
/// <param name="Told">The rows that are not the same, in the file's order: of each state as many as the limit has.</param>
public sealed record ImportReport(
    string Kind,
    bool IsTaken,
    long Seen,
    int Rows,
    int New,
    int Changed,
    int Same,
    int Bad,
    int Conflicts,
    IReadOnlyList<string> Notes,
    IReadOnlyList<RowTold> Told)
{
    /// <summary>Every bad row and conflict, told or not. It travels by itself.</summary>
    [JsonIgnore]
    internal RefusedRows Refused { get; init; } = new();
}
