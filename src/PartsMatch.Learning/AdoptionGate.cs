using System.Runtime.InteropServices;

namespace PartsMatch.Learning;

/// <summary>How two models did on one fold that neither had seen.</summary>
/// <param name="Rescaled">Mean loss of hand-set costs rescaled, nats.</param>
/// <param name="Trained">Mean loss of trained ones, nats.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct FoldGain(double Rescaled, double Trained)
{
    /// <summary>How much less the trained ones lose.</summary>
    public double Gain => Rescaled - Trained;
}

/// <summary>Whether trained costs are taken: only where they lose less on what they have not seen, fold by fold, by more than one standard error. One fold's luck proves nothing, and hand-set costs are easier to explain.</summary>
/// <param name="IsOpen">Whether they are taken.</param>
/// <param name="Gain">The mean gain of a fold, nats.</param>
/// <param name="StandardError">Its standard error.</param>
/// <param name="Rescaled">The mean loss of rescaled hand-set costs.</param>
/// <param name="Trained">The mean loss of trained ones.</param>
public sealed record AdoptionGate(bool IsOpen, double Gain, double StandardError, double Rescaled, double Trained)
{
    /// <summary>Judges folds.</summary>
    public static AdoptionGate Of(IReadOnlyList<FoldGain> folds)
    {
        if (folds.Count < 2) return new(false, 0, double.PositiveInfinity, Mean(folds, fold => fold.Rescaled), Mean(folds, fold => fold.Trained));
        var mean = folds.Average(fold => fold.Gain);
        var error = Math.Sqrt(folds.Sum(fold => Math.Pow(fold.Gain - mean, 2)) / (folds.Count - 1) / folds.Count);
        return new(mean > error, mean, error, Mean(folds, fold => fold.Rescaled), Mean(folds, fold => fold.Trained));
    }

    /// <summary>Why, in a sentence.</summary>
    public string Reason => FormattableString.Invariant(double.IsInfinity(StandardError)
        ? (FormattableString)$"All outcomes are of one place, or of a few that are held out together, so that nothing is left to learn from: hand-set weights rank, rescaled."
        : IsOpen
            ? $"Trained weights lose {Gain:0.0000} nats less than rescaled hand-set ones on outcomes that they had not seen ({Trained:0.0000} against {Rescaled:0.0000}), more than one standard error of {StandardError:0.0000}: they are taken."
            : (FormattableString)$"Trained weights lose {Math.Abs(Gain):0.0000} nats {(Gain >= 0 ? "less" : "more")} than rescaled hand-set ones on outcomes that they had not seen ({Trained:0.0000} against {Rescaled:0.0000}), and would have to lose more than {StandardError:0.0000} less, one standard error: hand-set weights rank, rescaled.");

    /// <summary>What is kept with the weights.</summary>
    public IReadOnlyDictionary<string, double> Figures => new Dictionary<string, double>
    {
        ["isTrained"] = IsOpen ? 1 : 0,
        ["logLossRescaled"] = Rescaled,
        ["logLossTrained"] = Trained,
        ["gain"] = Gain,
        ["standardError"] = double.IsInfinity(StandardError) ? 0 : StandardError,
    };

    private static double Mean(IReadOnlyList<FoldGain> folds, Func<FoldGain, double> loss) => folds.Count == 0 ? 0 : folds.Average(loss);
}
