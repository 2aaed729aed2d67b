using LiteDB;

namespace PartsMatch.Store;

/// <summary>The outcomes in the LiteDB file. They are read by index, some at a time, and never all held.</summary>
/// <remarks>Values are parameters of a query, never part of its text: LiteDB compiles each text it has not met, which takes 2 ms, and keeps it for good.</remarks>
internal sealed class OutcomeCollection(LiteDatabase lite)
{
    private ILiteCollection<BsonDocument> Records => lite.GetCollection("outcomes");

    /// <summary>By the id of what was corrected, the id of what corrects it.</summary>
    private ILiteCollection<BsonDocument> Corrections => lite.GetCollection("corrections");

    public long LastSequence => Records.Query().OrderByDescending("_id").Limit(1).FirstOrDefault() is { } last ? last["_id"].AsInt64 : 0;

    public static void Prepare(LiteDatabase lite)
    {
        var records = lite.GetCollection("outcomes");
        records.EnsureIndex("id", "$.id", unique: true);
        records.EnsureIndex("ofKind", "$.ofKind");
        records.EnsureIndex("ofPart", "$.ofPart");
    }

    public StoredOutcome? Find(string id) => Records.FindOne(BsonExpression.Create("$.id = @0", id)) is { } document ? Documents.Outcome(document, CorrectedBy(id)) : null;

    public string? CorrectedBy(string id) => Corrections.FindById(id)?["by"].AsString;

    /// <summary>Who corrects whom, all of it.</summary>
    public IReadOnlyDictionary<string, string> AllCorrections() => Corrections.FindAll().ToDictionary(document => document["_id"].AsString, document => document["by"].AsString, StringComparer.Ordinal);

    /// <summary>Records of a range behind one of them, the oldest first.</summary>
    public List<BsonDocument> Behind(OutcomeRange range, long sequence, int most) => Between(range, sequence + 1, long.MaxValue, Query.Ascending, most);

    /// <summary>Records of a range before one of them, the newest first.</summary>
    public List<BsonDocument> Before(OutcomeRange range, long sequence, int most) => Between(range, 0, sequence - 1, Query.Descending, most);

    public void Insert(IReadOnlyCollection<StoredOutcome> records)
    {
        if (records.Count == 0) return;
        Records.Insert(records.Select(Documents.From));
        Corrections.Insert(records.Where(record => record.Said.Corrects.Length > 0).Select(record => new BsonDocument { ["_id"] = record.Said.Corrects, ["by"] = record.Said.Id }));
    }

    private List<BsonDocument> Between(OutcomeRange range, long from, long to, int order, int most) => Records.Query()
        .Where(range.Key is { } key
            ? BsonExpression.Create($"$.{range.Field} BETWEEN @0 AND @1", OutcomeRange.Place(key, from), OutcomeRange.Place(key, to))
            : BsonExpression.Create($"$.{range.Field} BETWEEN @0 AND @1", from, to))
        .OrderBy(range.Field, order)
        .Limit(most)
        .ToList();
}
