using PartsMatch.Ranking;

namespace PartsMatch.Learning;

/// <summary>How far a training has come.</summary>
/// <param name="Done">Steps done.</param>
/// <param name="Of">Steps in all.</param>
/// <param name="What">What is done now, in a few words.</param>
public sealed record Progress(int Done, int Of, string What);

/// <summary>What a training came to.</summary>
/// <param name="Weights">The weights to rank by from now on: trained ones, or hand-set ones rescaled.</param>
/// <param name="IsAdopted">Whether the trained ones are better enough to be taken.</param>
/// <param name="Reason">Why, in a sentence.</param>
/// <param name="LeftOut">How many outcomes teach nothing: the part fails an aspect, or a reading was open that decides.</param>
public sealed record Trained(Weights Weights, bool IsAdopted, string Reason, int LeftOut);

/// <summary>Trains a family's weights, and takes them only where they are shown to be better.</summary>
public static class Trainer
{
    private const int FoldCount = 10;

    /// <summary>Fewer outcomes than this, or fewer than a fifth of it of either kind, train nothing (practice).</summary>
    public const int LeastOutcomes = 50;

    /// <summary>Trains on outcomes. Same outcomes in the same order, same weights.</summary>
    /// <param name="columns">The family's columns.</param>
    /// <param name="outcomes">What happened.</param>
    /// <param name="today">The day that the weights are made on.</param>
    /// <param name="progress">Is told of every step.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>Null with what is missing when there are too few outcomes.</returns>
    public static (Trained? Trained, string? TooFew) Train(FeatureColumns columns, IReadOnlyList<Outcome> outcomes, DateOnly today, IProgress<Progress>? progress = null, CancellationToken cancel = default)
    {
        progress?.Report(new(0, FoldCount + 2, "judging what was put in"));
        List<Example> examples = [.. outcomes.AsParallel().AsOrdered().WithCancellation(cancel).Select(columns.ExampleOf).OfType<Example>()];
        var worked = examples.Count(example => example.Worked);
        if (Math.Min(worked, examples.Count - worked) < LeastOutcomes / 5 || examples.Count < LeastOutcomes)
        {
            return (null, FormattableString.Invariant($"Training takes {LeastOutcomes} outcomes of parts that fit, {LeastOutcomes / 5} of them right first time and as many not; there are {worked} and {examples.Count - worked}."));
        }

        var (gains, told) = (new List<FoldGain>(), new List<HeldOut>());
        foreach (var (learnt, heldOut) in Folds.Parted(examples, FoldCount))
        {
            progress?.Report(new(1 + gains.Count, FoldCount + 2, "holding out one place after the other"));
            var (rescaled, trained) = (Model.Rescaled(learnt, columns), Model.Trained(learnt, columns, cancel));
            var (byHand, byModel) = (rescaled.TellOf(heldOut), trained.TellOf(heldOut));
            gains.Add(new(Quality.LogLoss(byHand), Quality.LogLoss(byModel), heldOut.Count));
            told.AddRange(byModel);
        }

        progress?.Report(new(FoldCount + 1, FoldCount + 2, "training on all of it"));
        var gate = AdoptionGate.Of(gains);
        var model = gate.IsOpen ? Model.Trained(examples, columns, cancel) : Model.Rescaled(examples, columns);
        var training = new Training(examples.Count, examples.Min(example => example.Outcome.On), examples.Max(example => example.Outcome.On), FiguresOf(gate, told)) { Calibration = [.. Quality.Calibration(told).Select(bin => new CalibrationPoint(bin.Told, bin.Happened, bin.Outcomes))] };
        var weights = columns.WeightsOf(model.Costs, model.Records, today, training);
        progress?.Report(new(FoldCount + 2, FoldCount + 2, "done"));
        return (new(weights, gate.IsOpen, gate.Reason, outcomes.Count - examples.Count), null);
    }

    /// <summary>What is kept with the weights: how the trained ones did where they had not seen the outcome.</summary>
    private static Dictionary<string, double> FiguresOf(AdoptionGate gate, List<HeldOut> told) => new(gate.Figures)
    {
        ["auc"] = Quality.Auc(told),
        ["calibrationError"] = Quality.CalibrationError(told),
        ["calibrationFloor"] = Quality.CalibrationFloor(told),
    };
}
