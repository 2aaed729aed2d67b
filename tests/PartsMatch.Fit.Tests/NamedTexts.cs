using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests;

/// <summary>Named texts from one line: voltage=230 V; phase=1.</summary>
internal static class NamedTexts
{
    public static IReadOnlyList<NamedText> Of(string line) =>
        [.. line.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(pair => pair.Split('=', 2, StringSplitOptions.TrimEntries))
            .Select(pair => new NamedText(pair[0], pair[1]))];
}
