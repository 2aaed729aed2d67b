using System.Net;
using System.Net.Http.Json;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Access;

/// <summary>Who may read: this machine unless told otherwise, everyone when told so, and whoever has a key.</summary>
public sealed class AccessTests
{
    private const string Elsewhere = "192.0.2.7";
    private const string OpenReads = "--Access:OpenReads=true";
    private const string KeysForAll = "--Access:KeysForAllReads=true";

    [Theory]
    [InlineData("", "127.0.0.1", HttpStatusCode.OK)]
    [InlineData("", "::1", HttpStatusCode.OK)]
    [InlineData("", "::ffff:127.0.0.1", HttpStatusCode.OK)]
    [InlineData("", Elsewhere, HttpStatusCode.Unauthorized)]
    [InlineData(OpenReads, Elsewhere, HttpStatusCode.OK)]
    [InlineData(KeysForAll, "127.0.0.1", HttpStatusCode.Unauthorized)]
    [InlineData(KeysForAll, Elsewhere, HttpStatusCode.Unauthorized)]
    public async Task Reading_without_a_key(string setting, string from, HttpStatusCode expected)
    {
        await using var service = await TestService.StartAsync(setting.Length == 0 ? [] : [setting]);
        var answer = await ReadAsync(service, (TestService.FromHeader, from));
        answer.Status.ShouldBe(expected);
        if (expected == HttpStatusCode.Unauthorized) answer.Codes.ShouldBe([Codes.KeyNeeded]);

        // With a key it is allowed whatever the setting and wherever from.
        (await ReadAsync(service, (TestService.FromHeader, from), ("Authorization", $"Bearer {service.Key}"))).Status.ShouldBe(HttpStatusCode.OK);
    }

    [Theory]
    [InlineData("Host", "evil.example")]
    [InlineData("Host", "127.0.0.1.evil.example")]
    [InlineData("Origin", "https://evil.example")]
    [InlineData("Origin", "null")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("X-Forwarded-For", "192.0.2.7")]
    [InlineData("X-Forwarded-For", "127.0.0.1")]
    [InlineData("Forwarded", "for=192.0.2.7")]
    public async Task What_a_web_page_or_a_proxy_sends_from_this_machine_is_not_this_machine_asking(string header, string value)
    {
        await using var service = await TestService.StartAsync();
        (await ReadAsync(service, (header, value))).Status.ShouldBe(HttpStatusCode.Unauthorized);
        (await ReadAsync(service, (header, value), ("Authorization", $"Bearer {service.Key}"))).Status.ShouldBe(HttpStatusCode.OK);
    }

    [Theory]
    [InlineData("Host", "localhost:5080")]
    [InlineData("Host", "127.0.0.1:5080")]
    [InlineData("Host", "[::1]:5080")]
    [InlineData("Origin", "http://localhost")]
    [InlineData("Sec-Fetch-Site", "same-origin")]
    public async Task What_a_page_of_this_service_sends_is(string header, string value)
    {
        await using var service = await TestService.StartAsync();
        (await ReadAsync(service, (header, value))).Status.ShouldBe(HttpStatusCode.OK);
    }

    /// <summary>A link in web mail that a person follows; and what a page could do by itself.</summary>
    [Theory]
    [InlineData("/parts", "GET", "navigate", "document", HttpStatusCode.OK)]
    [InlineData("/?text=QN-100", "GET", "navigate", "document", HttpStatusCode.OK)]
    [InlineData("/parts", "GET", "navigate", "iframe", HttpStatusCode.Unauthorized)]
    [InlineData("/parts", "GET", "no-cors", "image", HttpStatusCode.Unauthorized)]
    [InlineData("/parts", "GET", "cors", "empty", HttpStatusCode.Unauthorized)]
    [InlineData("/parts", "GET", "navigate", "", HttpStatusCode.Unauthorized)]
    [InlineData("/", "POST", "navigate", "document", HttpStatusCode.Unauthorized)]
    [InlineData("/graphql?query={__typename}", "GET", "navigate", "document", HttpStatusCode.Unauthorized)]
    [InlineData("/export/motor.csv", "GET", "navigate", "document", HttpStatusCode.Unauthorized)]
    public async Task A_link_that_is_followed_from_another_site_opens_a_page_and_nothing_else_does(string address, string method, string mode, string destination, HttpStatusCode expected)
    {
        await using var service = await TestService.StartAsync();
        var request = new HttpRequestMessage(new HttpMethod(method), address) { Content = method == "POST" ? new FormUrlEncodedContent([KeyValuePair.Create("text", "QN-100")]) : null };
        foreach (var (name, value) in (ReadOnlySpan<(string, string)>)[("Sec-Fetch-Site", "cross-site"), ("Sec-Fetch-Mode", mode), ("Sec-Fetch-Dest", destination)]) request.Headers.TryAddWithoutValidation(name, value);
        (await service.SendAsync(request)).Status.ShouldBe(expected);
    }

