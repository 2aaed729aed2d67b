using PartsMatch.Ranking.Columns;

namespace PartsMatch.Ranking.Engine;

/// <summary>Rows sorted by their facets' codes: a prefix tree that is kept as a list. Immutable.</summary>
/// <remarks>
/// Of every row it is known how many leading facets it shares with the row before. A prefix that is not wanted takes all its rows with it: the next row to look at is the next
/// one that shares no more than the prefix without its last facet, and is found by searching bytes, first those that summarise 64 rows each.
/// Aspects with very many facets stand last, whatever the family's order, and are asked only of parts that may still win.
/// </remarks>
internal sealed class SortedRows
{
    /// <summary>An aspect with more distinct facets than this stands behind those with fewer, however many parts there are.</summary>
    private const int MostFew = 2048;

    /// <summary>One with fewer never does, however few parts there are.</summary>
    private const int LeastMany = 8;

    private const int SummaryBits = 6;

    private readonly int[] aspects;
    private readonly int[] parts;
    private readonly ushort[] codes;
    private readonly (int Slot, bool IsWide)[] slots;
    private readonly byte[] shared;
    private readonly byte[] leastShared;
    private readonly int[] depthOf;
    private readonly int stride;

    private SortedRows(int[] aspects, int costlyFrom, int[] parts, ushort[] codes, (int Slot, bool IsWide)[] slots, byte[] shared)
    {
        (this.aspects, CostlyFrom, this.parts, this.codes, this.slots, this.shared) = (aspects, costlyFrom, parts, codes, slots, shared);
        depthOf = [.. Enumerable.Range(0, aspects.Length).Select(aspect => Array.IndexOf(aspects, aspect))];
        stride = Stride(slots);
        leastShared = new byte[(shared.Length + (1 << SummaryBits) - 1) >> SummaryBits];
        leastShared.AsSpan().Fill(byte.MaxValue);
        for (var row = 0; row < shared.Length; row++) leastShared[row >> SummaryBits] = Math.Min(leastShared[row >> SummaryBits], shared[row]);
    }

    /// <summary>How many rows there are.</summary>
    public int Count => parts.Length;

    /// <summary>The aspects in the order in which the rows are sorted by them.</summary>
    public IReadOnlyList<int> Aspects => aspects;

    /// <summary>The place among <see cref="Aspects"/> from which on they have very many facets.</summary>
    public int CostlyFrom { get; }

    /// <summary>Bytes held for all rows.</summary>
    public long Bytes => (4L * parts.Length) + (2L * codes.Length) + shared.Length + leastShared.Length;

    /// <summary>Sorts rows.</summary>
    /// <param name="parts">The part of every row.</param>
    /// <param name="facets">How many distinct facets each aspect has.</param>
    /// <param name="tell">Tells of an aspect the code of every row. Asked twice, and from several threads: of all aspects at once they would take more room than the rows do.</param>
    public static SortedRows Of(int[] parts, IReadOnlyList<int> facets, Action<int, int[]> tell)
    {
        // Where a facet is shared by less than twenty parts, judging it costs more than it turns away.
        var few = Math.Clamp(parts.Length / 20, LeastMany, MostFew);
        int[] ordered = [.. Enumerable.Range(0, facets.Count).OrderBy(aspect => facets[aspect] > few)];
        var order = Order(parts.Length, ordered, facets, tell);
        var lying = Slots([.. ordered.Select(aspect => facets[aspect] > ushort.MaxValue + 1)]);
        var width = Stride(lying);
        var packed = new ushort[(long)width * parts.Length];
        Parallel.For(0, ordered.Length, () => new int[parts.Length], Pack, _ => { });
        return new(ordered, facets.Count(count => count <= few), [.. order.Select(row => parts[row])], packed, lying, Sharing(packed, lying, parts.Length));

        int[] Pack(int depth, ParallelLoopState state, int[] codes)
        {
            var (slot, isWide) = lying[depth];
            tell(ordered[depth], codes);
            for (var (row, at) = (0, (long)slot); row < order.Length; row++, at += width)
            {
                var code = codes[order[row]];
                packed[at] = (ushort)code;
                if (isWide) packed[at + 1] = (ushort)(code >> 16);
            }

            return codes;
        }
    }

    /// <summary>The rows that were written.</summary>
    /// <param name="from">What was written.</param>
    /// <param name="aspects">How many aspects the family has.</param>
    public static SortedRows ReadFrom(ColumnsReader from, int aspects)
    {
        var costlyFrom = (int)from.NextFigure();
        var ordered = Enumerable.Range(0, aspects).Select(_ => (Aspect: (int)from.NextFigure(), IsWide: from.NextFigure() > 0)).ToList();
        return new([.. ordered.Select(one => one.Aspect)], costlyFrom, from.Next<int>(), from.Next<ushort>(), Slots([.. ordered.Select(one => one.IsWide)]), from.Next<byte>());
    }

    /// <summary>Adds them to what is written, in the order in which they stand.</summary>
    public void AddTo(ColumnsWriter to)
    {
        to.Add(CostlyFrom);
        foreach (var (depth, aspect) in aspects.Index())
        {
            to.Add(aspect);
            to.Add(slots[depth].IsWide ? 1 : 0);
        }

        to.Add<int>(parts);
        to.Add<ushort>(codes);
        to.Add<byte>(shared);
    }

