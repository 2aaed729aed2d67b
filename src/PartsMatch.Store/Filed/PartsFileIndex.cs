namespace PartsMatch.Store.Filed;

/// <summary>Where a block of parts lies in the file.</summary>
internal readonly record struct Block(long At, int Length);

/// <summary>What has to be in memory to find a part in the file: the texts, each block's first key and place, and which parts replaced which.</summary>
internal sealed class PartsFileIndex(PartsFileContents contents, TextTable texts, string[] firstKeys, Block[] blocks, (string Successor, string Key)[] replaced)
{
    /// <summary>Of no parts.</summary>
    public static PartsFileIndex Empty { get; } = new(new(0, 0, 0), new(), [], [], []);

    public PartsFileContents Contents => contents;

    public TextTable Texts => texts;

    /// <summary>The only block that may hold a key.</summary>
    public Block? BlockOf(string key) => IndexOf(key) is >= 0 and var at ? blocks[at] : null;

    /// <summary>The blocks from the one on that may hold what follows a key; all when it is null.</summary>
    public IEnumerable<Block> BlocksFrom(string? key) => blocks.Skip(key is null ? 0 : Math.Max(0, IndexOf(key)));

    /// <summary>The keys of the parts that the part of a key replaced, in order.</summary>
    public IEnumerable<string> ReplacedBy(string key)
    {
        var at = Array.BinarySearch(replaced, (key, string.Empty), InOrder);
        for (at = at < 0 ? ~at : at; at < replaced.Length && replaced[at].Successor == key; at++) yield return replaced[at].Key;
    }

    public void Write(BinaryWriter to)
    {
        to.Write(contents.Revision);
        to.Write(contents.Sequence);
        to.Write(contents.Count);
        texts.Write(to);
        to.Write(blocks.Length);
        foreach (var (key, (_, length)) in firstKeys.Zip(blocks))
        {
            to.Write(key);
            to.Write(length);
        }

        to.Write(replaced.Length);
        foreach (var (successor, key) in replaced)
        {
            to.Write(successor);
            to.Write(key);
        }
    }

    /// <param name="from">What was written.</param>
    /// <param name="firstBlockAt">Where the first block begins; the others follow it without a gap.</param>
    public static PartsFileIndex Read(BinaryReader from, long firstBlockAt)
    {
        var contents = new PartsFileContents(from.ReadInt64(), from.ReadInt64(), from.ReadInt32());
        var texts = TextTable.Read(from);
        var (keys, blocks) = (new string[from.ReadInt32()], new List<Block>());
        for (var at = 0; at < keys.Length; at++)
        {
            keys[at] = from.ReadString();
            blocks.Add(new(firstBlockAt, from.ReadInt32()));
            firstBlockAt += blocks[at].Length;
        }

        var replaced = new (string Successor, string Key)[from.ReadInt32()];
        for (var at = 0; at < replaced.Length; at++) replaced[at] = (from.ReadString(), from.ReadString());
        return new(contents, texts, keys, [.. blocks], replaced);
    }

    /// <summary>The order of what replaced what.</summary>
    public static Comparer<(string Successor, string Key)> InOrder { get; } = Comparer<(string Successor, string Key)>.Create((one, other) =>
        string.CompareOrdinal(one.Successor, other.Successor) is not 0 and var order ? order : string.CompareOrdinal(one.Key, other.Key));

    private int IndexOf(string key) => Array.BinarySearch(firstKeys, key, StringComparer.Ordinal) is >= 0 and var exactly ? exactly : ~Array.BinarySearch(firstKeys, key, StringComparer.Ordinal) - 1;
}
