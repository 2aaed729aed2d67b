using System.Collections.Concurrent;
using KnownTexts = System.Collections.Concurrent.ConcurrentDictionary<string, string?>.AlternateLookup<System.ReadOnlySpan<char>>;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>What short texts read as in the fields of a family, on any plate: the same few figures are tried again and again, on one plate and on the next.</summary>
/// <remarks>When it is full it begins anew, so that no flood of texts takes more than a few megabytes a family, or leaves no room for what comes next.</remarks>
internal sealed class KnownReadings
{
    private const int Most = 10_000;

    private ConcurrentDictionary<(Field Field, string? Unit), KnownTexts> known = [];
    private int count;

    /// <summary>What is known of a field where a unit is meant.</summary>
    public KnownTexts Of(Field field, string? unit) => known.GetOrAdd((field, unit), static _ => new ConcurrentDictionary<string, string?>().GetAlternateLookup<ReadOnlySpan<char>>());

    /// <summary>Keeps what a text reads as; null where it is no value.</summary>
    public string? Keep(KnownTexts readings, ReadOnlySpan<char> text, string? reading)
    {
        if (Interlocked.Increment(ref count) > Most) (known, count) = ([], 0);
        return readings[text] = reading;
    }
}
