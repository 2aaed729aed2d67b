using System.Collections.Concurrent;
using PartsMatch.Fit.Judging;
using PartsMatch.Learning;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Counter.Trainings;

/// <summary>Trains weights in the background, one training of a kind at a time, and puts in place what comes of it.</summary>
internal sealed class ModelTrainings(FamilyWeights weights, OutcomeRecords outcomes, TrainingLog log, TimeProvider clock, ILogger<ModelTrainings> logger) : IDisposable
{
    private static readonly Dictionary<string, double> NoFigures = [];

    private readonly Lock _beginning = new();
    private readonly ConcurrentDictionary<Family, TrainingRun> _runs = [];

    /// <summary>Begins a training; where one of the kind goes on, that is the answer.</summary>
    public TrainingState Begin(Family family, string by)
    {
        lock (_beginning)
        {
            if (_runs.TryGetValue(family, out var last) && last.IsRunning) return last.Now;
            last?.Dispose();
            var run = _runs[family] = new TrainingRun(by, clock.GetUtcNow());
            _ = Task.Run(() => Run(family, run));
            return run.Now;
        }
    }

    /// <summary>Tells the training that goes on to stop; null when none does.</summary>
    public TrainingState? Stop(Family family)
    {
        lock (_beginning)
        {
            if (!_runs.TryGetValue(family, out var run) || !run.IsRunning) return null;
            run.Stop();
            return run.Now;
        }
    }

    /// <summary>Puts the previous weights back; null when there are none.</summary>
    public Answer<ModelReport>? GoBack(Family family, string by)
    {
        if (weights.GoBack(family) is not { } put) return null;
        if (!put.IsGiven) return Answer<ModelReport>.Refused(put.Refusals);
        log.Add(family, new(clock.GetUtcNow(), by, TrainingEnd.WentBack, put.Value.Training?.Outcomes ?? 0, LeftOut: 0, "The previous weights were put back.", put.Value.Training?.Figures ?? NoFigures));
        return Report(family);
    }

    /// <summary>All of one moment: a training is in the log before it has ended, so that whoever asks first whether one goes on misses none.</summary>
    public ModelReport Report(Family family)
    {
        var run = _runs.GetValueOrDefault(family)?.Now;
        return new(family, weights.Now[family], weights.HasPrevious(family), log[family], run);
    }

    /// <summary>A training that goes on when the service stops is stopped with it.</summary>
    public void Dispose()
    {
        foreach (var run in _runs.Values) run.Stop();
        foreach (var run in _runs.Values)
        {
            run.Ended.Wait();
            run.Dispose();
        }
    }

    private void Run(Family family, TrainingRun run)
    {
        var entry = Train(family, run);
        log.Add(family, entry);
        run.End(entry);
    }

    private TrainingEntry Train(Family family, TrainingRun run)
    {
        var by = run.Now.By;
        try
        {
            var present = weights.Now[family];
            var trained = Trainer.Train(new FeatureColumns(family), outcomes.LessonsOf(family), present, DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime), run, run.Stopping);
            run.Stopping.ThrowIfCancellationRequested();
            if (trained.Choice is Choice.Trained or Choice.Rescaled && weights.Put(family, trained.Weights, present) is { IsGiven: false } refused) return Entry(refused.Refusals[0].Code == Codes.ChangedSince ? TrainingEnd.Stopped : TrainingEnd.Failed, refused.Refusals[0].Message);
            return Entry(EndOf(trained.Choice), trained.Reason) with { Outcomes = trained.Outcomes, LeftOut = trained.LeftOut, Invented = trained.Invented, Figures = trained.Figures };
        }
        catch (OperationCanceledException) when (run.IsToStop)
        {
            return Entry(TrainingEnd.Stopped, "It was stopped before it was done: the weights are as they were.");
        }
        catch (Exception unforeseen) when (unforeseen is not OperationCanceledException)
        {
            return Entry(TrainingEnd.Failed, Problems.Masked(Problems.Log(logger, unforeseen)));
        }

        static TrainingEnd EndOf(Choice choice) => choice switch
        {
            Choice.Trained => TrainingEnd.Adopted,
            Choice.Rescaled => TrainingEnd.Rescaled,
            Choice.Present => TrainingEnd.Kept,
            _ => TrainingEnd.TooFew,
        };

        TrainingEntry Entry(TrainingEnd end, string reason) => new(clock.GetUtcNow(), by, end, Outcomes: 0, LeftOut: 0, reason, NoFigures);
    }
}
