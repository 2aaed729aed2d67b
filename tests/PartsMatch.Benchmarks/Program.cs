using System.CommandLine;
using PartsMatch.Benchmarks.Columns;
using PartsMatch.Benchmarks.Engine;
using PartsMatch.Benchmarks.Judging;
using PartsMatch.Benchmarks.Learning;
using PartsMatch.Benchmarks.Lists;
using PartsMatch.Benchmarks.Serving;
using PartsMatch.Benchmarks.Starting;
using PartsMatch.Benchmarks.Unknowns;
using Spectre.Console;

// What the program is measured by: each command prints what it found, and the machine it ran on. Run them in Release, with nothing else going on.
var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Out) });
console.Profile.Width = 400;
Command[] commands =
[
    EngineCommand.Make(console), ColumnsCommand.Make(console), JudgingCommand.Make(console), ListsCommand.Make(console), ServiceCommand.Make(console), StartCommand.Make(console), LoadCommand.Make(), ModelCommand.Make(console), TrainingCommand.Make(console), UnknownsCommand.Make(console),
];
var root = new RootCommand("PartsMatch.Benchmarks: how fast it is, beside what else could be used.");
foreach (var command in commands) root.Add(command);
try
{
    return await root.Parse(args).InvokeAsync(new() { EnableDefaultExceptionHandler = false });
}
catch (AnswersDifferException differ)
{
    await Console.Error.WriteLineAsync(differ.Message);
    return 1;
}
