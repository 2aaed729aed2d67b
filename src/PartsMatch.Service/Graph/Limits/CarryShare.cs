using PartsMatch.Service.Counter;
using PartsMatch.Service.Graph.Transport;

namespace PartsMatch.Service.Graph.Limits;

internal static class CarryShare
{
    /// <summary>What share may be asked for.</summary>
    public static double Check(double atLeast) => atLeast is >= 0 and <= 1
        ? atLeast
        : throw new RefusedError(new Refusal(Codes.ShareOutOfRange, "atLeast", FormattableString.Invariant($"atLeast is a share, 0 to 1; {atLeast} was asked for.")));
}
