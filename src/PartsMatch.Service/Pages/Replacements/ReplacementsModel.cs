using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Unknowns;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Needs;

namespace PartsMatch.Service.Pages.Replacements;

/// <summary>One part of the list.</summary>
/// <param name="Part">The part.</param>
/// <param name="Explained">Its findings and score.</param>
public sealed record Row(CatalogueEntry Part, Explained Explained)
{
    /// <summary>What is changed or checked, with its figures.</summary>
    public IEnumerable<string> Changes => Explained.Sheet.Changes.Select(change => change.Text).Distinct();

    /// <summary>What speaks against it, a sentence each, what counts most first; nothing of what every part waits for.</summary>
    /// <param name="always">What every part of the list waits for: said once above it.</param>
    public IReadOnlyList<string> Against(IReadOnlyList<Missing> always) => [.. Explained.Contributions
        .Where(one => one.Amount.Millionths < 0 && one.Aspect is not null).OrderBy(one => one.Amount.Millionths)
        .Select(one => Explained.Sheet.Findings.First(finding => finding.Aspect == one.Aspect))
        .Where(one => one.Finding.Verdict != Verdict.Unknown || one.Finding.Missing.Except(always).Any())
        .Select(one => one.Finding.Sentence).Distinct()];

    /// <summary>Whether nothing is to be changed on it, checked or found out.</summary>
    public bool MeetsAll => Explained.Sheet.Findings.All(one => one.Finding.Verdict == Verdict.Meets);

    /// <summary>What decides and is not known.</summary>
    public IEnumerable<Missing> Open => Unknown(isDeciding: true).SelectMany(one => one.Finding.Missing).Distinct();

    /// <summary>What is to be looked at on the part.</summary>
    public IEnumerable<string> Checks => Unknown(isDeciding: false).Select(one => one.Aspect.Title).Distinct();

    private IEnumerable<AspectFinding> Unknown(bool isDeciding) => Explained.Sheet.Findings.Where(one => one.Finding.Verdict == Verdict.Unknown && one.Aspect.IsDeciding == isDeciding);
}

/// <summary>The parts that may do the job, the likeliest first; or what comes nearest when none does.</summary>
public sealed class ReplacementsModel
{
    private readonly RankedParts _ranked;
    private readonly HashSet<string> _saidOfMost;

    public ReplacementsModel(NeedTyped typed, RankedParts ranked, PartFit? only, string? after)
    {
        (Typed, _ranked, Only, IsContinued) = (typed, ranked, only, after is not null);
        var parts = ranked.Parts.ToList();
        Rows = [.. parts.Select(one => new Row(one.Part, one.Ranked.Explained))];
        Last = parts.Count > 0 ? parts[^1].Ranked.Cursor : null;
        Counts = ranked.CountByFit();
        Misses = CountOfAll == 0 ? [.. ranked.NearestMisses(MostMisses).Select(one => new Row(one.Part, one.Miss.Explained))] : [];

        if (after is null && only is null && Rows.Count > 0) (NextReadings, Carry) = (ranked.NextReadings(MostReadings), ranked.CarrySet(CarrySet.UsualShare));

        // What every part waits for is said once, above the list; a row says only what it alone still needs.
        AlwaysOpen = Common(Rows.Select(row => row.Open));
        AlwaysChecked = Common(Rows.Select(row => row.Checks));
        _saidOfMost = Rows.SelectMany(row => row.Against(AlwaysOpen)).CountBy(sentence => sentence).Where(one => one.Value * 2 > Rows.Count).Select(one => one.Key).ToHashSet();
    }

    public const int PageSize = 20;
    private const int MostMisses = 5;
    private const int MostReadings = 3;

    /// <summary>The fits that a list can be narrowed to.</summary>
    public static IReadOnlyList<PartFit> Shown { get; } = [.. Enum.GetValues<PartFit>().Where(fit => fit != PartFit.DoesntFit)];

