namespace PartsMatch.Ranking.Engine;

/// <summary>A few of many, evenly spread over all, whose number nobody knows before.</summary>
/// <typeparam name="T">What they are.</typeparam>
/// <param name="least">So many are kept of as many or more; never twice as many.</param>
internal sealed class SpreadSample<T>(int least)
{
    private List<T> kept = [];
    private int stride = 1;

    /// <summary>How many there were.</summary>
    public int Seen { get; private set; }

    /// <summary>Those that were kept.</summary>
    public IReadOnlyList<T> Kept => kept;

    /// <summary>Adds the next.</summary>
    public void Add(T next)
    {
        if (Seen++ % stride != 0) return;
        kept.Add(next);
        if (kept.Count < 2 * least) return;
        kept = [.. kept.Where((_, at) => at % 2 == 0)];
        stride *= 2;
    }
}
