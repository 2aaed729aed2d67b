using System.Text.Json;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Commands;

/// <summary>find on a catalogue small enough to know what it must print.</summary>
public sealed class FindAtServiceTests(FindAtServiceTests.Counter counter) : IClassFixture<FindAtServiceTests.Counter>
{
    [Fact]
    public async Task An_old_number_is_told_with_what_superseded_it_by_whose_word_and_when()
    {
        var ran = await counter.Run("find --old ZV-7");
        ran.Output.ShouldStartWith("Old part: ZV-7  fan motor made no more (Zavvo, discontinued)\nZV-7 was replaced by QN-100 on 2021-04-30 (source: maker).\n");
        var sheet = (await counter.Run("find --old ZV-7 --sheet QN-100")).Output.Split('\n').ToList();
        var superseded = sheet.IndexOf("ZV-7 was replaced by QN-100 on 2021-04-30 (source: maker).");
        superseded.ShouldBeGreaterThanOrEqualTo(0);
        sheet.FindIndex(line => line.StartsWith("QN-100  ", StringComparison.Ordinal)).ShouldBeGreaterThan(superseded);
    }

    [Fact]
    public async Task Of_the_old_part_itself_it_is_told_once()
    {
        var ran = await counter.Run("find --old ZV-7 --sheet ZV-7");
        ran.Output.Split('\n').Count(line => line == "ZV-7 was replaced by QN-100 on 2021-04-30 (source: maker).").ShouldBe(1, ran.Output);
        (await counter.Run("find --power \"1/4 hp\" --sheet ZV-7")).Output.ShouldContain("ZV-7 was replaced by QN-100 on 2021-04-30 (source: maker).");
    }

    [Fact]
    public async Task A_discontinued_old_part_with_none_at_hand_does_not_replace_itself()
    {
        var ran = await counter.Run("find --old ZV-7");
        ran.Output.ShouldContain(" QN-100 ");
        ran.Output.ShouldNotContain(" ZV-7 (discontinued) ");
    }

    [Fact]
    public async Task The_very_part_still_at_hand_is_called_so()
    {
        var rows = (await counter.Run("find --old QN-100")).Output.Split('\n');
        rows.Single(row => row.Contains("the same part, still at hand", StringComparison.Ordinal)).ShouldContain(" QN-100 ");
    }

    [Fact]
    public async Task Json_tells_it_too()
    {
        using var json = JsonDocument.Parse((await counter.Run("find --old ZV-7 --json")).Output);
        var by = json.RootElement.GetProperty("replacements").GetProperty("oldPart").GetProperty("supersededBy")[0];
        (by.GetProperty("number").GetString(), by.GetProperty("saidBy").GetString(), by.GetProperty("on").GetString()).ShouldBe(("QN-100", "maker", "2021-04-30"));
    }

    [Fact]
    public async Task A_discontinued_part_with_none_at_hand_is_marked_and_comes_after_its_equal_that_is_made()
    {
        var rows = (await counter.Run("find --power \"1/4 hp\" --speed \"1075 rpm\" --voltage \"208-230 V\" --phase 1 --frequency \"60 Hz\" --shaft-diameter \"1/2 in\"")).Output.Split('\n').ToList();
        var made = rows.FindIndex(row => row.Contains(" QN-100 ", StringComparison.Ordinal));
        var gone = rows.FindIndex(row => row.Contains(" ZV-7 (discontinued) ", StringComparison.Ordinal));
        (made >= 0, gone > made).ShouldBe((true, true), string.Join('\n', rows));
    }

    [Fact]
    public async Task A_check_that_one_row_alone_asks_for_stands_in_the_row()
    {
        var rows = (await counter.Run("find \"CAP 5/370\" --power \"1/4 hp\"")).Output.Split('\n');
        rows.Single(row => row.Contains(" QN-100 ", StringComparison.Ordinal)).ShouldContain("check: run capacitor");
        rows.Single(row => row.Contains(" 100000 ", StringComparison.Ordinal)).ShouldNotContain("check:");
    }

    [Fact]
    public async Task Digits_beyond_the_list_are_a_part_number_when_there_is_such_a_part()
    {
        var ran = await counter.Run("find --power \"1/4 hp\" --sheet 100000");
        ran.Exit.ShouldBe(ExitCode.Success);
        ran.Output.ShouldContain("100000  fan motor of digits");
        (await counter.Run("find --power \"1/4 hp\" --sheet 50")).Errors.ShouldEndWith("there is no part “50”.");
    }

    /// <summary>A running service that find asks; the tests only read.</summary>
    public sealed class Counter : IAsyncLifetime
    {
        private readonly TestFolder _data = new();
        private readonly TestFolder _seed = new();
        private RunningService _service = null!;

        internal async Task<Ran> Run(string commandLine) => await Ran.Of(commandLine, _data.Path);

        public async ValueTask InitializeAsync()
        {
            Seed.WriteTo(_seed);
            _seed.Write("capacitors.csv", "number,maker,title,status,rating\n");
            _seed.Write("outcomes.csv", "id\n");
            var motors = await File.ReadAllLinesAsync(Path.Combine(_seed.Path, "motors.csv"));
            _seed.Write("motors.csv", string.Join('\n', [$"{motors[0]},runCapacitor", .. motors[1..].Where(row => row.Length > 0).Select(row => $"{row},"), "100000,Quennor,fan motor of digits,current,1/4 hp,1075 rpm,208-230 V,1,60 Hz,1/2 in,5 µF 370 V"]));
            _service = await RunningService.StartAsync([$"--data={_data.Path}", $"--Data:SeedFolder={_seed.Path}", "--urls=http://127.0.0.1:0"]);
        }

        public async ValueTask DisposeAsync()
        {
            await _service.DisposeAsync();
            _data.Dispose();
            _seed.Dispose();
        }
    }
}
