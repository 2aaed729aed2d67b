using System.Collections.Immutable;
using Microsoft.Extensions.Options;
using PartsMatch.Service.Counter;
using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>Reads a table beside the catalogue: a preview writes nothing; a taking writes the good rows that say something new, and nothing else.</summary>
/// <remarks>A taking that was cut off is done again: what it wrote before says the same by then.</remarks>
internal sealed class CatalogueImport(PartStore store, IOptions<ExchangeLimits> limits, TimeProvider clock)
{
    /// <summary>Rows that reach the disk together. Fewer are slower, as the ranking follows every group; with more, other writers wait longer.</summary>
    private const int Group = 4_000;

    /// <summary>What a file says; nothing is written.</summary>
    /// <param name="table">Which table it is.</param>
    /// <param name="file">Its bytes.</param>
    /// <param name="progress">Told how far it has come, on another thread.</param>
    /// <param name="stop">Ends it.</param>
    public Task<Answer<ImportReport>> PreviewAsync(CatalogueTable table, ReadOnlyMemory<byte> file, IProgress<ImportProgress>? progress = null, CancellationToken stop = default) =>
        Task.Run(() => RunAsync(table, file, by: null, seen: null, progress, stop), stop);

    /// <summary>Writes the good rows of a file that are new or changed.</summary>
    /// <param name="table">Which table it is.</param>
    /// <param name="file">Its bytes.</param>
    /// <param name="by">Who takes it, as the history names them.</param>
    /// <param name="seen">What the preview was compared with (<see cref="ImportReport.Seen"/>); null when there was none.</param>
    /// <param name="progress">Told how far it has come, on another thread.</param>
    /// <param name="stop">Ends it between two groups of writes.</param>
    public Task<Answer<ImportReport>> TakeAsync(CatalogueTable table, ReadOnlyMemory<byte> file, string by, long? seen, IProgress<ImportProgress>? progress = null, CancellationToken stop = default) =>
        Task.Run(() => RunAsync(table, file, by, seen, progress, stop), stop);

    private async Task<Answer<ImportReport>> RunAsync(CatalogueTable table, ReadOnlyMemory<byte> file, string? by, long? seen, IProgress<ImportProgress>? progress, CancellationToken stop)
    {
        var opened = ImportFile.Open(file, table, limits.Value);
        if (!opened.IsGiven) return Answer<ImportReport>.Refused(opened.Refusals);

        // One state of the catalogue for all rows: what is written after it is a conflict of versions, what between the preview and it is asked for.
        var catalogue = store.Catalogue;
        var beside = new Beside(catalogue, store.Outcomes, DateOnly.FromDateTime(clock.GetLocalNow().DateTime));
        IReadOnlySet<string> since = seen is { } preview ? await store.KeysChangedAfterAsync(preview) : ImmutableHashSet<string>.Empty;
        var tally = new Tally(opened.Value.RowCount, limits.Value.RowsTold, progress);
        var writing = Task.CompletedTask;
        try
        {
            foreach (var group in table.Judge(opened.Value.Rows(), beside, limits.Value.Cell).Select(Counted).Chunk(Group))
            {
                // While one group is written the next is read.
                await writing;
                stop.ThrowIfCancellationRequested();
                writing = by is null ? Noted(group) : WriteAsync([.. group.Select(judged => AgainstSince(judged, since))], by, tally);
            }

            await writing;
        }
        catch (StoreFailedException failed)
        {
            return new Refusal(Codes.StoreFailed, string.Empty, FormattableString.Invariant($"{failed.Message} Before that, {tally.Written} rows were written; take the file again afterwards."));
        }

        return tally.Report(table.Kind, by is not null, catalogue.Sequence, opened.Value.Notes);

        Judged Counted(Judged judged)
        {
            tally.Read(judged);
            return judged;
        }

        Task Noted(IEnumerable<Judged> group)
        {
            foreach (var judged in group) tally.Add(judged);
            return Task.CompletedTask;
        }
    }

    private async Task WriteAsync(IReadOnlyList<Judged> group, string by, Tally tally)
    {
        var writes = group.Select(judged => judged.Write).OfType<AskedWrite>().ToList();
        var results = writes.Count > 0 ? await store.WriteAllAsync(writes, by) : [];
        var next = results.GetEnumerator();
        tally.AddWritten([.. group.Select(judged => judged.Write is not null && next.MoveNext() && Conflict(next.Current) is { } conflict ? judged.InConflict(conflict) : judged)]);
    }

    /// <summary>A part that someone else wrote between the preview and now was not seen by whoever takes the file. Of stock the last word stands, and an outcome is never changed.</summary>
    private static Judged AgainstSince(Judged judged, IReadOnlySet<string> since) =>
        judged.Write is not null and not (AskedWrite.SetStock or AskedWrite.Record) && since.Contains(judged.Key) ? judged.InConflict(ChangedSince(judged.Rows[0].Number)) : judged;

    private static RowComplaint? Conflict(WriteResult result) => result switch
    {
        WriteResult.Written or WriteResult.Recorded => null,
        WriteResult.Conflict(var present) => ChangedSince(present.Number),
        WriteResult.AlreadyThere(var present) => ChangedSince(present.Number),
        _ => RowComplaint.Of(OutcomeRecords.RefusalOf(result)),
    };

    private static RowComplaint ChangedSince(string number) =>
        new(CatalogueTable.Number, Codes.ChangedSince, $"Someone else wrote {number} since it was read here, and it was left as it is now. Preview the file again, and take it if it still holds.");
}
