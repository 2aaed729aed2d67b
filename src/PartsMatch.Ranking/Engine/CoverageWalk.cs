using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>Finds for which completions parts pass: of parts that pass for the same ones the best to have is kept.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct CoverageWalk(Catalogue catalogue, CompletedAnswers answers, int leftOut, Dictionary<ulong, OfferKey> byPassing) : IWalk
{
    private readonly ulong[] passing = [answers.Everything, .. new ulong[catalogue.Facets.Length]];

    /// <inheritdoc/>
    public bool Enter(int depth, int aspect, int code)
    {
        if (answers.FitAt(aspect, code) == PartFit.DoesntFit) return false;
        return (passing[depth + 1] = passing[depth] & answers.At(aspect, code).Passing) != 0;
    }

    /// <inheritdoc/>
    public bool IsWanted(int part, int place, int depth) => catalogue.StateOf(part).Place == place && part != leftOut;

    /// <inheritdoc/>
    public void Take(int part, int place)
    {
        var key = catalogue.OfferOf(part);
        if (!byPassing.TryGetValue(passing[^1], out var best) || OfferKey.BestFirst.Compare(key, best) < 0) byPassing[passing[^1]] = key;
    }
}
