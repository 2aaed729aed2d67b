using System.Net;
using System.Net.Http.Json;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Net.Http.Headers;
using PartsMatch.Service.Access;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Access;

/// <summary>In with a key or a one-time link, what the cookie is like, and what it opens.</summary>
public sealed class SignInTests
{
    private const string Elsewhere = "192.0.2.7";
    private const string Retire = "mutation{retirePart(number:\"QN-100\", version:1){__typename}}";

    [Fact]
    public async Task The_key_signs_in_and_every_page_says_so_until_one_signs_out()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        (await visitor.GetAsync("/parts")).Body.ShouldContain("href=\"/sign-in?back=%2Fparts\"");
        await visitor.GetAsync("/sign-in?back=%2Fparts%3Ftext%3D5%2B6");
        await visitor.ResendAsync("/sign-in", ("key", service.Key));
        visitor.Page.Status.ShouldBe(HttpStatusCode.SeeOther);
        visitor.Page.Headers["Location"].ShouldBe("/parts?text=5+6");

        (await visitor.FollowAsync()).Body.ShouldContain("Key: <strong>first</strong>");
        visitor.Page.Body.ShouldNotContain(">Sign in<");
        await visitor.ResendAsync("/sign-out");
        visitor.Page.Headers["Location"].ShouldBe("/parts?text=5+6");
        visitor.Cookies.ShouldNotContainKey("signed-in");
        (await visitor.FollowAsync()).Body.ShouldContain(">Sign in<");
    }

    [Fact]
    public async Task A_copy_of_the_cookie_opens_nothing_after_signing_out_and_other_visits_go_on()
    {
        await using var service = await TestService.StartAsync();
        var (visitor, other) = (await Visitor.SignedInAsync(service), await Visitor.SignedInAsync(service));
        var copy = visitor.Cookies["signed-in"];
        await visitor.GetAsync("/parts");
        await visitor.ResendAsync("/sign-out");

        var thief = new Visitor(service);
        thief.Carry("signed-in", copy);
        (await thief.GetAsync("/parts/new")).Headers["Location"].ShouldStartWith("/sign-in");
        (await other.GetAsync("/parts/new")).Status.ShouldBe(HttpStatusCode.OK);
    }

    [Theory]
    [InlineData("", "", false)]
    [InlineData("X-Forwarded-Proto", "http", false)]
    [InlineData("X-Forwarded-Proto", "https", true)]
    [InlineData("Forwarded", "for=192.0.2.7;proto=https", true)]
    public async Task Cookies_are_hidden_from_scripts_and_from_other_sites_and_behind_TLS_from_plain_HTTP(string header, string value, bool isSecure)
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service) { Headers = header.Length == 0 ? new Dictionary<string, string>() : new Dictionary<string, string> { [header] = value } };
        await visitor.GetAsync("/sign-in");
        var form = visitor.SetCookies.Single();
        await visitor.SendAsync("/sign-in", ("key", service.Key));
        var signedIn = visitor.SetCookies.Single(cookie => cookie.Name == "signed-in");
        await visitor.PostAsync("/units", ("units", "si"));
        var units = visitor.SetCookies.Single();

        foreach (var cookie in (SetCookieHeaderValue[])[form, signedIn, units])
        {
            cookie.SameSite.ShouldBe(SameSiteMode.Lax, cookie.Name.ToString());
            cookie.HttpOnly.ShouldBeTrue(cookie.Name.ToString());
            cookie.Secure.ShouldBe(isSecure, cookie.Name.ToString());
        }

        signedIn.Value.ToString().ShouldNotContain("first");
        visitor.Cookies.Values.ShouldAllBe(kept => !kept.Contains(service.Key, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Two_weeks_after_the_last_visit_one_is_signed_out()
    {
        var clock = new SteppedClock();
        await using var service = await TestService.StartAsync(clock, inDataFolder: null);
        var visitor = await Visitor.SignedInAsync(service);
        // Twice nine days: the visit between them counts as the last one.
        clock.Step(TimeSpan.FromDays(9));
        (await visitor.GetAsync("/parts")).Body.ShouldContain("Sign out");
        clock.Step(TimeSpan.FromDays(9));
        (await visitor.GetAsync("/parts")).Body.ShouldContain("Sign out");
        clock.Step(TimeSpan.FromDays(14) + TimeSpan.FromSeconds(1));
        (await visitor.GetAsync("/parts")).Body.ShouldNotContain("Sign out");
    }

    [Fact]
    public async Task A_cookie_of_a_key_that_was_taken_out_or_replaced_under_its_label_counts_for_nothing()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        // The same seal, and a store without the key: as after the key was taken out.
        await using var other = await TestService.StartAsync(clock: null, inDataFolder: folder => CopyKeys(service.DataFolder, folder));
        var elsewhere = new Visitor(other);
        elsewhere.Carry("signed-in", visitor.Cookies["signed-in"]);
        (await elsewhere.GetAsync("/parts")).Body.ShouldNotContain("Sign out", customMessage: "this store has a key of that label, and it is another one");

        // One that signed in there is let in by the same seals: it is the key that tells.
        var there = await Visitor.SignedInAsync(other);
        (await there.GetAsync("/parts")).Body.ShouldContain("Sign out");

        await using var without = await TestService.StartWithoutKeyAsync(clock: null, folder => CopyKeys(service.DataFolder, folder));
        var gone = new Visitor(without);
        gone.Carry("signed-in", visitor.Cookies["signed-in"]);
        (await gone.GetAsync("/parts")).Body.ShouldNotContain("Sign out");
        (await gone.GetAsync("/parts/new")).Status.ShouldBe(HttpStatusCode.SeeOther);
    }

    [Fact]
    public async Task A_cookie_that_was_tampered_with_counts_for_nothing()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        visitor.Carry("signed-in", visitor.Cookies["signed-in"][..^2] + "zz");
        (await visitor.GetAsync("/parts")).Body.ShouldNotContain("Sign out");
    }

    [Fact]
    public async Task A_cookie_reads_over_GraphQL_and_never_writes_there()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        var cookies = string.Join("; ", visitor.Cookies.Select(cookie => $"{cookie.Key}={cookie.Value}"));
        var write = new HttpRequestMessage(HttpMethod.Post, "/graphql") { Content = JsonContent.Create(new { query = Retire }), Headers = { { "Cookie", cookies }, { "Accept", "application/graphql-response+json" } } };
        var refused = await service.SendAsync(write);
        refused.Status.ShouldBe(HttpStatusCode.Unauthorized);
        refused.Codes.ShouldBe([Codes.KeyNeeded]);
        (await service.AskAsync("{part(number:\"QN-100\"){status}}")).Text("data.part.status").ShouldBe("CURRENT");

        var read = new HttpRequestMessage(HttpMethod.Get, "/graphql?query={__typename}") { Headers = { { "Cookie", cookies }, { TestService.FromHeader, Elsewhere } } };
        (await service.SendAsync(read)).Status.ShouldBe(HttpStatusCode.OK);
    }

    [Fact]
    public async Task From_elsewhere_a_page_leads_to_signing_in_and_back()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service) { From = Elsewhere };
        (await visitor.GetAsync("/parts?text=QN%20100")).Status.ShouldBe(HttpStatusCode.SeeOther);
        visitor.Page.Headers["Location"].ShouldBe("/sign-in?back=%2Fparts%3Ftext%3DQN%2520100");
        (await visitor.FollowAsync()).Status.ShouldBe(HttpStatusCode.OK);
        await visitor.ResendAsync("/sign-in", ("key", service.Key));
        visitor.Page.Headers["Location"].ShouldBe("/parts?text=QN%20100");
        (await visitor.FollowAsync()).Body.ShouldContain("QN-100");

        // A program is told in its own way.
        (await service.SendAsync(new(HttpMethod.Get, "/parts") { Headers = { { TestService.FromHeader, Elsewhere } } })).Text("code").ShouldBe(Codes.KeyNeeded);
    }

    [Fact]
    public async Task A_way_back_that_is_too_long_for_a_link_is_kept_on_the_page_that_asks_for_the_key()
    {
        await using var service = await TestService.StartAsync();
        var address = $"/parts?text={string.Join("%20", Enumerable.Repeat("%22QN%22", 150))}";
        address.Length.ShouldBeInRange(1_000, Link.Longest);
        var visitor = new Visitor(service) { From = Elsewhere };
        (await visitor.GetAsync(address)).Status.ShouldBe(HttpStatusCode.Unauthorized);
        visitor.Hidden("back").ShouldBe(address);
        await visitor.ResendAsync("/sign-in", ("key", service.Key));
        visitor.Page.Headers["Location"].ShouldBe(address);

        // The header's link stays short; the browser says where it was followed.
        (await new Visitor(service).GetAsync(address)).Body.ShouldContain("href=\"/sign-in\"");
        var follower = new Visitor(service) { Headers = new Dictionary<string, string> { ["Referer"] = $"http://localhost{address}" } };
        await follower.GetAsync("/sign-in");
        follower.Hidden("back").ShouldBe(address);
        var stranger = new Visitor(service) { Headers = new Dictionary<string, string> { ["Referer"] = "https://evil.example/parts" } };
        await stranger.GetAsync("/sign-in");
        stranger.Hidden("back").ShouldBeEmpty();
    }

    [Theory]
    [InlineData("https://evil.example/")]
    [InlineData("//evil.example/")]
    [InlineData("/\\evil.example/")]
    [InlineData("/\t/evil.example/")]
    [InlineData("/\n/evil.example/")]
    [InlineData(" //evil.example/")]
    [InlineData("javascript:alert(1)")]
    [InlineData("evil.example")]
    [InlineData("")]
    public async Task A_way_back_to_another_server_is_not_followed(string back)
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        await visitor.GetAsync($"/sign-in?back={Uri.EscapeDataString(back)}");
        await visitor.ResendAsync("/sign-in", ("key", service.Key));
        visitor.Page.Status.ShouldBe(HttpStatusCode.SeeOther);
        visitor.Page.Headers["Location"].ShouldBe("/");
    }

    [Fact]
    public async Task A_wrong_key_is_told_beside_its_input_and_not_shown_again()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        await visitor.GetAsync("/sign-in?back=%2Fparts");
        await visitor.ResendAsync("/sign-in", ("key", "partsmatch_wrong"));
        visitor.Page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        visitor.Page.Body.ShouldContain("not one of this service");
        visitor.Page.Body.ShouldNotContain("partsmatch_wrong");
        visitor.Hidden("back").ShouldBe("/parts");
        visitor.Cookies.ShouldNotContainKey("signed-in");
    }

    [Fact]
    public async Task A_one_time_link_spends_nothing_when_it_is_looked_at_and_signs_in_once()
    {
        await using var service = await TestService.StartAsync();
        var link = SignInLink.Once(service.Services.GetRequiredService<OneTimeCode>().Make("first"));
        (await new Visitor(service) { From = Elsewhere }.GetAsync(link)).Status.ShouldBe(HttpStatusCode.OK);

        var visitor = new Visitor(service) { From = Elsewhere };
        await visitor.GetAsync(link);
        (await visitor.ResendAsync("/sign-in/once")).Status.ShouldBe(HttpStatusCode.SeeOther);
        (await visitor.FollowAsync()).Body.ShouldContain("Key: <strong>first</strong>");

        var second = new Visitor(service);
        await second.GetAsync(link);
        (await second.ResendAsync("/sign-in/once")).Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        second.Page.Body.ShouldContain("used already");
        second.Cookies.ShouldNotContainKey("signed-in");
    }

    [Theory]
    [InlineData(14, true)]
    [InlineData(15, false)]
    public void A_one_time_code_holds_for_less_than_fifteen_minutes(int minutes, bool holds)
    {
        var clock = new SteppedClock();
        var code = new OneTimeCode(clock);
        var made = code.Make("first");
        clock.Step(TimeSpan.FromMinutes(minutes));
        (code.Spend(made) is not null).ShouldBe(holds);
        code.Spend(made).ShouldBeNull();
    }

    [Fact]
    public void A_new_one_time_code_takes_the_place_of_the_last()
    {
        var code = new OneTimeCode(new SteppedClock());
        var (first, second) = (code.Make("first"), code.Make("first"));
        code.Spend(first).ShouldBeNull();
        code.Spend(second).ShouldBe("first");
    }

    [Fact]
    public async Task What_cookies_are_sealed_with_lies_where_only_the_services_user_can_look_and_nothing_warns()
    {
        await using var service = await TestService.StartAsync();
        await Visitor.SignedInAsync(service);
        var keys = Path.Combine(service.DataFolder, "keys");
        Directory.GetFiles(keys).ShouldNotBeEmpty();
        if (!OperatingSystem.IsWindows()) File.GetUnixFileMode(keys).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        service.Log.Text.ShouldNotContain("Warning ");
        service.Log.Text.ShouldNotContain("Error ");
        service.Log.Text.ShouldNotContain(service.Key);
    }

    private static void CopyKeys(string from, string to)
    {
        Directory.CreateDirectory(Path.Combine(to, "keys"));
        foreach (var file in Directory.GetFiles(Path.Combine(from, "keys"))) File.Copy(file, Path.Combine(to, "keys", Path.GetFileName(file)));
    }
}
