namespace PartsMatch.Ranking.Engine;

/// <summary>Sorts rows by their facets' codes and packs them.</summary>
internal static class RowSorting
{
    /// <summary>Where each code stands within its row.</summary>
    /// <param name="bytes">How many bytes each takes.</param>
    public static CodeSlot[] Slots(IReadOnlyList<int> bytes)
    {
        var (lying, next) = (new CodeSlot[bytes.Count], 0);
        foreach (var (depth, own) in bytes.Index())
        {
            lying[depth] = new(next, own);
            next += own;
        }

        return lying;
    }

    /// <summary>How many bytes a row takes.</summary>
    public static int Stride(CodeSlot[] lying) => lying.Sum(one => one.Bytes);

    /// <summary>The rows in order: sorted by the last aspect first, each time stably (a radix sort).</summary>
    public static int[] Order(int count, int[] aspects, IReadOnlyList<int> facets, Action<int, int[]> tell)
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

    /// <summary>The codes of all rows, one row behind the other, and room at the end for whoever reads the last ones as all are read.</summary>
    /// <param name="order">The rows in order.</param>
    /// <param name="aspects">The aspects in order.</param>
    /// <param name="lying">Where the code of each stands.</param>
    /// <param name="tell">Tells of an aspect the code of every row.</param>
    public static byte[] Packed(int[] order, int[] aspects, CodeSlot[] lying, Action<int, int[]> tell)
    {
        var width = Stride(lying);
        var packed = new byte[((long)width * order.Length) + CodeSlot.ReadAtOnce];
        Parallel.For(0, aspects.Length, () => new int[order.Length], Pack, _ => { });
        return packed;

        int[] Pack(int depth, ParallelLoopState state, int[] codes)
        {
            var slot = lying[depth];
            tell(aspects[depth], codes);
            for (var (row, at) = (0, (long)slot.At); row < order.Length; row++, at += width)
            {
                var code = codes[order[row]];
                for (var one = 0; one < slot.Bytes; one++) packed[at + one] = (byte)(code >> (8 * one));
            }

            return codes;
        }
    }

    /// <summary>Of every row, how many leading facets it shares with the row before.</summary>
    public static byte[] Sharing(byte[] packed, CodeSlot[] lying, int rows)
    {
        var (sharing, width) = (new byte[rows], Stride(lying));
        byte[] whole = [.. Enumerable.Range(0, width + 1).Select(alike => (byte)lying.Count(one => one.At + one.Bytes <= alike))];
        for (var row = 1; row < rows; row++)
        {
            var two = packed.AsSpan((row - 1) * width, 2 * width);
            sharing[row] = whole[two[..width].CommonPrefixLength(two[width..])];
        }

        return sharing;
    }
}
