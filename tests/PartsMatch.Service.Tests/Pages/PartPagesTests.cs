using System.Net;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>The catalogue to leaf through, and a part with its history.</summary>
public sealed class PartPagesTests(SharedService shared) : IClassFixture<SharedService>
{
    private readonly Visitor _visitor = new(shared.Service);

    [Theory]
    [InlineData("/parts", "QN-100 QN-200 QN-300 ZV-7 ZV-9 CK-5", "ZV-8")]
    [InlineData("/parts?text=zavvo", "ZV-7 ZV-9", "QN-100 ZV-8")]
    [InlineData("/parts?text=qn100", "QN-100", "QN-200")]
    [InlineData("/parts?text=5%2F8+quennor", "QN-300", "QN-100")]
    [InlineData("/parts?kind=capacitor", "CK-5", "QN-100")]
    [InlineData("/parts?kind=capacitor&text=quennor", "No part has all of “quennor”", "QN-100<")]
    [InlineData("/parts?kind=nonsense", "QN-100 CK-5", "ZV-8")]
    [InlineData("/parts?text=ZV8", "was retired", "QN-100")]
    public async Task The_list_shows_what_has_every_word(string address, string shown, string hidden)
    {
        var answer = await _visitor.GetAsync(address);
        answer.Status.ShouldBe(HttpStatusCode.OK);
        var body = WebUtility.HtmlDecode(answer.Body);
        foreach (var one in shown.StartsWith("QN", StringComparison.Ordinal) || shown.StartsWith("ZV", StringComparison.Ordinal) ? shown.Split(' ') : [shown]) body.ShouldContain(one);
        foreach (var one in hidden.Split(' ')) body.ShouldNotContain($">{one}");
    }

    [Fact]
    public async Task A_page_of_the_list_leads_to_the_next_until_all_were_shown_once()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        for (var at = 1; at <= 61; at++)
        {
            await service.WriteAsync("mutation($part:PartInput!){addPart(part:$part){__typename}}", new { part = new { number = FormattableString.Invariant($"LEAF {at}"), maker = "Leafy & Co", title = "fan motor", spec = new { motor = new { speed = "1075 rpm" } } } });
        }

        var seen = new List<string>();
        var address = "/parts?text=leafy+%26";
        for (var pages = 0; address.Length > 0 && pages < 5; pages++)
        {
            var page = (await visitor.GetAsync(address)).Body;
            seen.AddRange(page.Split("<h2><a href=\"/parts/LEAF-").Skip(1).Select(rest => rest.Split('"')[0]));
            address = page.Contains(">The next ones<", StringComparison.Ordinal) ? WebUtility.HtmlDecode(page.Split("\">The next ones<")[0].Split("href=\"")[^1]) : string.Empty;
        }

