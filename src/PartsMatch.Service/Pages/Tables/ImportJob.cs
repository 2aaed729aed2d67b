using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange;

namespace PartsMatch.Service.Pages.Tables;

/// <summary>A file that someone sent: previewed, and taken when they ask for it. It goes on while nobody looks.</summary>
internal sealed class ImportJob : IProgress<ImportProgress>
{
    private readonly CatalogueImport _import;
    private readonly ReadOnlyMemory<byte> _file;
    private readonly Lock _turn = new();
    private Task<Answer<ImportReport>> _running;
    private ImportProgress _come;

    public ImportJob(CatalogueImport import, CatalogueTable table, ReadOnlyMemory<byte> file, string by, DateTimeOffset at)
    {
        (_import, Table, _file, By, At) = (import, table, file, by, at);
        _running = import.PreviewAsync(table, file, this);
    }

    public CatalogueTable Table { get; }

    /// <summary>The label of the key of whoever sent it: nobody else sees it.</summary>
    public string By { get; }

    public DateTimeOffset At { get; }

    public int Bytes => _file.Length;

    /// <summary>How far it has come; null once it is done.</summary>
    public ImportProgress? Come => _running.IsCompleted ? null : _come;

    /// <summary>What came out of it; null while it runs.</summary>
    public Task<Answer<ImportReport>>? Done => _running.IsCompleted ? _running : null;

    public bool IsTaking { get; private set; }

    public void Report(ImportProgress value) => _come = value;

    /// <summary>Begins to write the good rows, once, when the preview is there.</summary>
    public void Take()
    {
        lock (_turn)
        {
            if (IsTaking || !_running.IsCompletedSuccessfully || _running.Result.Value is not { } preview) return;
            (IsTaking, _come) = (true, default);
            _running = _import.TakeAsync(Table, _file, By, preview.Seen, this);
        }
    }
}
