using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>Keeps the shelf in step with the store: a new one is put in place with every group of writes, before its writers are told.</summary>
internal sealed class Catalogues : IDisposable
{
    private readonly PartStore _store;
    private readonly ColumnFiles _files;
    private readonly Task _filing;
    private readonly Lock _publishing = new();
    private readonly HashSet<Family> _beingSorted = [];
    private volatile Shelf _shelf;
    private volatile bool _hasMissed;
    private readonly long? _began;
    private long? _filed;

    public Catalogues(PartStore store)
    {
        _store = store;
        _files = new(store.Folder);
        (_shelf, var isRead) = Shelf.Of(store.Catalogue, _files);
        var (shelf, digest) = (_shelf, store.Catalogue.Digest);
        _began = digest;
        if (isRead) _filed = digest;
        _filing = isRead ? Task.CompletedTask : Task.Run(() => Keep(shelf, digest));
        _store.Changed += Follow;
    }

    /// <summary>The catalogue as of the last write that was acknowledged. Take it once a request.</summary>
    public Shelf Shelf => _shelf;

    /// <summary>Whether the shelf shows all that the store has acknowledged.</summary>
    public bool IsInStep => !_hasMissed && _shelf.Revision >= _store.Revision;

    /// <summary>Leaves files of what was written, so that the next start need not make it anew.</summary>
    public void Dispose()
    {
        _filing.Wait();
        _store.FileAsync().GetAwaiter().GetResult();
        _store.Changed -= Follow;
        if (!IsInStep) return;
        if (_store.Catalogue.Digest != _filed) Keep(_shelf, _store.Catalogue.Digest);
        KeepMachines(_shelf, _store.Catalogue.Digest);
    }

    private void Keep(Shelf shelf, long? digest)
    {
        if (digest is not { } its) return;
        foreach (var family in Families.All) _files.Write(shelf.Of(family), its);
        _filed = digest;
    }

    /// <summary>What known machines say is read when a need first asks for it: only what was asked for is kept, and not where it lies there already.</summary>
    private void KeepMachines(Shelf shelf, long? digest)
    {
        if (digest is not { } its) return;
        foreach (var family in Families.All)
        {
            if (shelf.MachinesOf(family) is { AreMostlyRead: true } machines && !(machines.AreAsWritten && its == _began)) _files.Write(family, machines, its);
        }
    }

    private void Follow(object? sender, CatalogueChangedEventArgs change)
    {
        lock (_publishing)
        {
            try
            {
                _shelf = _shelf.With(change.After, change.Parts, change.Stock);
            }
            catch
            {
                // It would look as if it were in step again after the next group. Only another start makes it whole.
                _hasMissed = true;
                throw;
            }

            foreach (var family in Families.All)
            {
                if (_shelf.Of(family).WantsSorting && _beingSorted.Add(family)) _ = SortAsync(family);
            }
        }
    }

    /// <summary>Sorts in the background; what is written meanwhile stands in the tail.</summary>
    private async Task SortAsync(Family family)
    {
        var before = _shelf.Of(family);
        try
        {
            var sorted = await Task.Run(before.Sorted);
            lock (_publishing) _shelf = _shelf.WithSorted(family, sorted.CaughtUp(before, _shelf.Of(family)));
        }
        finally
        {
            lock (_publishing) _beingSorted.Remove(family);
        }
    }
}
