namespace PartsMatch.Service.Commands;

/// <summary>What was typed, with the settings of the host taken out of it.</summary>
/// <param name="Settings">As the host takes them: --Section:Key=value.</param>
/// <param name="Incomplete">Settings without a value.</param>
/// <param name="Rest">All else, in its order.</param>
internal sealed record HostSettings(IReadOnlyList<string> Settings, IReadOnlyList<string> Incomplete, IReadOnlyList<string> Rest)
{
    /// <summary>Takes out --Section:Key=value and --Section:Key value.</summary>
    /// <param name="args">What was typed.</param>
    /// <param name="options">The options of our own, whose value may stand behind a colon: --data:folder.</param>
    public static HostSettings Of(IReadOnlyList<string> args, IReadOnlySet<string> options)
    {
        var (settings, incomplete, rest) = (new List<string>(), new List<string>(), new List<string>());
        for (var at = 0; at < args.Count; at++)
        {
            var (colon, equals) = (args[at].IndexOf(':', StringComparison.Ordinal), args[at].IndexOf('=', StringComparison.Ordinal));
            if (!args[at].StartsWith("--", StringComparison.Ordinal) || colon < 3) rest.Add(args[at]);
            else if (equals > colon) settings.Add(args[at]);
            else if (equals >= 0 || options.Contains(args[at][..colon])) rest.Add(args[at]);
            else if (at + 1 < args.Count && !args[at + 1].StartsWith("--", StringComparison.Ordinal)) settings.Add($"{args[at]}={args[++at]}");
            else incomplete.Add(args[at]);
        }

        return new(settings, incomplete, rest);
    }
}
