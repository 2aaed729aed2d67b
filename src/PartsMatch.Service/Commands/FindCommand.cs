using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text.Json.Nodes;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Commands;

/// <summary>find: a plate's text and the site's readings in, ranked replacements out; with --sheet the fit sheet of one of them.</summary>
internal static class FindCommand
{
    public static Command Make(Option<string?> data, TextWriter output, TextWriter errors)
    {
        var plateText = new Argument<string?>("plate") { Description = "The nameplate's text as you would type it, in any order.", Arity = ArgumentArity.ZeroOrOne };
        plateText.Validators.Add(given =>
        {
            // An option that is not known would otherwise be taken for a plate.
            if (given.Tokens is [{ Value: { } text }, ..] && text.StartsWith("--", StringComparison.Ordinal)) given.AddError($"There is no option “{text}”.");
        });
        var kind = new Option<string>("--kind") { Description = $"What failed: {string.Join(", ", Families.All.Select(family => family.Kind))}.", DefaultValueFactory = _ => Families.All[0].Kind };
        var old = new Option<string?>("--old") { Description = "The old part's number, instead of a plate's text or beneath it." };
        var first = new Option<int>("--first") { Description = "How many replacements to show, 1 to 100.", DefaultValueFactory = _ => 10, CustomParser = WholeNumber };
        var sheet = new Option<string?>("--sheet") { Description = "Show the fit sheet: of the row of this place in the list (1, 2, ...), or of this part number." };
        var json = new Option<bool>("--json") { Description = "Print the service's answer as JSON.", Arity = ArgumentArity.Zero };
        var fields = FieldOptions();

        var find = new Command("find", "Find replacements for a part that failed.") { plateText, kind, old, first, sheet, json };
        foreach (var option in fields.Values) find.Options.Add(option);
        find.SetAction(async (given, stop) =>
        {
            if (Families.Find(given.GetValue(kind)!) is not { } family)
            {
                await errors.WriteLineAsync($"There is no kind “{given.GetValue(kind)}”. The kinds are: {string.Join(", ", Families.All.Select(one => one.Kind))}.");
                return ExitCode.BadInput;
            }

            var need = Need(family, given.GetValue(plateText), given.GetValue(old), fields.ToDictionary(pair => pair.Key, pair => given.GetValue(pair.Value)), out var misplaced);
            if (misplaced.Count > 0)
            {
                foreach (var option in misplaced) await errors.WriteLineAsync($"A {family.Title} has no {option}.");
                await errors.WriteLineAsync(CommandLine.HelpHint(find));
                return ExitCode.BadInput;
            }

            if (IsEmpty(need[family.Kind]!))
            {
                await errors.WriteLineAsync("Nothing is given. Type the plate's text, the old part's number (--old), or a field such as --volts 202.");
                await errors.WriteLineAsync(CommandLine.HelpHint(find));
                return ExitCode.BadInput;
            }

            return await Asking.WithServiceAsync(given.GetValue(data), ask => Finding.RunAsync(new(family, need, given.GetValue(first), given.GetValue(sheet), given.GetValue(json)), ask, output, errors, stop), errors, stop);
        });
        return find;
    }

    private static int WholeNumber(ArgumentResult given)
    {
        var text = given.Tokens is [{ Value: var typed }, ..] ? typed : string.Empty;
        if (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)) return number;
        given.AddError($"--first takes a whole number, such as 10, not “{text}”.");
        return 0;
    }

    /// <summary>One option for every field's name, whatever families have it: --shaft-diameter, --volts.</summary>
    private static SortedDictionary<string, Option<string?>> FieldOptions()
    {
        var options = new SortedDictionary<string, Option<string?>>(StringComparer.Ordinal);
        foreach (var field in Families.All.SelectMany(family => family.SpecShape.Fields.Concat(family.SiteShape.Fields)))
        {
            options.TryAdd(field.Name, new(OptionName(field.Name)) { Description = $"{field.Label}: {field.Expected}.", HelpName = field.Example });
        }

        return options;
    }

    private static JsonObject Need(Family family, string? plateText, string? old, IReadOnlyDictionary<string, string?> given, out List<string> misplaced)
    {
        var (plate, site) = (new JsonObject(), new JsonObject());
        misplaced = [];
        foreach (var (name, text) in given)
        {
            if (string.IsNullOrWhiteSpace(text)) continue;
            if (family.SpecShape.Find(name) is not null) plate[name] = text;
            else if (family.SiteShape.Find(name) is not null) site[name] = text;
            else misplaced.Add(OptionName(name));
        }

        var need = new JsonObject { ["plate"] = plate, ["site"] = site };
        if (!string.IsNullOrWhiteSpace(plateText)) need["plateText"] = plateText;
        if (!string.IsNullOrWhiteSpace(old)) need["oldPartNumber"] = old;
        return new() { [family.Kind] = need };
    }

    private static bool IsEmpty(JsonNode need) =>
        need["plateText"] is null && need["oldPartNumber"] is null && need["plate"]!.AsObject().Count == 0 && need["site"]!.AsObject().Count == 0;

    /// <summary>shaftDiameter becomes --shaft-diameter.</summary>
    internal static string OptionName(string field) => "--" + string.Concat(field.Select(letter => char.IsAsciiLetterUpper(letter) ? $"-{char.ToLowerInvariant(letter)}" : letter.ToString()));
}
