using System.Text.Json;
using PartsMatch.Service.Commands;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;
using PartsMatch.Store;
using Spectre.Console;

namespace PartsMatch.Service.Tests.Commands;

/// <summary>import and export, as they are typed.</summary>
public sealed class ImportAndExportTests : IAsyncLifetime
{
    private const string Table = "number,maker,title,status,power\nN-1,Quennor,a new one,current,1/2 hp\nQN-100,Quennor,fan motor 1/4 hp,current,\nN-2,Quennor,a bad one,sold,1 banana\n";

    private readonly TestFolder _data = new();
    private readonly TestFolder _seed = new();
    private RunningService _service = null!;

    public async ValueTask InitializeAsync()
    {
        Seed.WriteTo(_seed);
        _service = await RunningService.StartAsync([$"--data={_data.Path}", $"--Data:SeedFolder={_seed.Path}", "--urls=http://127.0.0.1:0"]);
    }

    public async ValueTask DisposeAsync()
    {
        await _service.DisposeAsync();
        _data.Dispose();
        _seed.Dispose();
    }

    [Fact]
    public async Task Without_take_it_is_a_preview_that_lists_bad_rows_beside_it_and_says_how_to_take()
    {
        var file = _seed.Write("some motors.csv", Table);
        var ran = await Ran.Of($"import \"{file}\"", _data.Path);
        ran.Exit.ShouldBe(ExitCode.RowsRefused);
        ran.Output.ShouldContain("row 3, QN-100: power “1/4 hp” → unknown\n3 rows: 1 new, 1 changed, 0 the same, 1 bad.\nNothing was written. To take what is new and changed: import \"");
        ran.Output.ShouldEndWith(" --kind motor --take --seen 7");
        ran.Errors.Split('\n').Length.ShouldBe(2);
        ran.Errors.ShouldContain("row 4, status: A status is one of current, discontinued, retired.");
        ran.Errors.ShouldContain("row 4, power: ");
    }

    [Fact]
    public async Task A_report_holds_every_bad_row_as_a_table_that_begins_no_formula()
    {
        const int Rows = 1_500;
        var file = _seed.Write("bad.csv", "number,maker,title,status\n" + string.Concat(Enumerable.Range(1, Rows).Select(at => FormattableString.Invariant($"'=N-{at},Quennor,t,sold\n"))));
        var into = Path.Combine(_seed.Path, "report.csv");
        var ran = await Ran.Of($"import \"{file}\" --report \"{into}\"", _data.Path);
        ran.Exit.ShouldBe(ExitCode.RowsRefused);
        ran.Errors.ShouldContain("and 500 more rows that are bad; --report file.csv writes all of them");
        var lines = await File.ReadAllLinesAsync(into, TestContext.Current.CancellationToken);
        lines.Length.ShouldBe(Rows + 1);
        lines[0].ShouldBe("row,number,column,code,complaint");
        lines[^1].ShouldBe("1501,'=N-1500,status,UNREADABLE,\"A status is one of current, discontinued, retired.\"");
    }

    [Fact]
    public async Task A_report_of_a_good_table_has_its_columns_only_and_one_that_cannot_be_written_is_told()
    {
        var file = _seed.Write("good.csv", "number,maker,title,status\nN-1,Quennor,t,current\n");
        var into = Path.Combine(_seed.Path, "report.csv");
        (await Ran.Of($"import \"{file}\" --report \"{into}\"", _data.Path)).Exit.ShouldBe(ExitCode.Success);
        (await File.ReadAllTextAsync(into, TestContext.Current.CancellationToken)).ShouldBe("row,number,column,code,complaint\n");
        var nowhere = Path.Combine(_seed.Path, "nowhere", "report.csv");
        var ran = await Ran.Of($"import \"{file}\" --report \"{nowhere}\"", _data.Path);
        (ran.Exit, ran.Errors).ShouldBe((ExitCode.BadInput, $"{nowhere} cannot be written. Give the user the right to, make room, or name another file with --report."));
    }

