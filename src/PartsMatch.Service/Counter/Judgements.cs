using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Service.Counter;

/// <summary>One part judged for a need.</summary>
/// <param name="Need">The need.</param>
/// <param name="Part">The part.</param>
/// <param name="Explained">Findings and score.</param>
/// <param name="MendFirst">What readings at the old part say is to be mended before a new one goes in.</param>
public sealed record JudgedPart(NeedRead Need, CatalogueEntry Part, Explained Explained, IReadOnlyList<MendFirst> MendFirst)
{
    private readonly Lazy<InstallNotes> _notes = new(() => Need.Family.NotesFor(Need.Reading.Need, Part.Spec, Explained.Sheet, MendFirst));

    public InstallNotes Notes => _notes.Value;
}

/// <summary>A page of parts that may do the job. The rest is worked out when asked for.</summary>
public sealed class RankedParts(NeedRead need, Shelf shelf, Weights weights, RankingPage.Listed page)
{
    public NeedRead Need => need;

    public bool HasNext => page.HasNextPage;

    public IEnumerable<(CatalogueEntry Part, RankedPart Ranked)> Parts => page.Parts.Select(ranked => (shelf.Find(ranked.Number)!, ranked));

    public IReadOnlyDictionary<PartFit, int> CountByFit() => Ranker.CountByFit(shelf.Of(need.Family), need.Reading.Need, need.OldPartHadNoMore);

    public IEnumerable<(CatalogueEntry Part, NearestMiss Miss)> NearestMisses(int first) =>
        Ranker.NearestMisses(shelf.Of(need.Family), weights, need.Reading.Need, first, need.OldPartHadNoMore).Select(miss => (shelf.Find(miss.Number)!, miss));

    public IReadOnlyList<ReadingAdvice> NextReadings(int first) =>
        Ranking.Unknowns.NextReadings.Of(shelf.Of(need.Family), weights, need.Reading.Need, need.Completions, first, need.OldPartHadNoMore);

    public PartsToCarry CarrySet(double atLeast) => new(shelf, need, Ranking.Unknowns.CarrySet.Of(shelf.Of(need.Family), weights, need.Reading.Need, need.Completions, atLeast, need.OldPartHadNoMore));
}

/// <summary>The carry set, with the parts' entries.</summary>
public sealed class PartsToCarry(Shelf shelf, NeedRead need, CarrySet set)
{
    public CarrySet Set => set;

    public IReadOnlyList<(CatalogueEntry Part, CarriedPart Carried, IReadOnlyList<KitItem> Kit)> Parts { get; } =
        [.. set.Parts.Select(carried => (Part: shelf.Find(carried.Number)!, carried)).Select(one => (one.Part, one.carried, one.carried.Kit(need.Family, one.Part.Spec)))];
}

/// <summary>What is asked at the counter: which part will do, and why.</summary>
internal sealed class Judgements(Catalogues catalogues, FamilyWeights weights)
{
    /// <summary>What there is to go by now.</summary>
    public CounterNow Now => new(catalogues.Shelf, weights.Now);

    public Answer<RankedParts> Replacements(NeedGiven given, int first, string? after, IReadOnlyCollection<PartFit>? include) =>
        Replacements(Now, given, first, after, include);

    /// <summary>As above, by a catalogue and weights that were taken before.</summary>
    public static Answer<RankedParts> Replacements(CounterNow now, NeedGiven given, int first, string? after, IReadOnlyCollection<PartFit>? include)
    {
        var (shelf, weights) = (now.Shelf, now.Weights[given.Family]);
        var need = Needs.Read(shelf, given);
        if (!need.IsGiven) return Answer<RankedParts>.Refused(need.Refusals);
        var query = new RankingQuery(need.Value.Reading.Need, include?.ToHashSet(), first, after, need.Value.OldPartHadNoMore) { Completions = need.Value.Completions };
        return Ranker.Rank(shelf.Of(given.Family), weights, query) switch
        {
            RankingPage.Listed page => new RankedParts(need.Value, shelf, weights, page),
            RankingPage.CursorExpired => new Refusal(Codes.CursorExpired, "after", "This cursor belongs to an order that was since replaced by another. Begin again without it."),
            _ => new Refusal(Codes.CursorMalformed, "after", "This is no cursor of a list of replacements."),
        };
    }

    /// <summary>What a need leaves open, and what to do about it: next readings, and what to carry.</summary>
    public Answer<RankedParts> Unknowns(NeedGiven given) => Replacements(given, first: 0, after: null, include: null);

    public Answer<JudgedPart> FitSheet(NeedGiven given, string partNumber, ReadingsGiven? readings)
    {
        var shelf = catalogues.Shelf;
        var need = Needs.Read(shelf, given);
        var part = Needs.Find(shelf, given.Family, partNumber, "partNumber");
        var (read, wrong) = readings is null ? (null, []) : Proofs.Read(given.Family, readings);
        return need.IsGiven && part.IsGiven && wrong.Count == 0
            ? Judged(need.Value, part.Value, read is null ? [] : given.Family.BeforeCondemning(need.Value.Reading.Need, read).MendFirst)
            : Answer<JudgedPart>.Refused([.. need.Refusals, .. part.Refusals, .. wrong]);
    }

    /// <summary>The old part's entry is the plate; without a site, what follows from it.</summary>
    public Answer<JudgedPart> Compare(string oldPartNumber, string newPartNumber, SiteGiven? site)
    {
        var shelf = catalogues.Shelf;
        if (shelf.Find(oldPartNumber) is not { } old)
        {
            return Answer<JudgedPart>.Refused([
                Missing(oldPartNumber, "oldPartNumber", "old"),
                .. shelf.Find(newPartNumber) is null ? (Refusal[])[Missing(newPartNumber, "newPartNumber", "new")] : [],
                .. site is null ? [] : Needs.Refusals(site.Family.ReadSite(site.Texts).Complaints, $"site.{site.Family.Kind}")]);
        }

        var family = old.Family;
        var part = string.IsNullOrWhiteSpace(newPartNumber) ? Missing(newPartNumber, "newPartNumber", "new") : Needs.Find(shelf, family, newPartNumber, "newPartNumber");
        List<Refusal> refusals = [.. part.Refusals];
        if (site is not null && site.Family != family) refusals.Add(new(Codes.KindMismatch, $"site.{site.Family.Kind}", $"{old.Stored.Number} is a {family.Title}; this is a site for a {site.Family.Title}."));
        var need = Needs.Read(shelf, new(family, [], null, oldPartNumber, site?.Family == family ? site.Texts : []));
        refusals.AddRange(need.Refusals.Select(refusal => refusal with { At = refusal.At.Replace($"need.{family.Kind}.site", $"site.{family.Kind}", StringComparison.Ordinal) }));
        return refusals.Count == 0 ? Judged(need.Value!, part.Value!, []) : Answer<JudgedPart>.Refused(refusals);
    }

    private static Refusal Missing(string number, string at, string which) =>
        string.IsNullOrWhiteSpace(number) ? new(Codes.Empty, at, $"Type the {which} part's number.") : Needs.NotFound(number, at);

    private JudgedPart Judged(NeedRead need, CatalogueEntry part, IReadOnlyList<MendFirst> mend) =>
        new(need, part, Ranker.Explain(need.Family, weights.Now[need.Family], need.Reading.Need, need.Completions, part.Spec, Shelf.NumberInRanking(part.Stored.Number)), mend);
}
