namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Places of which somebody says that they cannot be read: [burnt], [?], a question mark or three dots by themselves. They stand for a figure or a word that is lost.</summary>
internal static class Holes
{
    private const string Dots = "...";

    /// <summary>Nobody writes more than this about a hole.</summary>
    private const int Longest = 40;

    /// <summary>The index behind a hole that begins with a character; null when none does.</summary>
    /// <param name="text">The text, in plain signs.</param>
    /// <param name="at">The index of the character.</param>
    /// <param name="lexicon">The words: [CCW LE] is none.</param>
    public static int? End(string text, int at, Lexicon lexicon)
    {
        if (text[at] == '[') return Bracketed(text, at, lexicon);
        var length = text[at] is '?' or '…' ? 1 : text.AsSpan(at).StartsWith(Dots, StringComparison.Ordinal) ? Dots.Length : 0;
        return length > 0 && IsFree(text, at - 1) && IsFree(text, at + length) ? at + length : null;
    }

    private static int? Bracketed(string text, int at, Lexicon lexicon)
    {
        var inside = text.AsSpan(at + 1, Math.Min(Longest, text.Length - at - 1));
        if (inside.IndexOf(']') is not (>= 0 and var length)) return null;
        inside = inside[..length];
        return inside.IndexOfAny('\n', '\r', '[') < 0 && !inside.ContainsAnyInRange('0', '9') && !Says(inside, lexicon) ? at + length + 2 : null;
    }

    /// <summary>Whether all words in brackets are words of plates.</summary>
    private static bool Says(ReadOnlySpan<char> inside, Lexicon lexicon)
    {
        var words = inside.ToString().Split([' ', '/', '-', '.', ',', ':'], StringSplitOptions.RemoveEmptyEntries);
        return words.Length > 0 && (Array.TrueForAll(words, word => lexicon.Knows(word)) || lexicon.Knows(string.Concat(words)));
    }

    private static bool IsFree(string text, int at) => at < 0 || at >= text.Length || char.IsWhiteSpace(text[at]) || Characters.Divides(text[at]);
}
