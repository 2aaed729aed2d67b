namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>A figure with letters where digits must stand: l/4, 6O, 2O8-23O.</summary>
/// <param name="From">The index of its first character.</param>
/// <param name="To">The index behind its last.</param>
internal sealed record Slip(int From, int To)
{
    /// <summary>What may be slips in a text, from left to right.</summary>
    /// <param name="plain">The text, in plain signs.</param>
    /// <param name="lexicon">The words: S1, SPD and 2SPD are none.</param>
    public static IEnumerable<Slip> In(string plain, Lexicon lexicon)
    {
        for (var from = 0; from < plain.Length; from++)
        {
            var to = from;
            while (to < plain.Length && (IsPart(plain[to]) || Characters.IsBarStroke(plain, to))) to++;
            if (to == from) continue;
            if (Trimmed(plain, from, to, lexicon) is { } slip) yield return slip;
            from = to;
        }
    }

    /// <summary>The text with the digits in the letters' place.</summary>
    public static string MendedIn(string plain, IReadOnlyList<Slip> slips)
    {
        if (slips.Count == 0) return plain;
        var mended = plain.ToCharArray();
        foreach (var slip in slips)
        {
            for (var at = slip.From; at < slip.To; at++) mended[at] = Characters.IsSlashStroke(plain, at) ? '/' : Characters.DigitLike(plain[at]) ?? plain[at];
        }

        return new(mended);
    }

    /// <summary>The part of it that lies within a piece of the text, without signs at its ends; of length 0 when it holds nothing that was mended.</summary>
    /// <param name="mended">The text with the digits in place.</param>
    /// <param name="span">The piece, as it was typed.</param>
    public (int From, int Length) Within(string mended, TextSpan span)
    {
        var (from, to) = (Math.Max(From, span.From), Math.Min(To, span.From + span.Length));
        while (from < to && !char.IsAsciiDigit(mended[from])) from++;
        while (from < to && !char.IsAsciiDigit(mended[to - 1])) to--;
        for (var at = from; at < to; at++)
        {
            if (span.Text[at - span.From] is var typed && (Characters.DigitLike(typed) is not null || typed is '|' or '¦')) return (from, to - from);
        }

        return (from, 0);
    }

    private static bool IsPart(char character) => char.IsAsciiDigit(character) || Characters.DigitLike(character) is not null || character is ',' || Characters.JoinsFigures(character);

    /// <summary>The slip in a run of figures, look-alikes and signs; null when there is none, or when its letters belong to a word.</summary>
    private static Slip? Trimmed(string plain, int from, int to, Lexicon lexicon)
    {
        // The S of AMPS2.1 belongs to the word before, and that of 2SPD to the word behind: a letter that does not stand free is mended only where a word or unit begins right behind, 6OHZ.
        while (from < to && (!IsFigure(plain[from]) || (!char.IsAsciiDigit(plain[from]) && from > 0 && char.IsLetter(plain[from - 1])))) from++;
        while (from < to && !IsFigure(plain[to - 1])) to--;
        if (plain.AsSpan(from, to - from).IndexOfAnyInRange('0', '9') < 0) return null;
        var letters = to;
        while (letters > from && char.IsLetter(plain[letters - 1])) letters--;
        var behind = to;
        while (behind < plain.Length && char.IsLetter(plain[behind])) behind++;
        if (letters < to && lexicon.Knows(plain.AsSpan(letters, behind - letters))) to = letters;
        else if (behind > to && !lexicon.Knows(plain.AsSpan(to, behind - to))) return null;

        var figure = plain.AsSpan(from, to - from);
        var hasStroke = false;
        for (var at = from; at < to; at++)
        {
            // A stroke between single digits is a lost slash sooner than a 1; in a longer figure, 1l40, it is a 1.
            if (!Characters.IsSlashStroke(plain, at)) continue;
            if (to - from != 3) return null;
            hasStroke = true;
        }

        return (hasStroke || figure.IndexOfAny(Characters.DigitLikes) >= 0) && !lexicon.Knows(figure) ? new(from, to) : null;
    }

    private static bool IsFigure(char character) => char.IsAsciiDigit(character) || Characters.DigitLike(character) is not null;
}
