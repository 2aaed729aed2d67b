using System.CommandLine;
using PartsMatch.Demo;
using Spectre.Console;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>How well what is learnt from invented outcomes tells those of places and days that it has not seen, beside plainer ways, a rival that nobody can explain, and the truth.</summary>
internal static class ModelCommand
{
    /// <summary>Of motors so many outcomes are drawn, that over 5,000 are held out.</summary>
    private const int OfMotors = 180_000;

    private const int OfOthers = 60_000;

    public static Command Make(IAnsiConsole console)
    {
        var kind = new Option<string?>("--kind") { Description = "Of one kind of part; of all where nothing is said." };
        var card = new Option<FileInfo?>("--card") { Description = "Where the page is written, besides being printed." };
        var command = new Command("model", "Measure what is learnt from invented outcomes against plainer ways and the truth.") { kind, card };
        command.SetAction(given => Run(console, given.GetValue(kind), given.GetValue(card)));
        return command;
    }

    private static void Run(IAnsiConsole console, string? kind, FileInfo? card)
    {
        var pages = new List<string> { ModelCardWords.Introduction(Machine.Line(TimeProvider.System)) };
        console.WriteLine(pages[0]);
        foreach (var parts in DemoCatalogue.Make().Families.Where(family => kind is null || family.Family.Kind == kind))
        {
            var isMain = parts.Family.Kind == "motor";
            pages.Add(FamilyPage.Of(History.Of(parts, isMain ? OfMotors : OfOthers), isMain));
            console.WriteLine(pages[^1]);
        }

        if (card is not null) File.WriteAllText(card.FullName, string.Join('\n', pages).ReplaceLineEndings("\n").TrimEnd() + "\n");
    }
}
