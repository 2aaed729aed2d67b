using PartsMatch.Ranking;

namespace PartsMatch.Learning;

/// <summary>How far a training has come.</summary>
/// <param name="Done">Steps done.</param>
/// <param name="Of">Steps in all.</param>
/// <param name="What">What is done now, in a few words.</param>
public sealed record Progress(int Done, int Of, string What);

/// <summary>What a training came to.</summary>
/// <param name="Weights">The weights to rank by from now on: trained ones, hand-set ones rescaled, or those that ranked before.</param>
/// <param name="Choice">Which of them.</param>
/// <param name="Reason">Why, in a sentence.</param>
/// <param name="Figures">What was measured, by name: docs/weights.md says what each is.</param>
/// <param name="Outcomes">How many outcomes there were.</param>
/// <param name="LeftOut">How many of them teach nothing: the part fails an aspect, or a reading was open that decides.</param>
/// <param name="Invented">How many of the others are demo data.</param>
public sealed record Trained(Weights Weights, Choice Choice, string Reason, IReadOnlyDictionary<string, double> Figures, int Outcomes, int LeftOut, int Invented);

/// <summary>Trains a family's weights, and takes them only where they are shown to be better.</summary>
public static class Trainer
{
    private const int FoldCount = 10;

    /// <summary>Judging, training on all of it, and each fold.</summary>
    private const int Steps = FoldCount + 2;

    /// <summary>Fewer outcomes than this, or fewer than a fifth of it of either kind, train nothing (practice).</summary>
    public const int LeastOutcomes = 50;

    /// <summary>Trains on outcomes. Same outcomes, same weights, to the last bit, in whatever order they come and on however many cores.</summary>
    /// <param name="columns">The family's columns.</param>
    /// <param name="outcomes">What happened; each is let go as soon as it is judged, and while some are judged others may still be read.</param>
    /// <param name="present">The weights that rank at present.</param>
    /// <param name="today">The day that the weights are made on.</param>
    /// <param name="progress">Is told of every step.</param>
    /// <param name="cancel">Gives up.</param>
    public static Trained Train(FeatureColumns columns, ParallelQuery<Outcome> outcomes, Weights present, DateOnly today, IProgress<Progress>? progress = null, CancellationToken cancel = default)
    {
        progress?.Report(new(0, Steps, "judging what was put in"));
        var judged = outcomes.WithExecutionMode(ParallelExecutionMode.ForceParallelism).WithCancellation(cancel).Select(columns.ExampleOf).ToList();
        List<Example> examples = [.. judged.OfType<Example>().OrderBy(example => example.On).ThenBy(example => example.Id, StringComparer.Ordinal)];
        var (worked, invented) = (examples.Count(example => example.Worked), examples.Count(example => example.IsInvented));
        if (Math.Min(worked, examples.Count - worked) < LeastOutcomes / 5 || examples.Count < LeastOutcomes)
        {
            var tooFew = FormattableString.Invariant($"Training takes {LeastOutcomes} outcomes of parts that fit, {LeastOutcomes / 5} of them right first time and as many not; there are {worked} and {examples.Count - worked}.");
            return Ended(present, Choice.TooFew, tooFew, new Dictionary<string, double>());
        }

        var (model, gate, told) = Fit(examples, columns, Contends(present, columns) ? present : null, progress, cancel);
        var training = new Training(examples.Count, examples.Min(example => example.On), examples.Max(example => example.On), FiguresOf(gate, told)) { Invented = invented, Calibration = [.. Quality.Calibration(told).Select(bin => new CalibrationPoint(bin.Told, bin.Happened, bin.Outcomes))] };
        var weights = gate.Choice switch
        {
            Choice.Present => present,
            var choice => columns.WeightsOf(choice == Choice.Trained ? WeightsOrigin.Trained : WeightsOrigin.Rescaled, model.Costs, model.Records, today, training),
        };
        progress?.Report(new(Steps, Steps, "done"));
        return Ended(weights, gate.Choice, gate.Reason, training.Figures);

        Trained Ended(Weights weights, Choice choice, string reason, IReadOnlyDictionary<string, double> figures) => new(weights, choice, reason, figures, judged.Count, judged.Count - examples.Count, invented);
    }

