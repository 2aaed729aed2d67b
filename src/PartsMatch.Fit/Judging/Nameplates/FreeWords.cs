namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Tells what a word says without a label: some count only behind another field's word or what the part is called, and not beside what may have it for its own.</summary>
internal sealed class FreeWords(PlateText plate, Lexicon lexicon, ValueSearch values)
{
    /// <summary>What a word says where it stands; nothing where it is not its place.</summary>
    /// <param name="from">The token that it begins with.</param>
    /// <param name="word">The word.</param>
    public List<WordEntry> Said(int from, Match word)
    {
        var said = new List<WordEntry>(word.Node.Free.Count);
        foreach (var entry in word.Node.Free)
        {
            if (Counts(from, word.End, entry)) said.Add(entry);
        }

        return said;
    }

    private bool Counts(int from, int end, WordEntry entry)
    {
        if (entry.OnlyBehind is { } field && !IsBehind(from, end, field, entry.Field)) return false;
        if (entry.NeverBeside is { } other && (IsBeside(from, end, other) || IsAnothers(from, end))) return false;
        foreach (var next in entry.NeverNextTo)
        {
            if (IsNextTo(from, end, next)) return false;
        }

        return entry.NeverBehind.Count == 0 || !IsBehindAny(from, end, entry.NeverBehind);
    }

    /// <summary>2 POLE NC, DPST NC, RELAY NC; not the NO of SPDT NO, which says the same field itself.</summary>
    private bool IsBehind(int from, int end, Field field, Field own) =>
        plate.Words.Ending(from).Exists(before => (before.Word.Node.IsName || before.Word.Announces(field) || before.Word.IsValueOf(field)) && !before.Word.IsValueOf(own) && Gaps.FromLabel(plate, before.From, from, end) is not null);

    /// <summary>2 POLE 1 NO 1 NC, 4P (2 NO 2 NC), RELAY 1 NO 1 NC.</summary>
    private bool IsBehindAny(int from, int end, IReadOnlyList<(Field Field, object Value)> values) =>
        plate.Words.Ending(from).Exists(before => (before.Word.Node.IsName || before.Word.Node.Words.Exists(word => values.Contains((word.Field, word.Field.Form.ReadAny(word.Value).Value!)))) && Gaps.FromLabel(plate, before.From, from, end) is not null);

    /// <summary>NC AUX, AUX NC, 1 NC; not the NC of NC AUX 1 NO, whose label has its own.</summary>
    private bool IsBeside(int from, int end, Field field)
    {
        if (plate.Is(from - 1, TokenKind.Number) && plate.SameLine(from)) return true;
        if (plate.Words.Ending(from).Exists(before => before.Word.Announces(field) && Gaps.FromLabel(plate, before.From, from, end) is not null && !plate.Words.Ending(before.From).Exists(value => value.Word.IsValueOf(field)))) return true;
        return end < plate.Count && plate.Words[end].Exists(behind => behind.Announces(field) && Gaps.ToLabel(plate, from, end, behind.End) is not null && !behind.Node.Labels.Exists(label => label.Field == field && values.At(behind.End, label).Count > 0));
    }

    /// <summary>NC PILOT DUTY A600, MECHANICAL INTERLOCK NC.</summary>
    private bool IsNextTo(int from, int end, Field field)
    {
        return (GoesOn(from) && plate.Words.Ending(from).Exists(before => IsOf(before.Word))) || (GoesOn(end) && plate.Words[end].Exists(IsOf));

        bool IsOf(Match word) => word.Announces(field) || word.IsValueOf(field);
    }

    /// <summary>NC INTERLOCK, OVERLOAD RELAY NC, NO COVER, NC 21-22: in one statement with a word that nobody knows, which may say whose it is, or with the numbers of a contact's terminals.</summary>
    private bool IsAnothers(int from, int end)
    {
        var first = from;
        while (GoesOn(first) && plate.Words.Ending(first).FindIndex(before => before.Word.Node.IsName) is >= 0 and var name) first = plate.Words.Ending(first)[name].From;
        return (GoesOn(first) && (IsStrange(first - 1) || IsOfTerminals(first - 1))) || (GoesOn(end) && (IsStrange(end) || IsOfTerminals(end)));
    }

    /// <summary>Whether a token goes on with what stands before it, with no divider between.</summary>
    private bool GoesOn(int at) => at > 0 && at < plate.Count && plate.SameLine(at) && plate.Gap(at).IndexOfAny(",;|¦") < 0;

    /// <summary>Whether a token is a word that is no part of any in the vocabulary, nor of a code or a unit.</summary>
    private bool IsStrange(int at)
    {
        var chunk = at;
        while (!plate.BeginsChunk(chunk)) chunk--;
        return plate.Is(at, TokenKind.Word) && !plate.HasFigures(chunk) && !lexicon.Knows(plate.Slice(at, at + 1)) && !Enumerable.Range(0, at + 1).Any(from => plate.Words[from].Exists(match => match.End > at));
    }

    /// <summary>13-14, 21-22: the figure of the contact, and behind it 1 and 2 of one that opens, 3 and 4 of one that closes, 5 to 8 of delayed ones (EN 50005, from memory).</summary>
    private bool IsOfTerminals(int at) => plate.Slice(at, at + 1) is [>= '1' and <= '9' and var contact, >= '1' and <= '8' and var first, '-' or '/', var other, var second] && other == contact && second == first + 1 && (first - '0') % 2 == 1;
}
