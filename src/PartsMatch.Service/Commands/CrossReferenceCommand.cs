using System.CommandLine;
using System.Globalization;
using PartsMatch.Service.Counter.Lists;
using PartsMatch.Service.Exchange.Lists;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Commands;

/// <summary>cross-reference: a list of old parts in, the same list with replacements out.</summary>
internal static class CrossReferenceCommand
{
    public static Command Make(Option<string?> data, TextWriter output, TextWriter errors)
    {
        var file = new Argument<string>("file") { Description = "The list: CSV in UTF-8. Columns: number or text (a plate's) or both; kind, site.volts and other fields of the site; others are carried through." };
        file.Validators.Add(given =>
        {
            // An option that is not known would otherwise be taken for a file.
            if (given.Tokens is [{ Value: { } text }, ..] && text.StartsWith("--", StringComparison.Ordinal)) given.AddError($"There is no option “{text}”.");
        });
        var first = Whole("--first", FormattableString.Invariant($"How many replacements a row is given, 1 to {CrossReference.MostParts}."), usual: 1, least: 1, CrossReference.MostParts);
        var from = Whole("--from-row", "The row to begin at, as spreadsheets count: the header is row 1, and is then not written.", ListFile.FirstRow, ListFile.FirstRow, int.MaxValue);
        var resume = new Option<string?>("--resume") { Description = "The file to write into. If it was cut off it is continued; the whole has the same bytes as if it had not been." };
        var command = new Command("cross-reference", "Find replacements for a list of old parts.") { file, first, from, resume };
        command.Validators.Add(given =>
        {
            if (given.GetResult(from) is { Implicit: false } && given.GetResult(resume) is not null) given.AddError("Give --from-row or --resume: the file tells at which row to go on.");
        });
        command.SetAction(async (given, stop) =>
        {
            var path = given.GetValue(file)!;
            if (await ReadAsync(path, stop) is not { } list)
            {
                await errors.WriteLineAsync($"{path} cannot be read: there is no such file, or this user may not read it.");
                return ExitCode.BadInput;
            }

            var asked = new AskedList(list, given.GetValue(first), given.GetValue(from));
            return await Asking.WithClientAsync(
                given.GetValue(data),
                client => given.GetValue(resume) is { } into
                    ? ListAnswer.ContinueAsync(client, asked, into, errors, stop)
                    : ListAnswer.PrintAsync(client, asked, output, errors, stop),
                errors,
                stop);
        });
        return command;
    }

    private static async Task<byte[]?> ReadAsync(string path, CancellationToken stop)
    {
        try
        {
            return await File.ReadAllBytesAsync(path, stop);
        }
        catch (Exception failed) when (TableOptions.IsOfTheDisk(failed))
        {
            return null;
        }
    }

    private static Option<int> Whole(string name, string description, int usual, int least, int most) => new(name)
    {
        Description = description,
        DefaultValueFactory = _ => usual,
        CustomParser = given =>
        {
            var text = given.Tokens is [{ Value: var typed }, ..] ? typed : string.Empty;
            if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most) return number;
            given.AddError(string.Create(CultureInfo.InvariantCulture, $"{name} takes a whole number {(most == int.MaxValue ? $"from {least} on" : $"from {least} to {most}")}, not “{text}”."));
            return usual;
        },
    };
}
