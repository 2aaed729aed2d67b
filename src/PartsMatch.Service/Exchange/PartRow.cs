using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Store;
using NamedText = PartsMatch.Store.NamedText;

namespace PartsMatch.Service.Exchange;

/// <summary>One part of a table beside the catalogue's.</summary>
internal sealed class PartRow
{
    private readonly Family _family;
    private readonly CsvRow _row;
    private readonly SpecCells _cells;
    private readonly StoredPart? _present;
    private readonly IReadOnlyDictionary<string, string> _spec;
    private readonly string _number;
    private readonly List<RowComplaint> _wrong = [];
    private readonly List<FieldChange> _changes = [];

    public PartRow(Family family, SurveyedRow surveyed, CatalogueSnapshot catalogue, SpecCells cells)
    {
        (_family, _row, _cells) = (family, surveyed.Row, cells);
        _number = _row[CatalogueTable.Number].Trim();
        _present = catalogue.Find(_number);
        _spec = _present is null ? new Dictionary<string, string>() : PartTable.TextsOf(_present);
        if (surveyed.Twice is { } twice) _wrong.Add(twice);
    }

    public Judged Judge()
    {
        if (_row.Wrong is { } malformed) return Judged.Bad(_row, _number, [malformed]);
        JudgeNumber();
        var draft = new PartDraft(
            _number,
            _family.Kind,
            Wording(PartTable.Maker, _present?.Maker),
            Wording(PartTable.Title, _present?.Title),
            StatusSaid(),
            [.. _family.SpecShape.Fields.Select(Cell).OfType<NamedText>()],
            _present?.SupersededBy ?? []);
        if (_wrong.Count > 0) return Judged.Bad(_row, _number, _wrong);
        if (_present is null) return Judged.Of(_row, _number, RowState.New, [], new AskedWrite.Add(draft));
        return _changes.Count == 0
            ? Judged.Same(_row, _number)
            : Judged.Of(_row, _number, RowState.Changed, _changes, new AskedWrite.Change(_present.Version, draft));
    }

    private void JudgeNumber()
    {
        if (_present is null)
        {
            _wrong.AddRange(PartWords.Number(_number, CatalogueTable.Number).Select(RowComplaint.Of));
        }
        else if (_present.Kind != _family.Kind)
        {
            _wrong.Add(new(CatalogueTable.Number, Codes.KindMismatch, $"{_present.Number} is a {Families.Find(_present.Kind)?.Title ?? _present.Kind} in the catalogue and cannot become a {_family.Title}."));
        }
        else if (!_present.Number.Trim().Equals(_number, StringComparison.Ordinal))
        {
            _wrong.AddRange(PartWords.Number(_number, CatalogueTable.Number).Select(RowComplaint.Of));
            _changes.Add(new(CatalogueTable.Number, _present.Number, _number));
        }
    }

    private string Wording(string column, string? present)
    {
        var said = _row.Has(column) ? _row[column] : present ?? string.Empty;
        if (present is not null && said.Trim().Equals(present.Trim(), StringComparison.Ordinal)) return present;
        _wrong.AddRange(PartWords.Words(said, column).Select(RowComplaint.Of));
        if (present is not null) _changes.Add(new(column, present, said.Trim()));
        return said.Trim();
    }

    private PartStatus StatusSaid()
    {
        if (!_row.Has(PartTable.Status) && _present is not null) return _present.Status;
        var text = _row[PartTable.Status];
        if (!PartTable.TryRead(text, out var status)) _wrong.Add(new(PartTable.Status, string.IsNullOrWhiteSpace(text) ? Codes.Empty : Codes.Unreadable, PartTable.StatusExpected));
        else if (_present is not null && _present.Status != status) _changes.Add(new(PartTable.Status, PartTable.TextOf(_present.Status), PartTable.TextOf(status)));
        return status;
    }

    /// <summary>What stays keeps its spelling: only another value is a change.</summary>
    private NamedText? Cell(Field field)
    {
        var stored = _spec.GetValueOrDefault(field.Name, string.Empty);
        var kept = stored.Length == 0 ? null : new NamedText(field.Name, stored);
        if (!_row.Has(field.Name)) return kept;
        var cell = _row[field.Name];
        if (_present is not null && cell.Trim().Equals(stored.Trim(), StringComparison.Ordinal)) return kept;
        var (read, wrong) = string.IsNullOrWhiteSpace(cell) ? (null, null) : _cells.Read(field, cell);
        if (wrong is not null) _wrong.Add(wrong);
        if (_present is null || wrong is not null) return read;
        if (read is not null && stored.Length > 0 && read == _cells.Read(field, stored).Read) return kept;
        _changes.Add(new(field.Name, stored, read?.Text ?? string.Empty));
        return read;
    }
}
