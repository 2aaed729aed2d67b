using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking;

/// <summary>What is asked of a ranking.</summary>
/// <param name="Need">What is to be replaced, and where.</param>
/// <param name="Include">Which fits are wanted; null for all that may fit. Parts that don't fit are never ranked, asked for or not: see <see cref="Ranker.NearestMisses"/>.</param>
/// <param name="First">How many parts at most, 0 or more.</param>
/// <param name="After">The cursor of the last part seen; null for the beginning.</param>
/// <param name="LeftOut">The number of a part that is not offered this time: the old one, where it can be had no more; null for none.</param>
public sealed record RankingQuery(Need Need, IReadOnlySet<PartFit>? Include, int First, string? After, string? LeftOut = null)
{
    /// <summary>What the need may be, where it leaves something open: <see cref="KnownMachines.Complete"/> tells.</summary>
    public Completions Completions { get; init; } = Completions.None;
}

/// <summary>A part in its place in a ranking.</summary>
/// <param name="number">Its number.</param>
/// <param name="stock">What is at hand, at what price.</param>
/// <param name="fit">Whether it does the job.</param>
/// <param name="likelihood">How likely it does the job.</param>
/// <param name="explained">Its findings, and what each takes from the score.</param>
/// <param name="unread">Its findings without their sentences.</param>
/// <param name="cursor">Its place, to go on after: written when first asked for.</param>
public sealed class RankedPart(string number, Stock stock, PartFit fit, Likelihood likelihood, Lazy<Explained> explained, Lazy<FitSheet> unread, Lazy<string> cursor)
{
    /// <summary>Its number.</summary>
    public string Number => number;

    /// <summary>What is at hand, at what price.</summary>
    public Stock Stock => stock;

    /// <summary>Whether it does the job, as its findings say: known from the ranking, before any of them is put together.</summary>
    public PartFit Fit => fit;

    /// <summary>How likely it does the job.</summary>
    public Likelihood Likelihood => likelihood;

    /// <summary>Its findings, and what each takes from the score: put together when first asked for.</summary>
    public Explained Explained => explained.Value;

    /// <summary>Its findings without their sentences, for those who only want to know what is to be done: half the work.</summary>
    public FitSheet Unread => unread.Value;

    /// <summary>Its place, to go on after.</summary>
    public string Cursor => cursor.Value;
}

/// <summary>A part that does not fit, and comes nearest to it.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Stock">What is at hand, at what price.</param>
/// <param name="Explained">Its findings; the score is that of the aspects that do not fail.</param>
public sealed record NearestMiss(string Number, Stock Stock, Explained Explained)
{
    /// <summary>What stands in the way: one failed aspect or two.</summary>
    public IReadOnlyList<AspectFinding> InTheWay { get; } = [.. Explained.Sheet.Failures];
}

/// <summary>The answer to a <see cref="RankingQuery"/>.</summary>
/// <remarks>
/// Paging is by place in the order and not by count. While catalogue, weights, stock and price stay, going through all pages shows every part once.
/// A part whose stock or price changes meanwhile may move across the place already reached, and so be seen twice or not at all; the others are still seen once.
/// </remarks>
public abstract record RankingPage
{
    private RankingPage()
    {
    }

    /// <summary>The best parts after the cursor, best first.</summary>
    /// <param name="Parts">The parts.</param>
    /// <param name="HasNextPage">Whether more parts follow.</param>
    /// <param name="FacetsJudged">How many distinct facets were judged to find them.</param>
    /// <param name="RowsTouched">How many rows, or beginnings that rows share, were looked at; the others lay behind beginnings that fail or cannot win.</param>
    public sealed record Listed(IReadOnlyList<RankedPart> Parts, bool HasNextPage, int FacetsJudged, int RowsTouched) : RankingPage;

    /// <summary>The cursor belongs to other weights, whose order this is not: begin again.</summary>
    public sealed record CursorExpired : RankingPage;

    /// <summary>The text is no cursor of ours.</summary>
    public sealed record CursorMalformed : RankingPage;
}
