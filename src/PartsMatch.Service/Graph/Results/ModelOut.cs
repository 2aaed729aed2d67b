using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Trainings;

namespace PartsMatch.Service.Graph.Results;

[Name("ModelReport")]
[Description("What parts of a kind are ranked by, and where that comes from: docs/weights.md says how costs become a likelihood.")]
internal sealed class ModelOut(ModelReport report, Catalogues catalogues)
{
    private readonly Weights _weights = report.Weights;

    [Description("The kind.")]
    public Family Kind => report.Family;

    [Description("Where the weights come from.")]
    public WeightsOrigin Origin => _weights.Origin;

    [Description("The day they were made; null when nobody wrote it down.")]
    public DateOnly? MadeOn => _weights.MadeOn;

    [Description("The log-odds of a part that nothing speaks against.")]
    public double Intercept => _weights.Intercept;

    [Description("What every aspect costs, in the family's order.")]
    public IEnumerable<AspectCostOut> Aspects => report.Family.Aspects.Select(aspect => new AspectCostOut(aspect, _weights.Aspects[aspect.Name]));

    [Description("What pairs of aspects cost besides, those that cost nothing too.")]
    public IEnumerable<PairCostOut> Pairs => _weights.Pairs.Select(pair => new PairCostOut(pair));

    [Description("Parts that have come back more often than their specs explain, those that cost most first.")]
    public IEnumerable<PartRecordOut> Records() => report.Records.Select(record => new PartRecordOut(record.Number, record.Cost, catalogues.Shelf));

    [Description("What the weights were trained on, and how they did; null where nobody wrote it down.")]
    public TrainingOut? Training => _weights.Training is { } training ? new(training) : null;

    [Description("Whether there are weights to go back to.")]
    public bool HasPrevious => report.HasPrevious;

    [Description("The last trainings and goings back, newest first, at most 20.")]
    public IEnumerable<TrainingEntryOut> Trainings => report.Log.Select(entry => new TrainingEntryOut(entry));

    [Description("The training that goes on, or that went on last since the service was started; null when none did.")]
    public TrainingRunOut? Run => report.Run is { } run ? new(report.Family, run) : null;
}

[Name("AspectCost")]
[Description("What an aspect costs, in units of log-odds; none is negative, and 0.69 halves the odds.")]
internal sealed class AspectCostOut(Aspect aspect, AspectCost cost)
{
    [Description("Its name.")]
    public string Aspect => aspect.Name;

    [Description("A few words for it.")]
    public string Title => aspect.Title;

    [Description("For a shortfall, the six heights of a curve that add up on the way: any, first, second, third and last quarter of the way to the limit, beyond it.")]
    public IEnumerable<double> Shortfall => cost.Shortfall.Heights;

    [Description("For a shortfall at the limit: the first five of the heights.")]
    public double AtLimit => cost.Shortfall.At(1);

    [Description("For an hour's work on its changes.")]
    public double Effort => cost.Effort;

    [Description("For a gap in the part's own spec.")]
    public double Unknown => cost.Unknown;
}

[Name("PairCost")]
[Description("What two aspects cost besides when both fall short.")]
internal sealed class PairCostOut(PairCost pair)
{
    [Description("Both aspects' names, with a plus between.")]
    public string Name => pair.Pair.Name;

    [Description("Why they belong together.")]
    public string Why => pair.Pair.Why;

    [Description("For both at their limit, in units of log-odds.")]
    public double Cost => pair.Cost;
}

[Name("PartRecord")]
[Description("A part that has come back more often than its spec explains.")]
internal sealed class PartRecordOut(string number, double cost, Shelf shelf)
{
    [Description("Its number, as the catalogue has it; in letters and digits alone when it has none of that number any more.")]
    public string Number => shelf.Find(number)?.Stored.Number ?? number;

    [Description("The part; null when the catalogue has none of that number any more.")]
    public Part? Part() => shelf.Find(number) is { } entry ? new(entry) : null;

