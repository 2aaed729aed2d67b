namespace PartsMatch.Benchmarks.Engine;

/// <summary>The best rows seen so far. All that they are sorted by stands in one number: the smaller the better.</summary>
internal sealed class BestRows(int most)
{
    /// <summary>How many rows the number can tell apart.</summary>
    public const int MostRows = 1 << RowBits;

    private const int RowBits = 24;
    private const int CentsBits = 31;
    private const int SupplyBits = 2;

    private readonly List<ulong> keys = new(most + 1);

    public IReadOnlyList<int> Rows => [.. keys.Select(key => (int)(key & (MostRows - 1)))];

    public void Clear() => keys.Clear();

    public void Add(int percent, byte supply, int cents, int row)
    {
        var key = ((((((ulong)(100 - percent) << SupplyBits) | supply) << CentsBits) | (uint)cents) << RowBits) | (uint)row;
        if (keys.Count == most && key > keys[^1]) return;
        keys.Insert(~keys.BinarySearch(key), key);
        if (keys.Count > most) keys.RemoveAt(most);
    }
}
