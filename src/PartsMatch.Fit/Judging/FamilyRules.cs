using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Judging;

/// <summary>What a family declares of itself.</summary>
/// <typeparam name="TSpec">Its spec.</typeparam>
/// <typeparam name="TSite">Its site.</typeparam>
/// <typeparam name="TReadings">Its readings.</typeparam>
public sealed record FamilyRules<TSpec, TSite, TReadings>
    where TSpec : Spec, new()
    where TSite : Site, new()
    where TReadings : Readings, new()
{
    /// <summary>The questions, in order: those that turn most parts away, cheaply, first.</summary>
    public required IReadOnlyList<Aspect> Aspects { get; init; }

    /// <summary>Aspects that may be worse together; none where nothing is said.</summary>
    public IReadOnlyList<AspectPair> Pairs { get; init; } = [];

    /// <summary>Aspects that are asked no longer, by name, with the one that asks it now, or null: weights that were kept may still have a cost for them. None where nothing is said.</summary>
    public IReadOnlyDictionary<string, string?> FormerAspects { get; init; } = new Dictionary<string, string?>();

    /// <summary>The words of its plates.</summary>
    public required Vocabulary Vocabulary { get; init; }

    /// <summary>What follows from a spec's readings; pure.</summary>
    public required Func<TSpec, (TSpec Spec, IReadOnlyList<Deduction> Deductions)> Deduce { get; init; }

    /// <summary>What follows for the site from the plate: the old motor ran on 60 Hz, so the supply is 60 Hz; pure.</summary>
    public required Func<TSpec, TSite, (TSite Site, IReadOnlyList<Deduction> Deductions)> DeduceSite { get; init; }

    /// <summary>Readings that cannot all be true; pure.</summary>
    public required Func<TSpec, IReadOnlyList<Contradiction>> Contradictions { get; init; }

    /// <summary>What is known of the site and cannot be true beside the old part's plate; pure.</summary>
    public required Func<TSpec, TSite, IReadOnlyList<Contradiction>> SiteContradictions { get; init; }

    /// <summary>What will be different once a part, with what is deduced of it, runs in the old one's place; pure.</summary>
    public required Func<Need<TSpec, TSite>, TSpec, IReadOnlyList<Difference>> WillDiffer { get; init; }

    /// <summary>What is drawn of a part, with what is deduced of it, in the old one's place; pure.</summary>
    public required Func<Need<TSpec, TSite>, TSpec, IReadOnlyList<Drawing>> Drawings { get; init; }

    /// <summary>The steps of every job round its changes, for a need and a part with what was deduced; pure.</summary>
    public required Func<Need<TSpec, TSite>, TSpec, JobSteps> Steps { get; init; }

    /// <summary>Whether it is the part; pure.</summary>
    public required Func<Need<TSpec, TSite>, TReadings, Diagnosis> BeforeCondemning { get; init; }

    /// <summary>Whether a new part, with what was deduced of it, runs as it should; pure.</summary>
    public required Func<Need<TSpec, TSite>, TSpec, TReadings, AfterSwapReport> AfterSwap { get; init; }
}
