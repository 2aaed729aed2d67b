using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Commands;

/// <summary>Asks a service a GraphQL question.</summary>
internal delegate Task<JsonElement> Ask(string query, JsonObject variables, CancellationToken stop);

/// <summary>What to find, and how to show it.</summary>
/// <param name="Family">What failed.</param>
/// <param name="Need">The need, as GraphQL takes it.</param>
/// <param name="First">How many rows.</param>
/// <param name="Sheet">The place in the list, or the part number, whose fit sheet is wanted; null for the list.</param>
/// <param name="Json">Whether the answer is printed as it came.</param>
internal sealed record Wanted(Family Family, JsonObject Need, int First, string? Sheet, bool Json);

/// <summary>From a need to what is printed.</summary>
internal static class Finding
{
    /// <summary>What the service answers at once.</summary>
    private const int MostRows = 100;

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static async Task<int> RunAsync(Wanted wanted, Ask ask, TextWriter output, TextWriter errors, CancellationToken stop)
    {
        if (wanted.Sheet is null) return await ListAsync(wanted, ask, output, errors, stop);

        // Digits alone are a place in the list; beyond its end they may still be a part's number.
        var number = wanted.Sheet;
        if (!number.All(char.IsAsciiDigit)) return await SheetAsync(wanted, number, beyond: null, ask, output, errors, stop);
        if (!int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var place) || place is < 1 or > MostRows)
            return await SheetAsync(wanted, number, $"--sheet takes a place in the list, 1 to {MostRows}, or a part number; there is no part “{number}”.", ask, output, errors, stop);

        var list = await ask(Questions.Replacements, new() { ["need"] = wanted.Need.DeepClone(), ["first"] = Math.Max(wanted.First, place) }, stop);
        if (await RefusedAsync(list, wanted.Family, beyond: null, errors)) return ExitCode.BadInput;
        var edges = list.GetProperty("data").GetProperty("replacements").Each("edges").ToList();
        return place <= edges.Count
            ? await SheetAsync(wanted, edges[place - 1].GetProperty("node").GetProperty("part").Text("number"), beyond: null, ask, output, errors, stop)
            : await SheetAsync(wanted, number, $"The list has {edges.Count} rows; --sheet takes the place of one of them, or a part number, and there is no part “{number}”.", ask, output, errors, stop);
    }

    private static async Task<int> ListAsync(Wanted wanted, Ask ask, TextWriter output, TextWriter errors, CancellationToken stop)
    {
        var list = await ask(Questions.Replacements, new() { ["need"] = wanted.Need.DeepClone(), ["first"] = wanted.First }, stop);
        if (await RefusedAsync(list, wanted.Family, beyond: null, errors)) return ExitCode.BadInput;
        var replacements = list.GetProperty("data").GetProperty("replacements");
        var fits = replacements.GetProperty("edges").GetArrayLength() > 0;
        var misses = fits ? (JsonElement?)null : await ask(Questions.NearestMisses, new() { ["need"] = wanted.Need.DeepClone() }, stop);
        if (misses is { } asked && await RefusedAsync(asked, wanted.Family, beyond: null, errors)) return ExitCode.BadInput;
        if (wanted.Json)
        {
            await output.WriteLineAsync(JsonSerializer.Serialize(new JsonObject { ["replacements"] = Data(list), ["nearestMisses"] = misses is { } nothing ? Data(nothing)["nearestMisses"]!.DeepClone() : null }, Readable));
        }
        else
        {
            ReplacementsView.Write(wanted.Family, replacements, output);
            if (misses is { } none) ReplacementsView.WriteMisses(none.GetProperty("data").GetProperty("replacements"), output);
        }

        return fits ? ExitCode.Success : ExitCode.NothingFits;
    }

    private static async Task<int> SheetAsync(Wanted wanted, string number, string? beyond, Ask ask, TextWriter output, TextWriter errors, CancellationToken stop)
    {
        var answer = await ask(Questions.FitSheet, new() { ["need"] = wanted.Need.DeepClone(), ["number"] = number }, stop);
        if (await RefusedAsync(answer, wanted.Family, beyond, errors)) return ExitCode.BadInput;
        var sheet = answer.GetProperty("data").GetProperty("fitSheet");
        if (wanted.Json) await output.WriteLineAsync(JsonSerializer.Serialize(answer.GetProperty("data"), Readable));
        else FitSheetView.Write(wanted.Family, sheet, output);
        return sheet.Text("fit") == "DOESNT_FIT" ? ExitCode.NothingFits : ExitCode.Success;
    }

    private static JsonObject Data(JsonElement answer) => (JsonObject)JsonObject.Create(answer.GetProperty("data").GetProperty("replacements"))!.DeepClone();

    /// <summary>Writes every error of an answer on a line of its own, with the option it is about.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="family">What failed.</param>
    /// <param name="beyond">What to say when there is no part of the number whose sheet is wanted; null for what the service says.</param>
    /// <param name="errors">Where to write.</param>
    private static async Task<bool> RefusedAsync(JsonElement answer, Family family, string? beyond, TextWriter errors)
    {
        if (!answer.TryGetProperty("errors", out var list)) return false;
        var isOfOptions = false;
        foreach (var error in list.EnumerateArray())
        {
            var at = Extension(error, "at");
            var field = family.SpecShape.Find(at[(at.LastIndexOf('.') + 1)..]) ?? family.SiteShape.Find(at[(at.LastIndexOf('.') + 1)..]);
            isOfOptions |= field is not null;
            var message = error.Text("message");
            if (at == "partNumber" && Extension(error, "code") == Codes.PartNotFound) message = beyond ?? message;
            if (Extension(error, "code") == Codes.KeyWrong) message += " It is the one in PARTSMATCH_KEY.";
            await errors.WriteLineAsync(field is null ? message : $"{FindCommand.OptionName(field.Name)}: {message}");
        }

        if (isOfOptions) await errors.WriteLineAsync("See find --help.");
        return true;
    }

    private static string Extension(JsonElement error, string name) =>
        error.TryGetProperty("extensions", out var extensions) && extensions.TryGetProperty(name, out var value) ? value.GetString() ?? string.Empty : string.Empty;
}
