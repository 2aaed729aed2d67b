using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>Finds for which completions parts may fit for sure, in a large catalogue by all but their costliest facets: of parts that may for the same ones the best few to have are kept.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct CoverageWalk(Catalogue catalogue, CompletedAnswers answers, int leftOut, int mostAlike, Dictionary<ulong, BestParts<OfferKey>> byFitting) : IWalk
{
    /// <summary>In catalogues of up to so many parts all facets are judged: some ten milliseconds.</summary>
    private const int MostInFull = 1000;

    private readonly bool isInFull = catalogue.Offered <= MostInFull;
    private readonly ulong[] fitting = [answers.Completions.Everything, .. new ulong[catalogue.Facets.Length]];

    /// <inheritdoc/>
    public bool Enter(int depth, int aspect, int code, int at) =>
        answers.ByNeed.At(aspect, code).Fit != PartFit.DoesntFit && (fitting[depth + 1] = answers.At(aspect, code).Fitting(fitting[depth])) != 0;

    /// <inheritdoc/>
    public bool IsWanted(int place, int depth)
    {
        if (!isInFull) Keep(place, fitting[depth]);
        return isInFull;
    }

    /// <inheritdoc/>
    public void Take(int place) => Keep(place, fitting[^1]);

    private void Keep(int place, ulong fits)
    {
        if (!catalogue.IsCurrent(place) || place == leftOut) return;
        if (!byFitting.TryGetValue(fits, out var alike)) byFitting.Add(fits, alike = new(mostAlike, OfferKey.BestFirst));
        alike.Offer(place, catalogue.OfferAt(place));
    }
}
