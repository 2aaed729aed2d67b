using System.Collections.Concurrent;
using System.Security.Cryptography;
using PartsMatch.Service.Exchange;

namespace PartsMatch.Service.Pages.Tables;

/// <summary>The files that were sent lately: kept in memory between preview and taking, few and not for long.</summary>
internal sealed class ImportJobs(CatalogueImport import, TimeProvider clock)
{
    private const int Most = 4;
    private static readonly TimeSpan Kept = TimeSpan.FromMinutes(30);

    private readonly ConcurrentDictionary<string, ImportJob> _jobs = new(StringComparer.Ordinal);

    /// <summary>Begins a preview; the oldest of too many is let go, unless it is still at work.</summary>
    /// <returns>The name to ask for it by; null while all that are kept are at work.</returns>
    public string? Begin(CatalogueTable table, ReadOnlyMemory<byte> file, string by)
    {
        LetGo(job => clock.GetUtcNow() - job.At > Kept);
        if (_jobs.Count >= Most) LetGo(job => job == _jobs.Values.Where(one => one.Come is null).MinBy(one => one.At));
        if (_jobs.Count >= Most) return null;
        var name = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(8));
        _jobs[name] = new(import, table, file, by, clock.GetUtcNow());
        return name;
    }

    public ImportJob? Find(string name, string by) => _jobs.TryGetValue(name, out var job) && job.By == by ? job : null;

    private void LetGo(Func<ImportJob, bool> which)
    {
        foreach (var (name, job) in _jobs)
        {
            if (job.Come is null && which(job)) _jobs.TryRemove(name, out _);
        }
    }
}
