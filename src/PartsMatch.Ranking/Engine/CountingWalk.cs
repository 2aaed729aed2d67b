using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>Counts the parts that do not fail, by their fit.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct CountingWalk(Catalogue catalogue, Answers answers, int leftOut, Dictionary<PartFit, int> counts) : IWalk
{
    private readonly PartFit[] fits = new PartFit[catalogue.Facets.Length + 1];

    /// <inheritdoc/>
    public bool Enter(int depth, int aspect, int code, int at)
    {
        var fit = answers.At(aspect, code).Fit;
        fits[depth + 1] = fit > fits[depth] ? fit : fits[depth];
        return fit != PartFit.DoesntFit;
    }

    /// <inheritdoc/>
    public bool IsWanted(int place, int depth) => catalogue.IsCurrent(place) && place != leftOut;

    /// <inheritdoc/>
    public void Take(int place) => counts[fits[^1]]++;
}
