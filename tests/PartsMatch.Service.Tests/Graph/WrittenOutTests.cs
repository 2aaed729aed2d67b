using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>Short queries that are long once their fragments are written out: an answer shows that nothing walked them, as a walk would outlast the test.</summary>
public sealed class WrittenOutTests(SharedService shared) : IClassFixture<SharedService>
{
    [Theory]
    [InlineData("...NEXT ...NEXT")]
    [InlineData("x:__typename ...NEXT y:__typename ...NEXT")]
    [InlineData("...{...NEXT} ...on Query{...{...NEXT}}")]
    [InlineData("...NEXT @skip(if:true) ...NEXT @include(if:true)")]
    public async Task Fragments_that_spread_the_next_one_twice_are_refused_however_many_there_are(string spreads)
    {
        foreach (var count in (int[])[14, 24, 60])
        {
            var answer = await AskAsync("{...f0}" + Chain(count, spreads));
            answer.Codes.ShouldBe([Codes.QueryTooCostly]);
            answer.Text("errors.0.message").ShouldContain("10000");
        }

        (await AskAsync("{...f0}" + Chain(120, spreads))).Codes.ShouldHaveSingleItem().ShouldBeOneOf(Codes.QueryTooCostly, Codes.QueryTooDeep);
    }

    [Fact]
    public async Task So_are_those_that_stand_in_fields()
    {
        var chain = string.Concat(Enumerable.Range(0, 60).Select(at => $" fragment f{at} on Part{{a:supersededBy{{...f{at + 1}}} b:supersededBy{{...f{at + 1}}}}}"));
        (await AskAsync($"{{part(number:\"N\"){{...f0}}}}{chain} fragment f60 on Part{{number}}")).Codes.ShouldBe([Codes.QueryTooCostly]);
    }

    [Fact]
    public async Task So_are_those_that_no_operation_spreads() =>
        (await AskAsync("{__typename}" + Chain(120, "...NEXT ...NEXT"))).Codes.ShouldBe([Codes.QueryTooCostly]);

    [Fact]
    public async Task So_are_the_operations_of_one_document_together()
    {
        // f6 has 1, and each before it two spreads and twice what the next one has: 4, 10, 22, 46, 94, and f0 190.
        var operations = string.Concat(Enumerable.Range(0, 100).Select(at => $"query q{at}{{...f0}} "));
        (await AskAsync(operations + Chain(6, "...NEXT ...NEXT"))).Codes.ShouldBe([Codes.QueryTooCostly]);
    }

    [Fact]
    public async Task Fragments_that_come_round_to_themselves_are_no_query()
    {
        foreach (var last in (string[])["...f0", "...f0 ...f60 ...f0", "...f119 ...f120"])
        {
            var answer = await AskAsync("{...f0}" + Chain(120, "...NEXT", last));
            answer.Codes.ShouldNotBeEmpty();
            answer.Codes.ShouldAllBe(code => code == Codes.QueryInvalid);
        }
    }

    [Theory]
    [InlineData(100, true)]
    [InlineData(254, true)]
    [InlineData(255, false)]
    [InlineData(500, false)]
    public async Task Fragments_stand_so_deep_in_one_another(int count, bool isTaken) =>
        (await AskAsync("{...f0}" + Chain(count, "...NEXT"))).Codes.ShouldBe(isTaken ? [] : [Codes.QueryTooDeep]);

    [Fact]
    public async Task Fragments_within_a_fragment_stand_in_one_another_too()
    {
        var inner = string.Concat(Enumerable.Repeat("...{", 60)) + "...NEXT" + new string('}', 60);
        (await AskAsync("{...f0}" + Chain(20, inner))).Codes.ShouldBe([Codes.QueryTooDeep]);
    }

    [Theory]
    [InlineData("{...f ...f} fragment f on Query{__typename}", 4, true)]
    [InlineData("{...f ...f} fragment f on Query{__typename}", 3, false)]
    [InlineData("{a:__typename b:__typename ...{c:__typename}}", 4, true)]
    [InlineData("{a:__typename b:__typename ...{c:__typename}}", 3, false)]
    public async Task A_query_has_so_many_fields_and_fragments(string query, int limit, bool isTaken)
    {
        await using var service = await TestService.StartAsync($"--Limits:Selections={limit}");
        var answer = await service.AskAsync(query);
        answer.Codes.ShouldBe(isTaken ? [] : [Codes.QueryTooCostly]);
        if (!isTaken) answer.Text("errors.0.message").ShouldContain($"{limit} is the limit");
    }

    private Task<Answered> AskAsync(string query) => shared.Service.AskAsync(query).WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);

    /// <summary>Fragments f0, f1 and so on that spread the NEXT one, and the last.</summary>
    private static string Chain(int count, string spreads, string last = "__typename") =>
        string.Concat(Enumerable.Range(0, count).Select(at => $" fragment f{at} on Query{{{spreads.Replace("NEXT", $"f{at + 1}", StringComparison.Ordinal)}}}"))
        + $" fragment f{count} on Query{{{last}}}";
}