    public NeedTyped Typed { get; }

    public NeedRead Need => _ranked.Need;

    public Family Family => Need.Family;

    /// <summary>The one fit that is shown; null for all.</summary>
    public PartFit? Only { get; }

    /// <summary>What a link asked for as a fit and is none; null where all is well.</summary>
    public string? StrangeFit { get; init; }

    /// <summary>Those fits that there are parts of, with how many.</summary>
    public IEnumerable<(PartFit Fit, int Count)> Filters => Counts.Where(one => Shown.Contains(one.Key) && one.Value > 0).Select(one => (one.Key, one.Value));

    /// <summary>How many parts there are in all.</summary>
    public int CountOfAll => Filters.Sum(one => one.Count);

    /// <summary>Whether other pages stand before this one.</summary>
    public bool IsContinued { get; }

    public IReadOnlyList<Row> Rows { get; }

    public IReadOnlyList<Row> Misses { get; }

    public IReadOnlyDictionary<PartFit, int> Counts { get; }

    /// <summary>Which readings settle most for their effort; said once, on the first page.</summary>
    public IReadOnlyList<ReadingAdvice> NextReadings { get; } = [];

    /// <summary>What to carry when the plate cannot be read; null on pages that follow.</summary>
    public PartsToCarry? Carry { get; }

    public IReadOnlyList<Missing> AlwaysOpen { get; }

    public IReadOnlyList<string> AlwaysChecked { get; }

    /// <summary>What the list is called: parts of which none is known to fit yet are no parts that fit.</summary>
    public string Heading => Filters.Any() && Filters.All(one => one.Fit == PartFit.CantTellYet) ? "Parts that may fit" : "Parts that fit";

    /// <summary>What tells a row from the others in one line: what speaks most against it and not against most of them, else what speaks most against it.</summary>
    public string Why(Row row)
    {
        var against = row.Against(AlwaysOpen);
        if (against.Count == 0) return row.MeetsAll ? "It meets every question as it is." : "Nothing else speaks against it.";
        return against.FirstOrDefault(sentence => !_saidOfMost.Contains(sentence)) ?? against[0];
    }

    /// <summary>The same list with another choice of fit.</summary>
    public string LinkFor(PartFit? fit) => Typed.To(ReplacementsEndpoints.Path, fit is { } one ? [new(ReplacementsEndpoints.Fit, one.ToString())] : []);

    /// <summary>The page that follows; null when there is none.</summary>
    public string? Next => _ranked.HasNext && Last is not null
        ? Typed.To(ReplacementsEndpoints.Path, [new(ReplacementsEndpoints.After, Last), .. Only is { } one ? (NamedText[])[new(ReplacementsEndpoints.Fit, one.ToString())] : []])
        : null;

    /// <summary>Whether a row is the very part that failed.</summary>
    public bool IsOld(Row row) => Need.OldPart?.Stored.Number == row.Part.Stored.Number;

    public string SheetOf(Row row) => SheetOf(row.Part);

    public string SheetOf(CatalogueEntry part) => Typed.To(Sheets.SheetEndpoints.Path, new NamedText(Sheets.SheetEndpoints.Part, part.Stored.Number));

    /// <summary>The first page, at the field that a reading fills.</summary>
    public string ChangeOf(ReadingAdvice advice) => $"{Change}#{(advice.Side == Side.Site ? NeedTyped.SitePrefix : NeedTyped.PlatePrefix)}.{advice.Field.Name}";

    public string Change => Typed.To(WhatFailed.WhatFailedEndpoints.Path);

    private string? Last { get; }

    private static IReadOnlyList<T> Common<T>(IEnumerable<IEnumerable<T>> rows)
    {
        var all = rows.ToList();
        return all.Count < 2 ? [] : [.. all.Skip(1).Aggregate(all[0], (common, next) => common.Intersect(next))];
    }
}
