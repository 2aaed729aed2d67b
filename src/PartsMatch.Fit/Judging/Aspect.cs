namespace PartsMatch.Fit.Judging;

/// <summary>What an aspect's features cost in the ranking: penalties in the unit of the log-odds, never negative.</summary>
/// <param name="Shortfall">For a shortfall of 1.</param>
/// <param name="Effort">For changes of effort 1.</param>
/// <param name="Unknown">For a gap in the part's own spec.</param>
public sealed record AspectWeight(double Shortfall, double Effort, double Unknown);

/// <summary>One question about whether a part does a job, as ranking and edges see it.</summary>
/// <param name="title">A few words: "Supply voltage".</param>
/// <param name="isDeciding">Whether an unknown in it leaves the whole fit open.</param>
/// <param name="source">Where its rule comes from.</param>
/// <param name="weight">Its hand-set weight.</param>
public abstract class Aspect(string title, bool isDeciding, Source source, AspectWeight weight)
{
    private string? name;

    /// <summary>Its name at every edge: the class's, in camel case.</summary>
    public string Name => name ??= char.ToLowerInvariant(GetType().Name[0]) + GetType().Name[1..];

    /// <summary>A few words for it.</summary>
    public string Title => title;

    /// <summary>Whether an unknown in it leaves the whole fit open (deciding), or becomes a check in the notes (checking).</summary>
    public bool IsDeciding => isDeciding;

    /// <summary>Where its rule comes from.</summary>
    public Source Source => source;

    /// <summary>Its hand-set weight, used where no trained one is given.</summary>
    public AspectWeight DefaultWeight => weight;

    /// <summary>
    /// What a missing reading of plate or site costs in the ranking where the aspect is deciding, in log-odds, whatever the weights: as much as a gap in a part's own spec costs in a deciding aspect, by and large,
    /// so that of two parts that are otherwise alike the one known to fit stands before the one that may not. An aspect without whose reading a part hardly fits says more.
    /// </summary>
    /// <remarks>What a plate leaves open is averaged over known machines; this is for readings of the site, and for what no known machine tells: docs/decisions/0004-unknowns-before-completions.md and 0005.</remarks>
    public virtual double OpenReadingPenalty => 1;

    /// <summary>What its shortfall is in its own unit; null where it is none of one figure alone.</summary>
    public virtual OwnMeasure? Measure => null;

    /// <summary>The fields that it looks at, the most telling first: old and new are shown beside each other by them.</summary>
    public abstract LookedAt Fields { get; }

    /// <summary>The type of its facets: a record of plain numbers, enums, sequences and records of such, so that anyone can write and read them by their parts alone.</summary>
    public abstract Type FacetType { get; }

    /// <summary>The facet of a part that the aspect reads: a small struct of plain numbers, equal for parts that cannot be told apart by it.</summary>
    public abstract object FacetOf(Spec part);

    /// <summary>Whether its facets have a gist: a facet of the same type with all left out that most needs do not ask about, so that far fewer differ. None where nothing is said.</summary>
    public virtual bool HasGist => false;

    /// <summary>A facet's gist.</summary>
    public virtual object GistOf(object facet) => facet;

    /// <summary>Whether a need asks about more than gists. If not, judging a facet's gist comes to the same verdict, shortfall, changes and missing fields as judging the facet.</summary>
    /// <remarks>That of a need with unknowns and those of its completions are asked together.</remarks>
    public virtual bool AsksBeyondGist(Need need) => true;

    /// <summary>Judges a facet against a need.</summary>
    public abstract Finding Judge(Need need, object facet);

    /// <summary>The same for a caller who does not read the sentence: the finding has none, and is otherwise the same.</summary>
    public Finding JudgeUnread(Need need, object facet)
    {
        using var unread = Reason.Unread();
        return Judge(need, facet);
    }
}

/// <summary>One question about whether a part does a job: pure, stateless, blind to other aspects' findings.</summary>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
/// <typeparam name="TFacet">What it reads of a part: plain numbers in one unit, rounded to the trade's precision, with 1e-6 added first.</typeparam>
public abstract class Aspect<TSpec, TSite, TFacet>(string title, bool isDeciding, Source source, AspectWeight weight) : Aspect(title, isDeciding, source, weight)
    where TSpec : Spec
    where TSite : Site
    where TFacet : struct, IEquatable<TFacet>
{
    /// <summary>What the aspect reads of a part.</summary>
    public abstract TFacet Read(TSpec part);

    /// <summary>The answer for a need and a facet. It is asked hundreds of times a query: what follows from the need alone is asked of its Once, and sentences are formed when they are shown.</summary>
    public abstract Finding Judge(Need<TSpec, TSite> need, TFacet facet);

    /// <summary>A facet's gist; only asked where <see cref="Aspect.HasGist"/>.</summary>
    public virtual TFacet GistOf(TFacet facet) => facet;

    /// <summary>Whether a need asks about more than gists; only asked where <see cref="Aspect.HasGist"/>.</summary>
    public virtual bool AsksBeyondGist(Need<TSpec, TSite> need) => true;

    /// <inheritdoc/>
    public sealed override Type FacetType => typeof(TFacet);

    /// <inheritdoc/>
    public sealed override object FacetOf(Spec part) => Read((TSpec)part);

    /// <inheritdoc/>
    public sealed override object GistOf(object facet) => GistOf((TFacet)facet);

    /// <inheritdoc/>
    public sealed override bool AsksBeyondGist(Need need) => AsksBeyondGist(new Need<TSpec, TSite>(need));

    /// <inheritdoc/>
    public sealed override Finding Judge(Need need, object facet) => Judge(new Need<TSpec, TSite>(need), (TFacet)facet);
}
