using System.Globalization;
using System.Text.Json;
using Spectre.Console;

namespace PartsMatch.Service.Commands;

/// <summary>What will be different once a part runs, for a terminal: old, new, ratio, and what the estimates assume.</summary>
internal static class DifferencesView
{
    public static void Write(JsonElement sheet, IAnsiConsole console)
    {
        var differences = sheet.Each("willDiffer").ToList();
        if (differences.Count == 0) return;
        console.WriteLine("What will be different, estimated:");
        var table = new Table().Border(TableBorder.Simple).AddColumns("", "Old", "New", "New to old");
        foreach (var one in differences)
        {
            var unit = one.Text("unit");
            table.AddRow(new[] { one.Text("title"), Band(one.GetProperty("old"), unit), Band(one.GetProperty("new"), unit), Band(one.GetProperty("ratio"), string.Empty) }.Select(Markup.Escape).ToArray());
        }

        console.Write(table);
        console.WriteLine($"Assumed: {string.Join("; ", differences.SelectMany(one => one.GetProperty("assumptions").EnumerateArray()).Select(words => words.GetString()).Distinct())}.");
    }

    private static string Band(JsonElement band, string unit)
    {
        if (band.ValueKind != JsonValueKind.Object) return string.Empty;
        var format = unit switch { "A" => "0.0", "" => "0.00", _ => "0" };
        var (low, high) = (Figure(band, "low", format), Figure(band, "high", format));
        return $"{(low == high ? low : $"{low} to {high}")} {unit}".TrimEnd();
    }

    private static string Figure(JsonElement band, string end, string format) => band.GetProperty(end).GetDouble().ToString(format, CultureInfo.InvariantCulture);
}
