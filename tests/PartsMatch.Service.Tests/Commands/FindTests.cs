using System.Text.Json;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Commands;

/// <summary>find, as a technician types it, on the demo catalogue.</summary>
public sealed class FindTests(FindTests.DemoFolder demo) : IClassFixture<FindTests.DemoFolder>
{
    private const string Plate = "find \"HP 1/4 RPM 1075 V 208-230 PH 1 HZ 60 A 2.1 FR 48Y ROT CCW LE CAP 5/370 TEAO\"";
    private const string Measured = " --volts 202 --shaft-diameter \"1/2 in\" --shaft-length \"4 in\" --shaft-form flat --shaft-ends 1 --mounts \"belly band\" --body-diameter \"5.6 in\"";

    [Fact]
    public async Task A_plate_and_readings_give_ranked_parts_with_what_must_be_changed_on_them()
    {
        var ran = await demo.Run(Plate + Measured);
        ran.Exit.ShouldBe(ExitCode.Success);
        ran.Output.ShouldContain("Power 1/4 hp");
        ran.Output.ShouldContain("fits with changes");
        ran.Output.ShouldContain("hand-set weights");
    }

    [Fact]
    public async Task A_capacitor_that_waits_for_a_look_only_is_not_headed_as_if_it_needed_a_change()
    {
        const string Can = "find --kind capacitor \"5 MFD 370 VAC 60HZ\" --motor-asks-for 7.5/370";
        (await demo.Run(Can)).Output.ShouldContain("fits once checked");
        var sheet = (await demo.Run(Can + " --sheet 1")).Output;
        sheet.ShouldContain("It fits as it is, once this is checked: can and strap, can height.");
        sheet.ShouldContain("Doubt: The old capacitor is marked 5 µF 370 V, the motor's plate asks for 7.5 µF 370 V");
        sheet.ShouldNotContain("fits with changes");
    }

    [Fact]
    public async Task A_plate_alone_says_once_what_to_find_out_before_any_part_is_sure()
    {
        var ran = await demo.Run(Plate);
        ran.Exit.ShouldBe(ExitCode.Success);
        ran.Output.Split('\n').Count(line => line.Contains("volts measured (site)", StringComparison.Ordinal)).ShouldBe(1);
        ran.Output.ShouldContain("can't tell yet");
    }

    [Fact]
    public async Task What_was_mended_on_the_plate_stands_beside_what_was_read() =>
        (await demo.Run("find \"l/4 HP 6O HZ 230 V\"")).Output.ShouldStartWith("Read: Power 1/4 hp (l/4 read as 1/4); Voltage 230 V; Frequency 60 Hz (6O read as 60)");

    [Fact]
    public async Task The_fit_sheet_of_a_row_is_that_of_the_part_in_the_row()
    {
        using var list = JsonDocument.Parse((await demo.Run(Plate + Measured + " --json")).Output);
        var number = list.RootElement.GetProperty("replacements").GetProperty("edges")[1].GetProperty("node").GetProperty("part").GetProperty("number").GetString()!;
        var byRow = await demo.Run(Plate + Measured + " --sheet 2");
        var byNumber = await demo.Run($"{Plate}{Measured} --sheet \"{number}\"");
        byRow.Output.ShouldBe(byNumber.Output);
        byRow.Output.ShouldStartWith("Read: Power 1/4 hp; Speed 1075 rpm; ");
        byRow.Output.Split('\n').ShouldContain(line => line.StartsWith($"{number}  ", StringComparison.Ordinal));
        byRow.Output.ShouldContain("202 V measured");
        byRow.Output.ShouldContain("Local codes");
    }

    // Worked by hand: 187 V is 10.1 % under 208 V.
    [Fact]
    public async Task What_was_measured_and_does_not_go_with_the_plate_is_doubted_above_the_list_and_on_the_sheet()
    {
        const string Equipment = " --equipment-fan-amps 4";
        const string Doubt = "Doubt: The equipment's plate says 4 A for the fan, the old motor's 2.1 A: more than 10 % apart.";
        (await demo.Run(Plate + Measured + Equipment)).Output.ShouldContain(Doubt);
        (await demo.Run(Plate + Measured + Equipment + " --sheet 1")).Output.ShouldContain(Doubt);
        (await demo.Run(Plate + Measured)).Output.ShouldNotContain("Doubt:");
        (await demo.Run(Plate + " --volts 187")).Output.ShouldContain("Doubt: 208-230 V plate, 187 V measured: 10.1 % low");
    }