    /// <summary>Whether new weights have to do better than those at present: than trained ones, and than what somebody set by hand here. Hand-set ones that came with the program contend rescaled.</summary>
    private static bool Contends(Weights present, FeatureColumns columns) => present.Origin switch
    {
        WeightsOrigin.Trained => true,
        WeightsOrigin.HandSet => present.Id != Weights.HandSet(columns.Family).Id,
        _ => !Rescaling.CameTo(present, columns),
    };

    /// <summary>The model that is to rank from now on, as <see cref="AdoptionGate"/> chooses.</summary>
    /// <param name="examples">Some of either kind.</param>
    /// <param name="columns">The family's columns.</param>
    /// <param name="contends">The weights that rank at present, where what is found now has to do better than they; null else.</param>
    /// <param name="progress">Is told of every step.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The model; what decided; and what costs of the model's kind told of each example that was held out, of none where nothing could be.</returns>
    public static (Model Model, AdoptionGate Gate, IReadOnlyList<HeldOut> Told) Fit(IReadOnlyList<Example> examples, FeatureColumns columns, Weights? contends = null, IProgress<Progress>? progress = null, CancellationToken cancel = default)
    {
        progress?.Report(new(1, Steps, "training on all of it"));
        var (rescaled, trained, present) = (Model.Rescaled(examples, columns), Model.Trained(examples, columns, cancel: cancel), contends is null ? null : Model.Of(contends, columns));
        var (done, telling) = (1, new Lock());
        var folds = Folds.Parted(examples, FoldCount).AsParallel().AsOrdered().WithCancellation(cancel).Select(fold =>
        {
            // From where all of it led it is a few steps to where nine tenths of it lead.
            var (byHand, byModel, byPresent) = (Model.Rescaled(fold.Learnt, columns).TellOf(fold.HeldOut), Model.Trained(fold.Learnt, columns, trained.Costs, cancel).TellOf(fold.HeldOut), present?.TellOf(fold.HeldOut));
            lock (telling) progress?.Report(new(++done, Steps, "holding out one place after the other"));
            return (Fold: new Fold(Told(fold.HeldOut, byHand), Told(fold.HeldOut, byModel), byPresent is null ? null : Told(fold.HeldOut, byPresent)), ByHand: byHand, ByModel: byModel, ByPresent: byPresent);
        }).ToList();
        var gate = AdoptionGate.Of([.. folds.Select(fold => fold.Fold)], contends?.Origin);
        return gate.Choice switch
        {
            Choice.Trained => (trained, gate, [.. folds.SelectMany(fold => fold.ByModel)]),
            Choice.Rescaled => (rescaled, gate, [.. folds.SelectMany(fold => fold.ByHand)]),
            _ => (present!, gate, [.. folds.SelectMany(fold => fold.ByPresent!)]),
        };

        static FoldTold Told(IReadOnlyList<Example> heldOut, IReadOnlyList<HeldOut> told) => new(Quality.LogLoss(told), Quality.Order(heldOut, told));
    }

    /// <summary>What is kept with the weights: how those that rank from now on did where they had not seen the outcome.</summary>
    private static IReadOnlyDictionary<string, double> FiguresOf(AdoptionGate gate, IReadOnlyList<HeldOut> told) => told.Count == 0 ? gate.Figures : new Dictionary<string, double>(gate.Figures)
    {
        ["auc"] = Quality.Auc(told),
        ["calibrationError"] = Quality.CalibrationError(told),
        ["calibrationFloor"] = Quality.CalibrationFloor(told),
    };
}
