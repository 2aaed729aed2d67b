using PartsMatch.Fit.Motors;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Hosting;
using PartsMatch.Store;

namespace PartsMatch.Benchmarks.Motors;

/// <summary>A store of many motors in a folder of its own, and the service's counter on it.</summary>
internal sealed class MotorStore : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("partsmatch-benchmark-");
    private readonly PartStore store;
    private readonly Catalogues catalogues;
    private bool isClosed;

    public MotorStore(ManyMotors motors)
    {
        store = PartStore.Open(new(folder.FullName), TimeProvider.System, () => Seed(motors));
        catalogues = new(store);
        Judgements = new(catalogues, new(new DataFolder(folder.FullName, SeedFolder: null)));
    }

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
        folder.Delete(recursive: true);
    }

    private static SeedData Seed(ManyMotors motors) => new(
        "the benchmark",
        [.. motors.Parts.Select(part => new PartDraft(
            part.Number,
            MotorFamily.Motor.Kind,
            "Benchma",
            "Fan motor",
            part.IsMade ? PartStatus.Current : PartStatus.Discontinued,
            [.. MotorFamily.Motor.SpecShape.Write(part.Spec).Select(text => new NamedText(text.Name, text.Text))],
            []))],
        [.. Enumerable.Range(0, motors.Count).Select(row => (Row: row, Stock: motors.StockAt(row))).Where(one => one.Stock.OnHand is not null || one.Stock.Price is not null)
            .Select(one => new StockLine(ManyMotors.NumberAt(one.Row), one.Stock.Price, "USD", one.Stock.OnHand))]);
}
