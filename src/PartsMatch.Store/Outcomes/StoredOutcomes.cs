namespace PartsMatch.Store;

/// <summary>What became of parts that were put in. Records are added and never changed or taken away; one that is corrected stays, and no longer counts.</summary>
public sealed class StoredOutcomes
{
    /// <summary>Records that are read at once: writes wait for no more than these.</summary>
    private const int AtOnce = 2_000;

    private readonly Writer _writer;

    internal StoredOutcomes(Writer writer) => _writer = writer;

    /// <summary>Records one. An id that is there already with the same content is answered as it was, and nothing is written.</summary>
    public Task<WriteResult> RecordAsync(OutcomeDraft draft, string by) => _writer.Write(group => group.Outcomes.Record(draft, by));

    /// <summary>Those of a range that are recorded by now, the oldest record first. They are read some at a time as they are walked over; what is recorded meanwhile is left out.</summary>
    public IEnumerable<StoredOutcome> All(OutcomeRange range)
    {
        var (last, corrections) = Read(database => (database.Outcomes.LastSequence, database.Outcomes.AllCorrections()));
        for (var at = 0L; at < last;)
        {
            var from = at;
            var documents = Read(database => database.Outcomes.Behind(range, from, AtOnce));
            foreach (var document in documents)
            {
                var outcome = Documents.Outcome(document, correctedBy: null);
                at = outcome.Sequence;
                if (at > last) yield break;
                yield return outcome with { CorrectedBy = corrections.GetValueOrDefault(outcome.Said.Id) };
            }

            if (documents.Count < AtOnce) yield break;
        }
    }

    /// <summary>The newest records of a range, the newest first.</summary>
    /// <param name="range">Which.</param>
    /// <param name="before">Those that were recorded before the one of this sequence; all when null.</param>
    /// <param name="most">How many at most.</param>
    public Task<IReadOnlyList<StoredOutcome>> NewestAsync(OutcomeRange range, long? before, int most) => _writer.Between<IReadOnlyList<StoredOutcome>>(database =>
        [.. database.Outcomes.Before(range, before ?? long.MaxValue, most).Select(document => Documents.Outcome(document, database.Outcomes.CorrectedBy(document["id"].AsString)))]);

    /// <summary>The records of ids; those that there are none of are left out.</summary>
    public Task<IReadOnlyDictionary<string, StoredOutcome>> FindAsync(IReadOnlyCollection<string> ids) => _writer.Between<IReadOnlyDictionary<string, StoredOutcome>>(database =>
        ids.Distinct(StringComparer.Ordinal).Select(database.Outcomes.Find).OfType<StoredOutcome>().ToDictionary(outcome => outcome.Said.Id, StringComparer.Ordinal));

    private T Read<T>(Func<Database, T> read) => _writer.Between(read).GetAwaiter().GetResult();
}
