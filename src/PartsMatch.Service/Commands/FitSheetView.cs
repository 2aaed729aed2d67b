using System.Text.Json;
using PartsMatch.Fit.Judging;
using Spectre.Console;

namespace PartsMatch.Service.Commands;

/// <summary>One part's fit sheet, for a terminal.</summary>
internal static class FitSheetView
{
    public static void Write(Family family, JsonElement sheet, TextWriter output)
    {
        var console = Terminal.On(output);
        NeedView.Write(family, sheet, console);
        var part = sheet.GetProperty("part");
        console.WriteLine($"{part.Text("number")}  {part.Text("title")} ({part.Text("maker")})");
        if (Terminal.StatusWords(part) is { } status) console.WriteLine($"This part is {status}.");

        // Of the old part itself it was said above.
        var isOld = sheet.GetProperty("oldPart") is { ValueKind: JsonValueKind.Object } old && old.Text("number") == part.Text("number");
        if (!isOld) foreach (var line in Terminal.Superseded(part)) console.WriteLine(line);
        var likelihood = sheet.GetProperty("likelihood") is { ValueKind: JsonValueKind.Number } percent ? $" Likelihood{(sheet.Text("fit") == "CANT_TELL_YET" ? " so far" : string.Empty)} {percent.GetInt32()} %, from {sheet.Text("likelihoodFrom")}." : string.Empty;
        console.WriteLine($"It {Terminal.FitSentence(sheet)}.{likelihood}");

        var changes = sheet.Each("changes").ToList();
        if (changes.Count > 0) console.WriteLine("To change or check:");
        foreach (var change in changes) console.WriteLine($"  [ ] {change.Text("words")}");
        var missing = sheet.Each("findings").Where(finding => finding.Text("verdict") == "UNKNOWN").SelectMany(finding => finding.Each("missing")).Select(one => Terminal.MissingWords(family, one)).Distinct().ToList();
        if (missing.Count > 0) console.WriteLine("To find out:");
        foreach (var one in missing) console.WriteLine($"  [ ] {one}");

        var table = new Table().Border(TableBorder.Simple).AddColumns("", "Question", "Why", "To the limit", "Source");
        foreach (var finding in sheet.Each("findings"))
        {
            table.AddRow(new[]
            {
                Terminal.VerdictWords(finding.Text("verdict")), finding.Text("title"), finding.Text("sentence"), Terminal.Margin(finding.GetProperty("margin")), Terminal.Source(finding.GetProperty("source")),
            }.Select(Markup.Escape).ToArray());
        }

        console.Write(table);
        DifferencesView.Write(sheet, console);
        NotesView.Write(sheet, console);
    }
}
