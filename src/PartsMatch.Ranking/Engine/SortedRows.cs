using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using PartsMatch.Ranking.Columns;

namespace PartsMatch.Ranking.Engine;

/// <summary>Rows sorted by their facets' codes: a prefix tree that is kept as a list. Immutable.</summary>
/// <remarks>
/// For the aspects that decide the tree is held level by level, so that what is not wanted is passed over in one step; below, of every row it is known how many leading facets it
/// shares with the row before, and those that begin like one that is not wanted are passed over one by one.
/// Aspects that decide stand first, since they turn most away, and among them those with few facets; aspects with very many facets stand last, in the same order, and are asked only of parts that may still win.
/// </remarks>
internal sealed class SortedRows
{
    /// <summary>An aspect with more distinct facets than this stands behind those with fewer, however many parts there are.</summary>
    private const int MostFew = 2048;

    /// <summary>One with fewer never does, however few parts there are.</summary>
    private const int LeastMany = 8;

    /// <summary>Where fewer rows, on the mean, begin alike, the tree is no longer held level by level.</summary>
    private const int LeastRowsOfNode = 2;

    private readonly int[] aspects;
    private readonly int[] parts;
    private readonly byte[] codes;
    private readonly CodeSlot[] slots;
    private readonly byte[] shared;
    private readonly int[] depthOf;
    private readonly int checkingFrom;
    private readonly int stride;
    private readonly Level[] trunk;

    private SortedRows(int[] aspects, int checkingFrom, int costlyFrom, int[] parts, byte[] codes, CodeSlot[] slots, byte[] shared)
    {
        (this.aspects, CostlyFrom, this.parts, this.codes, this.slots, this.shared) = (aspects, costlyFrom, parts, codes, slots, shared);
        depthOf = [.. Enumerable.Range(0, aspects.Length).Select(aspect => Array.IndexOf(aspects, aspect))];
        (this.checkingFrom, stride) = (checkingFrom, RowSorting.Stride(slots));
        trunk = Trunk();
    }

    /// <summary>How many rows there are.</summary>
    public int Count => parts.Length;

    /// <summary>The aspects in the order in which the rows are sorted by them.</summary>
    public IReadOnlyList<int> Aspects => aspects;

    /// <summary>The place among <see cref="Aspects"/> from which on they have very many facets.</summary>
    public int CostlyFrom { get; }

    /// <summary>Bytes held for all rows.</summary>
    public long Bytes => (4L * parts.Length) + codes.Length + shared.Length + trunk.Sum(level => level.Bytes);

    /// <summary>Sorts rows.</summary>
    /// <param name="parts">The part of every row.</param>
    /// <param name="questions">What they are sorted by.</param>
    /// <param name="facets">How many distinct facets there are for each question.</param>
    /// <param name="tell">Tells of a question the code of every row. Asked twice, and from several threads: of all aspects at once they would take more room than the rows do.</param>
    public static SortedRows Of(int[] parts, Questions questions, IReadOnlyList<int> facets, Action<int, int[]> tell)
    {
        // Where a facet is shared by less than twenty parts, judging it costs more than it turns away.
        var few = Math.Clamp(parts.Length / 20, LeastMany, MostFew);
        var ordered = questions.InOrder(facets, few);
        var order = RowSorting.Order(parts.Length, ordered, facets, tell);
        var lying = RowSorting.Slots([.. ordered.Select(question => CodeSlot.BytesFor(facets[question]))]);
        var packed = RowSorting.Packed(order, ordered, lying, tell);
        var fewFacets = ordered.Where(question => facets[question] <= few).ToList();
        return new(ordered, fewFacets.Count(question => questions.AspectOf(question).IsDeciding), fewFacets.Count, [.. order.Select(row => parts[row])], packed, lying, RowSorting.Sharing(packed, lying, parts.Length));
    }

    /// <summary>The rows that were written: to be made only once it is known that nothing of them was damaged, since more follows from them.</summary>
    /// <param name="from">What was written.</param>
    /// <param name="aspects">How many aspects the family has.</param>
    public static Func<SortedRows> ReadFrom(ColumnsReader from, int aspects)
    {
        var (checkingFrom, costlyFrom) = ((int)from.NextFigure(), (int)from.NextFigure());
        var ordered = Enumerable.Range(0, aspects).Select(_ => (Aspect: (int)from.NextFigure(), Bytes: (int)from.NextFigure())).ToList();
        var (read, packed, sharing) = (from.Next<int>(), from.Next<byte>(), from.Next<byte>());
        return () => new([.. ordered.Select(one => one.Aspect)], checkingFrom, costlyFrom, read, packed, RowSorting.Slots([.. ordered.Select(one => one.Bytes)]), sharing);
    }

    /// <summary>Adds them to what is written, in the order in which they stand.</summary>
    public void AddTo(ColumnsWriter to)
    {
        to.Add(checkingFrom);
        to.Add(CostlyFrom);
        foreach (var (depth, aspect) in aspects.Index())
        {
            to.Add(aspect);
            to.Add(slots[depth].Bytes);
        }

        to.Add<int>(parts);
        to.Add<byte>(codes);
        to.Add<byte>(shared);
    }

