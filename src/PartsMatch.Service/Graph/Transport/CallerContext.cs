using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Transport;

/// <summary>Who asks, for resolvers that write.</summary>
internal sealed class CallerContext(string? label) : Dictionary<string, object?>(StringComparer.Ordinal)
{
    /// <summary>The label of the key that was shown: the endpoint lets no mutation through without one.</summary>
    public string Label => label ?? throw new InvalidOperationException("A mutation came through without a key.");
}

/// <summary>Makes an answer's refusals errors.</summary>
internal static class Refusing
{
    /// <summary>The answer's value.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="place">The argument that the refusals' places lie under.</param>
    public static T OrRefuse<T>(this Answer<T> answer, string? place = null)
        where T : class =>
        answer.IsGiven ? answer.Value : throw new RefusedError(place is null ? answer.Refusals : [.. answer.Refusals.Select(refusal => refusal.Under(place))]);
}
