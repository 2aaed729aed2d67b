using static System.FormattableString;

namespace PartsMatch.Store.CrashWriter;

/// <summary>A part whose whole content follows from its number and version, and what became of it: who finds it again can tell whether it is as it was written.</summary>
public static class CrashPart
{
    private const int Fields = 25;

    public static PartDraft For(string number, int version) => new(
        number,
        "motor",
        "Quillon Wexbarrow",
        Invariant($"{number} as of {version}"),
        PartStatus.Current,
        [.. Enumerable.Range(0, Fields).Select(field => new NamedText(Invariant($"field{field}"), Invariant($"{number}/{version}/{field}")))],
        [new Supersession(Invariant($"{number}-B"), "its maker", new DateOnly(2026, 1, 1).AddDays(version))]);

    public static OutcomeDraft OutcomeOf(string number) => new(
        Invariant($"of-{number}"),
        "motor",
        new DateOnly(2026, 1, 1),
        number,
        string.Empty,
        [.. Enumerable.Range(0, Fields).Select(field => new NamedText(Invariant($"field{field}"), Invariant($"{number}/{field}")))],
        [],
        number,
        "came back",
        "failed again",
        Invariant($"Noted of {number}"),
        string.Empty);
}
