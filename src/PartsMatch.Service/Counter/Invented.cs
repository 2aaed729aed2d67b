using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>Demo outcomes say by their note that they are invented; what is learnt from them must say so as well.</summary>
internal static class Invented
{
    private const string Note = "invented";

    public static bool Is(OutcomeDraft outcome) => outcome.Note == Note;

    /// <summary>What is said beside how many outcomes were learnt from; nothing where none is invented.</summary>
    /// <param name="count">How many of them are; null where nobody counted.</param>
    public static string? Words(int? count) => count switch
    {
        0 => null,
        null => $"Outcomes whose note says “{Note}” are demo data: what is learnt from them says nothing of real parts.",
        1 => "One of those learnt from is invented demo data: what is learnt from it says nothing of real parts.",
        _ => FormattableString.Invariant($"{count} of those learnt from are invented demo data: what is learnt from them says nothing of real parts."),
    };
}
