using System.Buffers.Text;
using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Learning;
using PartsMatch.Store;
using NamedText = PartsMatch.Fit.Judging.NamedText;

namespace PartsMatch.Service.Counter;

/// <summary>Some of the outcomes, the newest record first.</summary>
public sealed record OutcomePage(IReadOnlyList<StoredOutcome> Outcomes, bool HasNext, bool HasPrevious);

/// <summary>What became of parts that were put in: takes it down, shows it, and hands it to whoever learns from it.</summary>
internal sealed class OutcomeRecords(PartStore store, Catalogues catalogues, TimeProvider clock)
{
    private const string CursorWord = "outcome ";

    /// <summary>The day that it is here.</summary>
    public DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    /// <summary>Records an outcome. The same once more is answered with what was recorded.</summary>
    public async Task<Answer<StoredOutcome>> RecordAsync(OutcomeGiven given, string by)
    {
        var read = new OutcomeReading(store.Find, Today).Read(given);
        if (!read.IsGiven) return Answer<StoredOutcome>.Refused(read.Refusals);
        try
        {
            var result = await store.Outcomes.RecordAsync(read.Value, by);
            return result is WriteResult.Recorded(var outcome) ? outcome : RefusalOf(result);
        }
        catch (StoreFailedException failed)
        {
            return new Refusal(Codes.StoreFailed, string.Empty, failed.Message);
        }
    }

    public async Task<StoredOutcome?> FindAsync(string id) => (await store.Outcomes.FindAsync([id])).GetValueOrDefault(id);

    /// <summary>The newest records.</summary>
    /// <param name="family">Of which kind of part; of all when null.</param>
    /// <param name="part">Of which part that was put in; of all when null.</param>
    /// <param name="first">How many.</param>
    /// <param name="after">The cursor behind which the page begins.</param>
    public async Task<Answer<OutcomePage>> PageAsync(Family? family, string? part, int first, string? after)
    {
        long? before = null;
        if (after is not null && (before = Read(after)) is null) return new Refusal(Codes.CursorMalformed, "after", "This is no cursor of a list of outcomes.");
        if (part is not null && catalogues.Shelf.Find(part) is not { } entry) return Needs.NotFound(part, "part");
        if (part is not null && family is not null && Needs.Find(catalogues.Shelf, family, part, "part") is { IsGiven: false } other) return Answer<OutcomePage>.Refused(other.Refusals);
        return await PageAsync(part is not null ? OutcomeRange.OfPart(part) : family is not null ? OutcomeRange.OfKind(family.Kind) : OutcomeRange.All, first, before);
    }

    /// <summary>The newest records of what became of a part.</summary>
    public Task<OutcomePage> NewestOfAsync(CatalogueEntry part, int first) => PageAsync(OutcomeRange.OfPart(part.Stored.Number), first, before: null);

    /// <summary>What ranking learns from: all outcomes of a family that count, in no order. They are read, and their needs as any need is, as they are walked over: while some are judged on one core others are fetched on another.</summary>
    public ParallelQuery<Outcome> LessonsOf(Family family)
    {
        var (shelf, entries) = (catalogues.Shelf, new ConcurrentDictionary<string, CatalogueEntry?>(StringComparer.Ordinal));
        return store.Outcomes.All(OutcomeRange.OfKind(family.Kind)).AsParallel().Select(outcome => Lesson(family, outcome, Find)).OfType<Outcome>();

        CatalogueEntry? Find(string number)
        {
            if (number.Length == 0) return null;
            var entry = entries.GetOrAdd(number, shelf.Find);
            return entry?.Family == family ? entry : null;
        }
    }

    /// <summary>Why ranking learns nothing of an outcome, in a sentence; null where it does.</summary>
    public string? WhyNothingIsLearnt(StoredOutcome outcome)
    {
        var shelf = catalogues.Shelf;
        if (outcome.CorrectedBy is { } by) return $"{by} took its place.";
        if (OutcomeWords.ReasonOf(outcome.Said.Reason) == OutcomeReason.WasNotThePart) return "What had failed was another part.";
        if (Families.Find(outcome.Said.Kind) is not { } family || Lesson(family, outcome, number => shelf.Find(number) is { } entry && entry.Family == family ? entry : null) is not { } lesson) return "The catalogue has the part no more.";
        if (new FeatureColumns(family).ExampleOf(lesson) is not null) return null;
        var sheet = family.Judge(lesson.Need, lesson.Part);
        List<string> failed = [.. sheet.Failures.Select(one => InSentence.Of(one.Aspect.Title))];
        return failed.Count > 0
            ? $"The part does not fit ({string.Join(", ", failed)}): what fails is no matter of costs."
            : $"Not known: {string.Join("; ", sheet.Findings.Where(one => one.Aspect.IsDeciding).SelectMany(one => one.Finding.Missing).Where(missing => missing.Side != Side.Part).Distinct().Select(missing => Words.ToFindOut(family, missing)))}. How far the part fell short there cannot be said; a correction that tells it would change that.";
    }

