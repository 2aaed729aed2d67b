using System.CommandLine;
using PartsMatch.Service.Graph;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Commands;

/// <summary>What the executable does: serve (the default), find, schema.</summary>
public static class CommandLine
{
    public static Task<int> RunAsync(string[] args, TextWriter output, TextWriter errors, CancellationToken stop = default)
    {
        var data = new Option<string?>("--data") { Description = "The folder of the catalogue. Default: PARTSMATCH_DATA, else a folder of the user's own.", Recursive = true };
        var urls = new Option<string?>("--urls") { Description = "Where to listen. Default: http://127.0.0.1:5080." };

        // Every other setting is taken as the host takes it (--Access:OpenReads=true), so what is not known here goes through.
        var serve = new Command("serve", "Serve GraphQL until told to stop (the default).") { urls };
        var root = new RootCommand("PartsMatch: which part will do the job of one that failed, what must be changed on it, and why.")
        {
            data, urls, serve, FindCommand.Make(data, output, errors), SchemaCommand(output),
        };
        root.TreatUnmatchedTokensAsErrors = serve.TreatUnmatchedTokensAsErrors = false;
        root.SetAction((_, cancel) => Serving.RunAsync(args, output, errors, cancel));
        serve.SetAction((_, cancel) => Serving.RunAsync([.. args.Where(arg => arg != serve.Name)], output, errors, cancel));
        return root.Parse(args).InvokeAsync(new() { Output = output, Error = errors }, stop);
    }

    private static Command SchemaCommand(TextWriter output)
    {
        var schema = new Command("schema", "Print the GraphQL schema.");
        schema.SetAction(_ => output.Write(PrintedSchema.Text()));
        return schema;
    }
}
