using PartsMatch.Learning;

namespace PartsMatch.Service.Counter.Trainings;

/// <summary>A training that goes on, or went on: how far it has come, and how it ended.</summary>
/// <param name="by">The label of the key of whoever began it.</param>
/// <param name="at">When.</param>
public sealed class TrainingRun(string by, DateTimeOffset at) : IProgress<Progress>, IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private readonly TaskCompletionSource _ended = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public string By => by;

    public DateTimeOffset At => at;

    /// <summary>How far it has come.</summary>
    public Progress Come { get; private set; } = new(0, 1, "beginning");

    /// <summary>How it ended; null while it goes on.</summary>
    public TrainingEntry? Entry { get; private set; }

    public bool IsRunning => !_ended.Task.IsCompleted;

    /// <summary>Whether it was told to stop: it does so at its next step.</summary>
    public bool IsToStop => _stop.IsCancellationRequested;

    internal CancellationToken Stopping => _stop.Token;

    /// <summary>Ends when it has ended.</summary>
    internal Task Ended => _ended.Task;

    public void Report(Progress value) => Come = value;

    public void Dispose() => _stop.Dispose();

    internal void Stop() => _stop.Cancel();

    internal void End(TrainingEntry entry)
    {
        Entry = entry;
        _ended.SetResult();
    }
}
