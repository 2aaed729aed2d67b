using System.Globalization;
using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Counter;
using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>Which part was replaced by which, by whose word and since when. A file says all there is of a number that it names.</summary>
internal sealed class SupersessionTable : CatalogueTable
{
    private const string SupersededBy = "supersededBy";
    private const string SaidBy = "saidBy";
    private const string On = "on";

    public override string Kind => "supersessions";

    public override string FileName => "supersessions.csv";

    public override IReadOnlyList<string> Columns { get; } = [Number, SupersededBy, SaidBy, On];

    public override IReadOnlyList<string> Needed => Columns;

    public override bool IsOncePerNumber => false;

    public override IEnumerable<IEnumerable<string>> Rows(PartStore store) =>
        store.Parts.SelectMany(part => part.SupersededBy.Select(by => (IEnumerable<string>)[part.Number, .. Texts(by)]));

    public override IEnumerable<Judged> Judge(IEnumerable<SurveyedRow> rows, Beside beside, int longestCell) =>
        rows.Select(surveyed => surveyed.Row).GroupBy(row => PartNumber.Key(row[Number]), StringComparer.Ordinal).Select(group => Judge(group.Key, [.. group], beside.Catalogue));

    public override bool IsWhole(CsvRow row) => PartNumber.Complaint(row[Number].Trim()) is null && Read(row).Wrong.Count == 0;

    /// <summary>What a row says, with all that is wrong with it.</summary>
    public static (Supersession By, IReadOnlyList<RowComplaint> Wrong) Read(CsvRow row)
    {
        var by = row[SupersededBy].Trim();
        var wrong = new List<RowComplaint>();
        wrong.AddRange(PartWords.Number(by, SupersededBy).Concat(PartWords.Words(row[SaidBy], SaidBy)).Select(RowComplaint.Of));
        if (!DateOnly.TryParseExact(row[On].Trim(), "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var on)) wrong.Add(new(On, Codes.Unreadable, "A day is written as 2021-04-30."));
        return (new(by, row[SaidBy].Trim(), on), wrong);
    }

    private static Judged Judge(string key, IReadOnlyList<CsvRow> rows, CatalogueSnapshot catalogue)
    {
        var number = rows[0][Number].Trim();
        var present = catalogue.Find(number);
        var isWhole = rows.All(row => row.Wrong is null);
        if (isWhole && present is not null && rows.Select(Said).SequenceEqual(present.SupersededBy.Select(by => string.Join('\n', Texts(by))), StringComparer.Ordinal))
            return new(key, [.. rows.Select(row => new RowTold(row.Number, number, RowState.Same, [], []))], Write: null);

        var read = rows.Select(row => Read(row, number, present)).ToList();
        if (read.Any(one => one.Wrong.Count > 0)) return new(key, [.. rows.Zip(read, (row, one) => new RowTold(row.Number, UnseenSigns.Shown(number), RowState.Bad, [], one.Wrong.Count > 0 ? one.Wrong : [TakenWhole]))], Write: null);
        List<Supersession> said = [.. read.Select(one => one.By)];
        if (said.SequenceEqual(present!.SupersededBy)) return new(key, [.. rows.Select(row => new RowTold(row.Number, number, RowState.Same, [], []))], Write: null);

        var state = present.SupersededBy.Count == 0 ? RowState.New : RowState.Changed;
        FieldChange[] changes = state == RowState.New ? [] : [new(SupersededBy, Words(present.SupersededBy), Words(said))];
        var draft = new PartDraft(present.Number, present.Kind, present.Maker, present.Title, present.Status, present.Spec, said);
        return new(key, [.. rows.Select((row, at) => new RowTold(row.Number, number, state, at == 0 ? changes : [], []))], new AskedWrite.Change(present.Version, draft));
    }

    private static (Supersession By, IReadOnlyList<RowComplaint> Wrong) Read(CsvRow row, string number, StoredPart? present)
    {
        if (row.Wrong is { } malformed) return (default!, [malformed]);
        var (by, wrong) = Read(row);
        return (by, present is null ? [new(Number, Codes.PartNotFound, Needs.NotFound(number, Number).Message), .. wrong] : wrong);
    }

    private static RowComplaint TakenWhole { get; } = new(string.Empty, Codes.RowMalformed, "Another row of this number is bad. What superseded a part is taken whole or not at all.");

    private static string Said(CsvRow row) => string.Join('\n', row[SupersededBy], row[SaidBy], row[On]);

    private static string[] Texts(Supersession by) => [by.Number, by.SaidBy, by.On.ToString("O", CultureInfo.InvariantCulture)];

    private static string Words(IEnumerable<Supersession> all) => string.Join("; ", all.Select(by => string.Join(", ", Texts(by))));
}
