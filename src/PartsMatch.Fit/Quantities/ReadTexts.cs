using System.Collections.Concurrent;

namespace PartsMatch.Fit.Quantities;

/// <summary>What short texts read as: catalogues, lists and records of what happened say the same few again and again.</summary>
/// <remarks>Readings are values that nobody changes, so that one may stand in many records. The first texts that come are kept, and no more, so that no flood of texts takes more than some hundred kilobytes a form.</remarks>
internal sealed class ReadTexts
{
    /// <summary>So many are kept.</summary>
    public const int Most = 2000;

    private const int Longest = 40;

    private readonly ConcurrentDictionary<string, TextReading<object>> known = new(StringComparer.Ordinal);
    private int count;

    /// <summary>What a text read as before.</summary>
    public bool TryGet(string text, out TextReading<object> reading) => known.TryGetValue(text, out reading);

    /// <summary>Keeps what a text reads as, where there is room.</summary>
    public void Keep(string text, TextReading<object> reading)
    {
        if (text.Length <= Longest && count < Most && known.TryAdd(text, reading)) Interlocked.Increment(ref count);
    }
}
