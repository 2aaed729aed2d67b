namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Cuts a text into tokens, from left to right, without looking back further than a character.</summary>
internal sealed class TokenScan(string text, Lexicon lexicon)
{
    /// <summary>No figure of a plate is longer, holes and all.</summary>
    private const int LongestBurnt = 40;

    private readonly List<Token> tokens = [];
    private int at;
    private int line;
    private int chunk;
    private bool parted;
    private int shareEnd = -1;

    /// <summary>All tokens.</summary>
    public Token[] All()
    {
        while (at < text.Length)
        {
            var here = text[at];
            parted |= IsAtShare();
            if (here is '\n' or '\r' or '\u2028' or '\u2029')
            {
                if (here != '\r' || At(at + 1) != '\n') line++;
                parted = true;
                at++;
            }
            else if (char.IsLetter(here))
            {
                Add(TokenKind.Word, WordEnd());
            }
            else if (Holes.End(text, at, lexicon) is { } hole)
            {
                parted = true;
                Add(TokenKind.Burnt, hole);
                parted = true;
            }
            else if (ToleranceEnd() is { } tolerance)
            {
                var whole = lexicon.Tolerance is null && tolerance != shareEnd ? RunEnd(tolerance) : tolerance;
                Add(whole == tolerance ? TokenKind.Tolerance : TokenKind.Burnt, whole);
            }
            else if (BurntEnd() is { } burnt)
            {
                Add(TokenKind.Burnt, burnt);
            }
            else if (StartsNumber())
            {
                Add(TokenKind.Number, NumberEnd());
            }
            else if (char.IsDigit(here))
            {
                Add(TokenKind.Word, WordEnd());
            }
            else
            {
                TakeSign(here);
            }
        }

        return [.. tokens];
    }

    /// <summary>Whether the ±10% of 230V±10%, which no field holds, begins or ends here: it is no part of what it touches.</summary>
    private bool IsAtShare()
    {
        if (lexicon.Tolerance is not null) return false;
        if (Tolerances.SharesEnd(text.AsSpan(at)) is { } share) shareEnd = at + share;
        else if (at != shareEnd) return false;
        return true;
    }

    private void TakeSign(char here)
    {
        if (char.IsWhiteSpace(here) || char.IsControl(here))
        {
            parted = true;
            at++;
        }
        else if (Characters.IsSeparator(here))
        {
            // A comma between digits may be a decimal one, and so may that of O,37: what stands on its two sides is read together or not at all.
            parted |= Characters.Divides(here) && !(here == ',' && (Characters.IsFigure(Before()) || Characters.DigitLike(Before()) is not null) && Characters.IsFigure(At(at + 1))) && !Characters.IsBarStroke(text, at);
            at++;
        }
        else if (Characters.IsQuote(here) && !Characters.IsFigure(Before()))
        {
            parted = true;
            at++;
        }
        else
        {
            Add(TokenKind.Sign, at + (char.IsSurrogatePair(text, at) ? 2 : 1));
        }
    }

    private void Add(TokenKind kind, int end)
    {
        if (parted) chunk++;
        parted = false;
        tokens.Add(new(kind, at, end - at, line, chunk));
        at = end;
    }

    /// <summary>A figure, .5 with nothing tight before it, or a minus that stands free, or behind dots, and tight before a figure: HP -1/4 is not HP 1/4.</summary>
    private bool StartsNumber()
    {
        if (Characters.IsFigure(text[at])) return true;
        if (!Characters.IsFigure(At(at + 1)) && !(At(at + 1) == '.' && Characters.IsFigure(At(at + 2)))) return false;
        var free = at == 0 || char.IsWhiteSpace(text[at - 1]) || Characters.Divides(text[at - 1]) || (text[at] != '.' && at > 1 && text.AsSpan(at - 2, 2) is "..");
        return free && text[at] is '.' or '-' or '−';
    }

    /// <summary>The end of a figure of which a part is missing, 1/_, 107?, _75, ____, 10.., or 208- before a word; null for whatever else. What is left of it is no value.</summary>
    private int? BurntEnd()
    {
        if ((!Characters.IsHole(text[at]) && !StartsNumber()) || IsSpanBehindUnit()) return null;
        var (end, figure, hole) = (at, false, false);
        while (end < text.Length && end - at < LongestBurnt && (Characters.IsFigure(text[end]) || Characters.JoinsFigures(text[end]) || Characters.IsHole(text[end]) || IsCommaAtHole(end)))
        {
            figure |= Characters.IsFigure(text[end]);
            if (figure && DotsEnd(end) is { } dots)
            {
                end = dots;
                continue;
            }

            hole |= Characters.IsHole(text[end]) || (figure && text[end] == '.' && At(end + 1) == '.');
            end++;
        }

        if (hole) return figure || (end - at > 1 && text[at] is '_' or '?' or '#') ? end : null;
        end = NumberEnd();
        return At(end) is '/' or '-' or '–' && IsFollowedByNoFigure(end + 1) ? end + 1 : null;
    }

