using System.Numerics;
using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>For a need with unknowns: one sum of contributions for each completion, and which of them still pass.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct CompletedPrefix(CompletedAnswers answers, Weights weights, int aspects) : IPrefix
{
    /// <summary>A share that nobody asked for yet.</summary>
    private const long NotKnown = -1;

    private readonly int count = answers.Completions.All.Count;
    private readonly int machines = answers.Completions.Machines;
    private readonly int[] weightOf = answers.Completions.Weights;
    private readonly long[] sums = new long[(aspects + 2) * answers.Completions.All.Count];
    private readonly long[] shares = AllNotKnown((aspects + 2) * answers.Completions.All.Count);
    private readonly ulong[] passing = [answers.Completions.Everything, .. new ulong[aspects + 1]];
    private readonly PartFit[] fits = new PartFit[aspects + 2];

    /// <inheritdoc/>
    public PartFit Enter(int depth, int aspect, int code)
    {
        // What fails the need as it is fails every completion of it.
        var fit = answers.ByNeed.At(aspect, code).Fit;
        if (fit == PartFit.DoesntFit) return fit;
        var answer = answers.At(aspect, code);
        passing[depth + 1] = answer.Passing(passing[depth]);
        for (var left = passing[depth + 1]; left != 0; left &= left - 1)
        {
            var completion = BitOperations.TrailingZeroCount(left);
            var contribution = answer.Contributions[completion];
            var (from, to) = ((depth * count) + completion, ((depth + 1) * count) + completion);
            sums[to] = sums[from] + contribution;
            shares[to] = contribution == 0 ? shares[from] : NotKnown;
        }

        return fits[depth + 1] = fit > fits[depth] ? fit : fits[depth];
    }

    /// <inheritdoc/>
    public void EnterPart(int depth, int place)
    {
        passing[depth + 1] = passing[depth];
        fits[depth + 1] = fits[depth];
        var (of, number) = (answers.AnswersAt(place), answers.Catalogue.NumberAt(place));
        for (var left = passing[depth]; left != 0; left &= left - 1)
        {
            var completion = BitOperations.TrailingZeroCount(left);
            sums[((depth + 1) * count) + completion] = sums[(depth * count) + completion] + PartTerms.Of(weights, of, completion, number).Millionths;
            shares[((depth + 1) * count) + completion] = NotKnown;
        }
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
            weight += weightOf[completion];
            best = Math.Max(best, sums[(depth * count) + completion]);
        }

        var most = weight == 0 ? default : new MeanLikelihood(weights.ShareOf(new(best)) * weight, machines);
        return most.Percent >= percent && PercentAt(depth) >= percent;
    }

    /// <inheritdoc/>
    public int PercentAt(int depth)
    {
        var sum = 0L;
        for (var left = passing[depth]; left != 0; left &= left - 1)
        {
            var completion = BitOperations.TrailingZeroCount(left);
            ref var share = ref shares[(depth * count) + completion];
            if (share == NotKnown) share = weights.ShareOf(new(sums[(depth * count) + completion]));
            sum += weightOf[completion] * share;
        }

        return new MeanLikelihood(sum, machines).Percent;
    }

    private static long[] AllNotKnown(int length)
    {
        var all = new long[length];
        Array.Fill(all, NotKnown);
        return all;
    }
}