    [Theory]
    [InlineData("100000")]
    [InlineData("0")]
    [InlineData("99999999999999999999")]
    public async Task A_row_that_is_not_in_the_list_is_refused(string sheet)
    {
        var ran = await demo.Run($"{Plate}{Measured} --sheet {sheet}");
        (ran.Exit, ran.Errors).ShouldBe((ExitCode.BadInput, $"--sheet takes a place in the list, 1 to 100, or a part number; there is no part “{sheet}”."));
    }

    [Fact]
    public async Task All_that_cannot_be_read_is_said_at_once_with_its_option()
    {
        var ran = await demo.Run("find --volts lots --shaft-diameter wide --speed 1075rpm");
        ran.Exit.ShouldBe(ExitCode.BadInput);
        ran.Output.ShouldBeEmpty();
        ran.Errors.Split('\n').ShouldBe(
        [
            "--shaft-diameter: Shaft diameter: “wide” is not a length with its unit, such as 1/2 in.",
            "--volts: Volts measured: “lots” is not a voltage, such as 230 V, or several side by side, such as 460/467/450 V.",
            "See find --help.",
        ]);
    }

    [Theory]
    [InlineData("find \"HP 1/4\" --volt 202", "--volt")]
    [InlineData("find \"HP 1/4\" --vlots=600", "--vlots=600")]
    [InlineData("find \"HP 1/4\" --Access:OpenReads=true", "--Access:OpenReads=true")]
    [InlineData("find --nonsense", "--nonsense")]
    [InlineData("fnid \"HP 1/4\"", "fnid")]
    [InlineData("--frobnicate", "--frobnicate")]
    [InlineData("find", "Nothing is given")]
    [InlineData("find \" \"", "Nothing is given")]
    [InlineData("find --volts \"\" --power \" \"", "Nothing is given")]
    [InlineData("find \"HP 1/4\" --first abc", "--first takes a whole number, such as 10, not “abc”.")]
    [InlineData("find \"HP 1/4\" --Access:OpenReads true", "--Access:OpenReads=true is a setting of the service; find takes none.")]
    [InlineData("serve --Limits:Depth", "--Limits:Depth needs a value: --Limits:Depth=value.")]
    [InlineData("find \"HP 1/4\" --json=maybe", "maybe")]
    public async Task What_is_not_known_is_refused_and_never_left_aside(string commandLine, string named)
    {
        using var folder = new TestFolder();
        var ran = await Ran.Of(commandLine, folder.Path);
        ran.Exit.ShouldBe(ExitCode.BadInput);
        ran.Output.ShouldBeEmpty();
        ran.Errors.ShouldContain(named);
        ran.Errors.ShouldNotContain("System.");
        ran.Errors.Split('\n')[^1].ShouldMatch("^See .*--help\\.$");
        Directory.EnumerateFileSystemEntries(folder.Path).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("serve --urls foo")]
    [InlineData("--urls http://192.0.2.1:5555")]
    [InlineData("--urls http://127.0.0.1:99999")]
    [InlineData("--urls ftp://127.0.0.1:5555")]
    [InlineData("--urls http://127.0.0.1:5555/behind")]
    public async Task An_address_that_cannot_be_listened_at_is_said_in_a_sentence(string commandLine)
    {
        using var folder = new TestFolder();
        var ran = await Ran.Of(commandLine, folder.Path);
        ran.Exit.ShouldBe(ExitCode.AddressRefused);
        ran.Errors.ShouldStartWith($"{commandLine.Split(' ')[^1]} cannot be listened at");
        ran.Errors.ShouldNotContain("Exception");
    }

    [Fact]
    public async Task When_nothing_fits_the_nearest_misses_say_what_stands_in_the_way()
    {
        var ran = await demo.Run("find \"1/4 HP 1075 RPM 460V 1 PH 60 HZ CWSE\" --volts 600 --shaft-diameter \"2 in\"");
        ran.Exit.ShouldBe(ExitCode.NothingFits);
        ran.Output.ShouldContain("Nothing in the catalogue fits");
        ran.Output.ShouldContain("Shaft diameter: Its shaft of 1/2 in (12.7 mm) has play in the hub's 2 in");
    }