    [Fact]
    public async Task A_report_is_never_written_over_the_table_that_is_read_however_its_path_is_written()
    {
        const string Typed = "number,maker,title,status\nN-1,Quennor,t,sold\n";
        var file = _seed.Write("typed.csv", Typed);
        var link = Path.Combine(_seed.Path, "link.csv");
        File.CreateSymbolicLink(link, "typed.csv");
        var folder = Path.Combine(_seed.Path, "folder");
        Directory.CreateSymbolicLink(folder, _seed.Path);
        foreach (var (read, into) in new[] { (file, file), (file, Path.Combine(_seed.Path, ".", "typed.csv")), (file, link), (link, file), (Path.Combine(folder, "typed.csv"), file) })
        {
            var ran = await Ran.Of($"import \"{read}\" --report \"{into}\"", _data.Path);
            (ran.Exit, ran.Output, ran.Errors).ShouldBe((ExitCode.BadInput, string.Empty, $"{into} is the table itself, and would be written over. Name another file with --report."));
            (await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken)).ShouldBe(Typed);
        }
    }

    [Fact]
    public async Task With_take_and_the_key_good_rows_are_written_and_a_second_time_none()
    {
        var file = _seed.Write("new.csv", Table);
        var without = await Ran.Of($"import \"{file}\" --take", _data.Path);
        without.Exit.ShouldBe(ExitCode.BadInput);
        without.Errors.ShouldEndWith("This command takes it from PARTSMATCH_KEY.");

        var key = _service.Output.Split("shown this once: ")[1].Split('\n')[0].Trim();
        var first = await Child.RunAsync(key, "import", file, "--take", "--data", _data.Path);
        first.Exit.ShouldBe(ExitCode.RowsRefused, first.Errors);
        first.Output.ShouldEndWith("2 rows were written.");
        var second = await Child.RunAsync(key, "import", file, "--take", "--json", "--data", _data.Path);
        using var report = JsonDocument.Parse(second.Output);
        (report.RootElement.GetProperty("same").GetInt32(), report.RootElement.GetProperty("isTaken").GetBoolean()).ShouldBe((2, true));
    }

    [Fact]
    public async Task An_export_goes_to_standard_output_or_into_a_file_and_imports_without_a_change()
    {
        var shown = await Ran.Of("export --kind stock", _data.Path);
        shown.Output.ShouldBe("number,price,currency,onHand\nQN-100,84.50,USD,3\nQN-300,91,USD,0");
        var file = _seed.Write("exported.csv", "what was there before");
        var ran = await Ran.Of($"export --kind stock --out \"{file}\"", _data.Path);
        (ran.Exit, ran.Output, ran.Errors).ShouldBe((ExitCode.Success, string.Empty, string.Empty));
        (await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken)).ShouldBe(shown.Output + "\n");
        File.Exists(file + ".new").ShouldBeFalse();
        var again = await Ran.Of($"import \"{file}\" --kind stock", _data.Path);
        (again.Exit, again.Output).ShouldBe((ExitCode.Success, "2 rows: 0 new, 0 changed, 2 the same, 0 bad.\nNothing was written, and nothing of it is to be."));
    }

    [Theory]
    [InlineData("import nowhere.csv", "nowhere.csv cannot be read: there is no such file, or this user may not read it.")]
    [InlineData("import --tkae", "There is no option “--tkae”.")]
    [InlineData("import x.csv --seen soon", "--seen takes the whole number that the preview told, not “soon”.")]
    [InlineData("export --kind banana", "There is no table “banana”. The tables are: motor, ")]
    [InlineData("export --out /nowhere/at/all.csv", "/nowhere/at/all.csv cannot be written.")]
    public async Task What_was_typed_wrong_is_told(string typed, string sentence)
    {
        var ran = await Ran.Of(typed, _data.Path);
        ran.Exit.ShouldBe(ExitCode.BadInput);
        ran.Errors.ShouldStartWith(sentence);
    }

    [Fact]
    public async Task A_file_that_is_no_table_is_told_on_a_line_for_each_thing_that_is_wrong()
    {
        var ran = await Ran.Of($"import \"{_seed.Write("x.csv", "maker,pwoer\n")}\"", _data.Path);
        ran.Exit.ShouldBe(ExitCode.BadInput);
        ran.Errors.ShouldBe("There is no column “pwoer”. Did you mean power?\nThere is no column “number”, and without it no row can be read.");
    }

    [Fact]
    public async Task Killed_while_it_takes_a_file_it_leaves_whole_rows_and_done_again_completes_them()
    {
        const int Rows = 20_000;
        using var folder = new TestFolder();
        var file = _seed.Write("many.csv", "number,maker,title,status,rating\n" + string.Concat(Enumerable.Range(1, Rows).Select(at => FormattableString.Invariant($"CX-{at},Ombrel,capacitor {at},current,5 µF 370 V\n"))));
        using (var process = Child.Start(key: null, "import", file, "--kind", "capacitor", "--take", "--data", folder.Path))
        {
            // The first start tells its key before it asks itself to take the file.
            var told = await process.StandardError.ReadLineAsync(TestContext.Current.CancellationToken);
            told.ShouldNotBeNull().ShouldStartWith("The key for writing");
            var data = new FileInfo(Path.Combine(folder.Path, "partsmatch.db"));
            var before = data.Length;
            while (!process.HasExited && data.Length == before)
            {
                await Task.Delay(10, TestContext.Current.CancellationToken);
                data.Refresh();
            }

            process.Kill();
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        }

        using var store = PartStore.Open(new(folder.Path), TimeProvider.System);
        var left = store.Parts.Count(part => part.Number.StartsWith("CX-", StringComparison.Ordinal));
        var import = new Service.Exchange.CatalogueImport(store, Microsoft.Extensions.Options.Options.Create(new Service.Exchange.ExchangeLimits()), TimeProvider.System);
        var again = (await import.TakeAsync(Service.Exchange.CatalogueTable.Find("capacitor")!, await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken), "again", seen: null, progress: null, TestContext.Current.CancellationToken)).Value!;
        (again.New, again.Same, again.Bad).ShouldBe((Rows - left, left, 0));
        var taken = store.Parts.Where(part => part.Number.StartsWith("CX-", StringComparison.Ordinal)).ToList();
        taken.Count.ShouldBe(Rows);
        taken.ShouldAllBe(part => part.Version == 1);
    }

    [Fact]
    public async Task On_a_terminal_a_bar_shows_how_far_it_has_come_and_elsewhere_none_is_made()
    {
        var written = new StringWriter();
        var terminal = AnsiConsole.Create(new() { Ansi = AnsiSupport.Yes, Interactive = InteractionSupport.Yes, Out = new AnsiConsoleOutput(written) });
        (await ProgressBar.ImportingAsync(terminal, takes: true, progress =>
        {
            progress!.Report(new(Rows: 10, Read: 10, Written: 7));
            return Task.FromResult("done");
        })).ShouldBe("done");
        written.ToString().ShouldContain("Rows read");
        written.ToString().ShouldContain("Rows written: 7");
        ProgressBar.Behind(new StringWriter()).ShouldBeNull();
        (await ProgressBar.ImportingAsync(console: null, takes: true, progress => Task.FromResult(progress is null))).ShouldBeTrue();
    }
}
