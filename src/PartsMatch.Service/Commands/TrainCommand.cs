using System.CommandLine;
using System.Text.Json;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Commands;

/// <summary>train: learns the weights of a kind from its outcomes; rollback: goes back to those from before.</summary>
internal static class TrainCommand
{
    private const string Entry = "by end outcomes leftOut invented reason";

    /// <summary>How often a training is asked how far it has come.</summary>
    private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(200);

    public static Command Make(Option<string?> data, TextWriter output, TextWriter errors)
    {
        var kind = KindOption();
        var train = new Command("train", "Learn weights from all outcomes; they are taken where they are shown to be better.") { kind };
        train.SetAction((given, stop) => Asking.WithServiceAsync(given.GetValue(data), ask => TrainAsync(Families.Find(given.GetValue(kind)!)!, ask, output, errors, stop), errors, stop));
        return train;
    }

    public static Command MakeRollback(Option<string?> data, TextWriter output, TextWriter errors)
    {
        var kind = KindOption();
        var rollback = new Command("rollback", "Go back to the weights from before, which those that there are take the place of.") { kind };
        rollback.SetAction((given, stop) => Asking.WithServiceAsync(given.GetValue(data), ask => GoBackAsync(Families.Find(given.GetValue(kind)!)!, ask, output, errors, stop), errors, stop));
        return rollback;
    }

    private static Option<string> KindOption()
    {
        var names = string.Join(", ", Families.All.Select(family => family.Kind));
        var kind = new Option<string>("--kind") { Description = $"Of which kind of part: {names}.", DefaultValueFactory = _ => Families.All[0].Kind };
        kind.Validators.Add(given =>
        {
            if (given.Tokens is [{ Value: { } name }, ..] && Families.Find(name) is null) given.AddError($"There is no kind “{name}”. The kinds are: {names}.");
        });
        return kind;
    }

    internal static async Task<int> TrainAsync(Family family, Ask ask, TextWriter output, TextWriter errors, CancellationToken stop)
    {
        var begun = await ask($"mutation {{ retrain(kind: {family.Kind}) {{ isRunning }} }}", [], stop);
        if (await Problem.TellErrorsAsync(begun, errors) is { } refused) return refused;
        var ended = await EndOrStopAsync(family, ask, errors, stop);
        var isDone = ended.Text("end") is "ADOPTED" or "RESCALED" or "KEPT";
        await (isDone ? output : errors).WriteLineAsync(ended.Text("reason"));
        if (isDone)
        {
            await output.WriteLineAsync($"There were {ended.GetProperty("outcomes").GetInt32()} outcomes of {family.Kind} parts; {ended.GetProperty("leftOut").GetInt32()} of them teach nothing, as the part does not fit or something that decides was not known.");
            if (Invented.Words(ended.GetProperty("invented") is { ValueKind: JsonValueKind.Number } count ? count.GetInt32() : null) is { } words) await output.WriteLineAsync(words);
        }

        return isDone ? ExitCode.Success : ended.Text("end") == "FAILED" ? ExitCode.Failed : ExitCode.WeightsStay;
    }

    private static async Task<JsonElement> EndOrStopAsync(Family family, Ask ask, TextWriter errors, CancellationToken stop)
    {
        try
        {
            return await ProgressBar.TrainingAsync(ProgressBar.Behind(errors), come => EndAsync(family, ask, come, stop));
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            // The training goes on at the service until it is told, and may have ended just before.
            await ask($"mutation {{ cancelRetrain(kind: {family.Kind}) {{ isRunning }} }}", [], CancellationToken.None);
            return await EndAsync(family, ask, come: null, CancellationToken.None);
        }
    }

    /// <summary>How the training ended, once it has.</summary>
    private static async Task<JsonElement> EndAsync(Family family, Ask ask, Action<int, int, string>? come, CancellationToken stop)
    {
        while (true)
        {
            var answer = await ask($"{{ model(kind: {family.Kind}) {{ run {{ done of what ended {{ {Entry} }} }} }} }}", [], stop);
            var run = answer.GetProperty("data").GetProperty("model").GetProperty("run");
            if (run.GetProperty("ended") is { ValueKind: JsonValueKind.Object } ended) return ended;
            come?.Invoke(run.GetProperty("done").GetInt32(), run.GetProperty("of").GetInt32(), run.Text("what"));
            await Task.Delay(Between, stop);
        }
    }

    private static async Task<int> GoBackAsync(Family family, Ask ask, TextWriter output, TextWriter errors, CancellationToken stop)
    {
        var answer = await ask($"mutation {{ rollback(kind: {family.Kind}) {{ origin madeOn }} }}", [], stop);
        if (await Problem.TellErrorsAsync(answer, errors) is { } refused) return refused;
        if (answer.GetProperty("data").GetProperty("rollback") is not { ValueKind: JsonValueKind.Object } model)
        {
            await errors.WriteLineAsync($"There are no earlier weights of {family.Kind} parts to go back to.");
            return ExitCode.WeightsStay;
        }

        var from = model.Text("origin") switch
        {
            "HAND_SET" => "hand-set",
            "RESCALED" => "hand-set, brought to the scale of outcomes",
            _ => "learnt from outcomes",
        };
        await output.WriteLineAsync($"The weights from before are in place again: {from}{(model.Text("madeOn") is { Length: > 0 } day ? $", made on {day}" : string.Empty)}. The same command takes it back.");
        return ExitCode.Success;
    }
}
