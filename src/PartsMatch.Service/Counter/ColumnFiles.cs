using System.Security.Cryptography;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Columns;
using PartsMatch.Ranking.Unknowns;
using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>What ranking keeps of the parts and of the known machines, two files a family beside the store: to deduce a million parts anew takes a minute.</summary>
/// <param name="folder">Where they lie.</param>
internal sealed class ColumnFiles(string folder)
{
    private const int BufferBytes = 1 << 20;
    private const string Parts = "columns";
    private const string Machines = "machines";

    /// <summary>What a part's standing and key are is told by these rooms: their code has a say in what columns hold, beside the rooms that columns name themselves.</summary>
    private static readonly long Code = BitConverter.ToInt64(SHA256.HashData([.. new[] { typeof(ColumnFiles), typeof(StoredPart) }.SelectMany(type => type.Module.ModuleVersionId.ToByteArray())]));

    /// <summary>A family's catalogue; null when there is none of these parts that this program can use.</summary>
    /// <param name="family">The family.</param>
    /// <param name="digest">Of the parts.</param>
    public Catalogue? ReadCatalogue(Family family, long digest) =>
        Read(PathOf(family, Parts), file => Catalogue.ReadFrom(file, family) is ColumnsReading.Read read && read.AsOf == (digest ^ Code) ? read.Catalogue : null);

    /// <summary>What a family's known machines say; null when there is nothing of these parts that this program can use.</summary>
    /// <param name="family">The family.</param>
    /// <param name="digest">Of the parts.</param>
    /// <param name="find">Tells of a number what the part is.</param>
    public KnownMachines? ReadMachines(Family family, long digest, Func<string, CataloguePart> find) =>
        Read(PathOf(family, Machines), file => KnownMachines.ReadFrom(file, family, find) is var (machines, asOf) && asOf == (digest ^ Code) ? machines : null);

    /// <summary>Writes a catalogue, whole or not at all. On a full disk it is not, and the next start takes longer.</summary>
    public void Write(Catalogue catalogue, long digest) => Write(PathOf(catalogue.Family, Parts), file => catalogue.WriteTo(file, digest ^ Code));

    /// <summary>Writes what known machines say, in the same way.</summary>
    public void Write(Family family, KnownMachines machines, long digest) => Write(PathOf(family, Machines), file => machines.WriteTo(file, digest ^ Code));

    private static T? Read<T>(string path, Func<FileStream, T?> read)
        where T : class
    {
        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, BufferBytes, FileOptions.SequentialScan);
            return read(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static void Write(string path, Action<FileStream> write)
    {
        var making = path + ".new";
        try
        {
            using (var file = new FileStream(making, FileMode.Create, FileAccess.Write, FileShare.None, BufferBytes)) write(file);
            File.Move(making, path, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // What is left under the other name the next writing replaces.
        }
    }

    private string PathOf(Family family, string what) => Path.Combine(folder, $"partsmatch.{family.Kind}.{what}");
}
