using System.Text;

namespace PartsMatch.Service.Exchange;

/// <summary>Reads a table's bytes row by row. A quotation mark that is never closed spoils the row it stands in, and not the rows behind it.</summary>
/// <remarks>
/// A cell may hold ends of lines, so where an open one was to end is a guess. It is taken at its word only where it makes a row of the right number
/// of cells and swallows no line that is a row of the table by itself; else its line is the bad row, and reading goes on at the next line.
/// CsvHelper reads on to the next quotation mark instead, however many rows are between, and cannot be set back.
/// </remarks>
internal sealed class CsvReader
{
    private readonly ReadOnlyMemory<byte> _file;
    private readonly Func<CsvRow, bool> _isWhole;
    private readonly Dictionary<string, int> _places = new(StringComparer.OrdinalIgnoreCase);
    private readonly int _first;

    /// <param name="file">UTF-8.</param>
    /// <param name="isWhole">Whether a line that has the right number of cells is a row of the table by what it says.</param>
    public CsvReader(ReadOnlyMemory<byte> file, Func<CsvRow, bool> isWhole)
    {
        HasMark = file.Span.StartsWith(Encoding.UTF8.Preamble);
        (_file, _isWhole) = (HasMark ? file[Encoding.UTF8.Preamble.Length..] : file, isWhole);
        var cells = new List<CsvCell>();
        var line = _file.Span[..CsvScan.LineEnd(_file.Span, 0)];
        var scan = CsvScan.Of(line, 0, cells);
        HasWrongHeader = scan.Stray >= 0 || !scan.IsClosed;
        foreach (var cell in line.IsEmpty ? [] : cells) Header.Add(cell.Text(line).Trim());
        foreach (var (at, name) in Header.Index()) _places.TryAdd(name, at);
        _first = CsvScan.AfterLine(_file.Span, line.Length);
    }

    /// <summary>Whether the file begins with a byte order mark.</summary>
    public bool HasMark { get; }

    /// <summary>The first line's cells; none when there is no line.</summary>
    public List<string> Header { get; } = [];

    /// <summary>Whether a quotation mark in the first line is not closed, or stands where none can.</summary>
    public bool HasWrongHeader { get; }

    /// <summary>The rows behind the header; blank ones are counted as a spreadsheet counts them, and left out.</summary>
    public IEnumerable<CsvRow> Rows()
    {
        var cells = new List<CsvCell>();
        var number = 1;
        for (var at = _first; at < _file.Length;)
        {
            number++;
            var end = CsvScan.LineEnd(_file.Span, at);
            if (end == at)
            {
                at = CsvScan.AfterLine(_file.Span, end);
                continue;
            }

            var (row, next) = RowAt(at, number, cells);
            if (!row.IsBlank) yield return row;
            at = next;
        }
    }

    private (CsvRow Row, int Next) RowAt(int at, int number, List<CsvCell> cells)
    {
        var scan = CsvScan.Of(_file.Span, at, cells);
        if (scan.Broken < 0 || IsMeant(scan, at, cells)) return (new(number, _places, _file, [.. cells], scan.Stray < 0 ? null : new(scan.Stray, IsOpen: false)), scan.End);
        var end = CsvScan.LineEnd(_file.Span, at);
        return (new(number, _places, _file, AsItStands(at, end), new(scan.Broken, IsOpen: true)), CsvScan.AfterLine(_file.Span, end));
    }

    /// <summary>Whether a cell over several lines can be what was meant.</summary>
    private bool IsMeant(CsvScan scan, int at, List<CsvCell> cells)
    {
        if (!scan.IsClosed || scan.Stray >= 0 || cells.Count != _places.Count) return false;
        var one = new List<CsvCell>();
        for (var line = Behind(at); line < scan.End; line = Behind(line))
        {
            // To the line's end only: a mark that is open there is not this line's.
            var own = CsvScan.Of(_file.Span[..CsvScan.LineEnd(_file.Span, line)], line, one);
            if (own is { IsClosed: true, Stray: < 0 } && one.Count == _places.Count && _isWhole(new(0, _places, _file, [.. one], Fault: null))) return false;
        }

        return true;
    }

    private int Behind(int line) => CsvScan.AfterLine(_file.Span, CsvScan.LineEnd(_file.Span, line));

    /// <summary>A line's cells between its commas, quotation marks and all: enough to tell which row is meant.</summary>
    private CsvCell[] AsItStands(int from, int end)
    {
        var cells = new List<CsvCell>();
        foreach (var range in _file.Span[from..end].Split((byte)','))
        {
            var (start, length) = range.GetOffsetAndLength(end - from);
            cells.Add(new(from + start, cells.Count < CsvScan.MostCells ? length : end - from - start, IsQuoted: false));
            if (cells.Count > CsvScan.MostCells) break;
        }

        return [.. cells];
    }
}
