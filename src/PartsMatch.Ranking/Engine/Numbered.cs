using PartsMatch.Ranking.Columns;

namespace PartsMatch.Ranking.Engine;

/// <summary>Distinct runs of bytes, each with a number from 0 on: it only grows, so that every snapshot that shares it may read while a new one adds.</summary>
/// <remarks>
/// They lie in one block, where they take a fifth of what as many small objects take. Which of them has which number is looked up in an index that is only made when somebody first asks:
/// whoever only ranks does not.
/// </remarks>
internal sealed class Numbered
{
    private const int Few = 16;

    private readonly Lock adding = new();
    private byte[] block;
    private int[] ends;
    private int count;

    /// <summary>One more than the number whose bytes lead here, or 0; twice as many places as numbers at least, their count a power of two.</summary>
    private int[]? index;

    /// <summary>Takes what was numbered before.</summary>
    /// <param name="block">All bytes, one run behind the other.</param>
    /// <param name="ends">Where each run ends.</param>
    public Numbered(byte[] block, int[] ends) => (this.block, this.ends, count) = (block, ends, ends.Length);

    /// <summary>None, with room for as many as there are here.</summary>
    public Numbered Emptied() => new(new byte[block.Length], []) { ends = new int[ends.Length] };

    /// <summary>Those that were written.</summary>
    public static Numbered ReadFrom(ColumnsReader from) => new(from.Next<byte>(), from.Next<int>());

    /// <summary>How many distinct runs there are.</summary>
    public int Count => Volatile.Read(ref count);

    /// <summary>The bytes of a number that was given before.</summary>
    public ReadOnlyMemory<byte> this[int number]
    {
        get
        {
            // The ends first: a block that is read later holds at least what they tell of.
            var until = Volatile.Read(ref ends);
            var from = number == 0 ? 0 : until[number - 1];
            return new(Volatile.Read(ref block), from, until[number] - from);
        }
    }

    /// <summary>The number of some bytes; new ones get the next.</summary>
    public int Add(ReadOnlySpan<byte> bytes)
    {
        lock (adding)
        {
            ref var slot = ref SlotOf(bytes);
            if (slot > 0) return slot - 1;
            var number = count;
            var from = number == 0 ? 0 : ends[number - 1];
            var to = checked(from + bytes.Length);
            if (to > block.Length) Volatile.Write(ref block, Grown(block, from, to));
            if (number == ends.Length) Volatile.Write(ref ends, Grown(ends, number, number + 1));
            bytes.CopyTo(block.AsSpan(from));
            ends[number] = to;
            slot = number + 1;
            Volatile.Write(ref count, number + 1);
            return number;
        }
    }

    /// <summary>The number of some bytes; null when they have none.</summary>
    public int? Find(ReadOnlySpan<byte> bytes)
    {
        lock (adding) return SlotOf(bytes) is > 0 and var slot ? slot - 1 : null;
    }

    /// <summary>Adds all that there are now to what is written.</summary>
    public void AddTo(ColumnsWriter to)
    {
        var (bytes, until) = All();
        to.Add(bytes);
        to.Add(until);
    }

    /// <summary>All bytes, and where each run ends: as many as there are now.</summary>
    private (ReadOnlyMemory<byte> Block, ReadOnlyMemory<int> Ends) All()
    {
        lock (adding) return (block.AsMemory(0, count == 0 ? 0 : ends[count - 1]), ends.AsMemory(0, count));
    }

    /// <summary>Whether another numbers the same alike.</summary>
    public bool IsLike(Numbered other)
    {
        var (mine, others) = (All(), other.All());
        return mine.Ends.Span.SequenceEqual(others.Ends.Span) && mine.Block.Span.SequenceEqual(others.Block.Span);
    }

    /// <summary>The place of the index where some bytes lead, or would.</summary>
    private ref int SlotOf(ReadOnlySpan<byte> bytes)
    {
        if (index is null || 2 * count >= index.Length)
        {
            index = new int[System.Numerics.BitOperations.RoundUpToPowerOf2((uint)Math.Max(Few, (2 * count) + 2))];
            for (var number = 0; number < count; number++) Led(index, this[number].Span) = number + 1;
        }

        return ref Led(index, bytes);
    }

    private ref int Led(int[] slots, ReadOnlySpan<byte> bytes)
    {
        HashCode hash = default;
        hash.AddBytes(bytes);
        var at = hash.ToHashCode() & (slots.Length - 1);
        while (slots[at] > 0 && !this[slots[at] - 1].Span.SequenceEqual(bytes)) at = (at + 1) & (slots.Length - 1);
        return ref slots[at];
    }

    /// <summary>A copy that is a quarter larger: what readers hold stays as it is.</summary>
    private static T[] Grown<T>(T[] before, int filled, int least)
    {
        var grown = new T[Math.Max(least, (int)Math.Min(Array.MaxLength, Few + filled + (filled / 4L)))];
        before.AsSpan(0, filled).CopyTo(grown);
        return grown;
    }
}
