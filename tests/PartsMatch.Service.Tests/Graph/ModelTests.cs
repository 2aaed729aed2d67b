using System.Net;
using Microsoft.Extensions.DependencyInjection;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Trainings;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>Weights are trained, looked at, put in place and put back while the service answers.</summary>
public sealed class ModelTests
{
    private const string Retrain = "mutation { retrain(kind: motor) { kind by since isRunning } }";
    private const string Rollback = "mutation { rollback(kind: motor) { origin hasPrevious } }";
    private const string Ranked = """
        query ($after: String) {
          replacements(first: 1, after: $after, need: { motor: { plate: { power: "1/4 hp", speed: "1075 rpm", voltage: "230 V", phase: "1", frequency: "60 Hz", shaftDiameter: "1/2 in" } site: { volts: "230 V" } } }) {
            edges { cursor node { part { number } likelihoodFrom } }
          }
        }
        """;

    [Fact]
    public async Task Before_anything_is_trained_the_model_is_hand_set_and_says_what_each_aspect_costs()
    {
        await using var service = await TestService.StartAsync();
        var answer = await service.AskAsync("{ model(kind: motor) { kind origin madeOn intercept hasPrevious aspects { aspect title shortfall atLimit effort unknown } pairs { name why cost } records { number } training { outcomes } trainings { end } run { done } } }");
        answer.Has("errors").ShouldBeFalse(answer.Body);
        (answer.Text("data.model.kind"), answer.Text("data.model.origin"), answer.Text("data.model.intercept")).ShouldBe(("motor", "HAND_SET", "3.5"));
        (answer.Text("data.model.hasPrevious"), answer.Text("data.model.training"), answer.Text("data.model.run")).ShouldBe(("False", "", ""));
        var family = Fit.Families.All[0];
        answer.All("data.model.aspects", "aspect").ShouldBe(family.Aspects.Select(aspect => aspect.Name));
        for (var at = 0; at < family.Aspects.Count; at++)
        {
            answer.At($"data.model.aspects.{at}.atLimit").GetDouble().ShouldBe(family.Aspects[at].DefaultWeight.Shortfall, 1e-9);
            answer.At($"data.model.aspects.{at}.shortfall").GetArrayLength().ShouldBe(6);
        }
    }

    [Fact]
    public async Task What_is_learnt_ranks_from_then_on_and_cursors_of_the_order_before_expire()
    {
        await using var service = await TestService.StartAsync();
        await Recorded.OneMotorComesBackAsync(service, 400);
        var before = await service.AskAsync(Ranked);
        before.Text("data.replacements.edges.0.node.likelihoodFrom").ShouldBe("hand-set weights");

        var begun = await service.WriteAsync(Retrain);
        (begun.Text("data.retrain.kind"), begun.Text("data.retrain.by")).ShouldBe(("motor", Service.Access.KeyRing.FirstLabel));
        var model = await EndedAsync(service);
        model.Text("run.ended.end").ShouldBe("ADOPTED", model.Body);
        (model.Text("origin"), model.Text("training.outcomes"), model.Text("training.from")).ShouldBe(("TRAINED", "400", "2025-01-01"));
        (model.Text("trainings.0.isAdopted"), model.Text("trainings.0.by"), model.Text("trainings.0.outcomes")).ShouldBe(("True", Service.Access.KeyRing.FirstLabel, "403"));
        model.Text("trainings.0.reason").ShouldEndWith("they are taken.");
        model.All("training.figures", "name").ShouldContain("logLossTrained");
        (model.Text("training.invented"), model.Text("trainings.0.invented")).ShouldBe(("0", "0"));
        model.All("records", "number").ShouldBe(["QN-200"]);
        model.Text("records.0.part.title").ShouldBe("fan motor 1/4 hp 230 V only");

        var after = await service.AskAsync(Ranked);
        after.Text("data.replacements.edges.0.node.likelihoodFrom").ShouldBe("outcomes of past installations");
        after.Text("data.replacements.edges.0.node.part.number").ShouldBe("QN-100");
        (await service.AskAsync(Ranked, new { after = before.Text("data.replacements.edges.0.cursor") })).Codes.ShouldBe([Codes.CursorExpired]);
        (await service.AskAsync(Ranked, new { after = after.Text("data.replacements.edges.0.cursor") })).Has("errors").ShouldBeFalse();
    }

