using System.Globalization;
using System.Text.Json;
using PartsMatch.Fit.Judging;
using Spectre.Console;

namespace PartsMatch.Service.Commands;

/// <summary>Words and figures for a terminal: plain text of a fixed width, the same in a pipe as on a screen.</summary>
internal static class Terminal
{
    private const int Columns = 120;

    public static IAnsiConsole On(TextWriter output)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No, ColorSystem = ColorSystemSupport.NoColors, Interactive = InteractionSupport.No, Out = new AnsiConsoleOutput(output) });
        console.Profile.Width = Columns;
        return console;
    }

    public static string Text(this JsonElement element, string name) => element.GetProperty(name).GetString() ?? string.Empty;

    public static IEnumerable<JsonElement> Each(this JsonElement element, string name) => element.GetProperty(name).EnumerateArray();

    public static void Line(IAnsiConsole console, string label, IEnumerable<string> items)
    {
        var list = items.ToList();
        if (list.Count > 0) console.WriteLine($"{label}: {string.Join("; ", list)}");
    }

    /// <summary>A part's number, title and maker, and its status when that is worth a word.</summary>
    public static string Part(JsonElement part) => $"{part.Text("number")}  {part.Text("title")} ({part.Text("maker")}{(StatusWords(part) is { } status ? $", {status}" : string.Empty)})";

    /// <summary>Null for a part that is still made.</summary>
    public static string? StatusWords(JsonElement part) => part.Text("status") == "CURRENT" ? null : part.Text("status").ToLowerInvariant();

    /// <summary>By which part it was superseded, by whose word and when: a line each.</summary>
    public static IEnumerable<string> Superseded(JsonElement part) =>
        part.Each("supersededBy").Select(by => $"{part.Text("number")} was replaced by {by.Text("number")} on {by.Text("on")} (source: {by.Text("saidBy")}).");

    /// <summary>What only must be looked at is no change: a part that waits for nothing else fits once that is checked.</summary>
    public static string FitWords(JsonElement judged) => NeedsChecksOnly(judged) ? "fits once checked" : FitWords(judged.Text("fit"));

    public static string FitSentence(JsonElement judged)
    {
        if (!NeedsChecksOnly(judged)) return FitSentence(judged.Text("fit"));
        var open = judged.Each("findings").Where(finding => finding.Text("verdict") is "UNKNOWN" or "MEETS_WITH_CHANGES").Select(finding => finding.Text("title")).ToList();
        return $"fits as it is, once this is checked: {string.Join(", ", open.Select(title => char.ToLowerInvariant(title[0]) + title[1..]))}";
    }

    private static bool NeedsChecksOnly(JsonElement judged) => judged.Text("fit") == "FITS_WITH_CHANGES" && judged.Each("changes").All(change => change.GetProperty("isCheck").GetBoolean());

    private static string FitWords(string fit) => fit switch
    {
        "DROP_IN" => "drop-in",
        "FITS_WITH_CHANGES" => "fits with changes",
        "CANT_TELL_YET" => "can't tell yet",
        _ => "doesn't fit",
    };

    private static string FitSentence(string fit) => fit switch
    {
        "DROP_IN" => "is a drop-in",
        "CANT_TELL_YET" => "may fit: something that decides it is not known yet",
        _ => FitWords(fit),
    };

    public static string VerdictWords(string verdict) => verdict switch
    {
        "MEETS" => "meets",
        "MEETS_WITH_CHANGES" => "change",
        "UNKNOWN" => "unknown",
        _ => "FAILS",
    };

    /// <summary>A field's label, by an answer's side and field.</summary>
    public static string Label(Family family, JsonElement of)
    {
        var name = of.Text("field");
        return (of.Text("side") == "SITE" ? family.SiteShape : family.SpecShape).Find(name)?.Label.ToLowerInvariant() ?? name;
    }

    public static string MissingWords(Family family, JsonElement missing) => missing.Text("side") switch
    {
        "PART" => $"ask the counter: {Label(family, missing)}",
        "PLATE" => $"{Label(family, missing)} (old part)",
        _ => $"{Label(family, missing)} (site)",
    };

    public static string Price(JsonElement price) => price.ValueKind == JsonValueKind.Object
        ? string.Create(CultureInfo.InvariantCulture, $"{price.GetProperty("amount").GetDecimal():0.00} {price.Text("currency")}")
        : "?";

    public static string Margin(JsonElement margin) => margin.ValueKind == JsonValueKind.Object
        ? new Margin(margin.GetProperty("value").GetDouble(), margin.Text("unit")).ToString()
        : string.Empty;

    public static string Source(JsonElement source) => source.Text("status") switch
    {
        "PRACTICE" => $"{source.Text("text")} (practice)",
        "MEMORY" => $"{source.Text("text")} (from memory)",
        _ => source.Text("text"),
    };
}