    /// <summary>The end of ±5, +/- 5, ±10 % or +10/-15 %; null for whatever else, and for all but shares where the family has a field for these.</summary>
    private int? ToleranceEnd()
    {
        if (lexicon.Tolerance is not null) return Tolerances.ShareEnd(text.AsSpan(at)) is { } share ? at + share : null;
        return (Tolerances.SharesEnd(text.AsSpan(at)) ?? Tolerances.End(text.AsSpan(at), IsBehindFigure())) is { } length ? at + length : null;
    }

    /// <summary>Whether a figure, or one with a word or sign that may be its unit, was the last.</summary>
    private bool IsBehindFigure() => tokens is [.., { Kind: TokenKind.Number }] or [.., { Kind: TokenKind.Number }, { Kind: TokenKind.Word or TokenKind.Sign }] && tokens[^1].Line == line;

    /// <summary>The end of what touches a figure and is a figure or a hole again, as the -3/4 of ±1/8-3/4: then nothing of it is known.</summary>
    private int RunEnd(int from)
    {
        var end = from;
        while (Characters.IsFigure(At(end)) || Characters.IsHole(At(end)) || ((Characters.JoinsFigures(At(end)) || At(end) == ',') && (Characters.IsFigure(At(end + 1)) || Characters.IsHole(At(end + 1)) || (At(end) != ',' && At(end + 1) is '.' or '-' or '+')))) end++;
        return end;
    }

    /// <summary>The … of -30 °C…+15 °C.</summary>
    private bool IsSpanBehindUnit() => text[at] == '…' && char.IsLetter(Before()) && (Characters.IsFigure(At(at + 1)) || (At(at + 1) is '+' or '-' or '−' && Characters.IsFigure(At(at + 2))));

    /// <summary>The comma of 2,_ or _,4, which is a decimal one.</summary>
    private bool IsCommaAtHole(int index) => text[index] == ',' && index > 0 && (Characters.IsHole(text[index - 1]) ? Characters.IsFigure(At(index + 1)) || Characters.IsHole(At(index + 1)) : Characters.IsHole(At(index + 1)));

    /// <summary>Whether a free end is followed, behind spaces, by something else than a figure: 115/ 230 V goes on, 1/ HP does not.</summary>
    private bool IsFollowedByNoFigure(int index)
    {
        if (index < text.Length && !char.IsWhiteSpace(text[index])) return false;
        while (index < text.Length && char.IsWhiteSpace(text[index])) index++;
        return !Characters.IsFigure(At(index)) && At(index) != '.';
    }

    private int WordEnd()
    {
        var end = at + 1;
        while (end < text.Length && (char.IsLetter(text[end]) || (char.IsDigit(text[end]) && !char.IsAsciiDigit(text[end])))) end++;
        return end;
    }

    private int NumberEnd()
    {
        var end = at + 1;
        while (end < text.Length)
        {
            if (Characters.IsFigure(text[end])) end++;
            else if (DotsEnd(end) is { } dots) end = dots;
            else if (Characters.JoinsFigures(text[end]) && Characters.IsFigure(At(end + 1))) end += 2;
            else if (text[end] is '/' or '-' && At(end + 1) == '.' && Characters.IsFigure(At(end + 2))) end += 3;
            else if (text[end] is '/' or '-' or '–' && At(end + 1) is '+' or '-' or '−' && Characters.IsFigure(At(end + 2))) end += 3;
            else break;
        }

        return end;
    }

    /// <summary>The end of the dots, and of a sign behind them, between two figures that touch them: -30...+15, 220…240. They are a span; anywhere else they are a hole.</summary>
    private int? DotsEnd(int from)
    {
        if (At(from) is not ('.' or '…') || !Characters.IsFigure(At(from - 1)) || FigureText.Dots(text.AsSpan(from)) is not (> 0 and var dots)) return null;
        var end = from + dots;
        if (At(end) is '+' or '-' or '−') end++;
        return Characters.IsFigure(At(end)) ? end : null;
    }

    private char Before() => at == 0 ? '\0' : text[at - 1];

    private char At(int index) => index < text.Length ? text[index] : '\0';
}
