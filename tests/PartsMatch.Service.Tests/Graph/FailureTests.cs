using System.Net;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>When the fault is ours, the client is told an id and the log holds the rest.</summary>
public sealed class FailureTests
{
    private const string Secret = "the clock fell off the wall";

    [Fact]
    public async Task An_exceptions_text_is_logged_under_an_id_and_never_told()
    {
        var clock = new FallingClock();
        await using var service = await TestService.StartAsync(clock, inDataFolder: null, "--environment=Development");
        clock.HasFallen = true;
        var answer = await service.WriteAsync("mutation{retirePart(number:\"QN-100\", version:1){__typename}}");
        answer.Codes.ShouldBe([Codes.Internal]);
        answer.Body.ShouldNotContain(Secret);
        answer.Body.ShouldNotContain("   at ");
        var id = answer.Text("errors.0.message").Split(' ')[^1].TrimEnd('.');
        id.Length.ShouldBe(32);
        service.Log.Text.ShouldContain(id);
        service.Log.Text.ShouldContain(Secret);
    }

    [Fact]
    public async Task A_failure_outside_GraphQL_is_problem_details_with_an_id()
    {
        await using var service = await TestService.StartAsync("--environment=Development");
        var answer = await service.SendAsync(new(HttpMethod.Get, "/health/live") { Headers = { { TestService.FromHeader, "192.0.2.7" }, { TestService.FailHeader, Secret } } });
        answer.Status.ShouldBe(HttpStatusCode.InternalServerError);
        answer.MediaType.ShouldBe("application/problem+json");
        answer.Text("code").ShouldBe(Codes.Internal);
        answer.Body.ShouldNotContain(Secret);
        service.Log.Text.ShouldContain(Secret);
    }

    [Fact]
    public async Task An_address_where_nothing_is_is_problem_details()
    {
        await using var service = await TestService.StartAsync();
        var answer = await service.SendAsync(new(HttpMethod.Get, "/nothing/here"));
        answer.Status.ShouldBe(HttpStatusCode.NotFound);
        answer.MediaType.ShouldBe("application/problem+json");
        answer.Text("code").ShouldBe(Codes.NoSuchPage);
    }

    [Fact]
    public async Task Keys_and_what_is_asked_are_not_logged()
    {
        await using var service = await TestService.StartAsync("--environment=Development");
        await service.WriteAsync("mutation{retirePart(number:\"QN-100\", version:1){__typename}}");
        await service.AskAsync("{part(number:\"very private\"){number}}");
        service.Log.Text.ShouldNotContain(service.Key);
        service.Log.Text.ShouldNotContain("very private");
    }

    private sealed class FallingClock : TimeProvider
    {
        public bool HasFallen { get; set; }

        public override DateTimeOffset GetUtcNow() => HasFallen ? throw new InvalidOperationException(Secret) : base.GetUtcNow();
    }
}
