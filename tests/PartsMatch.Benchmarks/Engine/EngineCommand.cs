using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using PartsMatch.Benchmarks.Contactors;
using PartsMatch.Benchmarks.Motors;
using PartsMatch.Benchmarks.Parts;
using PartsMatch.Ranking;
using Spectre.Console;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>Ranked search over many parts of a family: the engine beside a plain loop and two databases, all on one thread.</summary>
internal static class EngineCommand
{
    private static readonly Dictionary<string, Func<int, int, ManyParts>> Kinds = new()
    {
        ["motor"] = (count, seed) => new ManyMotors(count, seed),
        ["contactor"] = (count, seed) => new ManyContactors(count, seed),
    };

    public static Command Make(IAnsiConsole console)
    {
        var kind = new Option<string>("--kind") { Description = $"Parts of which kind: {string.Join(" or ", Kinds.Keys)}.", DefaultValueFactory = _ => "motor" };
        kind.AcceptOnlyFromAmong([.. Kinds.Keys]);
        var parts = Counted("--parts", 1_000_000, BestRows.MostRows, "How many parts.");
        var needs = Counted("--needs", 200, 10_000, "How many different needs.");
        var seed = Counted("--seed", 1, 1_000_000, "What all chance follows from.");
        var alone = new Option<bool>("--without-databases") { Description = "Leave the databases out: how the engine grows is measured in a fraction of the time.", Arity = ArgumentArity.Zero };
        var command = new Command("engine", "Measure ranked search against a plain loop, SQLite and DuckDB.") { kind, parts, needs, seed, alone };
        command.SetAction(given => Run(console, Kinds[given.GetValue(kind)!], given.GetValue(parts), given.GetValue(needs), given.GetValue(seed), !given.GetValue(alone)));
        return command;
    }

    private static void Run(IAnsiConsole console, Func<int, int, ManyParts> kind, int count, int needs, int seed, bool hasDatabases)
    {
        var parts = Timed(console, "Designs drawn", () => kind(count, seed));
        console.WriteLine(Invariant($"{count:#,0} parts ({parts.Family.Title}), {needs} needs, seed {seed}. {Machine.Line(TimeProvider.System)}."));
        var weights = Weights.HandSet(parts.Family);
        var table = Timed(console, "Deduced and read into facets, on all cores", () => FacetTable.Of(parts));
        var asked = Timed(console, "Needs made and judged for the peers, on all cores", () => parts.Needs(needs, seed + 1)
            .AsParallel().AsOrdered().Select(need => new Asked(need, CodeLists.Of(table, weights, need))).ToList());
        EngineReport.Write(console, table, asked);

        var order = AspectOrder.Of(table, asked);
        List<Contender> contenders = [];
        try
        {
            contenders.Add(Timed(console, "Loaded into the plain loop's columns", () => new PlainLoop(table, weights)));
            if (hasDatabases)
            {
                contenders.Add(Timed(console, "Loaded into SQLite", () => new SqlitePeer(table, weights, order)));
                contenders.Add(Timed(console, "Loaded into DuckDB", () => new DuckDbPeer(table, weights, order, asked[0])));
            }

            contenders.AddRange(EngineUnderTest.Both(Timed(console, "Loaded into the engine, deduced and read anew", () => EngineUnderTest.Load(parts)), weights));
            EngineReport.Write(console, Race.Run(parts.Family, contenders, asked));
        }
        finally
        {
            foreach (var contender in contenders) contender.Dispose();
        }
    }

    internal static T Timed<T>(IAnsiConsole console, string what, Func<T> make)
    {
        var start = Stopwatch.GetTimestamp();
        var made = make();
        console.WriteLine(Invariant($"{what}: {Stopwatch.GetElapsedTime(start).TotalSeconds:0.0} s."));
        return made;
    }

    internal static Option<int> Counted(string name, int usual, int most, string description)
    {
        var option = new Option<int>(name) { Description = Invariant($"{description} 1 to {most}, {usual} where nothing is said."), DefaultValueFactory = _ => usual };
        option.Validators.Add(given =>
        {
            // What is no number the library refuses itself.
            if (given.Tokens is [var text] && int.TryParse(text.Value, CultureInfo.InvariantCulture, out var value) && (value < 1 || value > most)) given.AddError(Invariant($"{name} takes 1 to {most}."));
        });
        return option;
    }
}
