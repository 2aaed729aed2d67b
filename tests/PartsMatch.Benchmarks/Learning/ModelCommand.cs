using System.CommandLine;
using PartsMatch.Demo;
using PartsMatch.Learning;
using Spectre.Console;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>How well what is learnt tells what happens, beside plainer ways and beside the truth.</summary>
internal static class ModelCommand
{
    public static Command Make(IAnsiConsole console)
    {
        var command = new Command("model", "Measure the trained ranking on invented outcomes.");
        command.SetAction(_ => Run(console));
        return command;
    }

    private static void Run(IAnsiConsole console)
    {
        foreach (var family in DemoCatalogue.Make().Families)
        {
            var start = System.Diagnostics.Stopwatch.StartNew();
            var history = History.Of(family);
            console.WriteLine(Invariant($"{family.Family.Kind}: {history.Outcomes} outcomes, {history.All.Count} fit, {100.0 * history.All.Count(one => one.Example.Worked) / Math.Max(1, history.All.Count):0.0} % right, open {100.0 * history.All.Count(one => one.Example.Fixed > 0) / Math.Max(1, history.All.Count):0} %; {start.Elapsed.TotalSeconds:0.0} s"));
            var fam = history.Columns.Family;
            var miss = history.All.Take(1500).SelectMany(one => fam.Judge(one.Example.Outcome.Need, one.Example.Outcome.Part).Findings.Where(f => f.Aspect.IsDeciding && f.Finding.Verdict == PartsMatch.Fit.Judging.Verdict.Unknown).SelectMany(f => f.Finding.Missing.Select(m => f.Aspect.Name + " " + m.Side + " " + m.Field))).CountBy(x => x).OrderByDescending(x => x.Value).Take(9);
            console.WriteLine("  missing: " + string.Join("; ", miss.Select(m => $"{m.Key} {m.Value}")));
            var fails = history.FailsOf;
            console.WriteLine("  fails: " + string.Join("; ", fails.Take(9).Select(m => $"{m.Key} {m.Value}")));
            if (fails.Count > -1) continue;
            var learnt = history.All.Where(one => Folds.Of(one.Example.Outcome.Place, 5) != 0).Select(one => one.Example).ToList();
            var held = history.All.Where(one => Folds.Of(one.Example.Outcome.Place, 5) == 0).ToList();
            if (held.Count == 0) continue;
            start.Restart();
            var model = Model.Trained(learnt, history.Columns);
            console.WriteLine(Invariant($"  trained {start.Elapsed.TotalSeconds:0.0} s"));
            var base0 = learnt.Count(one => one.Worked) / (double)learnt.Count;
            var lightGbm = Rivals.LightGbm(learnt, history.Columns.Count);
            var rescaled = Model.Rescaled(learnt, history.Columns);
            var hand = new Model(Costs.Of(Ranking.Weights.HandSet(history.Columns.Family), history.Columns), new Dictionary<string, double>());
            var free = new Model(PenalisedFit.Of(learnt, Prior.None(history.Columns.Count)), new Dictionary<string, double>());
            void Say(string name, Func<Lived, double> logOdds) => console.WriteLine(Invariant($"  {name,-20} {held.Average(one => Loss(logOdds(one), one.Example.Worked)):0.0000}"));
            Say("base rate", _ => Math.Log(base0 / (1 - base0)));
            Say("hand-set", one => hand.LogOdds(one.Example));
            Say("rescaled", one => rescaled.LogOdds(one.Example));
            Say("unpenalised", one => free.LogOdds(one.Example));
            Say("trained, no record", one => one.Example.LogOdds(model.Costs));
            Say("trained", one => model.LogOdds(one.Example));
            Say("LightGBM", one => lightGbm(one.Example));
            Say("truth", one => Math.Log(one.Right / (1 - one.Right)));
        }
    }

    private static double Loss(double logOdds, bool worked)
    {
        var z = worked ? logOdds : -logOdds;
        return z > 0 ? Math.Log(1 + Math.Exp(-z)) : Math.Log(1 + Math.Exp(z)) - z;
    }
}
