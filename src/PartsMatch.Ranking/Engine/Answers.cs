using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>What a finding means for any part that carries its facet.</summary>
/// <param name="Fit">What the whole fit is at best.</param>
/// <param name="Contribution">What it takes from the score.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Answer(PartFit Fit, Score Contribution)
{
    private const int FitBits = 2;

    /// <summary>The answer in one figure, never 0.</summary>
    public long Packed => 1 + ((-Contribution.Millionths << FitBits) | (long)Fit);

    /// <summary>The answer of a figure.</summary>
    public static Answer Of(long packed) => new((PartFit)((packed - 1) & ((1 << FitBits) - 1)), new(-((packed - 1) >> FitBits)));
}

/// <summary>What one query has found out: each distinct facet is judged once, and only when a part asks for it.</summary>
/// <remarks>A facet's answer is one figure, and 0 until it is judged: a query asks for thousands. Findings are not kept, and judged again for the few parts that are shown.</remarks>
internal sealed class Answers(Catalogue catalogue, Need need, Weights? weights)
{
    private readonly IReadOnlyList<Aspect> aspects = catalogue.Family.Aspects;
    private readonly ByFacet<long> known = new(catalogue);

    /// <summary>How many facets were judged.</summary>
    public int Judged { get; private set; }

    /// <summary>The answer about a facet.</summary>
    public Answer At(int aspect, int code)
    {
        ref var packed = ref known.At(aspect, code);
        if (packed == 0) packed = Judge(aspect, code).Packed;
        return Answer.Of(packed);
    }

    /// <summary>All findings about the part in a place, in the family's order.</summary>
    public FitSheet SheetOf(int place) => new([.. aspects.Select((aspect, index) => new AspectFinding(aspect, FindingOf(index, catalogue.CodeAt(place, index))))]);

    private Answer Judge(int aspect, int code)
    {
        Judged++;
        var finding = FindingOf(aspect, code);
        return new(FitSheet.FitOf(finding.Verdict, aspects[aspect].IsDeciding), weights?.Contribution(aspects[aspect], finding) ?? Score.Zero);
    }

    private Finding FindingOf(int aspect, int code) => aspects[aspect].Judge(need, catalogue.Facets[aspect][code]);
}
