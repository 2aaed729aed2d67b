using System.CommandLine.Parsing;
using PartsMatch.Service.Commands;

namespace PartsMatch.Service.Tests.Commands;

/// <summary>What a command printed and how it ended.</summary>
/// <param name="Exit">The exit code.</param>
/// <param name="Output">Standard output, line ends as on every machine, no spaces at the ends of lines.</param>
/// <param name="Errors">Standard error.</param>
internal sealed record Ran(int Exit, string Output, string Errors)
{
    /// <summary>Runs the executable's command line in this process.</summary>
    /// <param name="commandLine">As typed behind the executable's name.</param>
    /// <param name="data">The data folder.</param>
    public static async Task<Ran> Of(string commandLine, string data)
    {
        var (output, errors) = (new StringWriter(), new StringWriter());
        var exit = await CommandLine.RunAsync([.. CommandLineParser.SplitCommandLine(commandLine), "--data", data], output, errors, TestContext.Current.CancellationToken);
        return new(exit, Tidy(output), Tidy(errors));
    }

    private static string Tidy(StringWriter written) => string.Join('\n', written.ToString().ReplaceLineEndings("\n").Split('\n').Select(line => line.TrimEnd())).Trim('\n');
}
