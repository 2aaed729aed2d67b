namespace PartsMatch.Ranking.Engine;

/// <summary>What a query does on its way through the rows: it judges prefixes, and takes the parts that it wants.</summary>
internal interface IWalk
{
    /// <summary>Takes one more facet onto a prefix.</summary>
    /// <param name="depth">How many facets the prefix has already; those beyond are forgotten.</param>
    /// <param name="aspect">The aspect of the facet.</param>
    /// <param name="code">The facet's code.</param>
    /// <param name="at">Where the prefix with this facet lies: <see cref="Prefix.At"/>.</param>
    /// <returns>False when no part whose facets begin like this is wanted, or not now.</returns>
    bool Enter(int depth, int aspect, int code, int at);

    /// <summary>Whether one part is still wanted, before its costliest facets are judged.</summary>
    /// <param name="place">The row; it may be out of date.</param>
    /// <param name="depth">How many facets of it were taken.</param>
    bool IsWanted(int place, int depth);

    /// <summary>Takes a part all of whose facets were entered.</summary>
    void Take(int place);
}
