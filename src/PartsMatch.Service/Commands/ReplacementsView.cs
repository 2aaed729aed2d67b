using System.Globalization;
using System.Text.Json;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using Spectre.Console;

namespace PartsMatch.Service.Commands;

/// <summary>The ranked list, as a table for a terminal.</summary>
internal static class ReplacementsView
{
    public static void Write(Family family, JsonElement replacements, TextWriter output)
    {
        var console = Terminal.On(output);
        NeedView.Write(family, replacements, console);
        var nodes = replacements.Each("edges").Select(edge => edge.GetProperty("node")).ToList();
        if (nodes.Count == 0) return;

        // What every part waits for is said once, above the table; a row says only what it alone still needs.
        var open = nodes.Select(node => Open(family, node)).ToList();
        var checks = nodes.Select(Checks).ToList();
        var (always, alwaysChecked) = (Common(open), Common(checks));
        Terminal.Line(console, "To be sure of any of these, find out first", always);
        Terminal.Line(console, "To check on each of these", alwaysChecked);

        var old = replacements.GetProperty("oldPart") is { ValueKind: JsonValueKind.Object } given ? given.Text("number") : null;
        var table = new Table().Border(TableBorder.Simple).AddColumns("#", "Part", "Maker", "Fit", "Likely", "To change, check or find out", "At hand", "Price");
        for (var row = 0; row < nodes.Count; row++)
        {
            var part = nodes[row].GetProperty("part");
            int? onHand = nodes[row].GetProperty("onHand") is { ValueKind: JsonValueKind.Number } count ? count.GetInt32() : null;
            string[] same = part.Text("number") == old ? [Words.TheSame(onHand)] : [];
            var toDo = same.Concat(nodes[row].Each("changes").Select(change => change.Text("words"))).Concat(open[row].Except(always)).Concat(checks[row].Except(alwaysChecked).Select(check => $"check: {check}")).ToList();
            table.AddRow(new[]
            {
                (row + 1).ToString(CultureInfo.InvariantCulture),
                part.Text("number") + (Terminal.StatusWords(part) is { } status ? $" ({status})" : string.Empty),
                part.Text("maker"),
                Terminal.FitWords(nodes[row]),
                $"{nodes[row].GetProperty("likelihood").GetInt32()} %",
                toDo.Count > 0 ? string.Join("; ", toDo) : always.Count + alwaysChecked.Count > 0 ? "only what stands above" : "nothing",
                onHand?.ToString(CultureInfo.InvariantCulture) ?? "?",
                Terminal.Price(nodes[row].GetProperty("price")),
            }.Select(Markup.Escape).ToArray());
        }

        console.Write(table);
        console.WriteLine($"Likelihood from {nodes[0].Text("likelihoodFrom")}. For the reasons add --sheet 1, or another row.");
    }

    /// <summary>What stands in the way when nothing fits.</summary>
    public static void WriteMisses(JsonElement replacements, TextWriter output)
    {
        var console = Terminal.On(output);
        List<JsonElement> misses = [.. replacements.Each("nearestMisses")];
        console.WriteLine(misses.Count == 0
            ? "Nothing in the catalogue fits or comes near: it may have no parts of this kind."
            : "Nothing in the catalogue fits. The nearest misses, and what stands in the way:");
        foreach (var miss in misses)
        {
            var part = miss.GetProperty("part");
            console.WriteLine($"  {Terminal.Part(part)}");
            foreach (var failure in miss.Each("inTheWay")) console.WriteLine($"      {failure.Text("title")}: {failure.Text("sentence")}");
        }
    }

    /// <summary>What is still to be found out before it is known whether a part fits.</summary>
    private static List<string> Open(Family family, JsonElement node) => [.. Unknown(node, isDeciding: true)
        .SelectMany(finding => finding.Each("missing"))
        .Select(missing => Terminal.MissingWords(family, missing))
        .Distinct()];

    /// <summary>What to look at on a part that fits as far as is known; its fit sheet says what is missing.</summary>
    private static List<string> Checks(JsonElement node) => [.. Unknown(node, isDeciding: false).Select(finding => finding.Text("title").ToLowerInvariant())];

    private static IEnumerable<JsonElement> Unknown(JsonElement node, bool isDeciding) =>
        node.Each("findings").Where(finding => finding.Text("verdict") == "UNKNOWN" && finding.GetProperty("isDeciding").GetBoolean() == isDeciding);

    private static List<string> Common(List<List<string>> rows) => [.. rows.Skip(1).Aggregate(rows[0].AsEnumerable(), (common, next) => common.Intersect(next))];
}
