using LiteDB;
using PartsMatch.Store.Filed;

namespace PartsMatch.Store;

/// <summary>Parts, stock, keys and outcomes in one file that one process owns. Reads come from what is derived from it and from memory; a write completes once it is on the disk.</summary>
public sealed class PartStore : IDisposable
{
    private readonly StoreFolder _folder;
    private readonly FolderHold _hold;
    private readonly Database _database;
    private readonly Writer _writer;
    private readonly SemaphoreSlim _filing = new(1);
    private readonly int _fewUnfiled;
    private volatile bool _isClosing;
    private volatile int _unfiledBefore;

    private PartStore(StoreOptions options, StoreFolder folder, FolderHold hold, Database database, CatalogueSnapshot catalogue, TimeProvider clock)
    {
        _fewUnfiled = options.FewUnfiled;
        _folder = folder;
        _hold = hold;
        _database = database;
        _writer = new Writer(database, catalogue, clock, Follow);
        Outcomes = new(_writer);
    }

    /// <summary>After a group of writes is on the disk and before its writers are told, so that who has written can rely on what follows the catalogue.</summary>
    /// <remarks>Called on the writer's thread: be quick, and do not wait for a write there.</remarks>
    public event EventHandler<CatalogueChangedEventArgs>? Changed;

    /// <summary>The folder that this process holds: what else is derived from the store may lie there.</summary>
    public string Folder => _folder.Path;

    /// <summary>Parts, stock and revision that belong together.</summary>
    public CatalogueSnapshot Catalogue => _writer.Catalogue;

    /// <summary>Whether the disk failed under a write: nothing more is written, and whether that write was kept is known at the next opening.</summary>
    public bool HasFailed => _writer.HasFailed;

    /// <summary>What became of parts that were put in. None of it is read before it is asked for.</summary>
    public StoredOutcomes Outcomes { get; }

    public long Revision => Catalogue.Revision;

    public IEnumerable<StoredPart> Parts => Catalogue.Parts;

    public IEnumerable<StockLine> AllStock => Catalogue.AllStock;

    public IReadOnlyCollection<AccessKey> Keys => Catalogue.Keys;

    /// <summary>Opens the folder's store, or makes it: <paramref name="seed"/> is asked for only then, and without it the store begins empty.</summary>
    /// <exception cref="StoreRefusedException">The folder is in use, or what is in it cannot be used. Its message is for a person.</exception>
    public static PartStore Open(StoreOptions options, TimeProvider clock, Func<SeedData>? seed = null) =>
        Open(options, clock, seed, Opening.Upgrades);

    internal static PartStore Open(StoreOptions options, TimeProvider clock, Func<SeedData>? seed, IReadOnlyList<Action<LiteDatabase>> upgrades)
    {
        var folder = new StoreFolder(options.Folder);
        var hold = FolderHold.Take(folder);
        try
        {
            var (database, catalogue) = Opening.Open(folder, clock, seed, upgrades);
            return new PartStore(options, folder, hold, database, catalogue, clock);
        }
        catch
        {
            hold.Dispose();
            throw;
        }
    }

    /// <summary>Who has the folder open now, or null.</summary>
    public static RunningStore? WhoHolds(string folder) => FolderHold.WhoHolds(new StoreFolder(folder));

    /// <summary>Lets a command that is started meanwhile find the running service.</summary>
    public void AnnounceAddress(string url) => _hold.Announce(url);

    public StoredPart? Find(string number) => Catalogue.Find(number);

    /// <summary>Null when nothing was ever said about the part's price and quantity.</summary>
    public StockLine? Stock(string number) => Catalogue.Stock(number);

    /// <summary>What was done to a part, the oldest first; empty when there is none of that number.</summary>
    public Task<IReadOnlyList<PartChange>> HistoryAsync(string number) => _writer.Between(database => database.History(PartNumber.Key(number)));

    public Task<WriteResult> AddAsync(PartDraft draft, string by) => _writer.Write(group => group.Add(draft, by));

    /// <summary>Replaces the whole part, spec and all, if it is still as <paramref name="versionRead"/> was. A retired part can come back this way.</summary>
    public Task<WriteResult> ChangeAsync(string number, int versionRead, PartDraft draft, string by) =>
        _writer.Write(group => group.Change(number, versionRead, draft, by));

    /// <summary>Takes the part out of the catalogue: it still resolves, but is never offered.</summary>
    public Task<WriteResult> RetireAsync(string number, int versionRead, string by) =>
        _writer.Write(group => group.Retire(number, versionRead, by));

    /// <summary>The last line said stands.</summary>
    public Task<WriteResult> SetStockAsync(StockLine line) => _writer.Write(group => group.SetStock(line));

