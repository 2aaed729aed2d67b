using PartsMatch.Service.Counter;
using PartsMatch.Service.Graph.Transport;

namespace PartsMatch.Service.Graph.Limits;

internal static class ListSize
{
    /// <summary>How many items a list may be asked for.</summary>
    public static int CheckFirst(this QueryLimits limits, int first) => first >= 1 && first <= limits.ListSize
        ? first
        : throw new RefusedError(new Refusal(Codes.FirstOutOfRange, "first", FormattableString.Invariant($"first is 1 to {limits.ListSize}; {first} was asked for.")));
}
