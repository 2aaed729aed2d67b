using System.Net;
using System.Net.Http.Json;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

public sealed class MutationTests : IAsyncLifetime
{
    private const string Result = "{__typename ...on PartWritten{part{number title version status fields{name text} supersededBy{number saidBy on}}} ...on PartConflict{sentence present{number title version}}}";
    private TestService _service = null!;

    public async ValueTask InitializeAsync() => _service = await TestService.StartAsync();

    public ValueTask DisposeAsync() => _service.DisposeAsync();

    [Fact]
    public async Task An_added_part_is_found_at_once_and_offered()
    {
        var answer = await AddAsync("NEW-1", "{motor:{power:\"1/4HP\", voltage:\"208/230\", shaftDiameter:\"1/2 in\"}}");
        answer.Text("data.addPart.__typename").ShouldBe("PartWritten");
        answer.Text("data.addPart.part.version").ShouldBe("1");
        answer.All("data.addPart.part.fields", "text").ShouldBe(["1/4 hp", "208-230 V", "1/2 in"]);
        (await _service.AskAsync("{part(number:\"new 1\"){number}}")).Text("data.part.number").ShouldBe("NEW-1");
        var ranked = await _service.AskAsync("{replacements(need:{motor:{}}, first:100){edges{node{part{number}}}}}");
        ranked.All("data.replacements.edges", "node.part.number").ShouldContain("NEW-1");
    }

    [Fact]
    public async Task A_number_that_is_taken_answers_the_part_that_has_it()
    {
        var answer = await AddAsync("qn 100", "{capacitor:{}}");
        answer.Codes.ShouldBeEmpty();
        answer.Text("data.addPart.__typename").ShouldBe("PartConflict");
        answer.Text("data.addPart.present.number").ShouldBe("QN-100");
    }

    [Fact]
    public async Task All_that_is_wrong_with_a_part_is_said_at_once_with_its_places()
    {
        var answer = await _service.WriteAsync(
            $"mutation{{addPart(part:{{number:\"-/-\", maker:\" \", title:\"{new string('x', 201)}\", spec:{{motor:{{power:\"1 banana\", speed:\"fast\"}}}}}}){Result}}}");
        answer.Codes.ShouldBe([Codes.NumberUnusable, Codes.Empty, Codes.TooLong, Codes.Unreadable, Codes.Unreadable]);
        answer.Places.ShouldBe(["part.number", "part.maker", "part.title", "part.spec.motor.power", "part.spec.motor.speed"]);
        (await _service.AskAsync("{parts(text:\"xxx\"){edges{cursor}}}")).At("data.parts.edges").GetArrayLength().ShouldBe(0);
    }

    [Fact]
    public async Task A_number_without_letters_and_digits_is_unusable()
    {
        var answer = await AddAsync("---", "{motor:{}}");
        answer.Codes.ShouldBe([Codes.NumberUnusable]);
        answer.Places.ShouldBe(["part.number"]);
    }

    [Fact]
    public async Task A_change_replaces_the_whole_spec()
    {
        var answer = await ChangeAsync("QN-100", version: 1, "{motor:{voltage:\"115 V\"}}");
        answer.Text("data.changePart.part.version").ShouldBe("2");
        answer.All("data.changePart.part.fields", "name").ShouldBe(["voltage"]);
        (await _service.AskAsync("{part(number:\"QN-100\"){fields{text}}}")).All("data.part.fields", "text").ShouldBe(["115 V"]);
    }

    [Fact]
    public async Task Two_who_read_the_same_version_do_not_overwrite_each_other()
    {
        await ChangeAsync("QN-100", version: 1, "{motor:{voltage:\"115 V\"}}", "by the first");
        var second = await ChangeAsync("QN-100", version: 1, "{motor:{voltage:\"460 V\"}}", "by the second");
        second.Codes.ShouldBeEmpty();
        second.Text("data.changePart.__typename").ShouldBe("PartConflict");
        second.Text("data.changePart.present.title").ShouldBe("by the first");
        second.Text("data.changePart.present.version").ShouldBe("2");
    }

    [Theory]
    [InlineData("changePart(version:99, part:{number:\"QN-100\", maker:\"Quennor\", title:\"x\", spec:{motor:{}}})", "changePart")]
    [InlineData("retirePart(number:\"QN-100\", version:99)", "retirePart")]
    public async Task A_version_that_never_was_is_answered_with_the_one_that_is(string field, string name)
    {
        var answer = await _service.WriteAsync($"mutation{{{field}{Result}}}");
        answer.Text($"data.{name}.sentence").ShouldBe("QN-100 is at version 1, and the version sent was 99: nothing was written. Look at the part as it is now, and send version 1 if the change still holds.");
        answer.Text($"data.{name}.present.version").ShouldBe("1");
    }

    [Fact]
    public async Task A_number_spelt_anew_stays_one_part()
    {
        await ChangeAsync("qn100", version: 1, "{motor:{power:\"1/4 hp\"}}");
        var ranked = await _service.AskAsync("{replacements(need:{motor:{}}, first:100){edges{node{part{number}}}}}");
        ranked.All("data.replacements.edges", "node.part.number").Count(number => number is "qn100" or "QN-100").ShouldBe(1);
    }

    [Fact]
    public async Task A_part_does_not_become_one_of_another_kind()
    {
        var answer = await ChangeAsync("QN-100", version: 1, "{capacitor:{}}");
        answer.Codes.ShouldBe([Codes.KindMismatch]);
        answer.Places.ShouldBe(["part.spec"]);
    }