    [Description("What it costs, in units of log-odds; above 0.")]
    public double Cost => cost;
}

[Name("TrainingData")]
[Description("What weights were trained on, and how they did.")]
internal sealed class TrainingOut(Training training)
{
    [Description("How many outcomes of parts that fit.")]
    public int Outcomes => training.Outcomes;

    [Description("How many of them are invented demo data, and say nothing of real parts; null where nobody counted.")]
    public int? Invented => training.Invented;

    [Description("The day of the first.")]
    public DateOnly From => training.From;

    [Description("The day of the last.")]
    public DateOnly To => training.To;

    [Description("What was measured.")]
    public IEnumerable<FigureOut> Figures => FigureOut.AllOf(training.Figures);

    [Description("What such weights told beside what happened, on outcomes held out: ten bins of equally many, the least likely first; empty where nobody kept it.")]
    public IEnumerable<CalibrationPointOut> Calibration => training.Calibration.Select(point => new CalibrationPointOut(point));
}

[Name("CalibrationPoint")]
[Description("What was told of some outcomes of much the same likelihood, beside what happened.")]
internal sealed class CalibrationPointOut(CalibrationPoint point)
{
    [Description("Their mean likelihood as told, 0 to 1.")]
    public double Told => point.Told;

    [Description("The share of them that was right the first time, 0 to 1.")]
    public double Happened => point.Happened;

    [Description("How many outcomes.")]
    public int Outcomes => point.Outcomes;

    [Description("How far the two would lie apart by chance alone, on the mean, if what was told is true.")]
    public double Floor => point.Floor;
}

[Name("Figure")]
[Description("Something that was measured of weights: docs/weights.md says what each is.")]
internal sealed class FigureOut(string name, double value)
{
    [Description("Its name.")]
    public string Name => name;

    [Description("Its value.")]
    public double Value => value;

    internal static IEnumerable<FigureOut> AllOf(IReadOnlyDictionary<string, double> figures) => figures.Select(figure => new FigureOut(figure.Key, figure.Value));
}

[Name("TrainingEntry")]
[Description("How a training ended, or who went back to earlier weights.")]
internal sealed class TrainingEntryOut(TrainingEntry entry)
{
    [Description("When it ended.")]
    public DateTimeOffset At => entry.At;

    [Description("The label of the key of whoever began it.")]
    public string By => entry.By;

    [Description("How it ended.")]
    public TrainingEnd End => entry.End;

    [Description("Whether trained weights were taken.")]
    public bool IsAdopted => entry.End == TrainingEnd.Adopted;

    [Description("How many outcomes there were; 0 where it ended before they were counted.")]
    public int Outcomes => entry.Outcomes;

    [Description("How many of them teach nothing: the part fails an aspect, or a reading was open that decides.")]
    public int LeftOut => entry.LeftOut;

    [Description("How many of the others are invented demo data, and say nothing of real parts; null where nobody counted.")]
    public int? Invented => entry.Invented;

    [Description("Why it ended so, in a sentence.")]
    public string Reason => entry.Reason;

    [Description("What was measured.")]
    public IEnumerable<FigureOut> Figures => FigureOut.AllOf(entry.Figures);
}

[Name("TrainingRun")]
[Description("A training: it goes on in the background. Ask model for how far it has come.")]
internal sealed class TrainingRunOut(Family family, TrainingState run)
{
    [Description("The kind that is trained.")]
    public Family Kind => family;

    [Description("The label of the key of whoever began it.")]
    public string By => run.By;

    [Description("When it was begun.")]
    public DateTimeOffset Since => run.At;

    [Description("Whether it goes on.")]
    public bool IsRunning => run.IsRunning;

    [Description("Steps done.")]
    public int Done => run.Come.Done;

    [Description("Steps in all.")]
    public int Of => run.Come.Of;

    [Description("What is done now, in a few words.")]
    public string What => run.Come.What;

    [Description("How it ended; null while it goes on.")]
    public TrainingEntryOut? Ended => run.Entry is { } entry ? new(entry) : null;
}
