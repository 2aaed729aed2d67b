using System.CommandLine;
using PartsMatch.Fit.Motors;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Hosting;
using PartsMatch.Store;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Motors;

/// <summary>A store of many motors, and the service's counter on it. Where a folder is given it is kept there: a million take some minutes to write.</summary>
internal sealed class MotorStore : IDisposable
{
    /// <summary>Parts written together.</summary>
    private const int Group = 4000;

    private readonly DirectoryInfo folder;
    private readonly bool isKept;
    private readonly PartStore store;
    private readonly Catalogues catalogues;
    private bool isClosed;

    public MotorStore(ManyMotors motors, DirectoryInfo? keptIn = null)
    {
        isKept = keptIn is not null;
        folder = keptIn ?? Directory.CreateTempSubdirectory("partsmatch-benchmark-");
        store = PartStore.Open(new(folder.FullName), TimeProvider.System);
        if (store.Catalogue.Count == 0) Fill(motors);
        if (store.Catalogue.Count != motors.Count) throw new InvalidOperationException(Invariant($"{folder} holds {store.Catalogue.Count} parts; name another folder."));
        catalogues = new(store);
        Judgements = new(catalogues, new(new DataFolder(folder.FullName, SeedFolder: null)));
    }

    /// <summary>The option that names such a folder.</summary>
    public static Option<DirectoryInfo?> Kept() => new("--folder") { Description = "Where the store is kept from one run to the next; nowhere when nothing is said." };

    public string Folder => folder.FullName;

    public Catalogues Catalogues => catalogues;

    public Judgements Judgements { get; }

    /// <summary>Leaves the folder to another process.</summary>
    public void Close()
    {
        if (isClosed) return;
        isClosed = true;
        catalogues.Dispose();
        store.Dispose();
    }

    public void Dispose()
    {
        Close();
        if (!isKept) folder.Delete(recursive: true);
    }

    private void Fill(ManyMotors motors)
    {
        foreach (var rows in Enumerable.Range(0, motors.Count).Chunk(Group))
        {
            List<AskedWrite> writes = [.. rows.AsParallel().AsOrdered().SelectMany(row => Writes(motors, row))];
            foreach (var result in store.WriteAllAsync(writes, "the benchmark").GetAwaiter().GetResult())
            {
                if (result is not WriteResult.Written) throw new InvalidOperationException($"A part was not written: {result}");
            }
        }
    }

    private static IEnumerable<AskedWrite> Writes(ManyMotors motors, int row)
    {
        var (part, stock) = (motors.PartAt(row), motors.StockAt(row));
        var status = part.IsMade ? PartStatus.Current : PartStatus.Discontinued;
        NamedText[] spec = [.. MotorFamily.Motor.SpecShape.Write(part.Spec).Select(text => new NamedText(text.Name, text.Text))];
        yield return new AskedWrite.Add(new(part.Number, MotorFamily.Motor.Kind, "Benchma", "Fan motor", status, spec, []));
        if (stock.OnHand is not null || stock.Price is not null) yield return new AskedWrite.SetStock(new(part.Number, stock.Price, "USD", stock.OnHand));
    }
}