        seen.Count.ShouldBe(61);
        seen.ShouldBeUnique();
        (await visitor.GetAsync("/parts?text=leafy&after=nonsense")).Headers["Location"].ShouldBe("/parts?text=leafy");
    }

    [Theory]
    [InlineData("/parts/QN-100")]
    [InlineData("/parts/qn%20100")]
    [InlineData("/parts/Q%2FN-100")]
    [InlineData("/parts/qn100")]
    public async Task A_part_is_found_however_its_number_is_written(string address)
    {
        var answer = await _visitor.GetAsync(address);
        answer.Status.ShouldBe(HttpStatusCode.OK);
        answer.Body.ShouldContain("<h1>QN-100</h1>");
    }

    [Fact]
    public async Task A_part_shows_its_fields_its_stock_where_it_leads_and_how_it_came()
    {
        var body = (await _visitor.GetAsync("/parts/QN-100")).Body;
        body.ShouldContain("<dt>Power</dt><dd>1/4 hp</dd>");
        body.ShouldContain("3 at hand");
        body.ShouldContain("84.50 USD");
        body.ShouldContain("href=\"/replacements?kind=motor&amp;old=QN-100\"");
        body.ShouldContain("Came with the store");
        body.ShouldNotContain("/parts/QN-100/change");
        (await _visitor.GetAsync("/replacements?kind=motor&old=QN-100")).Status.ShouldBe(HttpStatusCode.OK);

        (await _visitor.GetAsync("/parts/ZV-7")).Body.ShouldContain("superseded by <a href=\"/parts/QN-100\">QN-100</a> on 2021-04-30, as maker says");
        (await _visitor.GetAsync("/parts/ZV-8")).Body.ShouldContain("Retired:");
    }

    [Fact]
    public async Task Fields_are_shown_in_the_units_that_were_chosen()
    {
        await _visitor.PostAsync("/units", ("units", "si"));
        // 1/4 electrical horsepower is 186.5 W (published: 746 W to the horsepower).
        (await _visitor.GetAsync("/parts/QN-100")).Body.ShouldContain("186.5 W");
    }

    [Theory]
    [InlineData("A/B 5", "/parts/A-B-5")]
    [InlineData("new", "/parts/-new")]
    [InlineData("N.E.W", "/parts/-new")]
    [InlineData("..7", "/parts/--7")]
    [InlineData("Ü 1%?#", "/parts/%C3%9C-1---")]
    public async Task Every_number_has_an_address_of_its_own(string number, string address)
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync("/parts/new?kind=motor");
        await visitor.ResendAsync("/parts/new", ("number", number), ("maker", "Quennor"), ("title", "fan motor"));
        visitor.Page.Headers["Location"].ShouldBe(address);
        (await visitor.FollowAsync()).Body.ShouldContain($"<h1>{number}</h1>");
        await visitor.GetAsync($"{address}/change");
        await visitor.ResendAsync($"{address}/change", ("title", "another title"));
        (await visitor.FollowAsync()).Body.ShouldContain("another title");
    }

    [Fact]
    public async Task A_part_says_what_replaced_it_and_what_it_replaced()
    {
        (await _visitor.GetAsync("/parts/ZV-7")).Body.ShouldContain("It was superseded by <a href=\"/parts/QN-100\">QN-100</a> on 2021-04-30, as maker says.");
        _visitor.Page.Body.ShouldNotContain("It replaced");
        (await _visitor.GetAsync("/parts/QN-100")).Body.ShouldContain("It replaced <a href=\"/parts/ZV-7\">ZV-7</a> on 2021-04-30, as maker says.");
    }

    [Fact]
    public async Task A_part_called_like_a_script_stays_text_everywhere()
    {
        const string Script = "<script>alert(1)</script>";
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync("/parts/new?kind=motor");
        await visitor.ResendAsync("/parts/new", ("number", Script), ("maker", Script), ("title", Script), ("spec.speed", "1075 rpm"), ("supersededBy.0.number", $"{Script}2"), ("supersededBy.0.saidBy", Script), ("supersededBy.0.on", "2024-03-31"));
        var part = visitor.Page.Headers["Location"];
        await visitor.GetAsync($"{part}/change");
        await visitor.ResendAsync($"{part}/change", ("title", $"{Script} anew"));
        visitor.Page.Status.ShouldBe(HttpStatusCode.SeeOther);

        var escaped = Uri.EscapeDataString(Script);
        foreach (var address in (string[])[part, $"{part}/change", $"{part}/retire", "/parts", $"/parts?text={escaped}", $"/parts/{escaped}", $"/parts/{escaped}3", $"/replacements?kind=motor&old={escaped}", $"/sheet?kind=motor&plate.speed=1075&part={escaped}", $"/sign-in?back={escaped}", $"/sign-in/once?code={escaped}", $"/?text={escaped}"])
        {
            var body = (await visitor.GetAsync(address)).Body;
            body.ShouldNotContain("<script", Case.Insensitive, address);
            body.ShouldContain("&lt;script", Case.Insensitive, address);
        }

        // Refused, in conflict, or sent twice: what is typed is shown back as text.
        await visitor.GetAsync($"{part}/change");
        (await visitor.ResendAsync($"{part}/change", ("version", "1"))).Body.ShouldNotContain("<script");
        await visitor.GetAsync($"{part}/change");
        (await visitor.ResendAsync($"{part}/change", ("spec.speed", Script), ("status", Script), ("spec.<script>", "1"))).Body.ShouldNotContain("<script");
    }
}
