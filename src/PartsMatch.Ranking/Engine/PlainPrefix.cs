using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>For a need that is taken as it is: one sum of contributions.</summary>
internal readonly struct PlainPrefix(Answers answers, Weights weights, int aspects) : IPrefix
{
    private readonly Score[] sums = new Score[aspects + 1];
    private readonly PartFit[] fits = new PartFit[aspects + 1];

    /// <inheritdoc/>
    public PartFit Enter(int depth, int aspect, int code)
    {
        var answer = answers.At(aspect, code);
        sums[depth + 1] = sums[depth] + answer.Contribution;
        return fits[depth + 1] = answer.Fit > fits[depth] ? answer.Fit : fits[depth];
    }

    /// <inheritdoc/>
    public bool MayShow(int depth, int percent) => sums[depth].Millionths >= weights.LeastScoreOf(percent).Millionths;

    /// <inheritdoc/>
    public int PercentAt(int depth) => weights.PercentOf(sums[depth]);
}
