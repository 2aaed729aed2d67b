using System.Globalization;
using System.Text.Json;
using PartsMatch.Fit.Judging;
using Spectre.Console;

namespace PartsMatch.Service.Commands;

/// <summary>The ranked list, as a table for a terminal.</summary>
internal static class ReplacementsView
{
    public static void Write(Family family, JsonElement replacements, TextWriter output)
    {
        var console = Terminal.On(output);
        WriteNeed(family, replacements, console);
        var nodes = replacements.Each("edges").Select(edge => edge.GetProperty("node")).ToList();
        if (nodes.Count == 0) return;

        // What every part waits for is said once, above the table; a row says only what it alone still needs.
        var open = nodes.Select(node => Open(family, node)).ToList();
        var always = open.Skip(1).Aggregate(open[0].AsEnumerable(), (common, next) => common.Intersect(next)).ToList();
        Terminal.Line(console, "To be sure of any of these, find out first", always);

        var table = new Table().Border(TableBorder.Simple).AddColumns("#", "Part", "Maker", "Fit", "Likely", "To change, check or find out", "At hand", "Price");
        for (var row = 0; row < nodes.Count; row++)
        {
            var part = nodes[row].GetProperty("part");
            var toDo = nodes[row].Each("changes").Select(change => change.Text("words")).Concat(open[row].Except(always)).ToList();
            table.AddRow(new[]
            {
                (row + 1).ToString(CultureInfo.InvariantCulture),
                part.Text("number") + (part.Text("status") == "DISCONTINUED" ? " (discontinued)" : string.Empty),
                part.Text("maker"),
                Terminal.FitWords(nodes[row].Text("fit")),
                $"{nodes[row].GetProperty("likelihood").GetInt32()} %",
                toDo.Count > 0 ? string.Join("; ", toDo) : always.Count > 0 ? "only what stands above" : "nothing",
                nodes[row].GetProperty("onHand") is { ValueKind: JsonValueKind.Number } onHand ? onHand.GetInt32().ToString(CultureInfo.InvariantCulture) : "?",
                Terminal.Price(nodes[row].GetProperty("price")),
            }.Select(Markup.Escape).ToArray());
        }

        console.Write(table);
        console.WriteLine($"Likelihood from {nodes[0].Text("likelihoodFrom")}. For the reasons add --sheet 1, or another row.");
    }

    /// <summary>What was read and deduced, and what to doubt.</summary>
    private static void WriteNeed(Family family, JsonElement replacements, IAnsiConsole console)
    {
        if (replacements.GetProperty("nameplate") is { ValueKind: JsonValueKind.Object } plate)
        {
            Terminal.Line(console, "Read", plate.Each("fields").Where(field => !field.GetProperty("deduced").GetBoolean()).Select(field => $"{field.Text("label")} {field.Text("text")}"));
            Terminal.Line(console, "Left over", plate.Each("leftovers").Select(span => span.Text("text")));
            foreach (var complaint in plate.Each("complaints")) console.WriteLine($"Not read: {complaint.Text("sentence")}");
        }

        var deduced = replacements.Each("deductions").ToLookup(one => one.Text("side"));
        Terminal.Line(console, "It follows", deduced["PLATE"].Select(one => $"{Terminal.Label(family, one)} {one.Text("text")} ({one.Text("because")})"));
        Terminal.Line(console, "Taken for the site", deduced["SITE"].Select(one => $"{Terminal.Label(family, one)} {one.Text("text")}"));
        foreach (var doubt in replacements.Each("contradictions")) console.WriteLine($"Doubt: {doubt.Text("sentence")}");
    }

    /// <summary>What stands in the way when nothing fits.</summary>
    public static void WriteMisses(JsonElement replacements, TextWriter output)
    {
        var console = Terminal.On(output);
        console.WriteLine("Nothing in the catalogue fits. The nearest misses, and what stands in the way:");
        foreach (var miss in replacements.Each("nearestMisses"))
        {
            var part = miss.GetProperty("part");
            console.WriteLine($"  {part.Text("number")}  {part.Text("title")} ({part.Text("maker")})");
            foreach (var failure in miss.Each("inTheWay")) console.WriteLine($"      {failure.Text("title")}: {failure.Text("sentence")}");
        }
    }

    /// <summary>What is still to be found out for a part.</summary>
    private static List<string> Open(Family family, JsonElement node) => [.. node.Each("findings")
        .Where(finding => finding.Text("verdict") == "UNKNOWN")
        .SelectMany(finding => finding.Each("missing"))
        .Select(missing => Terminal.MissingWords(family, missing))
        .Distinct()];
}