    /// <summary>The code of the facet that a row carries.</summary>
    public int CodeOf(int row, int aspect) => CodeAt(row, depthOf[aspect]);

    private int CodeAt(int row, int depth)
    {
        var (slot, isWide) = slots[depth];
        var at = ((long)row * stride) + slot;
        return isWide ? codes[at] | (codes[at + 1] << 16) : codes[at];
    }

    /// <summary>The part of a row.</summary>
    public int PartAt(int row) => parts[row];

    /// <summary>Walks over all rows, prefix by prefix.</summary>
    /// <returns>How many rows were looked at.</returns>
    public int Walk<TWalk>(ref TWalk walk)
        where TWalk : IWalk
    {
        var (row, known, looked) = (0, 0, 0);
        while (row < parts.Length)
        {
            looked++;
            var depth = Math.Min(shared[row], known);
            known = Follow(ref walk, row, depth, out var goesOn);
            row = goesOn ? row + 1 : NextSharing(row + 1, atMost: known);
        }

        return looked;
    }

    /// <summary>Where each code stands within its row, and whether it takes two half-words.</summary>
    private static (int Slot, bool IsWide)[] Slots(bool[] areWide)
    {
        var (lying, next) = (new (int Slot, bool IsWide)[areWide.Length], 0);
        foreach (var (depth, isWide) in areWide.Index())
        {
            lying[depth] = (next, isWide);
            next += isWide ? 2 : 1;
        }

        return lying;
    }

    private static int Stride((int Slot, bool IsWide)[] lying) => lying.Sum(one => one.IsWide ? 2 : 1);

    /// <summary>Goes down along one row's facets.</summary>
    /// <param name="walk">What judges.</param>
    /// <param name="row">The row.</param>
    /// <param name="depth">How many of its facets were entered already.</param>
    /// <param name="goesOn">Whether the next row is to be looked at; else no row with the same facets up to where it ended.</param>
    /// <returns>How many of its facets are entered now.</returns>
    private int Follow<TWalk>(ref TWalk walk, int row, int depth, out bool goesOn)
        where TWalk : IWalk
    {
        goesOn = true;
        for (var isAsked = false; ; depth++)
        {
            if (depth >= CostlyFrom && !isAsked)
            {
                if (!walk.IsWanted(parts[row], row, depth)) return depth;
                isAsked = true;
            }

            if (depth == aspects.Length)
            {
                walk.Take(parts[row], row);
                return depth;
            }

            if (walk.Enter(depth, aspects[depth], CodeAt(row, depth))) continue;
            goesOn = false;
            return depth;
        }
    }

    /// <summary>The first row from one on that shares no more than so many facets with the row before it; the number of rows when there is none.</summary>
    private int NextSharing(int row, int atMost)
    {
        if (row >= shared.Length) return shared.Length;
        var summary = (row >> SummaryBits) + 1;
        var found = shared.AsSpan(row, Math.Min(summary << SummaryBits, shared.Length) - row).IndexOfAnyInRange((byte)0, (byte)atMost);
        if (found >= 0) return row + found;
        if (summary >= leastShared.Length) return shared.Length;
        var further = leastShared.AsSpan(summary).IndexOfAnyInRange((byte)0, (byte)atMost);
        if (further < 0) return shared.Length;
        row = (summary + further) << SummaryBits;
        return row + shared.AsSpan(row, Math.Min(1 << SummaryBits, shared.Length - row)).IndexOfAnyInRange((byte)0, (byte)atMost);
    }

    /// <summary>Of every row, how many leading facets it shares with the row before.</summary>
    private static byte[] Sharing(ushort[] packed, (int Slot, bool IsWide)[] lying, int rows)
    {
        var (sharing, width) = (new byte[rows], Stride(lying));
        byte[] whole = [.. Enumerable.Range(0, width + 1).Select(alike => (byte)lying.Count(one => one.Slot + (one.IsWide ? 2 : 1) <= alike))];
        for (var row = 1; row < rows; row++)
        {
            var two = packed.AsSpan((row - 1) * width, 2 * width);
            sharing[row] = whole[two[..width].CommonPrefixLength(two[width..])];
        }

        return sharing;
    }

    /// <summary>The rows in order: sorted by the last aspect first, each time stably (a radix sort).</summary>
    private static int[] Order(int count, int[] aspects, IReadOnlyList<int> facets, Action<int, int[]> tell)
    {
        int[] order = [.. Enumerable.Range(0, count)];
        var (sorted, codes) = (new int[count], new int[count]);
        foreach (var aspect in aspects.Reverse())
        {
            tell(aspect, codes);
            var next = new int[facets[aspect] + 1];
            foreach (var code in codes) next[code + 1]++;
            for (var code = 1; code < next.Length; code++) next[code] += next[code - 1];
            foreach (var row in order) sorted[next[codes[row]]++] = row;
            (order, sorted) = (sorted, order);
        }

        return order;
    }
}
