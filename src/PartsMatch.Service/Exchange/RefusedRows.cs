using System.IO.Compression;
using System.Text.Json;

namespace PartsMatch.Service.Exchange;

/// <summary>Every row of an import that was bad or in conflict, however many: kept compressed, as their complaints repeat one another.</summary>
internal sealed class RefusedRows : IDisposable
{
    private readonly MemoryStream _kept = new();
    private GZipStream? _into;

    private static string[] Columns { get; } = ["row", "number", "column", "code", "complaint"];

    public int Count { get; private set; }

    public void Add(RowTold row)
    {
        _into ??= new(_kept, CompressionLevel.Fastest, leaveOpen: true);
        JsonSerializer.Serialize(_into, row, ExchangeJson.Options);
        _into.WriteByte((byte)'\n');
        Count++;
    }

    /// <summary>The rows in the order in which they were judged; none can be added afterwards.</summary>
    public IEnumerable<RowTold> All()
    {
        _into?.Dispose();
        if (Count == 0) yield break;
        using var lines = new StreamReader(new GZipStream(new MemoryStream(_kept.GetBuffer(), 0, (int)_kept.Length, writable: false), CompressionMode.Decompress));
        while (lines.ReadLine() is { } line) yield return JsonSerializer.Deserialize<RowTold>(line, ExchangeJson.Options)!;
    }

    /// <summary>Writes them as a table: a line a complaint, guarded against a spreadsheet's formulas as every table is.</summary>
    public Task WriteAsync(TextWriter text, CancellationToken stop) => CsvText.WriteAsync(
        text,
        All().SelectMany(row => row.Wrong.Select(wrong => (string[])[FormattableString.Invariant($"{row.Row}"), row.Number, wrong.Column, wrong.Code, wrong.Message])).Prepend(Columns),
        stop);

    public void Dispose()
    {
        _into?.Dispose();
        _kept.Dispose();
    }
}
