using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>What is asked of every part of a family: its facet in every aspect, in the family's order, and behind them the gists of those aspects that have one.</summary>
/// <remarks>An aspect is asked of the facet or of the gist, never of both: by its few gists rows are sorted early, and many of them are turned away at once.</remarks>
/// <param name="family">The family.</param>
internal sealed class Questions(Family family)
{
    private readonly IReadOnlyList<Aspect> aspects = family.Aspects;
    private readonly int[] withGist = [.. family.Aspects.Index().Where(one => one.Item.HasGist).Select(one => one.Index)];

    /// <summary>The family.</summary>
    public Family Family => family;

    /// <summary>How many there are.</summary>
    public int Count => aspects.Count + withGist.Length;

    /// <summary>The aspect of every question.</summary>
    public IEnumerable<Aspect> Aspects => Enumerable.Range(0, Count).Select(AspectOf);

    /// <summary>The aspect of a question.</summary>
    public Aspect AspectOf(int question) => aspects[IndexOf(question)];

    /// <summary>The place of a question's aspect among the family's.</summary>
    public int IndexOf(int question) => question < aspects.Count ? question : withGist[question - aspects.Count];

    /// <summary>What a question reads of a part.</summary>
    public object Read(int question, Spec part)
    {
        var (aspect, facet) = (AspectOf(question), AspectOf(question).FacetOf(part));
        return question < aspects.Count ? facet : aspect.GistOf(facet);
    }

    /// <summary>Of every aspect the question by which a need's queries judge it.</summary>
    /// <param name="needs">The need, and what it may be in full.</param>
    public int[] AskedFor(IReadOnlyList<Need> needs)
    {
        int[] asked = [.. Enumerable.Range(0, aspects.Count)];
        for (var gist = 0; gist < withGist.Length; gist++)
        {
            var aspect = withGist[gist];
            if (!needs.Any(aspects[aspect].AsksBeyondGist)) asked[aspect] = aspects.Count + gist;
        }

        return asked;
    }
}
