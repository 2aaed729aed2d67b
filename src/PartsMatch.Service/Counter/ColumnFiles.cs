using System.Security.Cryptography;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Columns;
using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>What ranking keeps of the parts, a file a family beside the store: to deduce a million parts anew takes a minute.</summary>
/// <param name="folder">Where they lie.</param>
internal sealed class ColumnFiles(string folder)
{
    private const int BufferBytes = 1 << 20;

    /// <summary>What a part's standing and key are is told by these rooms: their code has a say in what columns hold, beside the rooms that columns name themselves.</summary>
    private static readonly long Code = BitConverter.ToInt64(SHA256.HashData([.. new[] { typeof(ColumnFiles), typeof(StoredPart) }.SelectMany(type => type.Module.ModuleVersionId.ToByteArray())]));

    /// <summary>A family's catalogue; null when there is none of these parts that this program can use.</summary>
    /// <param name="family">The family.</param>
    /// <param name="digest">Of the parts.</param>
    public Catalogue? Read(Family family, long digest)
    {
        try
        {
            using var file = new FileStream(PathOf(family), FileMode.Open, FileAccess.Read, FileShare.Read, BufferBytes, FileOptions.SequentialScan);
            return Catalogue.ReadFrom(file, family) is ColumnsReading.Read read && read.AsOf == (digest ^ Code) ? read.Catalogue : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Writes it, whole or not at all. On a full disk it is not, and the next start takes longer.</summary>
    public void Write(Catalogue catalogue, long digest)
    {
        var path = PathOf(catalogue.Family);
        var making = path + ".new";
        try
        {
            using (var file = new FileStream(making, FileMode.Create, FileAccess.Write, FileShare.None, BufferBytes)) catalogue.WriteTo(file, digest ^ Code);
            File.Move(making, path, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // What is left under the other name the next writing replaces.
        }
    }

    private string PathOf(Family family) => Path.Combine(folder, $"partsmatch.{family.Kind}.columns");
}
