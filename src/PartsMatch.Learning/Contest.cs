using System.Runtime.InteropServices;

namespace PartsMatch.Learning;

/// <summary>How weights did on one fold.</summary>
/// <param name="Loss">Mean loss, nats.</param>
/// <param name="Order">How near parts put in for one old part came to their best order, 0 to 1 (<see cref="Quality.Order"/>); null where the fold has no two to put in order.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct FoldTold(double Loss, double? Order);

/// <summary>One set of weights held against another on the same folds: better where it loses less by more than one standard error, and its order is not clearly worse: by more than two. One fold's luck proves nothing.</summary>
/// <param name="Gain">How much less it loses, the mean over folds, nats.</param>
/// <param name="StandardError">Its standard error; infinite of fewer than two folds.</param>
/// <param name="OrderGain">How much nearer it comes to the best order, the mean over folds that have one; 0 where fewer than two have.</param>
/// <param name="OrderError">Its standard error; infinite of fewer than two folds.</param>
public sealed record Contest(double Gain, double StandardError, double OrderGain, double OrderError)
{
    /// <summary>Whether it is better in what it loses.</summary>
    public bool LosesLess => Gain > StandardError;

    /// <summary>Whether its order is clearly worse: by chance alone one time in forty, where it is no worse.</summary>
    public bool IsOutOfOrder => OrderGain < -2 * OrderError;

    /// <summary>Whether it may take the other's place.</summary>
    public bool IsWon => LosesLess && !IsOutOfOrder;

    /// <summary>Holds one against the other.</summary>
    /// <param name="of">How it did on each fold.</param>
    /// <param name="against">How the other did, fold by fold.</param>
    public static Contest Of(IReadOnlyList<FoldTold> of, IReadOnlyList<FoldTold> against)
    {
        var (gain, error) = MeanOf([.. of.Zip(against, (one, other) => other.Loss - one.Loss)]);
        var (order, orderError) = MeanOf([.. of.Zip(against, (one, other) => one.Order - other.Order).OfType<double>()]);
        return new(gain, error, order, orderError);
    }

    private static (double Mean, double StandardError) MeanOf(double[] gains)
    {
        if (gains.Length < 2) return (0, double.PositiveInfinity);
        var mean = gains.Average();
        return (mean, Math.Sqrt(gains.Sum(gain => Math.Pow(gain - mean, 2)) / (gains.Length - 1) / gains.Length));
    }
}