    [Fact]
    public async Task A_part_that_keeps_coming_back_costs_as_much_in_a_list_as_on_its_sheet()
    {
        const string Need = """
            need: { motor: { plate: { power: "1/4 hp", speed: "1075 rpm", voltage: "230 V", phase: "1", frequency: "60 Hz", shaftDiameter: "1/2 in", shaftLength: "4 in", shaftForm: "flat", shaftEnds: "1", mounts: "belly band", bodyDiameter: "5.6 in", rotation: "CCW lead end", enclosure: "totally enclosed air over", speeds: "1", type: "PSC", fullLoadAmps: "2 A", frame: "48Y" } site: { volts: "230 V" } } }
            """;
        await using var service = await TestService.StartAsync();
        await Recorded.OneMotorComesBackAsync(service, 400);
        await service.WriteAsync(Retrain);
        (await EndedAsync(service)).Text("run.ended.end").ShouldBe("ADOPTED");

        var listed = await service.AskAsync($"{{ replacements(first: 50, {Need}) {{ edges {{ node {{ part {{ number }} likelihood score }} }} }} }}");
        var sheet = await service.AskAsync($"{{ fitSheet(partNumber: \"QN-200\", {Need}) {{ likelihood score contributions {{ aspect amount }} }} }}");
        var at = listed.All("data.replacements.edges", "node.part.number").ToList().IndexOf("QN-200");
        sheet.All("data.fitSheet.contributions", "aspect").ShouldContain("partRecord");
        listed.Text($"data.replacements.edges.{at}.node.score").ShouldBe(sheet.Text("data.fitSheet.score"));
        listed.Text($"data.replacements.edges.{at}.node.likelihood").ShouldBe(sheet.Text("data.fitSheet.likelihood"));
    }

    [Fact]
    public async Task Where_learning_shows_nothing_better_hand_set_weights_are_brought_to_scale_and_stay()
    {
        await using var service = await TestService.StartAsync();
        await Recorded.BothComeBackAlikeAsync(service, 400);
        await service.WriteAsync(Retrain);
        var model = await EndedAsync(service);
        model.Text("run.ended.end").ShouldBe("RESCALED", model.Body);
        (model.Text("origin"), model.Text("trainings.0.isAdopted")).ShouldBe(("RESCALED", "False"));
        model.Text("trainings.0.reason").ShouldEndWith("hand-set weights rank, rescaled.");
    }

    [Fact]
    public async Task Trained_again_on_the_same_outcomes_the_weights_stay_and_push_nothing_out()
    {
        await using var service = await TestService.StartAsync();
        await Recorded.OneMotorComesBackAsync(service, 400);
        await service.WriteAsync(Retrain);
        (await EndedAsync(service)).Text("run.ended.end").ShouldBe("ADOPTED");
        await service.WriteAsync(Retrain);
        var model = await EndedAsync(service);
        (model.Text("run.ended.end"), model.Text("origin"), model.Text("trainings.0.isAdopted")).ShouldBe(("KEPT", "TRAINED", "False"), model.Body);
        model.Text("trainings.0.reason").ShouldEndWith("those that rank at present stay.");
        model.All("trainings.0.figures", "name").ShouldContain("logLossPresent");
        (await service.WriteAsync(Rollback)).Text("data.rollback.origin").ShouldBe("HAND_SET");
    }

