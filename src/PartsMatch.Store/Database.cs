using System.Collections.Immutable;
using LiteDB;
using LiteDB.Engine;
using PartsMatch.Store.Filed;

namespace PartsMatch.Store;

/// <summary>The LiteDB file: what is in it, and how a group of writes gets to the disk. One thread at a time, always.</summary>
internal sealed class Database : IDisposable
{
    private const string Product = "PartsMatch";

    private readonly Stream _data;
    private readonly Stream _log;
    private readonly LiteDatabase _lite;

    /// <remarks>Takes the streams over, also when the file turns out not to be one that LiteDB can open.</remarks>
    private Database(Stream data, Stream log, bool readOnly)
    {
        _data = data;
        _log = log;
        try
        {
            _lite = new LiteDatabase(new LiteEngine(new EngineSettings
            {
                DataStream = data,
                LogStream = log,
                ReadOnly = readOnly,
                // Keys compare byte by byte wherever the file goes. A file that is there already keeps what it was made with.
                Collation = data.Length == 0 ? Collation.Binary : null,
            }));
            Outcomes = new(_lite);
        }
        catch
        {
            data.Dispose();
            log.Dispose();
            throw;
        }
    }

    /// <summary>0 when the file is some other program's.</summary>
    public int FormatVersion =>
        Meta.FindById("format") is { } format && format["product"] == Product ? format["version"].AsInt32 : 0;

    public OutcomeCollection Outcomes { get; }

    private ILiteCollection<BsonDocument> Parts => _lite.GetCollection("parts");

    private ILiteCollection<BsonDocument> Stock => _lite.GetCollection("stock");

    private ILiteCollection<BsonDocument> Changes => _lite.GetCollection("changes");

    private ILiteCollection<BsonDocument> Keys => _lite.GetCollection("keys");

    private ILiteCollection<BsonDocument> Meta => _lite.GetCollection("meta");

    public static Database Make(Stream data, int formatVersion)
    {
        var made = new Database(data, new MemoryStream(), readOnly: false);
        // LiteDB must not checkpoint by itself: the log has to be on the disk first, or a power cut amid the copying spoils both files.
        made._lite.Pragma("CHECKPOINT", 0);
        made.Changes.EnsureIndex("key", "$.key");
        made.Upgrade(OutcomeCollection.Prepare, formatVersion);
        return made;
    }

    public static Database Open(Stream data, Stream log) => new(data, log, readOnly: false);

    public static Database OpenToRead(Stream data, Stream log) => new(data, log, readOnly: true);

    public long Revision => Meta.FindById("revision") is { } revision ? revision["value"].AsInt64 : 0;

    public ImmutableDictionary<string, AccessKey> KeysByLabel => Keys.FindAll().ToImmutableDictionary(document => document["_id"].AsString, Documents.Key);

    /// <summary>Reads parts, stock and history, every document there is, into a parts file: damage is to be found now, rather than under a write. Outcomes are not looked at: there may be far more of them, and no start waits for them.</summary>
    /// <exception cref="StoreFailedException">The parts file cannot be written.</exception>
    public void WriteParts(string path) => PartsFileFormat.Write(path, KeptParts(), () => (Revision, LastSequence()));

    public IReadOnlyList<PartChange> History(string key)
    {
        var history = new List<PartChange>();
        foreach (var document in Changes.Find(Query.EQ("key", key)).OrderBy(document => document["_id"].AsInt64))
            history.Add(Documents.Change(document, history.LastOrDefault()?.After));
        return history;
    }

    /// <summary>The keys of parts that were written after an entry of the record of changes.</summary>
    public IReadOnlySet<string> KeysChangedAfter(long sequence) =>
        Changes.Find(Query.GT("_id", sequence)).Select(document => document["key"].AsString).ToHashSet(StringComparer.Ordinal);

    /// <summary>All of the group or nothing of it; on the disk when this returns.</summary>
    /// <exception cref="StoreFailedException">The disk failed; whether the group was kept is known at the next opening.</exception>
    public void Write(WriteGroup group, long revision) => Together(() =>
    {
        Outcomes.Insert(group.Outcomes.Records);
        Parts.Upsert(group.Parts.Select(Documents.From));
        Changes.Insert(group.Changes.Select(Documents.From));
        Stock.Upsert(group.StockLines.Select(Documents.From));
        Keys.Insert(group.NewKeys.Select(Documents.From));
        Meta.Upsert(new BsonDocument { ["_id"] = "revision", ["value"] = revision });
    });

    public void Upgrade(Action<LiteDatabase> step, int toVersion) => Together(() =>
    {
        step(_lite);
        Meta.Upsert(new BsonDocument { ["_id"] = "format", ["product"] = Product, ["version"] = toVersion });
    });

    /// <summary>A commit is in the log, and that only in the system's cache. It is safe once the log is flushed, copied into the data file, and that is flushed.</summary>
    public void Settle()
    {
        _log.Flush();
        _lite.Checkpoint();
        // The log is cut to nothing, and that has to be on the disk too: LiteDB counts its transactions from 1 again, and
        // after a power cut pages of an old one must not be taken for the next one's.
        _log.Flush();
    }

    /// <summary>Between two groups the log is empty and the data file is whole: a plain copy is a store.</summary>
    public void CopyTo(Stream target)
    {
        _data.Position = 0;
        _data.CopyTo(target);
        target.Flush();
    }

    public void Dispose()
    {
        _lite.Dispose();
        _data.Dispose();
        _log.Dispose();
    }

    /// <summary>Each part with its stock line, in the order of keys.</summary>
    private IEnumerable<KeptPart> KeptParts()
    {
        using var lines = InOrder(Stock).GetEnumerator();
        var more = lines.MoveNext();
        foreach (var document in InOrder(Parts))
        {
            var key = document["_id"].AsString;
            while (more && string.CompareOrdinal(lines.Current["_id"].AsString, key) < 0) more = lines.MoveNext();
            yield return new(Documents.Part(document), more && lines.Current["_id"].AsString == key ? Documents.Stock(lines.Current) : null);
        }
    }

    private long LastSequence() => Changes.FindAll().Select(document => Documents.Change(document, before: null).Sequence).DefaultIfEmpty(0).Max();

    private static IEnumerable<BsonDocument> InOrder(ILiteCollection<BsonDocument> collection) => collection.Find(Query.All(Query.Ascending));

    private void Together(Action writes)
    {
        _lite.BeginTrans();
        try
        {
            writes();
        }
        catch (Exception e) when (e is not IOException)
        {
            _lite.Rollback();
            throw;
        }
        catch (IOException e)
        {
            // LiteDB has closed itself.
            throw Failed(e);
        }

        try
        {
            _lite.Commit();
            Settle();
        }
        catch (Exception e)
        {
            // From here on nobody can say how far it came; only opening the files again can.
            throw Failed(e);
        }
    }

    private static StoreFailedException Failed(Exception cause) => new(
        "The disk failed under a write, and nothing more is written. What was acknowledged before is safe; what was under way may have been kept or not, which the next start shows. Make room or mend the disk, then start PartsMatch again.",
        cause);
}
