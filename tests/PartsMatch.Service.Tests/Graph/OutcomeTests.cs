using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>What became of parts, taken down and shown over GraphQL.</summary>
public sealed class OutcomeTests : IAsyncLifetime
{
    private TestService _service = null!;

    public async ValueTask InitializeAsync() => _service = await TestService.StartAsync();

    public ValueTask DisposeAsync() => _service.DisposeAsync();

    [Fact]
    public async Task An_outcome_is_recorded_with_all_that_was_said_and_stands_first_in_the_list()
    {
        var answer = await RecordAsync("new-1", "result:CAME_BACK, reason:DID_NOT_DO_THE_JOB, place:\"shed\", note:\"too slow\"", "{motor:{plateText:\"HP 1/4 RPM 1075\", plate:{power:\"1/3 hp\"}, oldPartNumber:\"zv7\", site:{volts:\"202 V\"}}}");
        answer.Text("data.recordOutcome.recordedBy").ShouldBe("first");

        var list = await _service.AskAsync("{outcomes(part:\"qn 100\", first:1){edges{node{id kind on place oldPartNumber partNumber part{title} plate{name label text} site{name text} result reason note corrects correctedBy}} pageInfo{hasNextPage hasPreviousPage}}}");
        var node = list.At("data.outcomes.edges")[0].GetProperty("node").ToString();
        node.ShouldBe("""{"id":"new-1","kind":"motor","on":"2026-02-03","place":"shed","oldPartNumber":"ZV-7","partNumber":"QN-100","part":{"title":"fan motor 1/4 hp"},"plate":[{"name":"power","label":"Power","text":"1/3 hp"},{"name":"speed","label":"Speed","text":"1075 rpm"}],"site":[{"name":"volts","text":"202 V"}],"result":"CAME_BACK","reason":"DID_NOT_DO_THE_JOB","note":"too slow","corrects":null,"correctedBy":null}""");
        list.Text("data.outcomes.pageInfo.hasNextPage").ShouldBe("True");
    }

    [Fact]
    public async Task Whoever_records_is_told_where_ranking_learns_nothing_of_it_and_why()
    {
        const string All = "power:\"1/4 hp\", speed:\"1075 rpm\", voltage:\"230 V\", phase:\"1\", frequency:\"60 Hz\", shaftLength:\"4 in\", shaftForm:\"flat\", shaftEnds:\"1\", mounts:\"belly band\", bodyDiameter:\"5.6 in\", rotation:\"CCW lead end\", enclosure:\"totally enclosed air over\", speeds:\"1\", type:\"PSC\", fullLoadAmps:\"2 A\", frame:\"48Y\"";
        const string Site = "site:{volts:\"230 V\", fanKind:\"propeller\", drive:\"direct\", surroundings:\"dry\", hazard:\"none\", airMost:\"40 °C\", shaftRoom:\"5 in\", speedControl:\"none\", speedsUsed:\"1\", bodyRoom:\"8 in\", bodyDiameterRoom:\"7 in\"}";
        (await WhyAsync("all", $"{{motor:{{plate:{{{All}, shaftDiameter:\"1/2 in\"}}, {Site}}}}}")).ShouldBe(string.Empty);
        (await WhyAsync("open", $"{{motor:{{plate:{{{All}}}, {Site}}}}}")).ShouldBe("Not known: shaft diameter (old part). How far the part fell short there cannot be said; a correction that tells it would change that.");
        (await WhyAsync("fails", $"{{motor:{{plate:{{{All}, shaftDiameter:\"3/8 in\"}}, {Site}}}}}")).ShouldStartWith("The part does not fit (shaft diameter): what fails is no matter of costs.");

        async Task<string> WhyAsync(string id, string need)
        {
            (await RecordAsync(id, "result:RIGHT_FIRST_TIME", need)).Codes.ShouldBeEmpty();
            return (await _service.AskAsync("{outcomes(first:1){edges{node{whyNothingIsLearnt}}}}")).Text("data.outcomes.edges.0.node.whyNothingIsLearnt");
        }
    }

    [Fact]
    public async Task The_same_once_more_is_answered_as_before_and_something_else_under_its_id_is_refused()
    {
        var first = await RecordAsync("new-1", "result:RIGHT_FIRST_TIME");
        (await RecordAsync("new-1", "result:RIGHT_FIRST_TIME")).Body.ShouldBe(first.Body);
        var other = await RecordAsync("new-1", "result:RIGHT_FIRST_TIME, note:\"after all\"");
        other.Codes.Zip(other.Places).ShouldBe([(Codes.IdTaken, "outcome.id")]);
        (await _service.AskAsync("{outcomes(first:100){edges{node{id}}}}")).All("data.outcomes.edges", "node.id").Count(id => id == "new-1").ShouldBe(1);
    }