    /// <summary>Many writes that reach the disk together, judged one after another; after a crash all of them are there or none.</summary>
    /// <remarks>Everyone else's writes wait meanwhile, so hand over a few thousand at a time.</remarks>
    public Task<IReadOnlyList<WriteResult>> WriteAllAsync(IReadOnlyCollection<AskedWrite> writes, string by) =>
        _writer.Write<IReadOnlyList<WriteResult>>(group => [.. writes.Select(write => write.Into(group, by))]);

    /// <summary>The keys of the parts that were written after an entry of the record of changes, whoever wrote them.</summary>
    /// <param name="sequence">The entry's number, as <see cref="CatalogueSnapshot.Sequence"/> tells it.</param>
    public Task<IReadOnlySet<string>> KeysChangedAfterAsync(long sequence) => _writer.Between(database => database.KeysChangedAfter(sequence));

    /// <summary>False when the label is taken.</summary>
    public Task<bool> AddKeyAsync(AccessKey key) => _writer.Write(group => group.AddKey(key));

    /// <summary>A copy that opens as a store when it lies alone in a folder under the data file's name. Writes wait meanwhile; nothing is overwritten.</summary>
    /// <exception cref="IOException">The file is there already, or cannot be written.</exception>
    public Task BackUpAsync(string path) => _writer.Between(database =>
    {
        using var copy = new StoreFile(path, FileMode.CreateNew);
        try
        {
            database.CopyTo(copy);
            return path;
        }
        catch
        {
            // Half a back-up is worse than none.
            File.Delete(path);
            throw;
        }
    });

    /// <summary>Brings the parts file up to date, so that the next start need not: all that is written before this is called is in it afterwards, unless the disk is full.</summary>
    public async Task FileAsync()
    {
        await _filing.WaitAsync().ConfigureAwait(false);
        try
        {
            if (Catalogue.Unfiled > 0) await FileAsync(Catalogue).ConfigureAwait(false);
        }
        catch (Exception e) when (e is StoreFailedException or IOException)
        {
            // What is not in the file stays in memory, and is in the data file all the same. The disk may be short of room: not at every write again.
            _unfiledBefore = Catalogue.Unfiled;
        }
        finally
        {
            _filing.Release();
        }
    }

    public void Dispose()
    {
        _isClosing = true;
        try
        {
            FileAsync().GetAwaiter().GetResult();
        }
        finally
        {
            // For good: no filing may go on in a folder that is another's.
            _filing.Wait();
            Close();
        }
    }

    private void Close()
    {
        _writer.Dispose();
        _database.Dispose();
        Catalogue.Close();
        if (!_writer.HasFailed && Catalogue.Digest is { } digest) CleanEnd.Leave(_folder, digest);
        // A clean end leaves no log. After a failed disk, it may hold what the next opening needs.
        if (File.Exists(_folder.Log) && new FileInfo(_folder.Log).Length == 0)
            File.Delete(_folder.Log);
        _hold.Dispose();
        _filing.Dispose();
    }

    private void Follow(WriteGroup group, CatalogueSnapshot after)
    {
        Tell(new(after, group.Parts, group.StockLines));
        // In the background; one that is under way takes a part of it, and a later group asks again.
        if (WantsFiling(after) && !_isClosing && _filing.CurrentCount > 0) _ = FileAsync();
    }

    /// <summary>So much that it would better be in a file: it takes memory, and the end and the next start have to wait for it. Where there was no room, twice as much has to come first.</summary>
    private bool WantsFiling(CatalogueSnapshot catalogue) => catalogue.Unfiled > Math.Max(Math.Max(_fewUnfiled, catalogue.Filed / 4), 2 * _unfiledBefore);

    private CatalogueChangedEventArgs Tell(CatalogueChangedEventArgs change)
    {
        Changed?.Invoke(this, change);
        return change;
    }

    private async Task FileAsync(CatalogueSnapshot catalogue)
    {
        await Task.Run(() => PartsFileFormat.Write(_folder.Parts, catalogue.Kept(), () => (catalogue.Revision, catalogue.Sequence))).ConfigureAwait(false);
        var file = PartsFile.Open(_folder.Parts) ?? throw new StoreFailedException($"{_folder.Parts} was written, and cannot be read again.", new IOException());
        await _writer.Replace(now => now.On(file, catalogue)).ConfigureAwait(false);
        _unfiledBefore = 0;
        if (_isClosing) return;
        // Who keeps the catalogue of the last change keeps in memory what is in the file now.
        await _writer.Between(_ => Tell(new(Catalogue, [], []))).ConfigureAwait(false);
    }
}