    [Fact]
    public async Task Too_few_outcomes_leave_the_weights_as_they_are_and_the_log_says_how_many_it_takes()
    {
        await using var service = await TestService.StartAsync();
        await Recorded.OneMotorComesBackAsync(service, 30);
        await service.WriteAsync(Retrain);
        var model = await EndedAsync(service);
        (model.Text("origin"), model.Text("run.ended.end"), model.Text("hasPrevious")).ShouldBe(("HAND_SET", "TOO_FEW", "False"));
        model.Text("trainings.0.reason").ShouldStartWith("Training takes 50 outcomes");
        (model.Text("trainings.0.outcomes"), model.Text("trainings.0.leftOut")).ShouldBe(("33", "3"));
    }

    [Fact]
    public async Task Going_back_twice_is_as_if_nothing_had_been_done_and_is_written_down()
    {
        await using var service = await TestService.StartAsync();
        (await service.WriteAsync(Rollback)).Text("data.rollback").ShouldBe("", "there is nothing to go back to");
        await Recorded.OneMotorComesBackAsync(service, 400);
        await service.WriteAsync(Retrain);
        await EndedAsync(service);
        (await service.WriteAsync(Rollback)).Text("data.rollback.origin").ShouldBe("HAND_SET");
        (await service.AskAsync(Ranked)).Text("data.replacements.edges.0.node.likelihoodFrom").ShouldBe("hand-set weights");
        (await service.WriteAsync(Rollback)).Text("data.rollback.origin").ShouldBe("TRAINED");
        (await EndedAsync(service)).All("trainings", "end").ShouldBe(["WENT_BACK", "WENT_BACK", "ADOPTED"]);
    }

    [Fact]
    public async Task A_training_that_is_stopped_changes_nothing_and_one_that_goes_on_is_not_begun_twice()
    {
        await using var service = await TestService.StartAsync();
        await Recorded.OneMotorComesBackAsync(service, Recorded.ForLong);
        var first = await service.WriteAsync(Retrain);
        var second = await service.WriteAsync(Retrain);
        second.Text("data.retrain.since").ShouldBe(first.Text("data.retrain.since"));
        (await service.WriteAsync("mutation { cancelRetrain(kind: motor) { isRunning kind } }")).Text("data.cancelRetrain.kind").ShouldBe("motor");
        var model = await EndedAsync(service);
        (model.Text("run.ended.end"), model.Text("origin"), model.Text("hasPrevious")).ShouldBe(("STOPPED", "HAND_SET", "False"));
        model.All("trainings", "end").ShouldBe(["STOPPED"]);
        (await service.WriteAsync("mutation { cancelRetrain(kind: motor) { isRunning } }")).Text("data.cancelRetrain").ShouldBe("", "none goes on");
    }

    [Fact]
    public async Task Outcomes_whose_note_says_so_are_counted_as_invented_wherever_what_was_learnt_from_them_shows()
    {
        await using var service = await TestService.StartAsync();
        await Recorded.OneMotorComesBackAsync(service, 400, note: "invented");
        await service.WriteAsync(Retrain);
        var model = await EndedAsync(service);
        (model.Text("training.invented"), model.Text("trainings.0.invented")).ShouldBe(("400", "400"), model.Body);
        (await new Visitor(service).GetAsync("/model?kind=motor")).Body.ShouldContain("400 of those learnt from are invented demo data: what is learnt from them says nothing of real parts.");
        (await service.AskAsync(Ranked)).Text("data.replacements.edges.0.node.likelihoodFrom").ShouldBe("outcomes of past installations, invented ones among them");
    }

    /// <summary>A training that ends between two looks would show neither as going on nor in the log.</summary>
    [Fact]
    public async Task What_is_told_of_trainings_is_all_of_one_moment()
    {
        await using var service = await TestService.StartAsync();
        await Recorded.OneMotorComesBackAsync(service, 2_000);
        var trainings = service.Services.GetRequiredService<ModelTrainings>();
        trainings.Begin(Fit.Families.All[0], "a test");
        var during = trainings.Report(Fit.Families.All[0]);
        while (trainings.Report(Fit.Families.All[0]).Run!.IsRunning) await Task.Delay(20, TestContext.Current.CancellationToken);

        (during.Run!.IsRunning, during.Log.Count).ShouldBe((true, 0));
        var after = trainings.Report(Fit.Families.All[0]);
        after.Run!.Entry.ShouldBe(after.Log[0]);
    }

