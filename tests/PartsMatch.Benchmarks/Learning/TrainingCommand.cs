using System.CommandLine;
using System.Diagnostics;
using PartsMatch.Demo;
using PartsMatch.Demo.Outcomes;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Learning;
using PartsMatch.Ranking;
using PartsMatch.Service.Counter;
using PartsMatch.Store;
using Spectre.Console;
using static System.FormattableString;
using NamedText = PartsMatch.Store.NamedText;
using Progress = PartsMatch.Learning.Progress;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>How long a training takes from outcomes that lie in a store: to read them, to judge what was put in, and to fit with ten folds held out.</summary>
internal static class TrainingCommand
{
    private const int Group = 4_000;

    public static Command Make(IAnsiConsole console)
    {
        var kind = new Option<string>("--kind") { Description = "The kind of part.", DefaultValueFactory = _ => "motor" };
        var count = new Option<int>("--outcomes") { Description = "How many outcomes.", DefaultValueFactory = _ => 100_000 };
        var command = new Command("training", "Measure how long a training takes.") { kind, count };
        command.SetAction(given => Run(console, given.GetValue(kind)!, given.GetValue(count)));
        return command;
    }

    private static void Run(IAnsiConsole console, string kind, int count)
    {
        console.WriteLine(Machine.Line(TimeProvider.System));
        var folder = Directory.CreateTempSubdirectory("partsmatch-benchmark-");
        try
        {
            var parts = DemoCatalogue.Make().Families.Single(family => family.Family.Kind == kind);
            using var store = PartStore.Open(new(folder.FullName), TimeProvider.System);
            Write(store, parts.Parts.Select(part => (AskedWrite)new AskedWrite.Add(PartOf(kind, parts.Family.Shape, part))));
            var wrote = Stopwatch.GetTimestamp();
            Write(store, DemoCatalogue.DistrictOf(parts).Outcomes(count).Select(outcome => new AskedWrite.Record(DraftOf(kind, outcome))));
            console.WriteLine(Invariant($"{count:#,0} outcomes drawn and recorded in {Stopwatch.GetElapsedTime(wrote).TotalSeconds:0.0} s."));

            using var catalogues = new Catalogues(store);
            for (var time = 0; time < 2; time++) Train(console, Families.Find(kind)!, new OutcomeRecords(store, catalogues, TimeProvider.System), time == 0 ? "first" : "again");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Train(IAnsiConsole console, Family family, OutcomeRecords records, string which)
    {
        var (start, busy) = (Stopwatch.GetTimestamp(), Busy());
        var judged = (Took: 0.0, Busy: 0.0);
        var told = new Told(come =>
        {
            if (come.Done == 1 && judged.Took == 0) judged = (Stopwatch.GetElapsedTime(start).TotalSeconds, Busy() - busy);
        });
        var trained = Trainer.Train(new FeatureColumns(family), records.LessonsOf(family), Weights.HandSet(family), DateOnly.FromDateTime(DateTime.UtcNow), told);
        var (all, allBusy) = (Stopwatch.GetElapsedTime(start).TotalSeconds, Busy() - busy);
        console.WriteLine(Invariant($"{which}: {all:0.0} s (aim: 10) from {trained.Outcomes:#,0} outcomes, of it {judged.Took:0.0} s to fetch and judge them; {allBusy:0.0} s of processor time, of it {judged.Busy:0.0} to fetch and judge. {trained.Reason}"));
    }

    private static double Busy() => Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds;

    private static void Write(PartStore store, IEnumerable<AskedWrite> writes)
    {
        foreach (var group in writes.Chunk(Group)) store.WriteAllAsync(group, "the benchmark").GetAwaiter().GetResult();
    }

    private static PartDraft PartOf(string kind, Shape shape, DemoPart part) =>
        new(part.Number, kind, part.Maker.Name, part.Title, part.IsDiscontinued ? PartStatus.Discontinued : PartStatus.Current, [.. shape.Write(part.Spec).Select(text => new NamedText(text.Name, text.Text))], []);

    private static OutcomeDraft DraftOf(string kind, DemoOutcome outcome) =>
        new(outcome.Id, kind, outcome.On, outcome.Place, outcome.Old, [], [.. outcome.Site.Select(text => new NamedText(text.Name, text.Text))], outcome.New, outcome.Result, outcome.Reason, string.Empty, string.Empty);

    private sealed class Told(Action<Progress> tell) : IProgress<Progress>
    {
        public void Report(Progress value) => tell(value);
    }
}
