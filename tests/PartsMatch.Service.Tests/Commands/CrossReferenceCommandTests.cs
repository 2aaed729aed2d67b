using System.Text;
using PartsMatch.Service.Commands;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;
using Spectre.Console;

namespace PartsMatch.Service.Tests.Commands;

/// <summary>cross-reference, as it is typed.</summary>
public sealed class CrossReferenceCommandTests : IAsyncLifetime
{
    private const string List = "number,note\nZV-7,\"two\nlines, \"\"quoted\"\"\"\nNO-SUCH,=1+1\n\nQN-100,µ\nZV-9,y\n";

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
    public async Task It_prints_the_list_with_replacements_and_bad_rows_in_their_place()
    {
        var ran = await Ran.Of($"cross-reference \"{_seed.Write("old parts.csv", List)}\"", _data.Path);
        (ran.Exit, ran.Errors).ShouldBe((ExitCode.Success, string.Empty));
        ran.Output.ShouldStartWith("number,note,replacement1.number,");
        ran.Output.ShouldContain("\nZV-7,\"two\nlines, \"\"quoted\"\"\",QN-100,Quennor,");
        ran.Output.ShouldContain("\nNO-SUCH,'=1+1,,,,,,,,,,,The catalogue has no part “NO-SUCH”.\n,,,,,,,,,,,,\nQN-100,µ,QN-100,");
    }

    [Fact]
    public async Task Begun_at_a_row_it_prints_the_rest_without_the_header()
    {
        var file = _seed.Write("old.csv", List);
        var whole = await Ran.Of($"cross-reference \"{file}\" --first 2", _data.Path);
        var rest = await Ran.Of($"cross-reference \"{file}\" --first 2 --from-row 5", _data.Path);
        rest.Output.ShouldStartWith("QN-100,µ,");
        whole.Output.ShouldEndWith("\n" + rest.Output);
    }

    [Fact]
    public async Task An_output_that_was_cut_off_anywhere_is_continued_to_the_same_bytes()
    {
        var (file, into) = (_seed.Write("old.csv", List), Path.Combine(_seed.Path, "new.csv"));
        (await Ran.Of($"cross-reference \"{file}\" --resume \"{into}\"", _data.Path)).Exit.ShouldBe(ExitCode.Success);
        var whole = await File.ReadAllBytesAsync(into, TestContext.Current.CancellationToken);
        Encoding.UTF8.GetString(whole).Split('\n').Length.ShouldBe(8, "a header, five rows, a line's end within one, and what is behind the last");
        foreach (var length in Enumerable.Range(0, whole.Length).Where(at => at % 41 == 0 || whole[at] is (byte)'"' or (byte)'\n' || (at > 0 && whole[at - 1] is (byte)'"' or (byte)'\n')).Append(whole.Length))
        {
            await File.WriteAllBytesAsync(into, whole[..length], TestContext.Current.CancellationToken);
            var ran = await Ran.Of($"cross-reference \"{file}\" --resume \"{into}\"", _data.Path);
            (ran.Exit, ran.Output, ran.Errors).ShouldBe((ExitCode.Success, string.Empty, string.Empty));
            (await File.ReadAllBytesAsync(into, TestContext.Current.CancellationToken)).ShouldBe(whole, $"cut off after {length} bytes");
        }
    }

    [Fact]
    public async Task A_file_with_another_header_is_left_as_it_is()
    {
        var (file, into) = (_seed.Write("old.csv", List), _seed.Write("new.csv", "something of mine\n"));
        var ran = await Ran.Of($"cross-reference \"{file}\" --resume \"{into}\"", _data.Path);
        ran.Exit.ShouldBe(ExitCode.BadInput);
        ran.Errors.ShouldStartWith($"{into} has another header than the answer to this list has, so it is not continued.");
        (await File.ReadAllTextAsync(into, TestContext.Current.CancellationToken)).ShouldBe("something of mine\n");
    }

    [Theory]
    [InlineData("cross-reference nowhere.csv", "nowhere.csv cannot be read: there is no such file, or this user may not read it.")]
    [InlineData("cross-reference --frist", "There is no option “--frist”.")]
    [InlineData("cross-reference x.csv --first 6", "--first takes a whole number from 1 to 5, not “6”.")]
    [InlineData("cross-reference x.csv --from-row 1", "--from-row takes a whole number from 2 on, not “1”.")]
    [InlineData("cross-reference x.csv --from-row 3 --resume y.csv", "Give --from-row or --resume: the file tells at which row to go on.")]
    public async Task What_was_typed_wrong_is_told(string typed, string sentence)
    {
        var ran = await Ran.Of(typed, _data.Path);
        ran.Exit.ShouldBe(ExitCode.BadInput);
        ran.Errors.ShouldStartWith(sentence);
    }

    [Fact]
    public async Task A_file_that_is_no_list_is_told_and_one_that_cannot_be_written_too()
    {
        var ran = await Ran.Of($"cross-reference \"{_seed.Write("x.csv", "maker,site.vlots\n")}\"", _data.Path);
        (ran.Exit, ran.Errors).ShouldBe((ExitCode.BadInput, "A site has no field “vlots”. Did you mean site.volts?\nThere is no column “number”, nor one “text”: a row needs an old part's number or its plate's text."));
        var nowhere = Path.Combine(_seed.Path, "nowhere", "new.csv");
        ran = await Ran.Of($"cross-reference \"{_seed.Write("old.csv", List)}\" --resume \"{nowhere}\"", _data.Path);
        (ran.Exit, ran.Errors).ShouldBe((ExitCode.BadInput, $"{nowhere} cannot be written. Give the user the right to, make room, or name another file with --resume."));
    }

    [Fact]
    public async Task On_a_terminal_a_bar_counts_the_rows_that_came()
    {
        var written = new StringWriter();
        var terminal = AnsiConsole.Create(new() { Ansi = AnsiSupport.Yes, Interactive = InteractionSupport.Yes, Out = new AnsiConsoleOutput(written) });
        (await ProgressBar.CrossReferencingAsync(terminal, rows: 1_200, tell =>
        {
            tell!(1_100);
            return Task.FromResult("done");
        })).ShouldBe("done");
        written.ToString().ShouldContain("Rows answered: 1,100 of 1,200");
        (await ProgressBar.CrossReferencingAsync(console: null, rows: 1, tell => Task.FromResult(tell is null))).ShouldBeTrue();
    }
}
