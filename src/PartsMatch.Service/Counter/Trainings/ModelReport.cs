using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;

namespace PartsMatch.Service.Counter.Trainings;

/// <summary>What a family is ranked by, and where that comes from.</summary>
/// <param name="Family">The family.</param>
/// <param name="Weights">Its weights.</param>
/// <param name="HasPrevious">Whether there are weights to go back to.</param>
/// <param name="Log">The last trainings, newest first.</param>
/// <param name="Run">The training that goes on, or went on last since the service was started; null when none did.</param>
public sealed record ModelReport(Family Family, Weights Weights, bool HasPrevious, IReadOnlyList<TrainingEntry> Log, TrainingState? Run)
{
    /// <summary>Parts that have come back more often than their specs explain, those that cost most first.</summary>
    public IEnumerable<(string Number, double Cost)> Records => Weights.Records.OrderByDescending(record => record.Value).ThenBy(record => record.Key, StringComparer.Ordinal).Select(record => (record.Key, record.Value));
}
