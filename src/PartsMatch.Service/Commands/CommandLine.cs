using System.CommandLine;
using PartsMatch.Service.Graph;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Commands;

/// <summary>What the executable does: serve (the default), find, schema.</summary>
public static class CommandLine
{
    private const string Serve = "serve";

    public static Task<int> RunAsync(string[] args, TextWriter output, TextWriter errors, CancellationToken stop = default)
    {
        var data = new Option<string?>("--data") { Description = "The folder of the catalogue. Default: PARTSMATCH_DATA, else a folder of the user's own.", Recursive = true };
        var urls = new Option<string?>("--urls") { Description = "Where to listen. Default: http://127.0.0.1:5080." };

        var serve = new Command(Serve, "Serve GraphQL until told to stop (the default). Other settings: --Section:Key=value.") { urls };
        var root = new RootCommand("PartsMatch: which part will do the job of one that failed, what must be changed on it, and why.")
        {
            data, urls, serve, FindCommand.Make(data, output, errors), SchemaCommand(output),
        };
        root.SetAction((_, cancel) => Serving.RunAsync(args, output, errors, cancel));
        serve.SetAction((_, cancel) => Serving.RunAsync([.. args.Where(arg => arg != Serve)], output, errors, cancel));
        return RunAsync(root, args, output, errors, stop);
    }

    /// <summary>Settings of the host go through to it; whatever else is not known is refused, never left aside.</summary>
    private static async Task<int> RunAsync(RootCommand root, string[] args, TextWriter output, TextWriter errors, CancellationToken stop)
    {
        var serves = args.Length == 0 || args[0] == Serve || args[0].StartsWith('-');
        var parsed = root.Parse([.. args.Where(arg => !(serves && IsSetting(arg)))]);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors.Select(error => error.Message).Distinct()) await errors.WriteLineAsync(error);
            await errors.WriteLineAsync("See --help.");
            return ExitCode.BadInput;
        }

        try
        {
            return await parsed.InvokeAsync(new() { Output = output, Error = errors, EnableDefaultExceptionHandler = false }, stop);
        }
        catch (Exception unforeseen) when (unforeseen is not OperationCanceledException)
        {
            // Its text may hold what is nobody's business; its kind is enough to report it by.
            await errors.WriteLineAsync($"Something went wrong inside PartsMatch ({unforeseen.GetType().Name}). Please report it with what was typed.");
            return ExitCode.Failed;
        }
    }

    private static bool IsSetting(string arg) => arg.StartsWith("--", StringComparison.Ordinal) && arg.IndexOf(':', StringComparison.Ordinal) is > 2 and var colon && arg.IndexOf('=', StringComparison.Ordinal) > colon;

    private static Command SchemaCommand(TextWriter output)
    {
        var schema = new Command("schema", "Print the GraphQL schema.");
        schema.SetAction(_ => output.Write(PrintedSchema.Text()));
        return schema;
    }
}
