using PartsMatch.Service.Exchange;

namespace PartsMatch.Service.Commands;

/// <summary>An import's report for a terminal: what changes and the counts as the answer, what is bad beside it.</summary>
internal static class ImportView
{
    public static async Task WriteAsync(ImportReport report, string path, TextWriter output)
    {
        foreach (var note in report.Notes) await output.WriteLineAsync(note);
        foreach (var row in report.Told.Where(row => row.State == RowState.Changed))
        {
            await output.WriteLineAsync(Said($"row {row.Row}, {row.Number}: {string.Join("; ", row.Changes.Select(change => $"{change.Column} {Shown(change.Old)} → {Shown(change.New)}"))}"));
        }

        await WriteUntoldAsync(report, RowState.Changed, report.Changed, output);
        await output.WriteLineAsync(Said($"{report.Rows} rows: {report.New} new, {report.Changed} changed, {report.Same} the same, {report.Bad} bad{(report.Conflicts > 0 ? Said($", {report.Conflicts} in conflict") : string.Empty)}."));
        if (report.IsTaken) await output.WriteLineAsync(Said($"{report.New + report.Changed} rows were written."));
        else await output.WriteLineAsync(report.New + report.Changed == 0 ? "Nothing was written, and nothing of it is to be." : Said($"Nothing was written. To take what is new and changed: import {Quoted(path)} --kind {report.Kind} --take --seen {report.Seen}"));
    }

    public static async Task WriteRefusedAsync(ImportReport report, TextWriter errors)
    {
        foreach (var row in report.Told)
        {
            foreach (var wrong in row.Wrong) await errors.WriteLineAsync(Said($"row {row.Row}{(wrong.Column.Length == 0 ? string.Empty : $", {wrong.Column}")}: {wrong.Message}"));
        }

        await WriteUntoldAsync(report, RowState.Bad, report.Bad, errors);
        await WriteUntoldAsync(report, RowState.Conflict, report.Conflicts, errors);
    }

    private static async Task WriteUntoldAsync(ImportReport report, RowState state, int all, TextWriter text)
    {
        var untold = all - report.Told.Count(row => row.State == state);
        var word = state == RowState.Conflict ? "in conflict" : state.ToString().ToLowerInvariant();
        var whole = state is RowState.Bad or RowState.Conflict ? "; --report file.csv writes all of them" : string.Empty;
        if (untold > 0) await text.WriteLineAsync(Said($"and {untold} more rows that are {word}{whole}"));
    }

    private static string Shown(string text) => text.Length == 0 ? "unknown" : $"“{text}”";

    private static string Quoted(string path) => path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path;

    private static string Said(FormattableString said) => FormattableString.Invariant(said);
}
