using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>For a need that is taken as it is: one sum of contributions.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct PlainPrefix(Answers answers, Weights weights, int aspects) : IPrefix
{
    private readonly Begun[] begun = new Begun[aspects + 2];
    private readonly Score[] leastScores = weights.LeastScores;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public PartFit Enter(int depth, int aspect, int code)
    {
        var answer = answers.At(aspect, code);
        var (fit, sum, _) = begun[depth];
        if (answer.Fit > fit) fit = answer.Fit;
        begun[depth + 1] = new(fit, sum + answer.Contribution);
        return fit;
    }

    /// <inheritdoc/>
    public PartFit EnterPart(int depth, int place)
    {
        var (fit, sum, _) = begun[depth];
        begun[depth + 1] = new(fit, sum + answers.PartTermAt(place));
        return fit;
    }

    /// <inheritdoc/>
    public Begun At(int depth) => begun[depth];

    /// <inheritdoc/>
    public bool TakeUp(int depth, Begun known)
    {
        begun[depth] = known;
        return true;
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool MayShow(int depth, int percent) => begun[depth].Sum.Millionths >= leastScores[percent].Millionths;

    /// <inheritdoc/>
    public int PercentAt(int depth) => weights.PercentOf(begun[depth].Sum);
}
