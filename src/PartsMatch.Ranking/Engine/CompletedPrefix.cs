using System.Numerics;
using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>For a need with unknowns: one sum of contributions for each completion, and which of them still pass.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct CompletedPrefix(CompletedAnswers answers, Weights weights, int aspects) : IPrefix
{
    private readonly int count = answers.Completions.All.Count;
    private readonly long[] sums = new long[(aspects + 1) * answers.Completions.All.Count];
    private readonly ulong[] passing = [answers.Completions.Everything, .. new ulong[aspects]];
    private readonly PartFit[] fits = new PartFit[aspects + 1];

    /// <inheritdoc/>
    public PartFit Enter(int depth, int aspect, int code)
    {
        // What fails the need as it is fails every completion of it.
        var fit = answers.ByNeed.At(aspect, code).Fit;
        if (fit == PartFit.DoesntFit) return fit;
        var answer = answers.At(aspect, code);
        passing[depth + 1] = answer.Passing(passing[depth]);
        var from = sums.AsSpan(depth * count, count);
        var to = sums.AsSpan((depth + 1) * count, count);
        for (var left = passing[depth + 1]; left != 0; left &= left - 1)
        {
            var completion = BitOperations.TrailingZeroCount(left);
            to[completion] = from[completion] + answer.Contributions[completion];
        }

        return fits[depth + 1] = fit > fits[depth] ? fit : fits[depth];
    }

    /// <inheritdoc/>
    public Begun At(int depth) => new(fits[depth], Score.Zero);

    /// <summary>A sum for every completion is too much to keep.</summary>
    public bool TakeUp(int depth, Begun known) => depth == 0;

    /// <inheritdoc/>
    public bool MayShow(int depth, int percent)
    {
        // As if all that still pass were as good as the best of them; only where that does not settle it is the mean worked out.
        var (weight, best) = (0, long.MinValue);
        for (var left = passing[depth]; left != 0; left &= left - 1)
        {
            var completion = BitOperations.TrailingZeroCount(left);
            weight += answers.Completions.All[completion].Weight;
            best = Math.Max(best, sums[(depth * count) + completion]);
        }

        var most = weight == 0 ? default : new MeanLikelihood(weights.ShareOf(new(best)) * weight, answers.Completions.Machines);
        return most.Percent >= percent && PercentAt(depth) >= percent;
    }

    /// <inheritdoc/>
    public int PercentAt(int depth)
    {
        var sum = 0L;
        for (var left = passing[depth]; left != 0; left &= left - 1)
        {
            var completion = BitOperations.TrailingZeroCount(left);
            sum += answers.Completions.All[completion].Weight * weights.ShareOf(new(sums[(depth * count) + completion]));
        }

        return new MeanLikelihood(sum, answers.Completions.Machines).Percent;
    }
}
