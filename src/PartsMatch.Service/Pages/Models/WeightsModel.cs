using System.Globalization;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Ranking;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Trainings;

namespace PartsMatch.Service.Pages.Models;

/// <summary>What a kind of part is ranked by, in words.</summary>
public sealed class WeightsModel
{
    /// <summary>So many parts with a record are listed.</summary>
    private const int MostRecords = 50;

    private readonly ModelReport _report;
    private readonly Weights _weights;

    public WeightsModel(ModelReport report, Shelf shelf, Units units, string? wrong = null)
    {
        (_report, _weights, Wrong) = (report, report.Weights, wrong);
        Hour = Median(_weights.Aspects.Values.Select(cost => cost.Effort).Where(Odds.Count));
        var aspects = report.Family.Aspects.Select(aspect => new AspectTold(aspect, _weights.Aspects[aspect.Name], Hour, units)).ToList();
        (Aspects, CostNothing) = ([.. aspects.Where(one => one.Counts)], [.. aspects.Where(one => !one.Counts).Select(one => InSentence.Of(one.Title))]);
        Records = [.. report.Records.Take(MostRecords).Select(record => (record.Number, shelf.Find(record.Number), Wording.Capital(Odds.Of(record.Cost))))];
    }

    public Family Family => _report.Family;

    public string Title => $"What parts are ranked by: {Family.Title}";

    /// <summary>Why what was asked for was not done; null where nothing is wrong.</summary>
    public string? Wrong { get; }

    /// <summary>Where the weights come from.</summary>
    public string Origin => _weights.Origin switch
    {
        WeightsOrigin.HandSet => "These are hand-set weights: a person's judgement, which was never held against what happened. A likelihood from them is an estimate.",
        WeightsOrigin.Rescaled => $"These are hand-set weights, brought to the scale of {Many(_weights.Training)}. Weights learnt from these outcomes were not taken; the trainings below say why.",
        _ => $"These weights were learnt from {Many(_weights.Training)}.",
    };

    /// <summary>What there is to say of demo data among what they were learnt from.</summary>
    public string? InventedWords => IsHandSet ? null : Invented.Words(_weights.Training?.Invented);

    public bool IsHandSet => _weights.IsHandSet;

    public string? MadeOn => _weights.MadeOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>How likely a part is that nothing speaks against.</summary>
    public string AtBest => FormattableString.Invariant($"A part that nothing speaks against is said to do the job the first time in {_weights.LikelihoodOf(Score.Zero).Percent} of 100 cases. Whatever speaks against it takes from these odds: halved, odds of 90 % become 82 %, and halved again 69 %.");

    /// <summary>What an hour's work usually costs, in units of log-odds; 0 where no work costs anything.</summary>
    public double Hour { get; }

    /// <summary>How the weights did on outcomes that they had not seen; null where nobody measured it.</summary>
    public string? Measured => Figure("logLossTrained") is { } trained && Figure("logLossRescaled") is { } rescaled
        ? FormattableString.Invariant($"To what then happened, on outcomes that were held out place by place, learnt weights gave {100 * Math.Exp(-trained):0.0} % (geometric mean), and hand-set ones rescaled {100 * Math.Exp(-rescaled):0.0} %.")
        : null;

    /// <summary>All that was measured, by name.</summary>
    public IReadOnlyList<(string Name, string Value)> Figures => [.. (_weights.Training?.Figures ?? new Dictionary<string, double>())
        .Select(figure => (NameOf(figure.Key), figure.Value.ToString("0.0000;−0.0000", CultureInfo.InvariantCulture)))];

    /// <summary>What was told beside what happened; null where nobody kept it.</summary>
    public CalibrationTold? Calibration => _weights.Training is { Calibration.Count: > 1 } training ? new(training.Calibration) : null;

    /// <summary>The aspects that cost anything, in the family's order.</summary>
    public IReadOnlyList<AspectTold> Aspects { get; }

    /// <summary>The titles of those that do not.</summary>
    public IReadOnlyList<string> CostNothing { get; }

    /// <summary>Pairs that cost anything.</summary>
    public IReadOnlyList<string> Pairs => [.. _weights.Pairs.Where(pair => Odds.Count(pair.Cost)).Select(pair =>
        $"{TitleOf(pair.One)} and {InSentence.Of(TitleOf(pair.Other))} together, because {pair.Pair.Why}: both at their limit, that {Odds.Of(pair.Cost)} besides.")];

    /// <summary>Parts that do worse than their specs say, the worst first.</summary>
    public IReadOnlyList<(string Number, CatalogueEntry? Part, string Costs)> Records { get; }

    public int MoreRecords => _weights.Records.Count - Records.Count;

    /// <summary>The training that goes on; null when none does.</summary>
    public TrainingState? Run => _report.Run is { IsRunning: true } run ? run : null;

    public bool HasPrevious => _report.HasPrevious;

    public IReadOnlyList<TrainingEntry> Log => _report.Log;

    public static string Of(TrainingEnd end) => end switch
    {
        TrainingEnd.Adopted => "learnt weights were taken",
        TrainingEnd.Rescaled => "hand-set weights were rescaled",
        TrainingEnd.Kept => "the weights of before stayed",
        TrainingEnd.TooFew => "too few outcomes",
        TrainingEnd.Stopped => "stopped",
        TrainingEnd.Failed => "failed",
        _ => "went back",
    };

    /// <summary>How many outcomes there were; nothing where it ended before they were counted.</summary>
    public static string? Outcomes(TrainingEntry entry) => (entry.Outcomes, entry.LeftOut) switch
    {
        (0, _) when entry.End is TrainingEnd.Stopped or TrainingEnd.Failed or TrainingEnd.WentBack => null,
        (_, 0) => FormattableString.Invariant($"{entry.Outcomes} outcomes."),
        _ => FormattableString.Invariant($"{entry.Outcomes} outcomes, {entry.LeftOut} of them teach nothing: the part does not fit, or something that decides was not known."),
    };

    private static string Many(Training? from) => from is null
        ? "outcomes; nobody wrote down of which"
        : FormattableString.Invariant($"{from.Outcomes} outcomes from {from.From:yyyy-MM-dd} to {from.To:yyyy-MM-dd}");

    private double? Figure(string name) => _weights.Training?.Figures.TryGetValue(name, out var value) == true ? value : null;

    private string TitleOf(int aspect) => Family.Aspects[aspect].Title;

    /// <summary>A figure that this page does not know keeps its name.</summary>
    private static string NameOf(string figure) => figure switch
    {
        "logLossRescaled" => "mean loss of hand-set weights, rescaled, in nats (less is better)",
        "logLossTrained" => "mean loss of learnt weights, in nats",
        "gain" => "how much less learnt weights lose, in nats",
        "standardError" => "its standard error",
        "orderGain" => "how much nearer learnt weights put parts for one old part to their best order (NDCG@5)",
        "orderError" => "its standard error",
        "logLossPresent" => "mean loss of the weights that were in place, in nats",
        "auc" => "how often those that rank told which of two was right (area under the curve)",
        "calibrationError" => "how far the likelihood told was off what happened, on the mean",
        "calibrationFloor" => "how far it would be off by chance alone",
        _ => figure,
    };

    private static double Median(IEnumerable<double> costs)
    {
        double[] inOrder = [.. costs.Order()];
        return inOrder.Length == 0 ? 0 : inOrder[inOrder.Length / 2];
    }
}
