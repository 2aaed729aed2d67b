using System.Text.Json;
using System.Text.Json.Nodes;
using PartsMatch.Service.Commands;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;
using Spectre.Console;

namespace PartsMatch.Service.Tests.Commands;

/// <summary>train and rollback, as they are typed.</summary>
public sealed class TrainTests : IDisposable
{
    private readonly TestFolder _data = new();
    private readonly TestFolder _seed = new();

    public void Dispose()
    {
        _data.Dispose();
        _seed.Dispose();
    }

    [Fact]
    public async Task Without_outcomes_nothing_is_trained_and_it_is_said_how_many_it_takes()
    {
        // The first start makes the key, and the command uses it at once.
        var ran = await Ran.Of("train --kind capacitor", _data.Path);
        ran.Exit.ShouldBe(ExitCode.WeightsStay);
        ran.Output.ShouldBeEmpty();
        ran.Errors.Split('\n')[^1].ShouldBe("Training takes 50 outcomes of parts that fit, 10 of them right first time and as many not; there are 0 and 0.");
        File.Exists(Path.Combine(_data.Path, "weights", "capacitor.trainings.json")).ShouldBeTrue("it is written down");
    }

    [Fact]
    public async Task Rollback_goes_to_the_weights_from_before_and_says_when_there_are_none()
    {
        var none = await Ran.Of("rollback --kind motor", _data.Path);
        none.Exit.ShouldBe(ExitCode.WeightsStay);
        none.Errors.Split('\n')[^1].ShouldBe("There are no earlier weights of motor parts to go back to.");

        var key = none.Errors.Split("shown this once: ")[1].Split('\n')[0];
        var family = Fit.Families.All[0];
        File.WriteAllText(Path.Combine(_data.Path, "weights", "motor.previous.json"), Ranking.WeightsFile.Write(Ranking.Weights.Of(family, new(Ranking.WeightsOrigin.Trained, 2) { MadeOn = new(2026, 3, 14) })));
        var ran = await Child.RunAsync(key, "rollback", "--data", _data.Path);
        (ran.Exit, ran.Output).ShouldBe((ExitCode.Success, "The weights from before are in place again: learnt from outcomes, made on 2026-03-14. The same command takes it back."), ran.Errors);
    }

    [Fact]
    public async Task Without_the_key_nothing_is_trained_and_it_is_said_where_the_command_takes_it_from()
    {
        await Ran.Of("rollback", _data.Path);
        foreach (var command in (string[])["train", "rollback"])
        {
            var ran = await Ran.Of(command, _data.Path);
            ran.Exit.ShouldBe(ExitCode.BadInput);
            ran.Errors.ShouldEndWith("This command takes it from PARTSMATCH_KEY.");
        }
    }

    [Theory]
    [InlineData("train --kind banana", "There is no kind “banana”. The kinds are: motor, ")]
    [InlineData("rollback --kind banana", "There is no kind “banana”. The kinds are: motor, ")]
    [InlineData("train now", "Unrecognized command or argument 'now'.")]
    public async Task What_was_typed_wrong_is_told(string typed, string sentence)
    {
        var ran = await Ran.Of(typed, _data.Path);
        ran.Exit.ShouldBe(ExitCode.BadInput);
        ran.Errors.ShouldStartWith(sentence);
    }

    [Fact]
    public async Task What_was_taken_and_why_is_told_once_the_training_has_ended()
    {
        List<string> asked = [];
        var (exit, output, errors) = await TrainAsync(asked, CancellationToken.None, """{"data":{"retrain":{"isRunning":true}}}""", Going, """{"data":{"model":{"run":{"done":12,"of":12,"what":"done","ended":{"by":"first","end":"ADOPTED","outcomes":2400,"leftOut":7,"invented":2000,"reason":"They are taken."}}}}}""");
        (exit, errors).ShouldBe((ExitCode.Success, string.Empty));
        output.ReplaceLineEndings("\n").ShouldBe("They are taken.\nThere were 2400 outcomes of motor parts; 7 of them teach nothing, as the part does not fit or something that decides was not known.\n2000 of those learnt from are invented demo data: what is learnt from them says nothing of real parts.\n");
        asked[0].ShouldContain("retrain(kind: motor)");
    }

    [Fact]
    public async Task Ctrl_C_tells_the_service_to_stop_the_training()
    {
        List<string> asked = [];
        using var stop = new CancellationTokenSource(TimeSpan.FromMilliseconds(50));
        var (exit, output, errors) = await TrainAsync(asked, stop.Token, """{"data":{"retrain":{"isRunning":true}}}""", Going);
        (exit, output, errors.TrimEnd()).ShouldBe((ExitCode.WeightsStay, string.Empty, "It was stopped."));
        asked.ShouldContain(query => query.Contains("cancelRetrain(kind: motor)", StringComparison.Ordinal));
    }

    [Fact]
    public async Task On_a_terminal_a_bar_shows_how_far_a_training_has_come_and_elsewhere_none_is_made()
    {
        var written = new StringWriter();
        var terminal = AnsiConsole.Create(new() { Ansi = AnsiSupport.Yes, Interactive = InteractionSupport.Yes, Out = new AnsiConsoleOutput(written) });
        (await ProgressBar.TrainingAsync(terminal, come =>
        {
            come!(12, 12, "holding out [one] place");
            return Task.FromResult("done");
        })).ShouldBe("done");
        written.ToString().ShouldContain("Training: holding out [one] place");
        (await ProgressBar.TrainingAsync(console: null, come => Task.FromResult(come is null))).ShouldBeTrue();
    }

    private const string Going = """{"data":{"model":{"run":{"done":1,"of":12,"what":"judging","ended":null}}}}""";

    private const string Stopped = """{"data":{"model":{"run":{"done":1,"of":12,"what":"judging","ended":{"by":"first","end":"STOPPED","outcomes":0,"leftOut":0,"invented":null,"reason":"It was stopped."}}}}}""";

    /// <summary>Trains at a service that gives these answers one after the other, and the last of them from then on; once it was told to stop, it has.</summary>
    private static async Task<(int Exit, string Output, string Errors)> TrainAsync(List<string> asked, CancellationToken stop, params string[] answers)
    {
        var (output, errors) = (new StringWriter(), new StringWriter());
        Task<JsonElement> AnswerAsync(string query, JsonObject variables, CancellationToken cancel)
        {
            cancel.ThrowIfCancellationRequested();
            asked.Add(query);
            var isStopped = asked.Any(one => one.Contains("cancelRetrain", StringComparison.Ordinal));
            return Task.FromResult(JsonElement.Parse(isStopped ? Stopped : answers[Math.Min(asked.Count, answers.Length) - 1]));
        }

        return (await TrainCommand.TrainAsync(Fit.Families.All[0], AnswerAsync, output, errors, stop), output.ToString(), errors.ToString());
    }
}
