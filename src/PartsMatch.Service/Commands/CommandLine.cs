using System.CommandLine;
using PartsMatch.Service.Graph;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Commands;

/// <summary>What the executable does: serve (the default), find, cross-reference, import, export, train, rollback, schema.</summary>
public static class CommandLine
{
    private const string Serve = "serve";

    /// <summary>So long may it take to end in order once it is told to: requests are answered to their end, and for a million parts the next start's files are written.</summary>
    private static readonly TimeSpan InOrder = TimeSpan.FromMinutes(5);

    public static Task<int> RunAsync(string[] args, TextWriter output, TextWriter errors, CancellationToken stop = default)
    {
        var data = new Option<string?>("--data") { Description = "The folder of the catalogue. Default: PARTSMATCH_DATA, else a folder of the user's own.", Recursive = true };
        var urls = new Option<string?>("--urls") { Description = "Where to listen. Default: http://127.0.0.1:5080." };

        var serve = new Command(Serve, "Serve GraphQL until told to stop (the default). Other settings: --Section:Key=value.") { urls };
        var root = new RootCommand("PartsMatch: which part will do the job of one that failed, what must be changed on it, and why.")
        {
            data, urls, serve, FindCommand.Make(data, output, errors), ImportCommand.Make(data, output, errors), ExportCommand.Make(data, output, errors),
            CrossReferenceCommand.Make(data, output, errors), TrainCommand.Make(data, output, errors), TrainCommand.MakeRollback(data, output, errors), SchemaCommand(output),
        };
        var host = HostSettings.Of(args, root.Options.Concat(root.Subcommands.SelectMany(command => command.Options)).Select(option => option.Name).ToHashSet(StringComparer.Ordinal));
        Task<int> ServeAsync(ParseResult given, CancellationToken cancel) =>
            Serving.RunAsync([.. Passed(given, data), .. Passed(given, urls), .. host.Settings], output, errors, cancel);
        root.SetAction(ServeAsync);
        serve.SetAction(ServeAsync);
        return RunAsync(root.Parse(host.Rest), host, output, errors, stop);
    }

    /// <summary>As the host takes it, whatever the value looks like.</summary>
    private static string[] Passed(ParseResult given, Option<string?> option) => given.GetValue(option) is { } value ? [$"{option.Name}={value}"] : [];

    /// <summary>Settings of the host go through to it where it serves; whatever else is not known is refused, never left aside.</summary>
    private static async Task<int> RunAsync(ParseResult parsed, HostSettings host, TextWriter output, TextWriter errors, CancellationToken stop)
    {
        var command = parsed.CommandResult.Command;
        var serves = command is RootCommand || command.Name == Serve;
        List<string> wrong =
        [
            .. parsed.Errors.Select(error => error.Message).Distinct(),
            .. host.Incomplete.Select(setting => $"{setting} needs a value: {setting}=value."),
            .. serves ? [] : host.Settings.Select(setting => $"{setting} is a setting of the service; {command.Name} takes none."),
        ];
        if (wrong.Count > 0)
        {
            foreach (var complaint in wrong) await errors.WriteLineAsync(complaint);
            await errors.WriteLineAsync(HelpHint(command));
            return ExitCode.BadInput;
        }

        try
        {
            return await parsed.InvokeAsync(new() { Output = output, Error = errors, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = InOrder }, stop);
        }
        catch (OperationCanceledException stopped) when (stopped.InnerException is not TimeoutException)
        {
            // A service that is stopped before it listens has nothing to finish.
            if (serves) return ExitCode.Success;
            await errors.WriteLineAsync($"{command.Name} was stopped before it was done.");
            return ExitCode.Stopped;
        }
        catch (Exception unforeseen)
        {
            // Its text may hold what is nobody's business; its kind is enough to report it by.
            await errors.WriteLineAsync($"Something went wrong inside PartsMatch ({unforeseen.GetType().Name}). Please report it with what was typed.");
            return ExitCode.Failed;
        }
    }

    /// <summary>Where to read what would be right.</summary>
    internal static string HelpHint(Command command) => command is RootCommand ? "See --help." : $"See {command.Name} --help.";

    private static Command SchemaCommand(TextWriter output)
    {
        var schema = new Command("schema", "Print the GraphQL schema.");
        schema.SetAction(_ => output.Write(PrintedSchema.Text()));
        return schema;
    }
}
