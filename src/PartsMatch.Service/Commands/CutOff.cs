using PartsMatch.Service.Exchange;
using PartsMatch.Service.Exchange.Lists;

namespace PartsMatch.Service.Commands;

/// <summary>What is whole of an answer to a list that was cut off.</summary>
/// <param name="Length">In bytes: what stands behind it is half a row.</param>
/// <param name="NextRow">The row to go on at.</param>
internal sealed record CutOff(int Length, int NextRow)
{
    /// <summary>Null when what was written is no answer with this header.</summary>
    public static CutOff? Of(ReadOnlySpan<byte> written, ReadOnlySpan<byte> header)
    {
        if (written.Length < header.Length) return header.StartsWith(written) ? new(0, ListFile.FirstRow) : null;
        if (!written.StartsWith(header)) return null;
        var (at, row, cells) = (header.Length, ListFile.FirstRow, new List<CsvCell>());
        while (at < written.Length)
        {
            var scan = CsvScan.Of(written, at, cells);
            if (!scan.IsClosed || written[scan.End - 1] != '\n') break;
            (at, row) = (scan.End, row + 1);
        }

        // Begun at the first row, an answer brings its header along.
        return row == ListFile.FirstRow ? new(0, row) : new(at, row);
    }
}