    [Fact]
    public async Task A_change_of_an_unknown_part_is_refused()
    {
        var answer = await ChangeAsync("NIX-1", version: 1, "{motor:{}}");
        answer.Codes.ShouldBe([Codes.PartNotFound]);
        answer.Places.ShouldBe(["part.number"]);
    }

    [Fact]
    public async Task A_retired_part_resolves_and_is_never_offered()
    {
        var answer = await _service.WriteAsync($"mutation{{retirePart(number:\"QN-100\", version:1){Result}}}");
        answer.Text("data.retirePart.part.status").ShouldBe("RETIRED");
        (await _service.AskAsync("{part(number:\"QN-100\"){status}}")).Text("data.part.status").ShouldBe("RETIRED");
        var ranked = await _service.AskAsync("{replacements(need:{motor:{oldPartNumber:\"QN-100\"}}, first:100){edges{node{part{number}}}}}");
        ranked.All("data.replacements.edges", "node.part.number").ShouldNotContain("QN-100");
    }

    [Theory]
    [InlineData("QN-100", 7, "PartConflict")]
    [InlineData("ZV-8", 1, "PartConflict")]
    public async Task Retiring_what_was_changed_or_retired_before_is_a_conflict(string number, int version, string expected) =>
        (await _service.WriteAsync($"mutation{{retirePart(number:\"{number}\", version:{version}){Result}}}")).Text("data.retirePart.__typename").ShouldBe(expected);

    [Fact]
    public async Task Retiring_an_unknown_part_is_refused()
    {
        var answer = await _service.WriteAsync($"mutation{{retirePart(number:\"NIX\", version:1){Result}}}");
        answer.Codes.ShouldBe([Codes.PartNotFound]);
        answer.Places.ShouldBe(["number"]);
    }

    [Fact]
    public async Task Supersessions_are_kept()
    {
        var answer = await _service.WriteAsync(
            $"mutation{{addPart(part:{{number:\"N-3\", maker:\"Quennor\", title:\"old\", status:DISCONTINUED, spec:{{motor:{{}}}}, supersededBy:[{{number:\"QN-100\", saidBy:\"maker\", on:\"2024-02-29\"}}]}}){Result}}}");
        answer.Text("data.addPart.part.supersededBy.0.number").ShouldBe("QN-100");
        answer.Text("data.addPart.part.supersededBy.0.on").ShouldBe("2024-02-29");
    }

    [Theory]
    [InlineData("application/graphql-response+json")]
    [InlineData("application/json")]
    public async Task Writing_needs_a_key_even_from_this_machine(string accept)
    {
        var answer = await _service.SendAsync(new(HttpMethod.Post, "/graphql")
        {
            Content = JsonContent.Create(new { query = "mutation{retirePart(number:\"QN-100\", version:1){__typename}}" }),
            Headers = { { "Accept", accept } },
        });
        answer.Status.ShouldBe(HttpStatusCode.Unauthorized);
        answer.MediaType.ShouldBe(accept);
        answer.Codes.ShouldBe([Codes.KeyNeeded]);
        answer.Headers["WWW-Authenticate"].ShouldBe("Bearer");
        (await _service.AskAsync("{part(number:\"QN-100\"){status}}")).Text("data.part.status").ShouldBe("CURRENT");
    }

    [Theory]
    [InlineData("mutation{retirePart(number:\"QN-100\", version:1){__typename}}", "")]
    [InlineData("query A{__typename} mutation B{retirePart(number:\"QN-100\", version:1){__typename}}", "&operationName=B")]
    public async Task A_mutation_by_GET_is_refused_however_often_it_was_posted(string query, string operation)
    {
        var address = $"/graphql?query={Uri.EscapeDataString(query)}{operation}";
        (await GetAsync(address)).Status.ShouldBe(HttpStatusCode.MethodNotAllowed);
        (await _service.AskAsync("{part(number:\"QN-100\"){status}}")).Text("data.part.status").ShouldBe("CURRENT");

        await _service.WriteAsync("mutation{retirePart(number:\"QN-100\", version:1){__typename}}");
        await ChangeAsync("QN-100", version: 2, "{motor:{}}");
        var again = await GetAsync(address);
        again.Status.ShouldBe(HttpStatusCode.MethodNotAllowed);
        again.Headers["Allow"].ShouldBe("POST");
        again.Codes.ShouldBe([Codes.MethodNotAllowed]);
        (await _service.AskAsync("{part(number:\"QN-100\"){status}}")).Text("data.part.status").ShouldBe("CURRENT");
    }

    [Fact]
    public async Task The_query_beside_a_mutation_may_be_asked_by_GET() =>
        (await GetAsync($"/graphql?operationName=A&query={Uri.EscapeDataString("query A{__typename} mutation B{retirePart(number:\"QN-100\", version:1){__typename}}")}")).Text("data.__typename").ShouldBe("Query");

    private Task<Answered> GetAsync(string address) => _service.SendAsync(new(HttpMethod.Get, address) { Headers = { { "Authorization", $"Bearer {_service.Key}" } } });

    private Task<Answered> AddAsync(string number, string spec) =>
        _service.WriteAsync($"mutation($n: ID!){{addPart(part:{{number:$n, maker:\"Quennor\", title:\"a part\", spec:{spec}}}){Result}}}", new { n = number });

    private Task<Answered> ChangeAsync(string number, int version, string spec, string title = "changed") =>
        _service.WriteAsync($"mutation($n: ID!, $v: Int!, $t: String!){{changePart(version:$v, part:{{number:$n, maker:\"Quennor\", title:$t, spec:{spec}}}){Result}}}", new { n = number, v = version, t = title });
}
