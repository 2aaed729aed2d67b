using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>What is asked of every part of a family: its facet in every aspect, in the family's order, and behind them the gists of those aspects that have one.</summary>
/// <remarks>An aspect is asked of the facet or of the gist, never of both: by its few gists rows are sorted early, and many of them are turned away at once.</remarks>
/// <param name="family">The family.</param>
/// <param name="turnedAway">Of every aspect, how many of 1,000 parts it turns away; 0 while nobody knows.</param>
internal sealed class Questions(Family family, IReadOnlyList<int> turnedAway)
{
    private readonly Aspect[] aspects = [.. family.Aspects];
    private readonly int[] withGist = [.. family.Aspects.Index().Where(one => one.Item.HasGist).Select(one => one.Index)];

    /// <summary>The family.</summary>
    public Family Family => family;

    /// <summary>How many there are.</summary>
    public int Count => aspects.Length + withGist.Length;

    /// <summary>Of every aspect, how many of 1,000 parts it turns away.</summary>
    public IReadOnlyList<int> TurnedAway => turnedAway;

    /// <summary>The aspect of every question.</summary>
    public IEnumerable<Aspect> Aspects => Enumerable.Range(0, Count).Select(AspectOf);

    /// <summary>Those of a family of whose parts nothing is known.</summary>
    public static Questions Of(Family family) => new(family, new int[family.Aspects.Count]);

    /// <summary>The aspect of a question.</summary>
    public Aspect AspectOf(int question) => aspects[IndexOf(question)];

    /// <summary>The place of a question's aspect among the family's.</summary>
    public int IndexOf(int question) => question < aspects.Length ? question : withGist[question - aspects.Length];

    /// <summary>In which order rows are to be sorted by them: those that decide first, and last, whatever they are, those with very many facets.</summary>
    /// <param name="facets">How many distinct facets there are for each.</param>
    /// <param name="many">More than so many are very many.</param>
    public int[] InOrder(IReadOnlyList<int> facets, int many) => [.. Enumerable.Range(0, Count)
        .OrderBy(question => facets[question] > many)
        .ThenBy(question => !AspectOf(question).IsDeciding)
        .ThenBy(question => BranchesATurn(question, facets[question]))
        .ThenBy(question => facets[question])];

    /// <summary>What a question reads of a part.</summary>
    public object Read(int question, Spec part)
    {
        var (aspect, facet) = (AspectOf(question), AspectOf(question).FacetOf(part));
        return question < aspects.Length ? facet : aspect.GistOf(facet);
    }

    /// <summary>Of every aspect the question by which a need's queries judge it.</summary>
    /// <param name="needs">The need, and what it may be in full.</param>
    public int[] AskedFor(IReadOnlyList<Need> needs)
    {
        int[] asked = [.. Enumerable.Range(0, aspects.Length)];
        for (var gist = 0; gist < withGist.Length; gist++)
        {
            var aspect = withGist[gist];
            if (!needs.Any(aspects[aspect].AsksBeyondGist)) asked[aspect] = aspects.Length + gist;
        }

        return asked;
    }

    /// <summary>Into how many prefixes a question splits those before it and lets them live, for each share that it turns away: what costs least for what it takes off the others stands first. What only checks turns none away.</summary>
    private double BranchesATurn(int question, int facets)
    {
        if (!AspectOf(question).IsDeciding) return 0;
        var turned = Math.Max(1, turnedAway[IndexOf(question)]) / 1000.0;
        return facets * (1 - turned) / turned;
    }
}
