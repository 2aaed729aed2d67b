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
    public TrainingRun Begin(Family family, string by)
    {
        lock (_beginning)
        {
            if (_runs.TryGetValue(family, out var last) && last.IsRunning) return last;
            last?.Dispose();
            var run = _runs[family] = new TrainingRun(by, clock.GetUtcNow());
            _ = Task.Run(() => Run(family, run));
            return run;
        }
    }

    /// <summary>Tells the training that goes on to stop; null when none does.</summary>
    public TrainingRun? Stop(Family family)
    {
        lock (_beginning)
        {
            if (!_runs.TryGetValue(family, out var run) || !run.IsRunning) return null;
            run.Stop();
            return run;
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

    public ModelReport Report(Family family) => new(family, weights.Now[family], weights.HasPrevious(family), log[family], _runs.GetValueOrDefault(family));

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
        var count = 0;
        try
        {
            var lessons = outcomes.LessonsOf(family, run.Stopping);
            count = lessons.Count;
            var (trained, tooFew) = Trainer.Train(new FeatureColumns(family), lessons.Outcomes, weights.Now[family], DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime), run, run.Stopping);
            if (trained is null) return Entry(TrainingEnd.TooFew, tooFew!);
            run.Stopping.ThrowIfCancellationRequested();
            if (trained.Choice != Choice.Present && weights.Put(family, trained.Weights) is { IsGiven: false } refused) return Entry(TrainingEnd.Failed, refused.Refusals[0].Message);
            return Entry(EndOf(trained.Choice), trained.Reason) with { LeftOut = trained.LeftOut, Figures = trained.Figures };
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
            _ => TrainingEnd.Kept,
        };

        TrainingEntry Entry(TrainingEnd end, string reason) => new(clock.GetUtcNow(), run.By, end, count, LeftOut: 0, reason, NoFigures);
    }
}
