using System.Text;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Counter.Lists;

/// <summary>Old parts in, replacements out: for each of them what <see cref="Judgements.Replacements(CounterNow, NeedGiven, int, string?, IReadOnlyCollection{PartFit}?)"/> answers to it alone.</summary>
internal static class CrossReference
{
    /// <summary>The most replacements of one old part: who wants more asks for that part by itself.</summary>
    public const int MostParts = 5;

    /// <summary>What two old parts share only when all that is answered to them is the same. A number that nobody knows is told as it is spelt.</summary>
    public static string KeyOf(OldPart old)
    {
        var key = new StringBuilder(old.Kind?.Kind).Append('\0').Append(old.Number).Append('\0').Append(old.PlateText);
        foreach (var (name, text) in old.Site) key.Append('\0').Append(name).Append('\0').Append(text);
        return key.ToString();
    }

    /// <summary>The best replacements of one old part.</summary>
    /// <param name="now">Catalogue and weights, taken once for a list.</param>
    /// <param name="old">The old part.</param>
    /// <param name="first">How many at most.</param>
    public static Replaced Replace(CounterNow now, OldPart old, int first)
    {
        var entry = old.Number.Length > 0 ? now.Shelf.Find(old.Number) : null;
        if (Wrong(old, entry) is { Count: > 0 } wrong) return Replaced.Refused(entry, wrong);
        var family = old.Kind ?? entry?.Family ?? Families.All[0];
        var asked = Judgements.Replacements(now, new(family, [], old.PlateText, entry is null ? null : old.Number, old.Site) { OldPart = entry }, first, after: null, include: null);
        Refusal[] unknown = old.Number.Length > 0 && entry is null ? [Needs.NotFound(old.Number, string.Empty)] : [];
        if (!asked.IsGiven) return Replaced.Refused(entry, [.. asked.Refusals, .. unknown]);
        var parts = asked.Value.Parts.ToList();
        List<string> remarks = [.. unknown.Select(refusal => $"{refusal.Message} This is by the plate's text.")];
        if (parts.Count == 0) remarks.Add(NearestMiss(asked.Value));
        remarks.AddRange(NotKnown(family, parts.Where(one => one.Ranked.Fit == PartFit.CantTellYet).Select(one => one.Ranked.Unread)));
        remarks.AddRange(asked.Value.Need.Reading.Complaints.Select(complaint => complaint.Message));
        remarks.AddRange(asked.Value.Need.Reading.Contradictions.Select(contradiction => contradiction.Sentence));
        return new(entry, parts, remarks, Code: null);
    }

    /// <summary>What is wrong with an old part that is neither known nor described.</summary>
    private static List<Refusal> Wrong(OldPart old, CatalogueEntry? entry)
    {
        if (entry is not null || old.PlateText.Length > 0) return [];
        if (old.Number.Length == 0) return [new(Codes.Empty, string.Empty, "There is neither a number nor a plate's text here.")];
        List<Refusal> unusable = [.. PartWords.Number(old.Number, string.Empty)];
        return unusable.Count > 0 ? unusable : [Needs.NotFound(old.Number, string.Empty)];
    }

    private static string NearestMiss(RankedParts ranked)
    {
        if (ranked.NearestMisses(first: 1).FirstOrDefault() is not { Part: { } part, Miss: { } miss }) return "Nothing on offer fits, and every part fails more than two questions.";
        return $"Nothing on offer fits. {part.Stored.Number} comes nearest: {string.Join(' ', miss.InTheWay.Select(one => $"{InSentence.Of(one.Aspect.Title)}: {one.Finding.Sentence}"))}";
    }

    /// <summary>What decides and is not known, of all that is shown.</summary>
    private static IEnumerable<string> NotKnown(Family family, IEnumerable<FitSheet> sheets)
    {
        var open = sheets.SelectMany(sheet => sheet.Findings).Where(one => one.Aspect.IsDeciding && one.Finding.Verdict == Verdict.Unknown)
            .SelectMany(one => one.Finding.Missing).Distinct().Select(missing => Words.ToFindOut(family, missing)).ToList();
        if (open.Count > 0) yield return $"Not known yet: {string.Join("; ", open)}.";
    }
}
