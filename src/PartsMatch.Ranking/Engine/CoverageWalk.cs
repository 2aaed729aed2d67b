using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>Finds for which completions parts may pass, by all but their costliest facets: of parts that may pass for the same ones the best few to have are kept.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct CoverageWalk(Catalogue catalogue, CompletedAnswers answers, int leftOut, int mostAlike, Dictionary<ulong, BestParts<OfferKey>> byPassing) : IWalk
{
    private readonly ulong[] passing = [answers.Completions.Everything, .. new ulong[catalogue.Facets.Length]];

    /// <inheritdoc/>
    public bool Enter(int depth, int aspect, int code, int at) =>
        answers.ByNeed.At(aspect, code).Fit != PartFit.DoesntFit && (passing[depth + 1] = answers.At(aspect, code).Passing(passing[depth])) != 0;

    /// <inheritdoc/>
    public bool IsWanted(int place, int depth)
    {
        if (!catalogue.IsCurrent(place) || place == leftOut) return false;
        if (!byPassing.TryGetValue(passing[depth], out var alike)) byPassing.Add(passing[depth], alike = new(mostAlike, OfferKey.BestFirst));
        alike.Offer(place, catalogue.OfferAt(place));
        return false;
    }

    /// <inheritdoc/>
    public void Take(int place) => throw new InvalidOperationException("No part is wanted further than it was gathered.");
}
