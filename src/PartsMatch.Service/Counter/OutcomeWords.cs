using PartsMatch.Learning;

namespace PartsMatch.Service.Counter;

/// <summary>Why a part that was put in was not right.</summary>
public enum OutcomeReason
{
    /// <summary>It failed as the old one had.</summary>
    FailedAgain,

    /// <summary>It ran, and the machine still did not do what it should.</summary>
    DidNotDoTheJob,

    /// <summary>More had to be changed than was foreseen.</summary>
    MoreToChangeThanForeseen,

    /// <summary>Something to put it in with was not there.</summary>
    SomethingWasMissing,

    /// <summary>Something else had failed: it tells nothing about parts.</summary>
    WasNotThePart,

    /// <summary>The note says it.</summary>
    Other,
}

/// <summary>Results and reasons in the words in which they are kept and shown.</summary>
internal static class OutcomeWords
{
    public static string Of(Result result) => result switch
    {
        Result.RightFirstTime => "right first time",
        Result.Reworked => "reworked",
        _ => "came back",
    };

    public static string Of(OutcomeReason reason) => reason switch
    {
        OutcomeReason.FailedAgain => "failed again",
        OutcomeReason.DidNotDoTheJob => "did not do the job",
        OutcomeReason.MoreToChangeThanForeseen => "more to change than foreseen",
        OutcomeReason.SomethingWasMissing => "something was missing",
        OutcomeReason.WasNotThePart => "was not the part",
        _ => "other",
    };

    public static Result? ResultOf(string words) => Find<Result>(words, Of);

    public static OutcomeReason? ReasonOf(string words) => Find<OutcomeReason>(words, Of);

    /// <summary>"right first time, reworked or came back"</summary>
    public static string AllResults { get; } = Listed(Enum.GetValues<Result>().Select(Of));

    public static string AllReasons { get; } = Listed(Enum.GetValues<OutcomeReason>().Select(Of));

    private static T? Find<T>(string words, Func<T, string> wordsOf)
        where T : struct, Enum =>
        Enum.GetValues<T>().Where(one => wordsOf(one).Equals(words.Trim(), StringComparison.OrdinalIgnoreCase)).Select(one => (T?)one).FirstOrDefault();

    private static string Listed(IEnumerable<string> all) => string.Join(", ", all.SkipLast(1)) + " or " + all.Last();
}