    [Fact]
    public async Task The_service_answers_while_it_trains()
    {
        await using var service = await TestService.StartAsync();
        await Recorded.OneMotorComesBackAsync(service, 2_000);
        await service.WriteAsync(Retrain);
        string[] origins = ["hand-set weights", "outcomes of past installations"];
        var seen = new HashSet<string>();
        do
        {
            var answer = await service.AskAsync(Ranked);
            answer.Has("errors").ShouldBeFalse(answer.Body);
            seen.Add(answer.Text("data.replacements.edges.0.node.likelihoodFrom"));
        }
        while ((await service.AskAsync("{ model(kind: motor) { run { isRunning } } }")).Text("data.model.run.isRunning") == "True");
        seen.ShouldBeSubsetOf(origins);
        (await service.AskAsync(Ranked)).Text("data.replacements.edges.0.node.likelihoodFrom").ShouldBe(origins[1]);
    }

    [Theory]
    [InlineData("retrain(kind: motor) { kind }")]
    [InlineData("cancelRetrain(kind: motor) { kind }")]
    [InlineData("rollback(kind: motor) { kind }")]
    public async Task What_changes_weights_needs_a_key(string field)
    {
        await using var service = await TestService.StartAsync();
        var answer = await service.AskAsync($"mutation {{ {field} }}");
        answer.Status.ShouldBe(HttpStatusCode.Unauthorized);
        answer.Codes.ShouldBe([Codes.KeyNeeded]);
    }

    [Fact]
    public async Task Weights_and_log_are_there_after_another_start()
    {
        var kept = new Dictionary<string, string>();
        await using (var service = await TestService.StartAsync())
        {
            await Recorded.OneMotorComesBackAsync(service, 400);
            await service.WriteAsync(Retrain);
            await EndedAsync(service);
            foreach (var file in Directory.GetFiles(Path.Combine(service.DataFolder, "weights"), "motor.*")) kept[Path.GetFileName(file)] = await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken);
        }

        kept.Keys.Order().ShouldBe(["motor.json", "motor.previous.json", "motor.trainings.json"]);
        await using var again = await TestService.StartAsync(clock: null, folder =>
        {
            Directory.CreateDirectory(Path.Combine(folder, "weights"));
            foreach (var (name, text) in kept) File.WriteAllText(Path.Combine(folder, "weights", name), text);
        });
        var model = await again.AskAsync("{ model(kind: motor) { origin hasPrevious trainings { end reason } run { by } } }");
        (model.Text("data.model.origin"), model.Text("data.model.hasPrevious"), model.Text("data.model.run")).ShouldBe(("TRAINED", "True", ""));
        model.All("data.model.trainings", "end").ShouldBe(["ADOPTED"]);
    }

    /// <summary>Asks until no training goes on, and then for all of the model.</summary>
    private static async Task<ModelAnswer> EndedAsync(TestService service)
    {
        while ((await service.AskAsync("{ model(kind: motor) { run { isRunning } } }")).Text("data.model.run.isRunning") == "True") await Task.Delay(20, TestContext.Current.CancellationToken);
        return new(await service.AskAsync("{ model(kind: motor) { origin hasPrevious training { outcomes invented from to figures { name value } } records { number cost part { title } } trainings { by end isAdopted outcomes leftOut invented reason figures { name value } } run { done of what ended { end reason } } } }"));
    }

    private sealed record ModelAnswer(Answered Answered)
    {
        public string Body => Answered.Body;

        public string Text(string path) => Answered.Text($"data.model.{path}");

        public IReadOnlyList<string> All(string list, string path) => Answered.All($"data.model.{list}", path);
    }
}
