using System.Text;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Options;
using PartsMatch.Benchmarks.Motors;
using PartsMatch.Fit.Motors;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Lists;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Exchange.Lists;
using PartsMatch.Service.Hosting;
using PartsMatch.Store;

namespace PartsMatch.Benchmarks.Lists;

/// <summary>The service's own endpoint on a store of many motors, without a network before it.</summary>
internal sealed class ListService : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("partsmatch-lists-");
    private readonly PartStore store;
    private readonly Catalogues catalogues;
    private readonly ListEndpoint endpoint;

    public ListService(ManyMotors motors)
    {
        store = PartStore.Open(new(folder.FullName), TimeProvider.System, () => Seed(motors));
        catalogues = new(store);
        var judgements = new Judgements(catalogues, new(new DataFolder(folder.FullName, SeedFolder: null)));
        endpoint = new(new CrossReference(catalogues, judgements), Options.Create(new ListLimits { Rows = 1_000_000, Bytes = 1_000_000_000 }));
    }

    /// <summary>Whether a row's likelihoods have to be averaged over known machines.</summary>
    public bool LeavesOpen(OldMotor old) =>
        !Needs.Read(catalogues.Shelf, new(MotorFamily.Motor, [], PlateText: null, old.Number, old.Site)).Value!.Completions.IsNone;

    public async Task<ReadOnlyMemory<byte>> AnswerAsync(string list, CancellationToken stop)
    {
        var answer = new MemoryStream();
        var context = new DefaultHttpContext { RequestAborted = stop };
        (context.Request.Body, context.Request.ContentType, context.Response.Body) = (new MemoryStream(Encoding.UTF8.GetBytes(list)), "text/csv", answer);
        await endpoint.AnswerAsync(context);
        return answer.GetBuffer().AsMemory(0, (int)answer.Length);
    }

    /// <summary>How many rows an answer has, and how many of them a replacement.</summary>
    public static (int Rows, int Found) Counted(ReadOnlyMemory<byte> answer)
    {
        var rows = new CsvReader(answer, _ => false).Rows().ToList();
        return (rows.Count, rows.Count(row => row["replacement1.number"].Length > 0));
    }

    public void Dispose()
    {
        endpoint.Dispose();
        catalogues.Dispose();
        store.Dispose();
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
