using PartsMatch.Learning;

namespace PartsMatch.Service.Counter.Trainings;

/// <summary>How a training stands at one moment.</summary>
/// <param name="By">The label of the key of whoever began it.</param>
/// <param name="At">When.</param>
/// <param name="Come">How far it has come.</param>
/// <param name="IsToStop">Whether it was told to stop: it does so at its next step.</param>
/// <param name="Entry">How it ended; null while it goes on.</param>
public sealed record TrainingState(string By, DateTimeOffset At, Progress Come, bool IsToStop, TrainingEntry? Entry)
{
    public bool IsRunning => Entry is null;
}

/// <summary>A training that goes on, or went on: how far it has come, and how it ended.</summary>
/// <param name="by">The label of the key of whoever began it.</param>
/// <param name="at">When.</param>
internal sealed class TrainingRun(string by, DateTimeOffset at) : IProgress<Progress>, IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private readonly TaskCompletionSource _ended = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private volatile Progress _come = new(0, 1, "beginning");
    private volatile TrainingEntry? _entry;

    public TrainingState Now => new(by, at, _come, IsToStop, _entry);

    public bool IsRunning => _entry is null;

    public bool IsToStop => _stop.IsCancellationRequested;

    public CancellationToken Stopping => _stop.Token;

    /// <summary>Ends when it has ended.</summary>
    public Task Ended => _ended.Task;

    public void Report(Progress value) => _come = value;

    public void Dispose() => _stop.Dispose();

    public void Stop() => _stop.Cancel();

    public void End(TrainingEntry entry)
    {
        _entry = entry;
        _ended.SetResult();
    }
}
