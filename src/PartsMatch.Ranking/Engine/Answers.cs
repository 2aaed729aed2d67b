using System.Runtime.CompilerServices;
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
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Answer Of(long packed) => new((PartFit)((packed - 1) & ((1 << FitBits) - 1)), new(-((packed - 1) >> FitBits)));
}

/// <summary>What one query has found out: each distinct facet is judged once, and only when a part asks for it.</summary>
/// <remarks>A facet's answer is one figure, and 0 until it is judged: a query asks for thousands. Findings are not kept, and judged again for the few parts that are shown.</remarks>
internal sealed class Answers : IDisposable
{
    private readonly Catalogue catalogue;
    private readonly Need need;
    private readonly Weights? weights;
    private readonly Questions questions;
    private readonly int[] askedFor;
    private readonly bool[] isAsked;
    private readonly bool[] isPaired;
    private readonly JudgedFacets judged;
    private readonly Dictionary<(int Question, int Code), double> shortfalls = [];

    /// <summary>None yet.</summary>
    /// <param name="catalogue">The parts.</param>
    /// <param name="need">The need.</param>
    /// <param name="weights">What shortcomings cost; null where nobody asks.</param>
    /// <param name="completed">What the need may be in full.</param>
    public Answers(Catalogue catalogue, Need need, Weights? weights, params IReadOnlyList<Need> completed)
    {
        (this.catalogue, this.need, this.weights, questions) = (catalogue, need, weights, catalogue.Questions);
        (askedFor, isAsked, judged) = (questions.AskedFor([need, .. completed]), new bool[questions.Count], JudgedFacets.None(catalogue.Facets));
        foreach (var question in askedFor) isAsked[question] = true;
        isPaired = [.. catalogue.Family.Aspects.Select((_, aspect) => weights?.IsPaired(aspect) == true)];
    }

    /// <summary>How many facets were judged.</summary>
    public int Judged => judged.Count;

    /// <summary>Whether its aspect is judged by a question; else by its other one, and this one takes nothing.</summary>
    public bool IsAsked(int question) => isAsked[question];

    /// <summary>The answer about what a question reads; nothing said, where it is not asked.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Answer At(int question, int code)
    {
        if (!isAsked[question]) return default;
        var packed = judged.Of(question, code);
        return Answer.Of(packed != 0 ? packed : judged.Keep(question, code, Judge(question, code).Packed));
    }

    /// <summary>The question by which an aspect is judged, and the code of what it reads of the part in a place.</summary>
    public (int Question, int Code) AskedOf(int aspect, int place) => (askedFor[aspect], catalogue.CodeAt(place, askedFor[aspect]));

    /// <summary>What is taken from the score of the part in a place besides what each aspect takes: for pairs that do not fail, and for its record.</summary>
    public Score PartTermAt(int place)
    {
        if (weights is null) return Score.Zero;
        var sum = weights.Records.Count > 0 ? weights.RecordOf(catalogue.NumberAt(place)) : Score.Zero;
        foreach (var pair in weights.Pairs)
        {
            if (pair.Cost > 0 && ShortfallAt(pair.One, place) is { } one && ShortfallAt(pair.Other, place) is { } other) sum += Score.Less(pair.Cost * PairCost.Share(one, other));
        }

        return sum;
    }

    /// <summary>The whole fit of the part in a place: of one that was ranked all its facets were judged.</summary>
    public PartFit FitAt(int place)
    {
        var fit = PartFit.DropIn;
        for (var aspect = 0; aspect < askedFor.Length; aspect++)
        {
            var (question, code) = AskedOf(aspect, place);
            if (At(question, code).Fit is var one && one > fit) fit = one;
        }

        return fit;
    }

    /// <summary>All findings about the part in a place, in the family's order.</summary>
    public FitSheet SheetOf(int place) => new([.. catalogue.Family.Aspects.Select((aspect, index) => new AspectFinding(aspect, aspect.Judge(need, catalogue.Facets[index][catalogue.CodeAt(place, index)])))]);

    /// <summary>Leaves its room to the thread's next query; sheets may still be asked for.</summary>
    public void Dispose() => judged.Dispose();

    private Answer Judge(int question, int code)
    {
        var aspect = questions.AspectOf(question);
        var finding = aspect.JudgeUnread(need, catalogue.Facets[question][code]);
        if (isPaired[questions.IndexOf(question)]) shortfalls.Add((question, code), finding.Shortfall);
        return new(FitSheet.FitOf(finding.Verdict, aspect.IsDeciding), weights?.Contribution(aspect, finding) ?? Score.Zero);
    }

    /// <summary>How far the part in a place falls short in an aspect; null where it fails.</summary>
    private double? ShortfallAt(int aspect, int place)
    {
        var (question, code) = AskedOf(aspect, place);
        return At(question, code).Fit == PartFit.DoesntFit ? null : shortfalls[(question, code)];
    }
}
