using System.Numerics;
using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>For a need with unknowns: one sum of contributions for each completion, and which of them still pass.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct CompletedPrefix(CompletedAnswers answers, Weights weights, int aspects, KeptSums keptSums) : IPrefix
{
    /// <summary>A share or percent that nobody asked for yet.</summary>
    private const int NotKnown = -1;

    private readonly int count = answers.Completions.All.Count;
    private readonly int weightOfAll = answers.Completions.Weight;
    private readonly int[] weightOf = answers.Completions.Weights;
    private readonly long[] sums = new long[(aspects + 2) * answers.Completions.All.Count];
    private readonly long[] shares = AllNotKnown<long>((aspects + 2) * answers.Completions.All.Count);
    private readonly ulong[] passing = [answers.Completions.Everything, .. new ulong[aspects + 1]];
    private readonly PartFit[] fits = new PartFit[aspects + 2];

    /// <summary>Of every depth, where its sums begin: a facet that takes nothing from any completion leaves them where they are.</summary>
    private readonly int[] sumsOf = new int[aspects + 2];

    private readonly int[] percents = AllNotKnown<int>(aspects + 2);

    /// <summary>Of every depth, where what is known is kept, once somebody waits for it.</summary>
    private readonly int?[] kept = new int?[aspects + 2];

    /// <summary>The facets entered, none where they were taken up, and behind them how many of these still stand: of parts that are judged one after the other many begin alike.</summary>
    private readonly int[] entered = new int[aspects + 2];

    /// <inheritdoc/>
    public PartFit Enter(int depth, int aspect, int code)
    {
        ref var standing = ref entered[^1];
        if (depth < standing && entered[depth] == code) return fits[depth + 1];
        // What fails the need as it is fails every completion of it.
        var fit = answers.ByNeed.At(aspect, code).Fit;
        if (fit == PartFit.DoesntFit) return fit;
        (entered[depth], standing, kept[depth + 1]) = (code, depth + 1, null);
        var answer = answers.At(aspect, code);
        passing[depth + 1] = answer.Passing(passing[depth]);
        if (answer.TakesFrom(passing[depth + 1]))
        {
            var (from, to) = (sumsOf[depth], sumsOf[depth + 1] = (depth + 1) * count);
            for (var left = passing[depth + 1]; left != 0; left &= left - 1)
            {
                var completion = BitOperations.TrailingZeroCount(left);
                var contribution = answer.ContributionOf(completion);
                sums[to + completion] = sums[from + completion] + contribution;
                shares[to + completion] = contribution == 0 ? shares[from + completion] : NotKnown;
            }

            percents[depth + 1] = NotKnown;
        }
        else
        {
            sumsOf[depth + 1] = sumsOf[depth];
            percents[depth + 1] = passing[depth + 1] == passing[depth] ? percents[depth] : NotKnown;
        }

        return fits[depth + 1] = fit > fits[depth] ? fit : fits[depth];
    }

    /// <inheritdoc/>
    public PartFit EnterPart(int depth, int place)
    {
        kept[depth + 1] = null;
        passing[depth + 1] = passing[depth];
        fits[depth + 1] = fits[depth];
        percents[depth + 1] = NotKnown;
        var (from, to) = (sumsOf[depth], sumsOf[depth + 1] = (depth + 1) * count);
        var (of, number) = (answers.AnswersAt(place), answers.Catalogue.NumberAt(place));
        for (var left = passing[depth]; left != 0; left &= left - 1)
        {
            var completion = BitOperations.TrailingZeroCount(left);
            sums[to + completion] = sums[from + completion] + PartTerms.Of(weights, of, completion, number).Millionths;
            shares[to + completion] = NotKnown;
        }

        return fits[depth + 1];
    }

    /// <inheritdoc/>
    public Begun At(int depth)
    {
        if (depth > 0) kept[depth] ??= keptSums.Keep(passing[depth], sums.AsSpan(sumsOf[depth], count), shares.AsSpan(sumsOf[depth], count));
        return new(fits[depth], Score.Zero, kept[depth]);
    }

    /// <inheritdoc/>
    public bool TakeUp(int depth, Begun known)
    {
        ref var standing = ref entered[^1];
        if (depth == 0 || (depth <= standing && known.Kept is not null && kept[depth] == known.Kept)) return true;
        if (known.Kept is not { } at) return false;

        // Of what stands before it nothing is known any more.
        Array.Fill(entered, NotKnown, 0, depth);
        Array.Clear(kept, 0, depth);
        sumsOf[depth] = depth * count;
        passing[depth] = keptSums.TakeUp(at, sums.AsSpan(sumsOf[depth], count), shares.AsSpan(sumsOf[depth], count));
        (fits[depth], percents[depth], kept[depth], standing) = (known.Fit, NotKnown, at, depth);
        return true;
    }

    /// <inheritdoc/>
    public bool MayShow(int depth, int percent) => PercentAt(depth) >= percent;

    /// <inheritdoc/>
    public int PercentAt(int depth)
    {
        if (percents[depth] != NotKnown) return percents[depth];
        var (sum, from) = (0L, sumsOf[depth]);
        for (var left = passing[depth]; left != 0; left &= left - 1)
        {
            var completion = BitOperations.TrailingZeroCount(left);
            ref var share = ref shares[from + completion];
            if (share == NotKnown) share = weights.ShareOf(new(sums[from + completion]));
            sum += weightOf[completion] * share;
        }

        return percents[depth] = new MeanLikelihood(sum, weightOfAll).Percent;
    }

    private static T[] AllNotKnown<T>(int length)
        where T : INumber<T>
    {
        var all = new T[length];
        Array.Fill(all, T.CreateChecked(NotKnown));
        return all;
    }
}
