using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Tests.Support;

/// <summary>The service as its program runs it, until it is disposed of.</summary>
internal sealed class RunningService : IAsyncDisposable
{
    /// <summary>Seconds on a machine of its own; all test projects at once on two cores take their time.</summary>
    private static readonly TimeSpan LongestStart = TimeSpan.FromMinutes(5);

    /// <summary>Requests that go on are given half a minute by the host.</summary>
    private static readonly TimeSpan LongestStop = TimeSpan.FromMinutes(3);

    private readonly CancellationTokenSource _stop = new();
    private readonly Told _told = new();
    private Task<int> _running = null!;

    /// <summary>What it printed.</summary>
    public string Output => _told.Text;

    public string Address => Output.Split(["listens at ", ";"], StringSplitOptions.None)[1];

    public static async Task<RunningService> StartAsync(string[] args)
    {
        var service = new RunningService();
        service._running = Task.Run(() => Serving.RunAsync(args, service._told, TextWriter.Null, service._stop.Token));
        await Task.WhenAny(service._running, service._told.Ready.Task).WaitAsync(LongestStart, TestContext.Current.CancellationToken);
        service._running.IsCompleted.ShouldBeFalse("it is running");
        return service;
    }

    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        (await _running.WaitAsync(LongestStop)).ShouldBe(ExitCode.Success);
        _stop.Dispose();
    }

    /// <summary>Knows when the last line is told: the one about the data folder, and on a first start about the key.</summary>
    private sealed class Told : StringWriter
    {
        public TaskCompletionSource Ready { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public string Text
        {
            get { lock (this) return ToString(); }
        }

        public override async Task WriteLineAsync(string? value)
        {
            lock (this) WriteLine(value);
            if (value == Serving.ToldAll) Ready.TrySetResult();
            await Task.CompletedTask;
        }
    }
}
