using System.Globalization;
using PartsMatch.Service.Exchange;
using Spectre.Console;

namespace PartsMatch.Service.Commands;

/// <summary>Shows on a terminal how far something has come; in a pipe nothing.</summary>
internal static class ProgressBar
{
    /// <summary>The terminal behind standard error, if there is one.</summary>
    public static IAnsiConsole? Behind(TextWriter errors) => ReferenceEquals(errors, Console.Error) && !Console.IsErrorRedirected
        ? AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) })
        : null;

    /// <summary>Runs an import under two bars: rows read, and rows written where any are.</summary>
    public static Task<T> ImportingAsync<T>(IAnsiConsole? console, bool takes, Func<IProgress<ImportProgress>?, Task<T>> run) => console is null ? run(null) : Bars(console).StartAsync(context =>
    {
        var read = context.AddTask("Rows read");
        var written = takes ? context.AddTask("Rows written") : null;
        return run(new Told(come =>
        {
            (read.MaxValue, read.Value) = (Math.Max(come.Rows, 1), come.Read);
            written?.Description(string.Create(CultureInfo.InvariantCulture, $"Rows written: {come.Written:#,0}"));
            // What says the same is not written: the second bar ends with the first.
            if (written is not null) (written.MaxValue, written.Value) = (Math.Max(come.Rows, 1), come.Read == come.Rows ? come.Rows : come.Written);
        }));
    });

    /// <summary>Runs an export while it counts the bytes that came: how many there will be nobody knows before.</summary>
    public static Task<T> ExportingAsync<T>(IAnsiConsole? console, Func<Action<long>?, Task<T>> run) => console is null ? run(null) : Bars(console).StartAsync(context =>
    {
        var bytes = context.AddTask("Exporting").IsIndeterminate();
        return run(come => bytes.Description(string.Create(CultureInfo.InvariantCulture, $"Exported {come / 1000:#,0} kB")));
    });

    /// <summary>Runs a cross-reference under a bar of the rows that came.</summary>
    public static Task<T> CrossReferencingAsync<T>(IAnsiConsole? console, int rows, Func<Action<int>?, Task<T>> run) => console is null ? run(null) : Bars(console).StartAsync(context =>
    {
        var bar = context.AddTask("Rows answered", maxValue: Math.Max(rows, 1));
        return run(come => bar.Value(come).Description(string.Create(CultureInfo.InvariantCulture, $"Rows answered: {Math.Min(come, rows):#,0} of {rows:#,0}")));
    });

    /// <summary>Runs a training under a bar of its steps.</summary>
    public static Task<T> TrainingAsync<T>(IAnsiConsole? console, Func<Action<int, int, string>?, Task<T>> run) => console is null ? run(null) : Bars(console).StartAsync(context =>
    {
        var bar = context.AddTask("Training");
        return run((done, of, what) => bar.Description(Markup.Escape($"Training: {what}")).MaxValue(of).Value(done));
    });

    private static Progress Bars(IAnsiConsole console) => console.Progress().AutoClear(true).Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn());

    private sealed class Told(Action<ImportProgress> tell) : IProgress<ImportProgress>
    {
        public void Report(ImportProgress value) => tell(value);
    }
}
