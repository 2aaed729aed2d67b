using System.Buffers;
using System.Text;

namespace PartsMatch.Service.Exchange;

/// <summary>Where a cell stands in a file's bytes, quotation marks round it left out.</summary>
internal readonly record struct CsvCell(int Start, int Length, bool IsQuoted)
{
    public string Text(ReadOnlySpan<byte> file)
    {
        if (Length == 0) return string.Empty;
        var text = Encoding.UTF8.GetString(file.Slice(Start, Length));
        return FormulaGuard.Off(IsQuoted ? text.Replace("\"\"", "\"", StringComparison.Ordinal) : text);
    }

    /// <summary>Whether nothing but white space stands in it; known from its first sign that is none.</summary>
    public bool IsBlank(ReadOnlySpan<byte> file)
    {
        for (var left = file.Slice(Start, Length); !left.IsEmpty;)
        {
            Rune.DecodeFromUtf8(left, out var sign, out var length);
            if (!Rune.IsWhiteSpace(sign)) return false;
            left = left[length..];
        }

        return true;
    }
}

/// <summary>One row of a file's bytes, told apart by the book (RFC 4180).</summary>
/// <param name="End">Where the next row begins.</param>
/// <param name="Stray">The first cell in which a quotation mark stands where none can; -1 when none does.</param>
/// <param name="Broken">The first cell that runs over the end of a line; -1 when none does.</param>
/// <param name="IsClosed">Whether the last quotation mark that opens a cell is closed before the file ends.</param>
internal readonly record struct CsvScan(int End, int Stray, int Broken, bool IsClosed)
{
    /// <summary>So many cells of a row are told apart, far more than any table has columns: what stands behind them is one more cell, so that a row of commas takes no more memory than its bytes.</summary>
    public const int MostCells = 1000;

    private static readonly SearchValues<byte> CellEnds = SearchValues.Create(",\r\n"u8);
    private static readonly SearchValues<byte> LineEnds = SearchValues.Create("\r\n"u8);

    /// <summary>Reads the row that begins at a place, into a list of its cells.</summary>
    public static CsvScan Of(ReadOnlySpan<byte> file, int at, List<CsvCell> cells)
    {
        var (stray, broken, isClosed) = (-1, -1, true);
        cells.Clear();
        while (true)
        {
            if (cells.Count == MostCells)
            {
                var line = LineEnd(file, at);
                cells.Add(new(at, line - at, IsQuoted: false));
                return new(AfterLine(file, line), stray, broken, isClosed);
            }

            var (start, isQuoted) = (at, at < file.Length && file[at] == '"');
            if (isQuoted)
            {
                start++;
                at = QuoteEnd(file, start);
                isClosed = at < file.Length;
                var inside = file[start..at];
                if (broken < 0 && (!isClosed || inside.ContainsAny(LineEnds))) broken = cells.Count;
                cells.Add(new(start, inside.Length, isQuoted));
                at = Math.Min(at + 1, file.Length);
            }

            // Behind a closing quotation mark nothing stands but what ends the cell.
            var end = Next(file, at, CellEnds);
            var bare = file[at..end];
            if (stray < 0 && (isQuoted ? bare.Length > 0 : bare.Contains((byte)'"'))) stray = isQuoted ? cells.Count - 1 : cells.Count;
            if (!isQuoted) cells.Add(new(start, bare.Length, isQuoted));
            if (end == file.Length || file[end] != ',') return new(AfterLine(file, end), stray, broken, isClosed);
            at = end + 1;
        }
    }

    /// <summary>Where the line that holds a place ends, its sign left out.</summary>
    public static int LineEnd(ReadOnlySpan<byte> file, int at) => Next(file, at, LineEnds);

    /// <summary>Where the next line begins, of a line's end.</summary>
    public static int AfterLine(ReadOnlySpan<byte> file, int end) => end >= file.Length ? file.Length : file[end..].StartsWith("\r\n"u8) ? end + 2 : end + 1;

    private static int Next(ReadOnlySpan<byte> file, int from, SearchValues<byte> any) => file[from..].IndexOfAny(any) is >= 0 and var far ? from + far : file.Length;

    /// <summary>Where a quotation mark is closed; the file's end when it is not. Two of them are one that is meant.</summary>
    private static int QuoteEnd(ReadOnlySpan<byte> file, int from)
    {
        while (file[from..].IndexOf((byte)'"') is >= 0 and var far)
        {
            var mark = from + far;
            if (mark + 1 >= file.Length || file[mark + 1] != '"') return mark;
            from = mark + 2;
        }

        return file.Length;
    }
}
