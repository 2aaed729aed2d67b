using System.Net;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>What goes wrong is told a person as a page that says what to do, and a program as problem details.</summary>
public sealed class ErrorPageTests(SharedService shared) : IClassFixture<SharedService>
{
    private const string Secret = "the clock fell off the wall";
    private const string Html = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";

    [Theory]
    [InlineData("/nothing/here", HttpStatusCode.NotFound, "There is nothing here", "href=\"/parts\"")]
    [InlineData("/parts/no-such-part", HttpStatusCode.NotFound, "The catalogue has no part “no-such-part”", "href=\"/parts\"")]
    [InlineData("/units", HttpStatusCode.MethodNotAllowed, "This address takes POST.", "href=\"/\"")]
    public async Task A_page_says_what_was_wrong_and_what_there_is(string address, HttpStatusCode status, string said, string link)
    {
        var answer = await AskAsync(address);
        answer.Status.ShouldBe(status);
        answer.MediaType.ShouldBe("text/html");
        WebUtility.HtmlDecode(answer.Body).ShouldContain(said);
        answer.Body.ShouldContain(link);
        answer.Body.ShouldContain("<html lang=\"en\">");
        answer.Headers["Content-Security-Policy"].ShouldContain("default-src 'none'");
    }

    [Theory]
    [InlineData("/health/nothing", Html, true)]
    [InlineData("/nothing", "application/json", false)]
    [InlineData("/nothing", "*/*", false)]
    [InlineData("/nothing", "text/html;q=0.5, application/json", false)]
    [InlineData("/nothing", "application/json;q=0.5, text/html", true)]
    [InlineData("/nothing", "not a media type at all", false)]
    public async Task Whoever_prefers_pages_gets_one(string address, string accept, bool isPage)
    {
        var answer = await AskAsync(address, ("Accept", accept));
        answer.Status.ShouldBe(HttpStatusCode.NotFound);
        answer.MediaType.ShouldBe(isPage ? "text/html" : "application/problem+json");
    }

    [Theory]
    [InlineData("/graphql")]
    [InlineData("/graphql/schema")]
    [InlineData("/health/live")]
    public async Task An_address_for_programs_has_no_pages(string address)
    {
        (await AskAsync(address, (TestService.FailHeader, Secret))).MediaType.ShouldBe("application/problem+json");
    }

    [Fact]
    public async Task A_failure_is_a_page_with_an_id_and_never_the_exceptions_text()
    {
        foreach (var address in (string[])["/", "/parts", "/parts/QN-100", "/sign-in"])
        {
            var answer = await AskAsync(address, (TestService.FailHeader, Secret));
            answer.Status.ShouldBe(HttpStatusCode.InternalServerError);
            answer.MediaType.ShouldBe("text/html");
            answer.Body.ShouldNotContain(Secret);
            answer.Body.ShouldNotContain("InvalidOperation");
            answer.Body.ShouldNotContain("   at ");
            answer.Headers["Content-Security-Policy"].ShouldContain("default-src 'none'");
            var id = answer.Body.Split("The log holds it under ")[1].Split('.')[0];
            id.Length.ShouldBe(32);
            shared.Service.Log.Text.ShouldContain(id);
        }
    }

    [Fact]
    public async Task A_failure_amid_a_form_is_a_page_all_the_same()
    {
        var clock = new FallingClock();
        await using var service = await TestService.StartAsync(clock, inDataFolder: null, "--environment=Development");
        var visitor = new Visitor(service);
        await visitor.GetAsync("/sign-in");
        clock.HasFallen = true;
        var answer = await visitor.SendAsync("/sign-in", ("key", service.Key));
        answer.Status.ShouldBe(HttpStatusCode.InternalServerError);
        answer.MediaType.ShouldBe("text/html");
        answer.Body.ShouldNotContain(Secret);
        answer.Body.ShouldContain("The log holds it under");
    }

    [Fact]
    public async Task What_is_no_form_and_what_is_too_much_of_one_is_told()
    {
        var json = new HttpRequestMessage(HttpMethod.Post, "/") { Content = new StringContent("{}", System.Text.Encoding.UTF8, "application/json"), Headers = { { "Accept", Html } } };
        var refused = await shared.Service.SendAsync(json);
        refused.Status.ShouldBe(HttpStatusCode.UnsupportedMediaType);
        refused.MediaType.ShouldBe("text/html");

        // A form may hold 1,024 inputs (published: FormOptions.ValueCountLimit).
        var many = Enumerable.Range(0, 1025).Select(at => KeyValuePair.Create(FormattableString.Invariant($"plate.x{at}"), "1"));
        var tooMuch = await shared.Service.SendAsync(new(HttpMethod.Post, "/") { Content = new FormUrlEncodedContent(many), Headers = { { "Accept", Html } } });
        tooMuch.Status.ShouldBe(HttpStatusCode.RequestEntityTooLarge);
        tooMuch.Body.ShouldContain("too much at once");

        var program = await shared.Service.SendAsync(new(HttpMethod.Post, "/") { Content = new FormUrlEncodedContent(many) });
        program.Text("code").ShouldBe(Codes.RequestTooLarge);
    }

    private Task<Answered> AskAsync(string address, params (string Name, string Value)[] headers)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, address);
        foreach (var (name, value) in headers) request.Headers.TryAddWithoutValidation(name, value);
        if (!request.Headers.Contains("Accept")) request.Headers.TryAddWithoutValidation("Accept", Html);
        return shared.Service.SendAsync(request);
    }

    private sealed class FallingClock : TimeProvider
    {
        public bool HasFallen { get; set; }

        public override DateTimeOffset GetUtcNow() => HasFallen ? throw new InvalidOperationException(Secret) : base.GetUtcNow();
    }
}