    [Fact]
    public async Task All_that_is_wrong_is_told_at_once_with_its_places()
    {
        var answer = await RecordAsync("no id", $"result:RIGHT_FIRST_TIME, reason:OTHER, corrects:\"also none\", note:\"{new string('x', 501)}\"", "{motor:{plate:{power:\"1 banana\"}, plateText:\"?\", oldPartNumber:\"NO-SUCH\", site:{volts:\"many\"}}}", part: "CK-5", on: "2999-01-01");
        answer.Codes.Zip(answer.Places).ShouldBe(
        [
            (Codes.IdUnusable, "outcome.id"),
            (Codes.DayToCome, "outcome.on"),
            (Codes.TooLong, "outcome.note"),
            (Codes.PartNotFound, "outcome.need.motor.oldPartNumber"),
            (Codes.NothingRead, "outcome.need.motor.plateText"),
            (Codes.Unreadable, "outcome.need.motor.plate.power"),
            (Codes.Unreadable, "outcome.need.motor.site.volts"),
            (Codes.KindMismatch, "outcome.partNumber"),
            (Codes.ReasonUnneeded, "outcome.reason"),
            (Codes.IdUnusable, "outcome.corrects"),
        ]);
    }

    [Fact]
    public async Task What_was_not_right_needs_a_reason()
    {
        var answer = await RecordAsync("new-1", "result:REWORKED");
        answer.Codes.Zip(answer.Places).ShouldBe([(Codes.Empty, "outcome.reason")]);
    }

    [Fact]
    public async Task A_correction_takes_the_place_of_the_record_it_names_and_of_no_other()
    {
        (await RecordAsync("new-1", "result:RIGHT_FIRST_TIME, corrects:\"job-2\"")).Codes.ShouldBeEmpty();
        (await RecordAsync("new-2", "result:RIGHT_FIRST_TIME, corrects:\"job-2\"")).Codes.ShouldBe([Codes.AlreadyCorrected]);
        (await RecordAsync("new-3", "result:RIGHT_FIRST_TIME, corrects:\"no-such\"")).Codes.ShouldBe([Codes.OutcomeNotFound]);
        (await _service.AskAsync("{outcomes(part:\"QN-200\"){edges{node{id correctedBy}}}}")).At("data.outcomes.edges").ToString().ShouldBe("""[{"node":{"id":"job-2","correctedBy":"new-1"}}]""");
    }

    [Fact]
    public async Task Pages_follow_one_another_whatever_is_recorded_between()
    {
        var first = await _service.AskAsync("{outcomes(kind:motor, first:2){edges{node{id}} pageInfo{endCursor hasNextPage}}}");
        first.All("data.outcomes.edges", "node.id").ShouldBe(["job-1a", "job-3"]);
        await RecordAsync("new-1", "result:RIGHT_FIRST_TIME");
        var second = await _service.AskAsync($"{{outcomes(kind:motor, first:2, after:\"{first.Text("data.outcomes.pageInfo.endCursor")}\"){{edges{{node{{id}}}} pageInfo{{hasNextPage hasPreviousPage}}}}}}");
        second.All("data.outcomes.edges", "node.id").ShouldBe(["job-2", "job-1"]);
        second.Text("data.outcomes.pageInfo.hasNextPage").ShouldBe("False");
        second.Text("data.outcomes.pageInfo.hasPreviousPage").ShouldBe("True");
    }

    [Theory]
    [InlineData("after:\"b3V0Y29tZSB4\"", Codes.CursorMalformed, "after")]
    [InlineData("part:\"NO-SUCH\"", Codes.PartNotFound, "part")]
    [InlineData("kind:capacitor, part:\"QN-100\"", Codes.KindMismatch, "part")]
    [InlineData("first:0", Codes.FirstOutOfRange, "first")]
    public async Task What_cannot_be_listed_is_refused(string arguments, string code, string place)
    {
        var answer = await _service.AskAsync($"{{outcomes({arguments}){{edges{{cursor}}}}}}");
        answer.Codes.Zip(answer.Places).ShouldBe([(code, place)]);
    }

    [Fact]
    public async Task Recording_needs_a_key_and_reading_on_this_machine_does_not()
    {
        (await _service.AskAsync("mutation{recordOutcome(outcome:{id:\"x\", on:\"2026-01-01\", need:{motor:{}}, partNumber:\"QN-100\", result:RIGHT_FIRST_TIME}){id}}")).Codes.ShouldBe([Codes.KeyNeeded]);
        (await _service.AskAsync("{outcomes{edges{node{id}}}}")).All("data.outcomes.edges", "node.id").ShouldBe(["job-1a", "job-4", "job-3", "job-2", "job-1"]);
    }

    private Task<Answered> RecordAsync(string id, string said, string need = "{motor:{}}", string part = "QN-100", string on = "2026-02-03") =>
        _service.WriteAsync($"mutation{{recordOutcome(outcome:{{id:\"{id}\", on:\"{on}\", need:{need}, partNumber:\"{part}\", {said}}}){{id recordedAt recordedBy}}}}");
}
