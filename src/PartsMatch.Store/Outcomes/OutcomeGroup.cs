namespace PartsMatch.Store;

/// <summary>The outcomes of one group of writes, each judged against all that was recorded before it.</summary>
internal sealed class OutcomeGroup(OutcomeCollection before, DateTimeOffset at)
{
    private readonly Dictionary<string, StoredOutcome> _byId = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _correctedBy = new(StringComparer.Ordinal);
    private readonly Lazy<long> _last = new(() => before.LastSequence);

    public IReadOnlyCollection<StoredOutcome> Records => _byId.Values;

    public WriteResult Record(OutcomeDraft draft, string by)
    {
        if (Find(draft.Id) is { } present)
            return present.Said.SaysAsMuchAs(draft) ? new WriteResult.Recorded(present) : new WriteResult.OtherOutcome(present);
        if (draft.Corrects.Length > 0)
        {
            if (Find(draft.Corrects) is not { } corrected)
                return new WriteResult.NothingToCorrect(draft.Corrects);
            if (corrected.Said.Kind != draft.Kind)
                return new WriteResult.OfOtherKind(corrected);
            if (corrected.CorrectedBy is not null)
                return new WriteResult.CorrectedBefore(corrected);
            _correctedBy[draft.Corrects] = draft.Id;
        }

        return new WriteResult.Recorded(_byId[draft.Id] = new(_last.Value + _byId.Count + 1, at, by, draft, CorrectedBy: null));
    }

    private StoredOutcome? Find(string id)
    {
        var found = _byId.GetValueOrDefault(id) ?? before.Find(id);
        return found is null ? null : found with { CorrectedBy = _correctedBy.GetValueOrDefault(id) ?? found.CorrectedBy };
    }
}
