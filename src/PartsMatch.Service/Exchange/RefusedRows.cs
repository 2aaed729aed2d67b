using System.IO.Compression;
using System.Text.Json;

namespace PartsMatch.Service.Exchange;

/// <summary>Every row of an import that was bad or in conflict, however many: kept compressed, as their complaints repeat one another.</summary>
internal sealed class RefusedRows
{
    /// <summary>Rows that are packed together: enough that what repeats is found.</summary>
    private const int Pack = 2_000;

    private readonly List<byte[]> _packed = [];
    private readonly List<RowTold> _open = [];

    private static string[] Columns { get; } = ["row", "number", "column", "code", "complaint"];

    public void Add(RowTold row)
    {
        _open.Add(row);
        if (_open.Count < Pack) return;
        _packed.Add(Packed(_open));
        _open.Clear();
    }

    /// <summary>The rows in the order in which they were judged.</summary>
    public IEnumerable<RowTold> All() => _packed.SelectMany(Unpacked).Concat(_open);

    /// <summary>Writes them as a table: a line a complaint, guarded against a spreadsheet's formulas as every table is.</summary>
    public Task WriteAsync(TextWriter text, CancellationToken stop) => CsvText.WriteAsync(
        text,
        All().SelectMany(row => row.Wrong.Select(wrong => (string[])[FormattableString.Invariant($"{row.Row}"), row.Number, wrong.Column, wrong.Code, wrong.Message])).Prepend(Columns),
        stop);

    private static byte[] Packed(List<RowTold> rows)
    {
        using var bytes = new MemoryStream();
        using (var packing = new GZipStream(bytes, CompressionLevel.Fastest)) JsonSerializer.Serialize(packing, rows, ExchangeJson.Options);
        return bytes.ToArray();
    }

    private static List<RowTold> Unpacked(byte[] bytes)
    {
        using var unpacking = new GZipStream(new MemoryStream(bytes, writable: false), CompressionMode.Decompress);
        return JsonSerializer.Deserialize<List<RowTold>>(unpacking, ExchangeJson.Options)!;
    }
}
