using System.Net;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>Adding, changing and retiring by form: all complaints at once, and nothing typed is lost.</summary>
public sealed class PartWritePagesTests : IAsyncLifetime
{
    private const string Change = "/parts/QN-100/change";
    private TestService _service = null!;
    private Visitor _visitor = null!;

    public async ValueTask InitializeAsync()
    {
        _service = await TestService.StartAsync();
        _visitor = await Visitor.SignedInAsync(_service);
    }

    public ValueTask DisposeAsync() => _service.DisposeAsync();

    [Theory]
    [InlineData("/parts/new?kind=motor")]
    [InlineData(Change)]
    [InlineData("/parts/QN-100/retire")]
    public async Task Without_signing_in_even_this_machine_is_led_to_the_sign_in_page(string address)
    {
        var answer = await new Visitor(_service).GetAsync(address);
        answer.Status.ShouldBe(HttpStatusCode.SeeOther);
        answer.Headers["Location"].ShouldBe($"/sign-in?back={Uri.EscapeDataString(address)}");
    }

    [Fact]
    public async Task A_part_is_added_with_all_that_was_typed_and_its_history_says_by_whom()
    {
        await _visitor.GetAsync("/parts/new?kind=motor");
        await _visitor.ResendAsync(
            "/parts/new", ("number", "QN 900"), ("maker", "Quennor"), ("title", "fan motor 1/2 hp"), ("status", "discontinued"),
            ("spec.power", "1/2 hp"), ("spec.voltage", "208-230 V"), ("supersededBy.0.number", "QN-100"), ("supersededBy.0.saidBy", "maker"), ("supersededBy.0.on", "2024-02-29"));
        _visitor.Page.Status.ShouldBe(HttpStatusCode.SeeOther);
        var body = (await _visitor.FollowAsync()).Body;
        body.ShouldContain("<dt>Power</dt><dd>1/2 hp</dd>");
        body.ShouldContain("superseded by <a href=\"/parts/QN-100\">QN-100</a> on 2024-02-29, as maker says");
        body.ShouldContain("discontinued");
        body.ShouldContain("<strong>Added</strong> by first");
    }

    [Fact]
    public async Task All_that_is_wrong_is_said_at_once_each_beside_its_input_and_everything_typed_stands()
    {
        await _visitor.GetAsync("/parts/new?kind=motor");
        await _visitor.ResendAsync(
            "/parts/new", ("number", "--"), ("maker", ""), ("title", "kept title"), ("status", "lost"), ("spec.power", "strong"), ("spec.speed", "1075 rpm"), ("spec.colour", "green"),
            ("supersededBy.0.number", "QN-1"), ("supersededBy.0.on", "31.3.2024"));
        _visitor.Page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        var body = WebUtility.HtmlDecode(_visitor.Page.Body);
        foreach (var input in (string[])["number", "maker", "status", "spec.power", "spec.colour", "supersededBy.0.saidBy", "supersededBy.0.on"])
        {
            body.ShouldContain($"href=\"#{input}\"", customMessage: input);
            body.ShouldContain($"id=\"{input}-wrong\"", customMessage: input);
        }

        body.ShouldContain("7 things are to be put right");
        foreach (var typed in (string[])["--", "kept title", "strong", "1075 rpm", "green", "QN-1", "31.3.2024"]) body.ShouldContain($"value=\"{typed}\"", customMessage: typed);
        body.ShouldContain("<option value=\"lost\" selected");
    }

    [Fact]
    public async Task A_number_that_is_taken_leads_to_the_part_that_has_it()
    {
        await _visitor.GetAsync("/parts/new?kind=motor");
        await _visitor.ResendAsync("/parts/new", ("number", "qn 100"), ("maker", "Quennor"), ("title", "another one"));
        _visitor.Page.Status.ShouldBe(HttpStatusCode.Conflict);
        _visitor.Page.Body.ShouldContain("The catalogue has a part QN-100 already.");
        _visitor.Page.Body.ShouldContain("href=\"/parts/QN-100\"");
        _visitor.Page.Body.ShouldContain("value=\"another one\"");
    }