    [Fact]
    public async Task A_part_that_does_not_fit_ends_its_sheet_with_another_exit_code()
    {
        using var list = JsonDocument.Parse((await demo.Run("find \"HP 1/4 RPM 1075 V 460 PH 3 HZ 60\" --volts 460 --json")).Output);
        var threePhase = list.RootElement.GetProperty("replacements").GetProperty("edges")[0].GetProperty("node").GetProperty("part").GetProperty("number").GetString();
        var ran = await demo.Run($"{Plate}{Measured} --sheet \"{threePhase}\"");
        ran.Exit.ShouldBe(ExitCode.NothingFits);
        ran.Output.ShouldContain("It doesn't fit.");
        ran.Output.ShouldContain("FAILS");
    }

    [Fact]
    public async Task Json_is_all_that_is_printed_even_when_the_folder_is_new()
    {
        using var folder = new TestFolder();
        var ran = await Ran.Of("find --old K-NO-SUCH --json", folder.Path);
        ran.Exit.ShouldBe(ExitCode.BadInput);
        ran.Output.ShouldBeEmpty();
        ran.Errors.ShouldContain("The key for writing, shown this once: ");
        ran = await Ran.Of(Plate + " --json", folder.Path);
        JsonDocument.Parse(ran.Output).RootElement.GetProperty("nearestMisses").ValueKind.ShouldBe(JsonValueKind.Null);
        ran.Errors.ShouldBeEmpty();
    }

    [Fact]
    public async Task A_capacitor_is_found_the_same_way()
    {
        var ran = await demo.Run("find \"5 MFD 370 VAC 60HZ\" --kind capacitor");
        ran.Exit.ShouldBe(ExitCode.Success);
        ran.Output.ShouldContain("Rating 5 µF 370 V");
    }

    [Theory]
    [InlineData("find --kind gearbox", "There is no kind “gearbox”. The kinds are: motor, pressureControl, contactor, capacitor.")]
    [InlineData("find --kind capacitor --shaft-diameter \"1/2 in\"", "A run capacitor has no --shaft-diameter.\nSee find --help.")]
    public async Task What_no_family_has_is_refused(string commandLine, string message)
    {
        var ran = await demo.Run(commandLine);
        (ran.Exit, ran.Errors).ShouldBe((ExitCode.BadInput, message));
    }

    [Fact]
    public async Task While_a_service_has_the_folder_it_is_asked()
    {
        using var folder = new TestFolder();
        await using var service = await RunningService.StartAsync(["--urls", "http://127.0.0.1:0", "--data", folder.Path]);
        var asked = await Ran.Of(Plate + Measured, folder.Path);
        asked.Exit.ShouldBe(ExitCode.Success);
        asked.Output.ShouldBe((await demo.Run(Plate + Measured)).Output);
        asked.Errors.ShouldBeEmpty();
    }

    [Fact]
    public async Task A_service_that_could_not_start_for_a_question_gives_the_folder_free_again()
    {
        using var folder = new TestFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, "weights"));
        folder.Write("weights/motor.json", "no weights");
        (await Ran.Of(Plate, folder.Path)).Exit.ShouldBe(ExitCode.WeightsRefused);
        using var again = PartsMatch.Store.PartStore.Open(new(folder.Path), TimeProvider.System);
        again.Parts.ShouldNotBeEmpty();
    }

    [Fact]
    public async Task A_folder_that_is_in_use_and_says_no_address_is_refused_in_a_sentence()
    {
        using var folder = new TestFolder();
        using var held = PartsMatch.Store.PartStore.Open(new(folder.Path), TimeProvider.System);
        var ran = await Ran.Of(Plate, folder.Path);
        ran.Exit.ShouldBe(ExitCode.StoreRefused);
        ran.Errors.ShouldContain("in use");
    }

    [Fact]
    public async Task Help_lists_an_option_for_every_field_with_an_example()
    {
        var ran = await demo.Run("find --help");
        ran.Exit.ShouldBe(0);
        foreach (var field in Fit.Families.All.SelectMany(family => family.SpecShape.Fields.Concat(family.SiteShape.Fields)))
        {
            ran.Output.ShouldContain(Service.Commands.FindCommand.OptionName(field.Name) + " ");
        }
    }

    /// <summary>A data folder with the demo catalogue, made once for all of these tests; they only read.</summary>
    public sealed class DemoFolder : IAsyncLifetime
    {
        private readonly TestFolder _folder = new();

        internal async Task<Ran> Run(string commandLine) => await Ran.Of(commandLine, _folder.Path);

        /// <summary>The first use of a folder shows its key, whichever test comes first.</summary>
        public async ValueTask InitializeAsync() => (await Run("find --volts 230")).Errors.ShouldStartWith("The key for writing");

        public ValueTask DisposeAsync()
        {
            _folder.Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
