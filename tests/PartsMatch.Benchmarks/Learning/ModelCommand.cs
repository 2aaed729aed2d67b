using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using PartsMatch.Demo;
using PartsMatch.Learning;
using PartsMatch.Ranking;
using Spectre.Console;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>How well what is learnt from invented outcomes tells those of places that it has not seen, beside plainer ways, a rival that nobody can explain, and the truth.</summary>
internal static class ModelCommand
{
    /// <summary>One place in so many is held out.</summary>
    private const int Folds = 5;

    public static Command Make(IAnsiConsole console)
    {
        var kind = new Option<string?>("--kind") { Description = "Of one kind of part; of all where nothing is said." };
        var command = new Command("model", "Measure what is learnt from invented outcomes against plainer ways and the truth.") { kind };
        command.SetAction(given => Run(console, given.GetValue(kind)));
        return command;
    }

    private static void Run(IAnsiConsole console, string? kind)
    {
        console.WriteLine(Machine.Line(TimeProvider.System));
        foreach (var parts in DemoCatalogue.Make().Families.Where(family => kind is null || family.Family.Kind == kind)) Run(console, History.Of(parts));
    }

    private static void Run(IAnsiConsole console, History history)
    {
        var (title, worked) = (history.Columns.Family.Title, history.All.Count(one => one.Example.Worked));
        console.WriteLine(Invariant($"{title}: {history.Outcomes:#,0} invented outcomes; {history.All.Count:#,0} of parts that fit, with all known that decides, {100.0 * worked / Math.Max(1, history.All.Count):0} % of them right first time."));
        var heldOut = history.All.Where(IsHeldOut).ToList();
        List<Example> learnt = [.. history.All.Where(one => !IsHeldOut(one)).Select(one => one.Example)];
        if (heldOut.Count == 0 || learnt.Count < Trainer.LeastOutcomes) return;

        var start = Stopwatch.GetTimestamp();
        var trained = Model.Trained(learnt, history.Columns);
        console.WriteLine(Invariant($"Trained on {learnt.Count:#,0} in {Stopwatch.GetElapsedTime(start).TotalSeconds:0.00} s; {trained.Records.Count} parts have a record."));
        var (byHand, rescaled) = (Costs.Of(Weights.HandSet(history.Columns.Family), history.Columns), Model.Rescaled(learnt, history.Columns));
        var (plain, trees) = (PenalisedFit.Of(learnt, Prior.None(history.Columns.Count)), Rivals.LightGbm(learnt, history.Columns.Count));
        var share = learnt.Count(example => example.Worked) / (double)learnt.Count;

        var table = new Table().Border(TableBorder.Markdown);
        foreach (var head in (string[])["told by", "log-loss, nats", "area under the curve", "calibration error", "by chance alone"]) table.AddColumn(head);
        foreach (var column in table.Columns.Skip(1)) column.RightAligned();
        Add("how many are right, whatever the part", _ => Math.Log(share / (1 - share)));
        Add("hand-set weights", one => one.Example.LogOdds(byHand));
        Add("hand-set weights, rescaled", one => rescaled.LogOdds(one.Example));
        Add("logistic, nothing held", one => one.Example.LogOdds(plain));
        Add("trained", one => trained.LogOdds(one.Example));
        Add("boosted trees", one => trees(one.Example));
        Add("the truth that outcomes were drawn from", one => Math.Log(one.Right / (1 - one.Right)));
        console.Write(table);

        void Add(string name, Func<Lived, double> logOdds)
        {
            List<HeldOut> told = [.. heldOut.Select(one => new HeldOut(logOdds(one), one.Example.Worked))];
            table.AddRow(name, Figure(Quality.LogLoss(told)), Figure(Quality.Auc(told)), Figure(Quality.CalibrationError(told)), Figure(Quality.CalibrationFloor(told)));
        }
    }

    private static bool IsHeldOut(Lived one) => PartsMatch.Learning.Folds.Of(one.Example.Outcome.Place, Folds) == 0;

    private static string Figure(double value) => value.ToString("0.0000", CultureInfo.InvariantCulture);
}
