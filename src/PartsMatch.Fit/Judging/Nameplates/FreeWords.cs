namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Tells what a word says without a label: some count only behind another field's word or what the part is called, and not beside a label that has nothing else.</summary>
internal sealed class FreeWords(PlateText plate, List<Match>[] matches, ValueSearch values)
{
    /// <summary>What a word says where it stands; nothing where it is not its place.</summary>
    /// <param name="from">The token that it begins with.</param>
    /// <param name="word">The word.</param>
    public List<WordEntry> Said(int from, Match word) => word.Node.Free.FindAll(entry => (entry.OnlyBehind is not { } field || IsBehind(from, word.End, field, entry.Field)) && (entry.NeverBeside is not { } other || !IsBeside(from, word.End, other)));

    /// <summary>2 POLE NC, DPST NC, RELAY NC; not the NO of SPDT NO, which says the same field itself.</summary>
    private bool IsBehind(int from, int end, Field field, Field own) =>
        Match.Ending(matches, from).Exists(before => (before.Word.Node.IsName || before.Word.Announces(field) || before.Word.IsValueOf(field)) && !before.Word.IsValueOf(own) && Gaps.FromLabel(plate, before.From, from, end) is not null);

    /// <summary>NC AUX, AUX NC, 1 NC; not the NC of NC AUX 1 NO, whose label has its own.</summary>
    private bool IsBeside(int from, int end, Field field)
    {
        if (plate.Is(from - 1, TokenKind.Number) && plate.SameLine(from)) return true;
        if (Match.Ending(matches, from).Exists(before => before.Word.Announces(field) && Gaps.FromLabel(plate, before.From, from, end) is not null && !Match.Ending(matches, before.From).Exists(value => value.Word.IsValueOf(field)))) return true;
        return end < plate.Count && matches[end].Exists(behind => behind.Announces(field) && Gaps.ToLabel(plate, from, end, behind.End) is not null && !behind.Node.Labels.Exists(label => label.Field == field && values.At(behind.End, label).Count > 0));
    }
}
