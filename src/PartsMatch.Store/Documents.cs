using System.Globalization;
using LiteDB;

namespace PartsMatch.Store;

/// <summary>Records as LiteDB documents and back. By hand, because LiteDB's own mapper trims texts, makes empty ones null and rounds times.</summary>
internal static class Documents
{
    public static BsonDocument From(StoredPart part) => new()
    {
        ["_id"] = PartNumber.Key(part.Number),
        ["number"] = part.Number,
        ["kind"] = part.Kind,
        ["maker"] = part.Maker,
        ["title"] = part.Title,
        ["status"] = part.Status.ToString(),
        ["version"] = part.Version,
        // Pairs rather than fields: the order is kept, and a name may be any text.
        ["spec"] = From(part.Spec),
        ["supersededBy"] = new BsonArray(part.SupersededBy.Select(by => new BsonArray(by.Number, by.SaidBy, by.On.ToString("O", CultureInfo.InvariantCulture)))),
    };

    public static StoredPart Part(BsonDocument document) => new(
        document["number"].AsString,
        document["kind"].AsString,
        document["maker"].AsString,
        document["title"].AsString,
        Enum.Parse<PartStatus>(document["status"].AsString),
        document["version"].AsInt32,
        Texts(document["spec"]),
        [.. document["supersededBy"].AsArray.Select(by => new Supersession(
            by[0].AsString, by[1].AsString, DateOnly.ParseExact(by[2].AsString, "O", CultureInfo.InvariantCulture)))]);

    /// <summary>An entry holds the part as it was left; as it was before is the entry before.</summary>
    public static BsonDocument From(PartChange change) => new()
    {
        ["_id"] = change.Sequence,
        ["key"] = PartNumber.Key(change.Number),
        ["at"] = From(change.At),
        ["by"] = change.By,
        ["what"] = change.What.ToString(),
        ["after"] = From(change.After),
    };

    public static PartChange Change(BsonDocument document, StoredPart? before) => new(
        document["_id"].AsInt64,
        Time(document["at"]),
        document["by"].AsString,
        Enum.Parse<PartChangeKind>(document["what"].AsString),
        before,
        Part(document["after"].AsDocument));

    public static BsonDocument From(StockLine line) => new()
    {
        ["_id"] = PartNumber.Key(line.Number),
        ["number"] = line.Number,
        ["price"] = line.Price is { } price ? price : BsonValue.Null,
        ["currency"] = line.Currency,
        ["onHand"] = line.OnHand is { } onHand ? onHand : BsonValue.Null,
    };

    public static StockLine Stock(BsonDocument document) => new(
        document["number"].AsString,
        document["price"].IsNull ? null : document["price"].AsDecimal,
        document["currency"].AsString,
        document["onHand"].IsNull ? null : document["onHand"].AsInt32);

    public static BsonDocument From(StoredOutcome outcome) => new()
    {
        ["_id"] = outcome.Sequence,
        ["id"] = outcome.Said.Id,
        ["ofKind"] = OutcomeRange.Place(outcome.Said.Kind, outcome.Sequence),
        ["ofPart"] = OutcomeRange.Place(PartNumber.Key(outcome.Said.Part), outcome.Sequence),
        ["at"] = From(outcome.At),
        ["by"] = outcome.By,
        ["kind"] = outcome.Said.Kind,
        ["on"] = outcome.Said.On.ToString("O", CultureInfo.InvariantCulture),
        ["place"] = outcome.Said.Place,
        ["oldPart"] = outcome.Said.OldPart,
        ["plate"] = From(outcome.Said.Plate),
        ["site"] = From(outcome.Said.Site),
        ["part"] = outcome.Said.Part,
        ["result"] = outcome.Said.Result,
        ["reason"] = outcome.Said.Reason,
        ["note"] = outcome.Said.Note,
        ["corrects"] = outcome.Said.Corrects,
    };

    public static StoredOutcome Outcome(BsonDocument document, string? correctedBy) => new(
        document["_id"].AsInt64,
        Time(document["at"]),
        document["by"].AsString,
        new(
            document["id"].AsString,
            document["kind"].AsString,
            DateOnly.ParseExact(document["on"].AsString, "O", CultureInfo.InvariantCulture),
            document["place"].AsString,
            document["oldPart"].AsString,
            Texts(document["plate"]),
            Texts(document["site"]),
            document["part"].AsString,
            document["result"].AsString,
            document["reason"].AsString,
            document["note"].AsString,
            document["corrects"].AsString),
        correctedBy);

    public static BsonDocument From(AccessKey key) => new()
    {
        ["_id"] = key.Label,
        ["hash"] = key.Hash,
        ["salt"] = key.Salt,
        ["madeAt"] = From(key.MadeAt),
    };

    public static AccessKey Key(BsonDocument document) => new(
        document["_id"].AsString, document["hash"].AsString, document["salt"].IsNull ? null : document["salt"].AsString, Time(document["madeAt"]));

    private static BsonArray From(IEnumerable<NamedText> texts) => new(texts.Select(text => new BsonArray(text.Name, text.Text)));

    private static IReadOnlyList<NamedText> Texts(BsonValue pairs) => [.. pairs.AsArray.Select(pair => new NamedText(pair[0].AsString, pair[1].AsString))];

    private static string From(DateTimeOffset time) => time.ToString("O", CultureInfo.InvariantCulture);

    private static DateTimeOffset Time(BsonValue text) => DateTimeOffset.ParseExact(text.AsString, "O", CultureInfo.InvariantCulture);
}
