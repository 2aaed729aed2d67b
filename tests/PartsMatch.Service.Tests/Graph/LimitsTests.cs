using System.Net;
using System.Net.Http.Json;
using System.Text;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>Each limit at its edge: what is just inside is answered, what is just outside is refused.</summary>
public sealed class LimitsTests
{
    [Theory]
    [InlineData(100, true)]
    [InlineData(101, false)]
    public async Task A_query_has_so_many_bytes(int bytes, bool isTaken)
    {
        await using var service = await TestService.StartAsync("--Limits:QueryBytes=100");
        var answer = await service.AskAsync("{__typename}".PadRight(bytes));
        answer.Codes.ShouldBe(isTaken ? [] : [Codes.QueryTooLong]);
        answer.Status.ShouldBe(isTaken ? HttpStatusCode.OK : HttpStatusCode.BadRequest);
    }

    [Theory]
    [InlineData(50, true)]
    [InlineData(51, false)]
    public async Task Variables_have_so_many_bytes(int bytes, bool isTaken)
    {
        await using var service = await TestService.StartAsync("--Limits:VariablesBytes=50");
        // {"n":"..."} is 8 bytes and the text.
        var answer = await service.AskAsync("query($n: ID!){part(number:$n){number}}", new { n = new string('x', bytes - 8) });
        answer.Codes.ShouldBe(isTaken ? [] : [Codes.RequestTooLarge]);
    }

    [Theory]
    [InlineData(200, HttpStatusCode.OK)]
    [InlineData(201, HttpStatusCode.RequestEntityTooLarge)]
    public async Task A_request_has_so_many_bytes_whether_its_length_is_said_or_not(int bytes, HttpStatusCode expected)
    {
        await using var service = await TestService.StartAsync("--Limits:RequestBytes=200");
        var body = Encoding.UTF8.GetBytes("{\"query\":\"{__typename}\"}".PadRight(bytes));
        foreach (var content in (HttpContent[])[new ByteArrayContent(body), new UnsizedContent(body)])
        {
            content.Headers.ContentType = new("application/json");
            (await service.SendAsync(new(HttpMethod.Post, "/graphql") { Content = content })).Status.ShouldBe(expected);
        }
    }

    [Theory]
    [InlineData("{parts{edges{node{number}}}}", true)]
    [InlineData("{parts{edges{node{price{amount}}}}}", false)]
    [InlineData("{parts{...A}} fragment A on PartConnection{edges{node{price{amount}}}}", false)]
    public async Task Fields_stand_so_deep_in_one_another(string query, bool isTaken)
    {
        await using var service = await TestService.StartAsync("--Limits:Depth=4");
        (await service.AskAsync(query)).Codes.ShouldBe(isTaken ? [] : [Codes.QueryTooDeep]);
    }

    [Theory]
    [InlineData(5, true)]
    [InlineData(6, false)]
    public async Task An_answer_costs_so_much(int first, bool isTaken)
    {
        // Worked by hand: parts 1, edges 1, then a node and its number for each of the first: 2 + 2 × 5 = 12.
        await using var service = await TestService.StartAsync("--Limits:Cost=12");
        (await service.AskAsync($"{{parts(first:{first}){{edges{{node{{number}}}}}}}}")).Codes.ShouldBe(isTaken ? [] : [Codes.QueryTooCostly]);
        (await service.AskAsync("query($n: Int!){parts(first:$n){edges{node{number}}}}", new { n = first })).Codes.ShouldBe(isTaken ? [] : [Codes.QueryTooCostly]);
    }

    [Fact]
    public async Task A_query_that_was_answered_once_is_measured_again_with_other_variables()
    {
        await using var service = await TestService.StartAsync("--Limits:Cost=12");
        const string query = "query($n: Int!){parts(first:$n){edges{node{number}}}}";
        (await service.AskAsync(query, new { n = 1 })).Codes.ShouldBeEmpty();
        (await service.AskAsync(query, new { n = 100 })).Codes.ShouldBe([Codes.QueryTooCostly]);
    }

    [Fact]
    public async Task An_operation_that_was_answered_is_answered_again_and_does_not_let_another_of_its_document_through()
    {
        await using var service = await TestService.StartAsync("--Limits:Cost=12");
        const string document = "query Cheap{parts(first:1){edges{node{number}}}} query Costly{parts(first:100){edges{node{number}}}}";
        var first = await AskAsync("Cheap");
        first.Codes.ShouldBeEmpty();
        (await AskAsync("Cheap")).Text("data.parts.edges.0.node.number").ShouldBe(first.Text("data.parts.edges.0.node.number"));
        (await AskAsync("Costly")).Codes.ShouldBe([Codes.QueryTooCostly]);
        (await AskAsync("Costly")).Codes.ShouldBe([Codes.QueryTooCostly]);

        Task<Answered> AskAsync(string operation) =>
            service.SendAsync(new(HttpMethod.Post, "/graphql") { Content = JsonContent.Create(new { query = document, operationName = operation }) });
    }

