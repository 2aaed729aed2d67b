using System.Net;
using Microsoft.Extensions.DependencyInjection;
using PartsMatch.Service.Tests.Support;
using PartsMatch.Store;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>How it went, from the fit sheet to what is kept.</summary>
public sealed class OutcomePagesTests : IAsyncLifetime
{
    private const string Need = "kind=motor&old=ZV-7&plate.shaftLength=4+in&site.volts=202+V";
    private TestService _service = null!;
    private Visitor _visitor = null!;

    public async ValueTask InitializeAsync()
    {
        _service = await TestService.StartAsync();
        _visitor = await Visitor.SignedInAsync(_service);
    }

    public ValueTask DisposeAsync() => _service.DisposeAsync();

    [Fact]
    public async Task From_the_sheet_to_what_is_kept_with_the_need_the_part_and_today()
    {
        var sheet = (await _visitor.GetAsync($"/sheet?part=QN-100&{Need}")).Body;
        var link = WebUtility.HtmlDecode(sheet.Split("How did it go?")[0].Split("href=\"")[^1].Split('"')[0]);
        link.ShouldStartWith("/outcome?part=QN-100&");

        var form = (await _visitor.GetAsync(link)).Body;
        form.ShouldContain($"name=\"on\" value=\"{DateTime.Now:yyyy-MM-dd}\"");
        await _visitor.ResendAsync("/outcome", ("result", "reworked"), ("reason", "something was missing"), ("place", "shed"), ("note", "no sleeve\r\nat hand"));
        _visitor.Page.Status.ShouldBe(HttpStatusCode.SeeOther);
        var kept = (await _visitor.FollowAsync()).Body;
        kept.ShouldContain("This is kept.");
        kept.ShouldContain("reworked: something was missing");
        kept.ShouldContain("Ranking learns nothing of it. Not known: ");
        var said = Newest().Said;
        (said.Kind, said.Part, said.OldPart, said.Place, said.Note, Newest().By).ShouldBe(("motor", "QN-100", "ZV-7", "shed", "no sleeve at hand", "first"));
        said.Plate.ShouldBe([new("shaftLength", "4 in")]);
        said.Site.ShouldBe([new("volts", "202 V")]);
        (await _visitor.GetAsync("/parts/QN-100")).Body.ShouldContain("Reworked</a>: something was missing");
    }

    [Fact]
    public async Task A_part_of_another_kind_than_what_failed_is_told_at_once()
    {
        var page = await _visitor.GetAsync($"/outcome?part=CK-5&{Need}");
        page.Status.ShouldBe(HttpStatusCode.NotFound);
        page.Body.ShouldContain("CK-5 is a run capacitor: it was not put in for a fan motor.");
    }

    [Fact]
    public async Task A_form_that_is_sent_twice_keeps_one_record_and_another_word_in_it_is_not_taken_for_the_same()
    {
        await _visitor.GetAsync($"/outcome?part=QN-100&{Need}");
        var (same, other) = (Filled("right first time"), Filled("came back"));
        var id = _visitor.Hidden("id");
        await _visitor.ResendAsync("/outcome", ("result", "right first time"));
        var where = _visitor.Page.Headers["Location"];
        where.ShouldBe($"/outcome/{id}");
        var count = All().Count;

        await _visitor.PostAsync("/outcome", same);
        (_visitor.Page.Status, _visitor.Page.Headers["Location"]).ShouldBe((HttpStatusCode.SeeOther, where));
        await _visitor.PostAsync("/outcome", [.. other, ("reason", "other")]);
        _visitor.Page.Status.ShouldBe(HttpStatusCode.Conflict);
        _visitor.Page.Body.ShouldContain("This form was sent before");
        _visitor.Page.Body.ShouldContain($"href=\"{where}\"");
        All().Count.ShouldBe(count);
    }

