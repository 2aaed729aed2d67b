using PartsMatch.Service.Counter;
using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>The outcomes that a file has so far: a row may correct one of a row before it.</summary>
internal sealed class OutcomesSoFar
{
    private static readonly IReadOnlyDictionary<string, StoredOutcome> None = new Dictionary<string, StoredOutcome>();

    private readonly Dictionary<string, string> _kindOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _correctedBy = new(StringComparer.Ordinal);

    /// <summary>What is wrong with one that comes next; null when nothing is, and it is added.</summary>
    /// <param name="next">The outcome.</param>
    /// <param name="stored">Those that the store has, by id: at least the one that it corrects.</param>
    public Refusal? Add(OutcomeDraft next, IReadOnlyDictionary<string, StoredOutcome>? stored = null)
    {
        if (_kindOf.ContainsKey(next.Id)) return new(Codes.GivenTwice, OutcomeReading.Id, $"{next.Id} stands in a row before. Leave one of them.");
        if (next.Corrects.Length > 0)
        {
            var corrected = (stored ?? None).GetValueOrDefault(next.Corrects);
            if ((corrected?.Said.Kind ?? _kindOf.GetValueOrDefault(next.Corrects)) is not { } kind) return OutcomeRecords.NothingToCorrect(next.Corrects);
            if (kind != next.Kind) return OutcomeRecords.OfOtherKind(next.Corrects, kind);
            if ((corrected?.CorrectedBy ?? _correctedBy.GetValueOrDefault(next.Corrects)) is { } by) return OutcomeRecords.CorrectedBefore(next.Corrects, by);
            _correctedBy[next.Corrects] = next.Id;
        }

        _kindOf.Add(next.Id, next.Kind);
        return null;
    }
}
