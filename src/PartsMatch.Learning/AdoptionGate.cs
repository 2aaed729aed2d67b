using PartsMatch.Ranking;
using static System.FormattableString;

namespace PartsMatch.Learning;

/// <summary>What is to rank.</summary>
public enum Choice
{
    /// <summary>Hand-set costs, rescaled.</summary>
    Rescaled,

    /// <summary>Those trained just now.</summary>
    Trained,

    /// <summary>Those that rank at present, which were trained before.</summary>
    Present,

    /// <summary>Those that rank at present, whatever they are, as too few outcomes are known to train any.</summary>
    TooFew,
}

/// <summary>How all did on one fold.</summary>
/// <param name="Rescaled">Hand-set costs, rescaled to the other folds.</param>
/// <param name="Trained">Those trained on the other folds.</param>
/// <param name="Present">Those that rank at present, where these are somebody's own or were trained: trained ones may have seen the fold. Null else.</param>
public sealed record Fold(FoldTold Rescaled, FoldTold Trained, FoldTold? Present = null);

/// <summary>
/// What is to rank from now on. Trained costs are preferred to rescaled hand-set ones only where they do better on what they have not seen, since hand-set ones are easier to explain; and where trained ones rank at present, or
/// ones that somebody set by hand here, what is preferred takes their place only where it does better than they do.
/// </summary>
/// <param name="Choice">What is to rank.</param>
/// <param name="Trained">Trained costs against rescaled hand-set ones.</param>
/// <param name="Preferred">What is preferred of these against what ranks at present; null where that does not contend.</param>
/// <param name="LossRescaled">The mean loss of rescaled hand-set costs, nats.</param>
/// <param name="LossTrained">That of trained ones.</param>
/// <param name="LossPresent">That of those that rank at present; null where these do not contend.</param>
/// <param name="Present">What those that rank at present are, where they contend.</param>
public sealed record AdoptionGate(Choice Choice, Contest Trained, Contest? Preferred, double LossRescaled, double LossTrained, double? LossPresent, WeightsOrigin? Present)
{
    /// <summary>Fewer folds than this prove nothing: the error of a mean of two or three is too uncertain itself (practice).</summary>
    public const int LeastFolds = 5;

    /// <summary>Judges folds.</summary>
    /// <param name="all">In their order, at least <see cref="LeastFolds"/>, or nothing is measured; each says how what ranks at present did, or none does.</param>
    /// <param name="contends">What those that rank at present are, where they contend; null else.</param>
    public static AdoptionGate Of(IReadOnlyList<Fold> all, WeightsOrigin? contends = null)
    {
        var folds = all.Count < LeastFolds ? [] : all;
        FoldTold[] rescaled = [.. folds.Select(fold => fold.Rescaled)], trained = [.. folds.Select(fold => fold.Trained)], present = [.. folds.Select(fold => fold.Present).OfType<FoldTold>()];
        var byTraining = Contest.Of(trained, rescaled);
        var best = byTraining.IsWon ? Choice.Trained : Choice.Rescaled;
        var preferred = contends is not null ? Contest.Of(byTraining.IsWon ? trained : rescaled, present) : null;
        return new(preferred is { IsWon: false } ? Choice.Present : best, byTraining, preferred, Loss(rescaled), Loss(trained), contends is not null ? Loss(present) : null, contends);
    }

    /// <summary>Why, in a sentence or two.</summary>
    public string Reason => double.IsInfinity(Trained.StandardError)
        ? $"All outcomes are of fewer than {LeastFolds} places, so that too little can be held out to prove anything: {Then}."
        : Preferred is null
            ? $"{Words(Trained, "Trained weights lose", "rescaled hand-set ones", LossTrained, LossRescaled)}: {Then}."
            : $"{Words(Trained, "Trained weights lose", "rescaled hand-set ones", LossTrained, LossRescaled)}. {AgainstPresent(Preferred)}: {Then}.";

    /// <summary>What is kept with the weights.</summary>
    public IReadOnlyDictionary<string, double> Figures
    {
        get
        {
            // Where too little could be held out nothing was measured.
            if (double.IsInfinity(Trained.StandardError)) return new Dictionary<string, double>();
            var figures = new Dictionary<string, double> { ["logLossRescaled"] = LossRescaled, ["logLossTrained"] = LossTrained, ["gain"] = Trained.Gain, ["standardError"] = Trained.StandardError };
            if (double.IsFinite(Trained.OrderError)) (figures["orderGain"], figures["orderError"]) = (Trained.OrderGain, Trained.OrderError);
            if (LossPresent is { } present) figures["logLossPresent"] = present;
            return figures;
        }
    }

    private string Then => Choice switch
    {
        Choice.Trained => "they are taken",
        Choice.Rescaled => "hand-set weights rank, rescaled",
        _ => "those that rank at present stay",
    };

    private string AgainstPresent(Contest preferred)
    {
        var (who, loss) = Trained.IsWon ? ("They lose", LossTrained) : ("The latter lose", LossRescaled);
        return $"{Words(preferred, who, "those that rank at present", loss, LossPresent!.Value)}; those were {(Present == WeightsOrigin.Trained ? "trained before, and may have seen some of these outcomes" : "set by hand here")}";
    }

    private static string Words(Contest contest, string loses, string whom, double loss, double lossOfOther)
    {
        var lost = Invariant($"{loses} {Math.Abs(contest.Gain):0.0000} nats {(contest.Gain >= 0 ? "less" : "more")} than {whom} on outcomes that they had not seen ({loss:0.0000} against {lossOfOther:0.0000})");
        if (!contest.LosesLess) return Invariant($"{lost}, and would have to lose more than {contest.StandardError:0.0000} less, one standard error");
        return contest.IsOutOfOrder
            ? Invariant($"{lost}, more than one standard error of {contest.StandardError:0.0000}, but put parts that were put in for one old part in a worse order: their NDCG@5 is {-contest.OrderGain:0.0000} less, more than two standard errors of {contest.OrderError:0.0000}")
            : Invariant($"{lost}, more than one standard error of {contest.StandardError:0.0000}");
    }

    private static double Loss(FoldTold[] folds) => folds.Length == 0 ? 0 : folds.Average(fold => fold.Loss);
}
