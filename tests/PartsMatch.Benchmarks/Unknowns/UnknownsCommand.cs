using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using PartsMatch.Benchmarks.Engine;
using PartsMatch.Demo;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Unknowns;
using Spectre.Console;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Unknowns;

/// <summary>How well likelihoods are told of needs with hidden fields, and how fast: against judging every part for every known machine, against the plainer way, and against the need with nothing hidden.</summary>
internal static class UnknownsCommand
{
    private const int Listed = 20;
    private const int WarmingUp = 30;
    private const int Rounds = 11;

    public static Command Make(IAnsiConsole console)
    {
        var kind = new Option<string>("--kind") { Description = "Parts of which kind.", DefaultValueFactory = _ => "motor" };
        kind.AcceptOnlyFromAmong([.. Families.All.Select(family => family.Kind)]);
        var needs = EngineCommand.Counted("--needs", 150, 2_000, "How many needs.");
        var hidden = EngineCommand.Counted("--hidden", 5, 50, "How many fields are hidden of each plate.");
        var most = EngineCommand.Counted("--most", Completions.Usual, Completions.Most, "How many completions are told apart.");
        var seed = EngineCommand.Counted("--seed", 1, 1_000_000, "What all chance follows from.");
        var command = new Command("unknowns", "Measure the likelihoods of needs with hidden fields against every known machine judged in full.") { kind, needs, hidden, most, seed };
        command.SetAction(given => Run(console, Families.Find(given.GetValue(kind)!)!, given.GetValue(needs), given.GetValue(hidden), given.GetValue(most), given.GetValue(seed)));
        return command;
    }

    private static void Run(IAnsiConsole console, Family family, int needs, int hidden, int most, int seed)
    {
        List<CataloguePart> parts = [.. DemoCatalogue.Make().Families.Single(one => one.Family.Kind == family.Kind).Parts.Select(part => new CataloguePart(part.Number, part.Spec, IsOffered: true))];
        var drawn = HiddenFields.Draw(family, parts, needs, hidden, seed);
        console.WriteLine(Invariant($"{parts.Count:#,0} parts ({family.Title}), {drawn.Machines.Count:#,0} known machines; {needs} plates of none of them, {hidden} fields hidden of each, up to {most} completions, seed {seed}. {drawn.Needs.Count} leave something open. {Machine.Line(TimeProvider.System)}."));
        if (drawn.Needs.Count == 0) return;
        var (catalogue, weights) = (Catalogue.Of(family, parts), Weights.HandSet(family));
        var told = Told.Of(drawn, catalogue, weights, new Random(seed + 1), Listed, most);
        Write(
            console,
            ["likelihood as shown, in whole percent, against every machine judged in full", "likelihoods", "mean error", "worst error"],
            [Row("the first 20 listed", told.First), Row(Invariant($"{Listed} more by chance"), told.ByChance)]);
        Write(
            console,
            ["against the need with nothing hidden", "likelihoods", "mean error", "root mean square", "told too high by", "calibration error"],
            [AgainstTruth("as shown", told.Shown), AgainstTruth("every machine by nearness", told.ByNearness), AgainstTruth("machines that agree or not", told.ByAgreement)]);
        Write(
            console,
            ["told", "by nearness, as shown: told", "is", "likelihoods", "agree or not: told", "is", "likelihoods"],
            [.. told.Shown.Calibration.Join(told.ByAgreement.Calibration, one => one.Tenth, other => other.Tenth, (one, other) => (string[])[Invariant($"{10 * one.Tenth} to {10 * (one.Tenth + 1)} %"), Figure(one.Told), Figure(one.Is), Whole(one.Count), Figure(other.Told), Figure(other.Is), Whole(other.Count)])]);
        Times(console, drawn, catalogue, weights, most, told.BruteForce);
    }

    private static void Times(IAnsiConsole console, HiddenFields drawn, Catalogue catalogue, Weights weights, int most, TimeSpan bruteForce)
    {
        var (first, completing, again, full) = (Rows(), Rows(), Rows(), Rows());
        for (var round = -WarmingUp; round < Rounds; round++)
        {
            foreach (var (at, need) in drawn.Needs.Index())
            {
                // Copies, which remember nothing of what follows from the need.
                var (open, known) = (need.Open with { }, need.Full with { });
                var start = Stopwatch.GetTimestamp();
                var completions = drawn.Machines.Complete(open, most);
                var completed = Stopwatch.GetTimestamp();
                Ranker.Rank(catalogue, weights, new(open, null, Listed, null) { Completions = completions });
                var ranked = Stopwatch.GetTimestamp();
                Ranker.Rank(catalogue, weights, new(open, null, Listed, null) { Completions = completions });
                var rankedAgain = Stopwatch.GetTimestamp();
                Ranker.Rank(catalogue, weights, new(known, null, Listed, null));
                var rankedFull = Stopwatch.GetTimestamp();
                if (round < 0) continue;
                (first[at][round], completing[at][round]) = (ranked - start, completed - start);
                (again[at][round], full[at][round]) = (rankedAgain - ranked, rankedFull - rankedAgain);
            }
        }

        Write(
            console,
            ["ms a query, the first 20", "median", "99 of 100", "most"],
            [Spread("a need with unknowns, first answer", first), Spread("– of which completing it", completing), Spread("the same asked again", again), Spread("the need with nothing hidden", full)]);
        console.WriteLine(Invariant($"Of every need the median of {Rounds} rounds, after {WarmingUp} to warm up. Brute force took {bruteForce.TotalMilliseconds / drawn.Needs.Count:#,0} ms a need for {2 * Listed} parts, {bruteForce.TotalSeconds * Stopwatch.Frequency / first.Sum(Median):#,0} times as long as the whole list."));

        long[][] Rows() => [.. drawn.Needs.Select(_ => new long[Rounds])];
    }

    private static string[] Spread(string name, long[][] ticks)
    {
        var sorted = ticks.Select(Median).Order().ToList();
        return [name, Of(0.5), Of(0.99), Of(1)];

        string Of(double share) => (1e3 * sorted[Math.Min(sorted.Count - 1, (int)(share * sorted.Count))] / Stopwatch.Frequency).ToString("0.000", CultureInfo.InvariantCulture);
    }

    private static long Median(long[] rounds) => rounds.Order().ElementAt(rounds.Length / 2);

    private static string[] Row(string name, ToldAgainst told) => [name, Whole(told.Count), Figure(told.MeanError), Figure(told.WorstError)];

    private static string[] AgainstTruth(string name, ToldAgainst told) =>
        [name, Whole(told.Count), Figure(told.MeanError), Figure(told.RootMeanSquare), told.Bias.ToString("+0.0000;−0.0000", CultureInfo.InvariantCulture), Figure(told.CalibrationError)];

    private static void Write(IAnsiConsole console, string[] heads, IReadOnlyList<string[]> rows)
    {
        var table = new Table().Border(TableBorder.Markdown);
        foreach (var head in heads) table.AddColumn(head);
        foreach (var column in table.Columns.Skip(1)) column.RightAligned();
        foreach (var row in rows) table.AddRow(row);
        console.Write(table);
    }

    private static string Figure(double value) => value.ToString("0.0000", CultureInfo.InvariantCulture);

    private static string Whole(int value) => value.ToString("#,0", CultureInfo.InvariantCulture);
}