    /// <summary>The code of the facet that a row carries.</summary>
    public int CodeOf(int row, int aspect) => CodeAt(row, depthOf[aspect]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int CodeAt(int row, int depth)
    {
        var slot = slots[depth];
        return slot.Read(codes.AsSpan((row * stride) + slot.At));
    }

    /// <summary>The part of a row.</summary>
    public int PartAt(int row) => parts[row];

    /// <summary>Walks over all rows that begin with a prefix, prefix by prefix.</summary>
    /// <param name="walk">What judges.</param>
    /// <param name="prefix">What was entered already.</param>
    /// <returns>How many prefixes and rows were looked at.</returns>
    public int Walk<TWalk>(ref TWalk walk, Prefix prefix)
        where TWalk : IWalk
    {
        if (Count == 0) return 0;
        if (prefix.Depth > trunk.Length || trunk.Length == 0) return WalkRows(ref walk, prefix.At, prefix.Depth);
        if (prefix.Depth == 0) return WalkTrunk(ref walk, 0, 0, trunk[0].Codes.Length);
        var first = trunk[prefix.Depth - 1].First;
        return WalkTrunk(ref walk, prefix.Depth, first[prefix.At], first[prefix.At + 1]);
    }

    /// <summary>The first row that begins with a prefix.</summary>
    public int FirstRow(Prefix prefix)
    {
        if (prefix.Depth == 0) return 0;
        var at = prefix.At;
        for (var depth = prefix.Depth; depth <= trunk.Length; depth++) at = trunk[depth - 1].First[at];
        return at;
    }

    private int WalkTrunk<TWalk>(ref TWalk walk, int depth, int from, int to)
        where TWalk : IWalk
    {
        if (depth == trunk.Length) return WalkRows(ref walk, from, depth);
        var (level, looked) = (trunk[depth], to - from);
        for (var node = from; node < to; node++)
        {
            if (walk.Enter(depth, aspects[depth], level.Codes[node], node)) looked += WalkTrunk(ref walk, depth + 1, level.First[node], level.First[node + 1]);
        }

        return looked;
    }

    /// <summary>Walks over a row and those after it that begin with the same facets.</summary>
    private int WalkRows<TWalk>(ref TWalk walk, int from, int entered)
        where TWalk : IWalk
    {
        var (row, known, looked) = (from, entered, 0);
        do
        {
            looked++;
            known = Follow(ref walk, row, Math.Min(row == from ? entered : shared[row], known), out var goesOn);
            row++;
            while (!goesOn && row < shared.Length && shared[row] > known) row++;
        }
        while (row < shared.Length && shared[row] >= entered);
        return looked;
    }

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
                if (!walk.IsWanted(row, depth)) return depth;
                isAsked = true;
            }

            if (depth == aspects.Length)
            {
                walk.Take(row);
                return depth;
            }

            if (walk.Enter(depth, aspects[depth], CodeAt(row, depth), row)) continue;
            goesOn = false;
            return depth;
        }
    }

    /// <summary>The levels of the tree for the aspects that decide, made in one pass: those after them hardly branch, and turn few away.</summary>
    private Level[] Trunk()
    {
        // A row begins a prefix on every level below what it shares with the row before.
        var begun = new int[aspects.Length + 1];
        foreach (var facets in shared) begun[facets]++;
        for (var depth = 1; depth < begun.Length; depth++) begun[depth] += begun[depth - 1];
        var depths = 0;
        while (depths < checkingFrom && begun[depths] <= parts.Length / LeastRowsOfNode) depths++;
        Level[] levels = [.. begun.Take(depths).Select(prefixes => new Level(new ushort[prefixes], new int[prefixes + 1]))];
        var next = new int[depths + 1];
        for (var row = 0; row <= shared.Length; row++)
        {
            // Behind the last row every level ends.
            for (var depth = row < shared.Length ? shared[row] : 0; depth < depths; depth++)
            {
                var at = next[depth]++;
                levels[depth].First[at] = depth + 1 < depths ? next[depth + 1] : row;
                if (row < shared.Length) levels[depth].Codes[at] = (ushort)CodeAt(row, depth);
            }
        }

        return levels;
    }

    /// <summary>All prefixes of one length, in order.</summary>
    /// <param name="Codes">Of each the code of its last facet.</param>
    /// <param name="First">Of each the first of the next level, or the first row, that begins with it; at last, how many there are.</param>
    private sealed record Level(ushort[] Codes, int[] First)
    {
        public long Bytes => (2L * Codes.Length) + (4L * First.Length);
    }
}

/// <summary>What rows begin with. The default is no facet at all: all rows begin so.</summary>
/// <param name="At">Among the prefixes of so many facets as the tree is held level by level, its number; else the first row that begins so.</param>
/// <param name="Depth">How many facets.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Prefix(int At, int Depth);
