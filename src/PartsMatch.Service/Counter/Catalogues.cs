using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>Keeps the shelf in step with the store: a new one is put in place with every group of writes, before its writers are told.</summary>
internal sealed class Catalogues : IDisposable
{
    private readonly PartStore _store;
    private volatile Shelf _shelf;

    public Catalogues(PartStore store)
    {
        _store = store;
        _shelf = Shelf.Of(store.Catalogue);
        _store.Changed += Follow;
    }

    /// <summary>The catalogue as of the last write that was acknowledged. Take it once a request.</summary>
    public Shelf Shelf => _shelf;

    /// <summary>Whether the shelf shows all that the store has acknowledged.</summary>
    public bool IsInStep => _shelf.Revision >= _store.Revision;

    public void Dispose() => _store.Changed -= Follow;

    private void Follow(object? sender, CatalogueChangedEventArgs change) => _shelf = _shelf.With(change.After, change.Parts, change.Stock);
}
