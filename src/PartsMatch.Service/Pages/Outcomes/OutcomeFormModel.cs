using PartsMatch.Learning;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Fields;

namespace PartsMatch.Service.Pages.Outcomes;

/// <summary>The form that asks how it went.</summary>
/// <param name="Typed">What stands in it.</param>
/// <param name="Part">What was put in.</param>
/// <param name="Complaints">What is wrong.</param>
public sealed record OutcomeFormModel(OutcomeTyped Typed, CatalogueEntry Part, Complaints Complaints)
{
    /// <summary>What is to be known before it is sent.</summary>
    public string? Notice { get; init; }

    /// <summary>Where what was kept of this very form stands, when it was sent before with something else in it.</summary>
    public string? KeptBefore { get; init; }

    public string Heading => Typed.Corrects.Length > 0 ? "Put it right: how did it go?" : "How did it go?";

    /// <summary>Results with a word about each.</summary>
    public static IReadOnlyList<(string Words, string Meaning)> Results { get; } =
    [
        (OutcomeWords.Of(Result.RightFirstTime), "it went in as foreseen, and stayed"),
        (OutcomeWords.Of(Result.Reworked), "it stayed, but more had to be changed than foreseen"),
        (OutcomeWords.Of(Result.CameBack), "it did not do the job"),
    ];

    public static IReadOnlyList<string> Reasons { get; } = [.. Enum.GetValues<OutcomeReason>().Select(OutcomeWords.Of)];
}