    [Fact]
    public async Task All_that_is_wrong_stands_beside_its_input_and_everything_typed_stands()
    {
        await _visitor.GetAsync($"/outcome?part=QN-100&{Need}");
        await _visitor.ResendAsync("/outcome", ("on", "yesterday"), ("place", new string('x', 101)), ("note", "kept note"), ("reason", "other"));
        _visitor.Page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        foreach (var input in (string[])["on", "place", "result"])
        {
            _visitor.Page.Body.ShouldContain($"href=\"#{input}\"", customMessage: input);
            _visitor.Page.Body.ShouldContain($"id=\"{input}-wrong\"", customMessage: input);
        }

        _visitor.Page.Body.ShouldContain("kept note");
        _visitor.Page.Body.ShouldContain("value=\"yesterday\"");
        _visitor.Page.Body.ShouldContain("name=\"site.volts\" value=\"202 V\"");
        All().ShouldAllBe(one => one.Said.Note != "kept note");
    }

    [Fact]
    public async Task What_is_kept_is_put_right_by_a_record_that_takes_its_place()
    {
        (await _visitor.GetAsync("/outcome/job-2")).Body.ShouldContain("href=\"/outcome?corrects=job-2\"");
        var form = (await _visitor.GetAsync("/outcome?corrects=job-2")).Body;
        form.ShouldContain("value=\"right first time\" checked");
        form.ShouldContain("name=\"plate.power\" value=\"1/4 hp\"");
        form.ShouldContain("name=\"on\" value=\"2026-01-10\"");
        await _visitor.ResendAsync("/outcome", ("result", "came back"), ("reason", "failed again"), ("note", "went in at once"));
        (await _visitor.FollowAsync()).Body.ShouldContain("href=\"/outcome/job-2\">an earlier record");
        Newest().Said.Corrects.ShouldBe("job-2");

        var before = (await _visitor.GetAsync("/outcome/job-2")).Body;
        before.ShouldContain("a later record took the place of this one");
        before.ShouldContain($"href=\"/outcome/{Newest().Said.Id}\"");
        before.ShouldNotContain("Put it right");
        (await _visitor.GetAsync("/outcome?corrects=job-2")).Status.ShouldBe(HttpStatusCode.SeeOther);
    }

    [Fact]
    public async Task Recording_asks_for_a_key_first_and_what_is_kept_is_read_without()
    {
        var stranger = new Visitor(_service);
        (await stranger.GetAsync($"/outcome?part=QN-100&{Need}")).Headers["Location"].ShouldStartWith("/sign-in?back=");
        (await stranger.PostAsync("/outcome", ("part", "QN-100"))).Status.ShouldBe(HttpStatusCode.Unauthorized);
        (await stranger.GetAsync("/outcome/job-2")).Status.ShouldBe(HttpStatusCode.OK);
    }

    [Theory]
    [InlineData("/outcome/no-such", 404)]
    [InlineData("/outcome?corrects=no-such", 404)]
    [InlineData($"/outcome?part=NO-SUCH&{Need}", 404)]
    [InlineData("/outcome?part=QN-100", 303)]
    [InlineData($"/outcome?{Need}", 303)]
    public async Task A_link_that_lacks_something_leads_on_or_says_so(string address, int status) => ((int)(await _visitor.GetAsync(address)).Status).ShouldBe(status);

    [Fact]
    public async Task A_form_without_its_token_is_shown_again_with_all_that_was_typed()
    {
        await _visitor.GetAsync($"/outcome?part=QN-100&{Need}");
        var count = All().Count;
        await _visitor.PostAsync("/outcome", [.. Filled("right first time").Where(one => one.Name != "token"), ("place", "shed")]);
        _visitor.Page.Status.ShouldBe(HttpStatusCode.BadRequest);
        _visitor.Page.Body.ShouldContain("value=\"shed\"");
        All().Count.ShouldBe(count);
    }

    /// <summary>The shown form with all that stands hidden in it, and a result.</summary>
    private (string Name, string Text)[] Filled(string result) =>
        [.. ((string[])["token", "kind", "old", "plate.shaftLength", "site.volts", "part", "id"]).Select(name => (name, _visitor.Hidden(name))), ("on", $"{DateTime.Now:yyyy-MM-dd}"), ("result", result)];

    private List<StoredOutcome> All() => [.. _service.Services.GetRequiredService<PartStore>().Outcomes.All(OutcomeRange.All)];

    private StoredOutcome Newest() => All()[^1];
}