    [Fact]
    public async Task A_forwarding_header_does_not_make_another_machine_this_one()
    {
        await using var service = await TestService.StartAsync();
        (await ReadAsync(service, (TestService.FromHeader, Elsewhere), ("X-Forwarded-For", "127.0.0.1"))).Status.ShouldBe(HttpStatusCode.Unauthorized);
    }

    [Theory]
    [InlineData("Bearer wrong")]
    [InlineData("Bearer ")]
    [InlineData("Basic dTpw")]
    public async Task A_wrong_key_is_refused_also_where_none_is_needed_and_nothing_more_is_said(string authorization)
    {
        await using var service = await TestService.StartAsync();
        var plain = await ReadAsync(service, ("Authorization", authorization));
        plain.Status.ShouldBe(HttpStatusCode.Unauthorized);
        plain.MediaType.ShouldBe("application/json");
        plain.Codes.ShouldBe([Codes.KeyWrong]);
        plain.Headers["WWW-Authenticate"].ShouldBe("Bearer");
        plain.Body.ShouldNotContain(service.Key);

        var newer = await ReadAsync(service, ("Authorization", authorization), ("Accept", "application/graphql-response+json"));
        newer.MediaType.ShouldBe("application/graphql-response+json");
        newer.Codes.ShouldBe([Codes.KeyWrong]);
    }

    [Fact]
    public async Task A_key_with_one_letter_changed_is_wrong()
    {
        await using var service = await TestService.StartAsync();
        var wrong = service.Key[..^1] + (service.Key[^1] == 'A' ? 'B' : 'A');
        (await ReadAsync(service, ("Authorization", $"Bearer {wrong}"))).Codes.ShouldBe([Codes.KeyWrong]);
    }

    [Fact]
    public async Task The_schemas_text_is_guarded_like_reading_and_refused_as_problem_details()
    {
        await using var service = await TestService.StartAsync();
        var refused = await service.SendAsync(new(HttpMethod.Get, "/graphql/schema") { Headers = { { TestService.FromHeader, Elsewhere } } });
        refused.Status.ShouldBe(HttpStatusCode.Unauthorized);
        refused.MediaType.ShouldBe("application/problem+json");
        refused.Text("code").ShouldBe(Codes.KeyNeeded);
        (await service.SendAsync(new(HttpMethod.Get, "/graphql/schema"))).Body.ShouldContain("type Query");
    }

    [Theory]
    [InlineData("/health/live", "live")]
    [InlineData("/health/ready", "ready")]
    public async Task Health_is_open_to_all(string address, string status)
    {
        await using var service = await TestService.StartAsync(KeysForAll);
        var answer = await service.SendAsync(new(HttpMethod.Get, address) { Headers = { { TestService.FromHeader, Elsewhere } } });
        answer.Status.ShouldBe(HttpStatusCode.OK);
        answer.Text("status").ShouldBe(status);
    }

    [Fact]
    public async Task Answers_tell_browsers_to_keep_their_hands_off()
    {
        await using var service = await TestService.StartAsync();
        var answer = await ReadAsync(service);
        answer.Headers["X-Content-Type-Options"].ShouldBe("nosniff");
        answer.Headers["Content-Security-Policy"].ShouldContain("default-src 'none'");
        answer.Headers["Cache-Control"].ShouldBe("no-store");
        answer.Headers.ShouldNotContainKey("Access-Control-Allow-Origin");
    }

    private static Task<Answered> ReadAsync(TestService service, params (string Name, string Value)[] headers)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, "/graphql") { Content = JsonContent.Create(new { query = "{__typename}" }) };
        foreach (var (name, value) in headers) request.Headers.TryAddWithoutValidation(name, value);
        return service.SendAsync(request);
    }
}
