using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Columns;

namespace PartsMatch.Service.Counter;

/// <summary>What ranking keeps of the parts, a file a family beside the store: to deduce a million parts anew takes a minute.</summary>
/// <param name="folder">Where they lie.</param>
internal sealed class ColumnFiles(string folder)
{
    private const int BufferBytes = 1 << 20;

    /// <summary>A family's catalogue; null when there is none of these parts that this program can use.</summary>
    /// <param name="family">The family.</param>
    /// <param name="digest">Of the parts.</param>
    public Catalogue? Read(Family family, long digest)
    {
        try
        {
            using var file = new FileStream(PathOf(family), FileMode.Open, FileAccess.Read, FileShare.Read, BufferBytes, FileOptions.SequentialScan);
            return Catalogue.ReadFrom(file, family) is ColumnsReading.Read read && read.AsOf == digest ? read.Catalogue : null;
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
            using (var file = new FileStream(making, FileMode.Create, FileAccess.Write, FileShare.None, BufferBytes)) catalogue.WriteTo(file, digest);
            File.Move(making, path, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            File.Delete(making);
        }
    }

    private string PathOf(Family family) => Path.Combine(folder, $"partsmatch.{family.Kind}.columns");
}