    /// <summary>A cursor says before which record a page begins, so that one page follows another whatever is recorded between.</summary>
    public static string Cursor(StoredOutcome outcome) => Base64Url.EncodeToString(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{CursorWord}{outcome.Sequence}")));

    /// <summary>Why an outcome was not recorded.</summary>
    public static Refusal RefusalOf(WriteResult result) => result switch
    {
        WriteResult.OtherOutcome(var present) => IdTaken(present),
        WriteResult.NothingToCorrect(var id) => NothingToCorrect(id),
        WriteResult.OfOtherKind(var present) => OfOtherKind(present.Said.Id, present.Said.Kind),
        WriteResult.CorrectedBefore(var present) => CorrectedBefore(present.Said.Id, present.CorrectedBy!),
        var other => throw new InvalidOperationException($"The store answered {other.GetType().Name}."),
    };

    public static Refusal IdTaken(StoredOutcome present) => new(
        Codes.IdTaken, OutcomeReading.Id, $"The id {present.Said.Id} is that of an outcome that says something else, and a record is never changed. Give another id; to put that one right, say that it corrects {present.Said.Id}.");

    public static Refusal NothingToCorrect(string id) => new(Codes.OutcomeNotFound, OutcomeReading.Corrects, $"No outcome before this one has the id {id}: there is nothing to correct.");

    public static Refusal OfOtherKind(string id, string kind) => new(Codes.KindMismatch, OutcomeReading.Corrects, $"{id} is an outcome of a {Families.Find(kind)?.Title ?? kind}. One of another kind of part cannot put it right.");

    public static Refusal CorrectedBefore(string id, string by) => new(Codes.AlreadyCorrected, OutcomeReading.Corrects, $"{id} was corrected before, by {by}. Correct that one.");

    /// <summary>What a later version recorded of a kind that this one does not know is left out.</summary>
    private async Task<OutcomePage> PageAsync(OutcomeRange range, int first, long? before)
    {
        var found = await store.Outcomes.NewestAsync(range, before, first + 1);
        return new([.. found.Take(first).Where(outcome => Families.Find(outcome.Said.Kind) is not null)], found.Count > first, before is not null);
    }

    private static long? Read(string cursor)
    {
        if (!Base64Url.IsValid(cursor)) return null;
        var words = Encoding.UTF8.GetString(Base64Url.DecodeFromChars(cursor));
        return words.StartsWith(CursorWord, StringComparison.Ordinal) && long.TryParse(words[CursorWord.Length..], NumberStyles.None, CultureInfo.InvariantCulture, out var sequence) ? sequence : null;
    }

    /// <summary>What an outcome says to whoever learns of it; null where it does not count, or this version cannot read what a later one said.</summary>
    private static Outcome? Lesson(Family family, StoredOutcome outcome, Func<string, CatalogueEntry?> find)
    {
        var said = outcome.Said;
        if (outcome.CorrectedBy is not null || OutcomeWords.ReasonOf(said.Reason) == OutcomeReason.WasNotThePart) return null;
        if (OutcomeWords.ResultOf(said.Result) is not { } result || find(said.Part) is not { } part) return null;
        var old = find(said.OldPart);
        var need = family.ReadNeed(new(null, Texts(said.Plate), Texts(said.Site), old?.Spec)).Need;
        return new(said.Id, said.On, said.Place, need, old?.Stored.Number ?? said.OldPart, Shelf.NumberInRanking(part.Stored.Number), part.Spec, result, Invented.Is(said));
    }

    private static IReadOnlyList<NamedText> Texts(IReadOnlyList<Store.NamedText> texts) => [.. texts.Select(text => new NamedText(text.Name, text.Text))];
}
