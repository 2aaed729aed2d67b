namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>What a token is made of.</summary>
internal enum TokenKind
{
    /// <summary>Letters: HP, teao, Ø.</summary>
    Word,

    /// <summary>Figures that touch, with what joins them: 1075, 2.1, 3/4-1/3, 115/208-230, 45+5.</summary>
    Number,

    /// <summary>One sign that is neither, and no separator: °, %, ~, an emoji.</summary>
    Sign,

    /// <summary>A figure of which a part cannot be read, 107_, 1/?, 2##, or a hole where something stood: [burnt].</summary>
    Burnt,

    /// <summary>How far a figure may be off, ±5 or +/- 5: no value of its own.</summary>
    Tolerance,
}

/// <summary>A piece of the text that belongs together; what stands between two of them is a gap.</summary>
/// <param name="Kind">What it is made of.</param>
/// <param name="From">The index of its first character.</param>
/// <param name="Length">How many characters it has.</param>
/// <param name="Line">The line it stands on, from 0.</param>
/// <param name="Chunk">The chunk it belongs to, from 0: tokens with neither space nor divider between them, as in 1/20HP.</param>
internal readonly record struct Token(TokenKind Kind, int From, int Length, int Line, int Chunk)
{
    /// <summary>The index behind its last character.</summary>
    public int End => From + Length;
}
