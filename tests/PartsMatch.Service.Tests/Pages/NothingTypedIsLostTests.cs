using System.Net;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>Units, another kind of part, a sign-in that ran out: what is typed comes along.</summary>
public sealed class NothingTypedIsLostTests
{
    private const string Elsewhere = "192.0.2.7";

    private static readonly (string Name, string Text)[] Part =
    [
        ("kind", "motor"), ("version", "0"), ("number", "QN-910"), ("maker", "Quennor"), ("title", "fan <motor> & more"), ("status", "current"), ("spec.power", "1/4 hp"), ("spec.speed", "fast"),
    ];

    [Theory]
    [InlineData("/", "plate.speed", "fast", "kind", "motor")]
    [InlineData("/", "site.volts", "202", "plate.power", "a lot")]
    [InlineData("/before", "read.motorAmps", "9 A", "plate.speed", "fast")]
    [InlineData("/after", "read.motorAmps", "9 A", "part", "QN-300")]
    [InlineData("/compare", "old", "QN-100", "site.volts", "many")]
    [InlineData("/compare", "part", "QN-100", "site.volts", "many")]
    public async Task Other_units_show_a_page_again_with_all_that_was_typed(string address, string name, string text, string otherName, string otherText)
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        await visitor.PostAsync(address, (name, text), (otherName, otherText), ("units", "si"));
        visitor.Cookies["units"].ShouldBe("si");
        if (visitor.Page.Status == HttpStatusCode.SeeOther) await visitor.FollowAsync();
        var body = WebUtility.HtmlDecode(visitor.Page.Body);
        body.ShouldContain($"name=\"{name}\" value=\"{text}\"");
        body.ShouldContain($"name=\"{otherName}\" value=\"{otherText}\"");
        body.ShouldContain("value=\"si\" aria-pressed=\"true\"", customMessage: "the page that answers is in the units that were chosen");
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/before")]
    [InlineData("/after")]
    [InlineData("/compare")]
    [InlineData("/parts/new")]
    [InlineData("/parts/QN-100/change")]
    public async Task The_buttons_of_a_pages_frame_are_sent_with_its_form(string address)
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        var body = (await visitor.GetAsync(address)).Body;
        body.ShouldContain($"<form id=\"typed\" method=\"post\" action=\"{address}\"");
        body.ShouldContain("<button form=\"typed\" name=\"units\" value=\"si\"");
        body.ShouldContain($"<button form=\"typed\" formaction=\"/sign-out\" name=\"onward\" value=\"{address}\"");
        body[..body.IndexOf("name=\"units\"", StringComparison.Ordinal)].ShouldContain("<button class=\"skip\" form=\"typed\" tabindex=\"-1\" aria-hidden=\"true\">", customMessage: "Enter in an input presses the first button of the form");
    }

    [Fact]
    public async Task Units_chosen_where_nothing_is_typed_complain_of_nothing()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        await visitor.PostAsync("/", ("kind", "motor"), ("units", "us"));
        visitor.Page.Headers["Location"].ShouldBe("/?kind=motor");
        await visitor.PostAsync("/compare", ("kind", "motor"), ("units", "us"));
        visitor.Page.Headers["Location"].ShouldBe("/compare");
    }

    [Fact]
    public async Task Units_chosen_beside_a_search_keep_the_words_that_are_not_sent_yet()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        (await visitor.GetAsync("/parts?kind=motor")).Body.ShouldContain("formaction=\"/units?back=/parts\" formmethod=\"post\"");
        await visitor.PostAsync("/units?back=/parts", ("kind", "motor"), ("text", "5/8 quennor"), ("units", "us"));
        visitor.Page.Headers["Location"].ShouldBe("/parts?kind=motor&text=5/8+quennor");
    }

    [Fact]
    public async Task Another_kind_takes_what_it_has_fields_for_and_keeps_the_rest_until_the_first_is_chosen_again()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        await visitor.PostAsync("/", ("kind", "motor"), ("text", "HP 1/4 RPM fast"), ("plate.speed", "fast"), ("site.volts", "202"), ("to", "capacitor"));
        visitor.Page.Status.ShouldBe(HttpStatusCode.OK, "nothing was asked yet, so nothing is complained of");
        visitor.Page.Body.ShouldContain("HP 1/4 RPM fast");
        visitor.Hidden("kind").ShouldBe("capacitor");
        visitor.Hidden("kept.plate.speed").ShouldBe("fast");

        await visitor.ResendAsync("/", ("text", "HP 1/4 RPM fast"), ("to", "motor"));
        visitor.Hidden("kind").ShouldBe("motor");
        visitor.Page.Body.ShouldContain("name=\"plate.speed\" value=\"fast\"");
        visitor.Page.Body.ShouldContain("name=\"site.volts\" value=\"202\"");
        visitor.Page.Body.ShouldNotContain("kept.");
    }

    [Fact]
    public async Task A_link_of_one_kind_keeps_what_was_typed_for_another()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        await visitor.PostAsync("/", ("kind", "capacitor"), ("text", "45/5 MFD 440 VAC"), ("kept.plate.speed", "fast"), ("then", "find"));
        visitor.Page.Headers["Location"].ShouldContain("kept.plate.speed=fast");
    }

    [Fact]
    public async Task A_new_part_of_another_kind_keeps_its_names_and_the_fields_of_the_first()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.PostAsync("/parts/new", [.. Part, ("to", "capacitor")]);
        visitor.Page.Status.ShouldBe(HttpStatusCode.OK);
        visitor.Page.Body.ShouldContain("<h1>Add a run capacitor</h1>");
        WebUtility.HtmlDecode(visitor.Page.Body).ShouldContain("value=\"fan <motor> & more\"");
        visitor.Hidden("kept.speed").ShouldBe("fast");
        await visitor.ResendAsync("/parts/new", ("to", "motor"));
        visitor.Page.Body.ShouldContain("name=\"spec.speed\" value=\"fast\"");
        (await visitor.GetAsync("/parts/QN-910")).Status.ShouldBe(HttpStatusCode.NotFound, "nothing was written");
    }

    [Fact]
    public async Task A_part_that_is_sent_after_the_sign_in_ran_out_is_kept_through_signing_in_and_shown_again()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        await visitor.PostAsync("/parts/new", Part);
        visitor.Page.Status.ShouldBe(HttpStatusCode.Unauthorized);
        visitor.Page.Body.ShouldContain("What you typed is kept");

        await visitor.ResendAsync("/sign-in", ("key", "partsmatch_wrong"));
        visitor.Page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        await visitor.ResendAsync("/sign-in", ("key", service.Key));
        (await visitor.FollowAsync()).Status.ShouldBe(HttpStatusCode.OK);
        visitor.Page.Body.ShouldContain("You are signed in. Nothing is saved yet");
        visitor.Page.Body.ShouldNotContain(service.Key);
        foreach (var (name, text) in Part.Where(one => one.Name is not "status")) WebUtility.HtmlDecode(visitor.Page.Body).ShouldContain($"name=\"{name}\" value=\"{text}\"");
        (await visitor.GetAsync("/parts/QN-910")).Status.ShouldBe(HttpStatusCode.NotFound, "a form that came before the key writes nothing");

        await visitor.PostAsync("/parts/new", Part);
        visitor.Page.Status.ShouldBe(HttpStatusCode.BadRequest, "without the page's token still nothing is written");
        await visitor.ResendAsync("/parts/new", ("spec.speed", "1075 rpm"));
        (await visitor.FollowAsync()).Body.ShouldContain("<h1>QN-910</h1>");
    }

    [Fact]
    public async Task Another_sites_form_that_is_carried_through_signing_in_does_nothing()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        await visitor.PostAsync("/parts/QN-100/retire", ("version", "1"));
        await visitor.ResendAsync("/sign-in", ("key", service.Key));
        (await visitor.FollowAsync()).Status.ShouldBe(HttpStatusCode.BadRequest);
        visitor.Page.Body.ShouldContain("Nothing was done");
        (await visitor.GetAsync("/parts/QN-100")).Body.ShouldNotContain("Retired:");
    }

    [Theory]
    [InlineData("//evil.example/")]
    [InlineData("https://evil.example/")]
    [InlineData("")]
    public async Task A_form_is_never_sent_on_to_another_server(string onward)
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        await visitor.PostAsync("/sign-in/first", ("onward", onward), ("number", "QN-910"));
        await visitor.ResendAsync("/sign-in", ("key", service.Key));
        visitor.Page.Status.ShouldBe(HttpStatusCode.SeeOther);
        visitor.Page.Headers["Location"].ShouldBe("/");
    }

    [Fact]
    public async Task A_plate_that_is_sent_from_elsewhere_after_the_sign_in_ran_out_is_read_once_one_is_signed_in()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service) { From = Elsewhere };
        await visitor.PostAsync("/", ("kind", "motor"), ("text", "HP 1/4 RPM 1075"), ("site.volts", "202"), ("then", "find"));
        await visitor.ResendAsync("/sign-in", ("key", service.Key));
        (await visitor.FollowAsync()).Headers["Location"].ShouldStartWith("/replacements?", customMessage: "reading asks for no second look");
        WebUtility.HtmlDecode((await visitor.FollowAsync()).Body).ShouldContain("</span> 202 V");
        visitor.Page.Body.ShouldContain("1075 rpm");
    }

    [Fact]
    public async Task Signing_out_beside_a_form_keeps_it_for_whoever_signs_in_again()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync("/parts/new");
        await visitor.SendAsync("/sign-out", [("onward", "/parts/new"), .. Part]);
        await visitor.FollowAsync();
        visitor.Page.Status.ShouldBe(HttpStatusCode.Unauthorized);
        visitor.Hidden("number").ShouldBe("QN-910");
        visitor.Cookies.ShouldNotContainKey("signed-in");
    }

    [Fact]
    public async Task A_table_that_is_sent_with_an_old_token_keeps_which_table_it_was()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync("/parts");
        await visitor.UploadAsync("/tables", "file", "number", ("kind", "stock"), ("token", "made up"));
        visitor.Page.Status.ShouldBe(HttpStatusCode.BadRequest);
        visitor.Page.Body.ShouldContain("<option value=\"stock\" selected");
    }
}