    [Fact]
    public async Task A_negative_first_does_not_pay_for_the_rest()
    {
        await using var service = await TestService.StartAsync("--Limits:Cost=12");
        var answer = await service.AskAsync("{credit: parts(first:-1000000){edges{node{number}}} parts(first:100){edges{node{number}}}}");
        answer.Codes.ShouldBe([Codes.QueryTooCostly]);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    [InlineData(100, true)]
    [InlineData(101, false)]
    [InlineData(-1, false)]
    public async Task A_list_has_1_to_100_items(int first, bool isTaken)
    {
        await using var service = await TestService.StartAsync();
        var answer = await service.AskAsync($"{{parts(first:{first}){{edges{{cursor}}}} replacements(need:{{motor:{{}}}}, first:{first}){{edges{{cursor}}}}}}");
        answer.Codes.ShouldAllBe(code => code == Codes.FirstOutOfRange);
        answer.Codes.Count.ShouldBe(isTaken ? 0 : 2, "both lists are refused");
        answer.Places.ShouldAllBe(place => place == "first");
    }

    [Theory]
    [InlineData("{parts(first:10000){edges{node{number title maker fields{name text label} supersededBy{number}}}}}")]
    [InlineData("{replacements(need:{motor:{}}, first:10000){edges{node{findings{title sentence missing{field}} part{number}}}}}")]
    public async Task A_list_that_is_asked_to_be_far_too_long_is_told_its_size(string query)
    {
        await using var service = await TestService.StartAsync();
        var answer = await service.AskAsync(query);
        answer.Codes.ShouldBe([Codes.FirstOutOfRange]);
        answer.Text("errors.0.message").ShouldBe("first is 1 to 100; 10000 was asked for.");
    }

    [Fact]
    public async Task Ordinary_fields_do_not_count_as_introspection()
    {
        await using var service = await TestService.StartAsync("--Limits:IntrospectionCost=1");
        (await service.AskAsync("{parts(first:100){edges{node{number fields{name}}}}}")).Codes.ShouldBeEmpty();
        (await service.AskAsync("{__schema{types{name}}}")).Codes.ShouldBe([Codes.QueryTooCostly]);
    }

    [Theory]
    [InlineData(20, true)]
    [InlineData(21, false)]
    public async Task Nearest_misses_are_1_to_20(int first, bool isTaken)
    {
        await using var service = await TestService.StartAsync();
        var answer = await service.AskAsync($"{{replacements(need:{{motor:{{}}}}){{nearestMisses(first:{first}){{part{{number}}}}}}}}");
        answer.Codes.ShouldBe(isTaken ? [] : [Codes.FirstOutOfRange]);
    }

    [Fact]
    public async Task What_takes_too_long_is_ended()
    {
        await using var service = await TestService.StartAsync("--Limits:Seconds=0.001");
        var slow = string.Join(' ', Enumerable.Range(0, 100).Select(at => $"a{at}: replacements(need:{{motor:{{}}}}){{totalByFit{{count}}}}"));
        (await service.AskAsync($"{{{slow}}}")).Codes.ShouldBe([Codes.TooSlow]);
    }

    [Fact]
    public async Task Introspection_costs_nothing_however_small_the_limit()
    {
        await using var service = await TestService.StartAsync("--Limits:Cost=1");
        var answer = await service.AskAsync(Introspection.Usual);
        answer.Codes.ShouldBeEmpty();
        answer.Text("data.__schema.queryType.name").ShouldBe("Query");
    }

    [Fact]
    public async Task Introspection_a_hundred_times_over_is_refused()
    {
        await using var service = await TestService.StartAsync();
        var many = string.Join(' ', Enumerable.Range(0, 100).Select(at => $"a{at}: __schema{{types{{fields{{args{{type{{fields{{args{{type{{name}}}}}}}}}}}}}}}}"));
        (await service.AskAsync($"{{{many}}}")).Codes.ShouldBe([Codes.QueryTooCostly]);
    }

    [Theory]
    [InlineData("--Limits:Depth=0")]
    [InlineData("--Limits:Seconds=-1")]
    [InlineData("--Limits:QueryBytes=many")]
    public async Task A_limit_that_is_none_keeps_the_service_from_starting(string setting)
    {
        using var data = new TestFolder();
        using var seed = new TestFolder();
        Seed.WriteTo(seed);
        var error = new StringWriter();
        var code = await Service.Hosting.Serving.RunAsync([$"--data={data.Path}", $"--Data:SeedFolder={seed.Path}", "--urls=http://127.0.0.1:0", setting], TextWriter.Null, error, TestContext.Current.CancellationToken);
        code.ShouldBe(Service.Hosting.ExitCode.SettingsRefused);
        error.ToString().ShouldContain(setting["--Limits:".Length..setting.IndexOf('=')]);
        error.ToString().ShouldNotContain(" at PartsMatch");
    }

    private sealed class UnsizedContent(byte[] body) : HttpContent
    {
        protected override Task SerializeToStreamAsync(Stream stream, TransportContext? context) => stream.WriteAsync(body).AsTask();

        protected override bool TryComputeLength(out long length)
        {
            length = 0;
            return false;
        }
    }
}
