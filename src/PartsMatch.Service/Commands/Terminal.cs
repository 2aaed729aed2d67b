using System.Text.Json;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Store;
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
    public static string? StatusWords(JsonElement part) => Words.Of(Named<PartStatus>(part.Text("status")));

    /// <summary>By which part it was superseded, by whose word and when: a line each.</summary>
    public static IEnumerable<string> Superseded(JsonElement part) =>
        part.Each("supersededBy").Select(by => $"{part.Text("number")} was replaced by {by.Text("number")} on {by.Text("on")} (source: {by.Text("saidBy")}).");

    /// <summary>What only must be looked at is no change: a part that waits for nothing else fits once that is checked.</summary>
    public static string FitWords(JsonElement judged) => Words.Of(Named<PartFit>(judged.Text("fit")), NeedsChecksOnly(judged));

    public static string FitSentence(JsonElement judged)
    {
        var fit = Named<PartFit>(judged.Text("fit"));
        if (fit != PartFit.FitsWithChanges || !NeedsChecksOnly(judged)) return FitSentence(fit);
        var open = judged.Each("findings").Where(finding => finding.Text("verdict") is "UNKNOWN" or "MEETS_WITH_CHANGES").Select(finding => finding.Text("title")).ToList();
        return $"fits as it is, once this is checked: {string.Join(", ", open.Select(InSentence.Of))}";
    }

    private static bool NeedsChecksOnly(JsonElement judged) => judged.Each("changes").All(change => change.GetProperty("isCheck").GetBoolean());

    private static string FitSentence(PartFit fit) => fit switch
    {
        PartFit.DropIn => "is a drop-in",
        PartFit.CantTellYet => "may fit: something that decides it is not known yet",
        _ => Words.Of(fit),
    };

    /// <summary>A failure is written large: there are no colours here.</summary>
    public static string VerdictWords(string verdict) => Named<Verdict>(verdict) is var said && said == Verdict.Fails ? Words.Of(said).ToUpperInvariant() : Words.Of(said);

    /// <summary>A field's label, by an answer's side and field.</summary>
    public static string Label(Family family, JsonElement of)
    {
        var name = of.Text("field");
        return (of.Text("side") == "SITE" ? family.SiteShape : family.SpecShape).Find(name) is { } field ? InSentence.Of(field.Label) : name;
    }

    public static string MissingWords(Family family, JsonElement missing) => Words.ToFindOut(Named<Side>(missing.Text("side")), Label(family, missing));

    public static string Price(JsonElement price) => price.ValueKind == JsonValueKind.Object ? Words.Price(price.GetProperty("amount").GetDecimal(), price.Text("currency")) : "?";

    public static string Margin(JsonElement margin) => margin.ValueKind == JsonValueKind.Object
        ? new Margin(margin.GetProperty("value").GetDouble(), margin.Text("unit")).ToString()
        : string.Empty;

    public static string Source(JsonElement source) => source.Text("status") switch
    {
        "PRACTICE" => $"{source.Text("text")} (practice)",
        "MEMORY" => $"{source.Text("text")} (from memory)",
        _ => source.Text("text"),
    };

    /// <summary>The member that GraphQL's name stands for: FITS_WITH_CHANGES is FitsWithChanges.</summary>
    private static T Named<T>(string name)
        where T : struct, Enum => Enum.Parse<T>(name.Replace("_", string.Empty, StringComparison.Ordinal), ignoreCase: true);
}
