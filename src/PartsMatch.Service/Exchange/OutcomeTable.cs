using System.Globalization;
using PartsMatch.Fit;
using PartsMatch.Service.Counter;
using PartsMatch.Store;
using NamedText = PartsMatch.Fit.Judging.NamedText;

namespace PartsMatch.Service.Exchange;

/// <summary>What became of parts that were put in, of all kinds, in the order in which it was recorded. Rows are only ever added.</summary>
internal sealed class OutcomeTable : CatalogueTable
{
    /// <summary>Rows that are looked up in the store at once.</summary>
    private const int AtOnce = 1_000;

    public override string Kind => "outcomes";

    public override string FileName => "outcomes.csv";

    public override IReadOnlyList<string> Columns { get; } =
    [
        OutcomeReading.Id,
        OutcomeReading.Kind,
        OutcomeReading.On,
        OutcomeReading.Place,
        OutcomeReading.OldPart,
        OutcomeReading.Plate,
        OutcomeReading.Site,
        OutcomeReading.Part,
        OutcomeReading.Result,
        OutcomeReading.Reason,
        OutcomeReading.Note,
        OutcomeReading.Corrects,
    ];

    public override IReadOnlyList<string> Needed => Columns;

    public override string KeyColumn => OutcomeReading.Id;

    public override string KeyOf(CsvRow row) => row[OutcomeReading.Id].Trim();

    public override IEnumerable<IEnumerable<string>> Rows(PartStore store) => store.Outcomes.All(OutcomeRange.All).Select(outcome => Texts(outcome.Said));

    public override bool IsWhole(CsvRow row) => OutcomeReading.IsId(row[OutcomeReading.Id].Trim()) && Families.Find(row[OutcomeReading.Kind].Trim()) is not null && OutcomeWords.ResultOf(row[OutcomeReading.Result]) is not null;

    public override IEnumerable<Judged> Judge(IEnumerable<SurveyedRow> rows, Beside beside, int longestCell)
    {
        var (reading, before) = (new OutcomeReading(beside.Catalogue.Find, beside.Today), new OutcomesSoFar());
        foreach (var some in rows.Chunk(AtOnce))
        {
            var stored = beside.Outcomes.FindAsync([.. some.SelectMany(one => (string[])[KeyOf(one.Row), one.Row[OutcomeReading.Corrects].Trim()])]).GetAwaiter().GetResult();
            foreach (var one in some) yield return Judge(one, reading, stored, before, longestCell);
        }
    }

    /// <summary>The outcome that a row tells, or all that is wrong with it.</summary>
    public static Answer<OutcomeDraft> Read(CsvRow row, OutcomeReading reading)
    {
        var (plate, site) = (FieldsCell.Read(row[OutcomeReading.Plate]), FieldsCell.Read(row[OutcomeReading.Site]));
        List<Refusal> refusals = [.. Unreadable(plate, OutcomeReading.Plate), .. Unreadable(site, OutcomeReading.Site)];
        var read = reading.Read(new(
            row[OutcomeReading.Id].Trim(),
            row[OutcomeReading.Kind],
            row[OutcomeReading.On],
            row[OutcomeReading.Place],
            row[OutcomeReading.OldPart],
            plate ?? [],
            site ?? [],
            row[OutcomeReading.Part],
            row[OutcomeReading.Result],
            row[OutcomeReading.Reason],
            row[OutcomeReading.Note],
            row[OutcomeReading.Corrects].Trim()));
        return refusals.Count == 0 ? read : Answer<OutcomeDraft>.Refused([.. read.Refusals, .. refusals]);
    }

    /// <summary>What is wrong with a row, by column: a field's place is the cell that it stands in.</summary>
    public static IReadOnlyList<RowComplaint> Complaints(IEnumerable<Refusal> refusals) => [.. refusals.Select(refusal => RowComplaint.Of(refusal with { At = refusal.At.Split('.')[0] }))];

    private Judged Judge(SurveyedRow surveyed, OutcomeReading reading, IReadOnlyDictionary<string, StoredOutcome> stored, OutcomesSoFar before, int longestCell)
    {
        var row = surveyed.Row;
        var id = row[OutcomeReading.Id].Trim();
        if (row.Wrong is { } malformed) return Judged.Bad(row, id, [malformed]);
        var present = stored.GetValueOrDefault(id);
        if (surveyed.Twice is null && present is not null && Columns.Zip(Texts(present.Said)).All(pair => row[pair.First].Equals(pair.Second, StringComparison.Ordinal))) return Judged.Same(row, id);
        if (row.Columns.Keys.FirstOrDefault(column => row[column].Length > longestCell) is { } tooLong) return Judged.Bad(row, id, [new(tooLong, Codes.TooLong, FormattableString.Invariant($"A cell has at most {longestCell} characters; this one has {row[tooLong].Length}."))]);

        var read = Read(row, reading);
        List<RowComplaint> wrong = [.. surveyed.Twice is { } twice ? [twice] : (RowComplaint[])[], .. Complaints(read.Refusals)];
        if (wrong.Count > 0) return Judged.Bad(row, id, wrong);
        var draft = read.Value!;
        if (present is not null) return present.Said.SaysAsMuchAs(draft) ? Judged.Same(row, id) : Judged.Bad(row, id, Complaints([OutcomeRecords.IdTaken(present)]));
        return before.Add(draft, stored) is { } refusal ? Judged.Bad(row, id, Complaints([refusal])) : Judged.Of(row, id, RowState.New, [], new AskedWrite.Record(draft));
    }

    private static IEnumerable<Refusal> Unreadable(IReadOnlyList<NamedText>? texts, string column) => texts is null ? [new(Codes.Unreadable, column, FieldsCell.Expected)] : [];

    private static string[] Texts(OutcomeDraft said) =>
    [
        said.Id,
        said.Kind,
        said.On.ToString("O", CultureInfo.InvariantCulture),
        said.Place,
        said.OldPart,
        FieldsCell.Write(said.Plate),
        FieldsCell.Write(said.Site),
        said.Part,
        said.Result,
        said.Reason,
        said.Note,
        said.Corrects,
    ];
}
