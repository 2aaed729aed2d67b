using System.Text;
using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>Writes a table of the catalogue: UTF-8 without a mark, the same catalogue as the same bytes.</summary>
internal static class CatalogueExport
{
    public static async Task WriteAsync(CatalogueTable table, PartStore store, Stream target, CancellationToken stop)
    {
        await using var text = new StreamWriter(target, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        await CsvText.WriteAsync(text, table.Rows(store).Prepend(table.Columns), stop);
    }
}