    [Fact]
    public async Task A_change_keeps_what_was_left_alone_and_the_history_says_what_differs()
    {
        await _visitor.GetAsync(Change);
        await _visitor.ResendAsync(Change, ("spec.power", "1/3 hp"), ("spec.shaftDiameter", ""), ("spec.poles", "6"));
        var body = (await _visitor.FollowAsync()).Body;
        body.ShouldContain("<dt>Voltage</dt><dd>208-230 V</dd>");
        body.ShouldContain("<th scope=\"row\">Power</th><td data-label=\"Before\">1/4 hp</td><td data-label=\"After\">1/3 hp</td>".Replace("><t", ">\n                <t", StringComparison.Ordinal));
        body.ShouldContain("version 2");
        body.ShouldContain("<strong>Changed</strong> by first");
        // 1/2 in was taken out, 6 poles were put in.
        body.ShouldContain("<td data-label=\"After\">not known</td>");
        body.ShouldContain("<td data-label=\"After\">6</td>");
        body.ShouldNotContain("<th scope=\"row\">Voltage</th>");
    }

    [Fact]
    public async Task The_number_may_be_spelt_anew_and_never_become_another_parts()
    {
        await _visitor.GetAsync(Change);
        await _visitor.ResendAsync(Change, ("number", "QN-200"));
        _visitor.Page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        _visitor.Page.Body.ShouldContain("href=\"#number\"");
        (await _visitor.GetAsync("/parts/QN-200")).Body.ShouldContain("version 1<");

        await _visitor.GetAsync(Change);
        await _visitor.ResendAsync(Change, ("number", "QN 100"));
        (await _visitor.FollowAsync()).Body.ShouldContain("<h1>QN 100</h1>");
    }

    [Fact]
    public async Task A_part_is_retired_once_it_was_asked_and_a_change_of_its_status_brings_it_back()
    {
        (await _visitor.GetAsync("/parts/QN-100/retire")).Body.ShouldContain("Retire QN-100?");
        await _visitor.ResendAsync("/parts/QN-100/retire");
        _visitor.Page.Status.ShouldBe(HttpStatusCode.SeeOther);
        (await _visitor.FollowAsync()).Body.ShouldContain("Retired:");
        (await _visitor.GetAsync("/parts")).Body.ShouldNotContain("QN-100");
        (await _visitor.GetAsync("/parts/QN-100/retire")).Body.ShouldNotContain(">Retire it<");

        await _visitor.GetAsync(Change);
        await _visitor.ResendAsync(Change, ("status", "current"));
        (await _visitor.FollowAsync()).Body.ShouldNotContain("Retired:");
    }

    [Fact]
    public async Task A_program_that_shows_its_key_may_leaf_and_the_form_of_a_kind_has_that_kinds_fields()
    {
        (await _visitor.GetAsync("/parts/new?kind=capacitor")).Body.ShouldContain("name=\"spec.tolerance\"");
        _visitor.Page.Body.ShouldNotContain("name=\"spec.shaftDiameter\"");
        var read = new HttpRequestMessage(HttpMethod.Get, "/parts") { Headers = { { TestService.FromHeader, "192.0.2.7" }, { "Authorization", $"Bearer {_service.Key}" } } };
        (await _service.SendAsync(read)).Status.ShouldBe(HttpStatusCode.OK);
    }

    [Fact]
    public async Task Saving_what_the_catalogue_says_already_writes_nothing_and_says_so()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync("/parts/ZV-7/change");
        await visitor.ResendAsync("/parts/ZV-7/change", ("title", " fan motor made no more "), ("status", "discontinued"));
        visitor.Page.Status.ShouldBe(HttpStatusCode.OK);
        visitor.Page.Body.ShouldContain("Nothing was changed, so nothing was written.");
        (await visitor.GetAsync("/parts/ZV-7")).Body.ShouldNotContain("version 2");

        await visitor.GetAsync("/parts/ZV-7/change");
        await visitor.ResendAsync("/parts/ZV-7/change", ("title", "another"), ("status", "discontinued"));
        (await visitor.FollowAsync()).Body.ShouldContain("version 2");
        // The version that is gone is a conflict also for one who changed nothing.
        await visitor.GetAsync("/parts/ZV-7/change");
        await visitor.ResendAsync("/parts/ZV-7/change", ("version", "1"), ("title", "fan motor made no more"), ("status", "discontinued"));
        visitor.Page.Status.ShouldBe(HttpStatusCode.Conflict);
    }
}
