using PartsMatch.Fit.Quantities;
using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>What the rows of one entry say beside the catalogue.</summary>
/// <param name="Key">The key of the part's number.</param>
/// <param name="Rows">Each row.</param>
/// <param name="Write">What is to be written when they are taken; null when there is nothing, or nothing good.</param>
internal sealed record Judged(string Key, IReadOnlyList<RowTold> Rows, AskedWrite? Write)
{
    public static Judged Same(CsvRow row, string number) => new(PartNumber.Key(number), [new(row.Number, number, RowState.Same, [], [])], Write: null);

    public static Judged Bad(CsvRow row, string number, IReadOnlyList<RowComplaint> wrong) => new(PartNumber.Key(number), [new(row.Number, Told(number), RowState.Bad, [], wrong)], Write: null);

    public static Judged Of(CsvRow row, string number, RowState state, IReadOnlyList<FieldChange> changes, AskedWrite write) => new(PartNumber.Key(number), [new(row.Number, number, state, changes, [])], write);

    /// <summary>Not written, because someone else wrote there.</summary>
    public Judged InConflict(RowComplaint why) => new(Key, [.. Rows.Select(row => row with { State = RowState.Conflict, Wrong = [why] })], Write: null);

    /// <summary>A number as it stands in its row, as far as a number can reach: where a mark is missing, a cell may be the rest of the file.</summary>
    private static string Told(string number) => UnseenSigns.Shown(number.Length <= PartNumber.MostCharacters ? number : $"{number[..PartNumber.MostCharacters]}…");
}
