using System.Text;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Options;
using PartsMatch.Benchmarks.Motors;
using PartsMatch.Fit.Motors;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Exchange.Lists;

namespace PartsMatch.Benchmarks.Lists;

/// <summary>The service's own endpoint on a store of many motors, without a network before it.</summary>
internal sealed class ListService : IDisposable
{
    private readonly MotorStore store;
    private readonly ListEndpoint endpoint;

    public ListService(ManyMotors motors, DirectoryInfo? folder)
    {
        store = new(motors, folder);
        endpoint = new(store.Judgements, Options.Create(new ListLimits { Rows = 1_000_000, Bytes = 1_000_000_000 }));
    }

    /// <summary>Whether a row's likelihoods have to be averaged over known machines.</summary>
    public bool LeavesOpen(OldMotor old) =>
        !Needs.Read(store.Catalogues.Shelf, new(MotorFamily.Motor, [], PlateText: null, old.Number, old.Site)).Value!.Completions.IsNone;

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
        store.Dispose();
    }
}
