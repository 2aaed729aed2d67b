using PartsMatch.Ranking.Columns;

namespace PartsMatch.Ranking.Engine;

/// <summary>One value a part, by the part's index; immutable, and cheap to change a little: only the chunks that are written are copied.</summary>
/// <typeparam name="T">A plain value, whose default stands for a part of which nothing was said.</typeparam>
internal sealed class Column<T>
    where T : unmanaged
{
    private const int ChunkBits = 10;
    private const int ChunkSize = 1 << ChunkBits;

    private readonly T[][] chunks;

    private Column(T[][] chunks) => this.chunks = chunks;

    /// <summary>A column without values.</summary>
    public static Column<T> Empty { get; } = new([]);

    /// <summary>More than every index that has a value.</summary>
    public int Count => chunks.Length << ChunkBits;

    /// <summary>The value of a part; the default when nothing was said of it.</summary>
    public T this[int part] => part >> ChunkBits < chunks.Length ? chunks[part >> ChunkBits][part & (ChunkSize - 1)] : default;

    /// <summary>The column that was written.</summary>
    public static Column<T> ReadFrom(ColumnsReader from) => new([.. Enumerable.Range(0, (int)from.NextFigure()).Select(_ => from.Next<T>())]);

    /// <summary>Adds it to what is written.</summary>
    public void AddTo(ColumnsWriter to)
    {
        to.Add(chunks.Length);
        foreach (var chunk in chunks) to.Add<T>(chunk);
    }

    /// <summary>A column with other values of some parts. Of one part the last counts.</summary>
    public Column<T> With(IReadOnlyCollection<KeyValuePair<int, T>> changed)
    {
        if (changed.Count == 0) return this;
        var all = new T[Math.Max(chunks.Length, (changed.Max(one => one.Key) >> ChunkBits) + 1)][];
        var own = new bool[all.Length];
        foreach (var (part, value) in changed)
        {
            var chunk = part >> ChunkBits;
            if (!own[chunk]) (all[chunk], own[chunk]) = (chunk < chunks.Length ? [.. chunks[chunk]] : new T[ChunkSize], true);
            all[chunk][part & (ChunkSize - 1)] = value;
        }

        for (var chunk = 0; chunk < all.Length; chunk++) all[chunk] ??= chunk < chunks.Length ? chunks[chunk] : new T[ChunkSize];
        return new(all);
    }
}
