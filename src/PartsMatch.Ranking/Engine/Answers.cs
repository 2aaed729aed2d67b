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
internal sealed class Answers(Catalogue catalogue, Need need, Weights? weights) : IDisposable
{
    private readonly IReadOnlyList<Aspect> aspects = catalogue.Family.Aspects;
    private readonly JudgedFacets judged = JudgedFacets.None(catalogue.Facets);

    /// <summary>How many facets were judged.</summary>
    public int Judged => judged.Count;

    /// <summary>The answer about a facet.</summary>
    public Answer At(int aspect, int code)
    {
        var packed = judged.Of(aspect, code);
        return Answer.Of(packed != 0 ? packed : judged.Keep(aspect, code, Judge(aspect, code).Packed));
    }

    /// <summary>All findings about the part in a place, in the family's order.</summary>
    public FitSheet SheetOf(int place) => new([.. aspects.Select((aspect, index) => new AspectFinding(aspect, FindingOf(index, catalogue.CodeAt(place, index))))]);

    /// <summary>Leaves its room to the thread's next query; sheets may still be asked for.</summary>
    public void Dispose() => judged.Dispose();

    private Answer Judge(int aspect, int code)
    {
        var finding = FindingOf(aspect, code);
        return new(FitSheet.FitOf(finding.Verdict, aspects[aspect].IsDeciding), weights?.Contribution(aspects[aspect], finding) ?? Score.Zero);
    }

    private Finding FindingOf(int aspect, int code) => aspects[aspect].Judge(need, catalogue.Facets[aspect][code]);
}
