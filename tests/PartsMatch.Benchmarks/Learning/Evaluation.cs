using PartsMatch.Learning;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>How somebody did.</summary>
/// <param name="Name">Who.</param>
/// <param name="Expected">Mean loss if every outcome that was held out happened again and again, by the truth: free of luck; null where no likelihood is told.</param>
/// <param name="LogLoss">Mean loss on what did happen, nats.</param>
/// <param name="Auc">Area under the curve; null of those who only put a list in order.</param>
/// <param name="CalibrationError">How far what was told is off what happened.</param>
/// <param name="CalibrationFloor">The same by chance alone.</param>
/// <param name="Ndcg">How near the first five are to the best order, 0 to 1.</param>
/// <param name="Regret">What the likeliest part is right more often than the first in the list.</param>
internal sealed record Standing(string Name, double? Expected, double? LogLoss, double? Auc, double? CalibrationError, double? CalibrationFloor, Bootstrap Ndcg, Bootstrap Regret);

/// <summary>Losses after so many examples, by who told.</summary>
/// <param name="Examples">How many were learnt from.</param>
/// <param name="Expected">Expected loss by name, nats.</param>
/// <param name="IsAdopted">Whether trained weights would be taken.</param>
internal sealed record CurvePoint(int Examples, IReadOnlyDictionary<string, double> Expected, bool IsAdopted);

/// <summary>What small samples do to the order, over many of them.</summary>
/// <param name="Examples">How many were learnt from.</param>
/// <param name="Mean">Mean gain in NDCG@5 over hand-set weights, rescaled.</param>
/// <param name="Worst">The worst of the samples.</param>
/// <param name="Adopted">In how many of them trained weights were taken.</param>
internal sealed record Resampled(int Examples, double Mean, double Worst, int Adopted);

/// <summary>Measures.</summary>
internal static class Evaluation
{
    public const int Resamples = 40;

    /// <summary>How somebody did on what was held out.</summary>
    public static Standing StandingOf(Teller teller, Split split, IReadOnlyList<OfferedNeed> needs)
    {
        List<HeldOut> told = [.. split.HeldOut.Select(one => new HeldOut(teller.ScoreOf(one.Case), one.Case.Example.Worked))];
        var likely = teller.TellsLikelihood;
        return new(
            teller.Name,
            likely ? ExpectedLoss(split.HeldOut, teller.ScoreOf) : null,
            likely ? Quality.LogLoss(told) : null,
            likely ? Quality.Auc(told) : null,
            likely ? Quality.CalibrationError(told) : null,
            likely ? Quality.CalibrationFloor(told) : null,
            Bootstrap.Of(needs.Select(need => (need.Lived.Outcome.Place, need.Ndcg(teller.ScoreOf)))),
            Bootstrap.Of(needs.Select(need => (need.Lived.Outcome.Place, need.Regret(teller.ScoreOf)))));
    }

    /// <summary>What is lost on the mean if all that was held out happened again and again.</summary>
    public static double ExpectedLoss(IReadOnlyList<Lived> heldOut, Func<Case, double> logOdds) => heldOut.Average(one =>
    {
        var z = logOdds(one.Case);
        return (one.Case.Right * Softplus(-z)) + ((1 - one.Case.Right) * Softplus(z));
    });

    /// <summary>What more and more examples bring.</summary>
    public static CurvePoint PointOf(Split split, FeatureColumns columns, int count)
    {
        var learnt = split.Examples(count);
        var expected = Teller.Taught(learnt, columns).ToDictionary(teller => teller.Name, teller => ExpectedLoss(split.HeldOut, teller.ScoreOf), StringComparer.Ordinal);
        return new(learnt.Count, expected, IsTeachable(learnt) && Trainer.Fit(learnt, columns).Gate.Choice == Choice.Trained);
    }

    /// <summary>Whether the order suffers where little is known: what training hands out, gate and all, against hand-set weights.</summary>
    public static Resampled ResampledOf(Split split, FeatureColumns columns, IReadOnlyList<OfferedNeed> needs, int count)
    {
        var gains = Enumerable.Range(0, Resamples).AsParallel().AsOrdered().Select(sample =>
        {
            var learnt = split.Examples(count, from: sample * count % Math.Max(1, split.Learnt.Count - count));
            var (model, gate, _) = Trainer.Fit(learnt, columns);
            if (gate.Choice != Choice.Trained) return (Gain: 0.0, IsAdopted: false);
            var rescaled = Model.Rescaled(learnt, columns);
            return (Gain: needs.Average(need => need.Ndcg(one => model.LogOdds(one.Example)) - need.Ndcg(one => rescaled.LogOdds(one.Example))), IsAdopted: true);
        }).ToList();
        return new(count, gains.Average(one => one.Gain), gains.Min(one => one.Gain), gains.Count(one => one.IsAdopted));
    }

    private static bool IsTeachable(IReadOnlyList<Example> learnt) => learnt.Any(one => one.Worked) && learnt.Any(one => !one.Worked);

    /// <summary>log(1 + e^z) without overflow.</summary>
    private static double Softplus(double z) => z > 0 ? z + Math.Log(1 + Math.Exp(-z)) : Math.Log(1 + Math.Exp(z));
}
