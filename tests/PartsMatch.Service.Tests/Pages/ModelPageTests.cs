using System.Net;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>What parts are ranked by, for someone at a browser.</summary>
public sealed class ModelPageTests
{
    private const string Page = "/model?kind=motor";

    [Fact]
    public async Task Hand_set_weights_are_called_so_and_a_visitor_without_a_key_is_offered_no_button()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        var page = await visitor.GetAsync(Page);
        page.Status.ShouldBe(HttpStatusCode.OK);
        page.Body.ShouldContain("These are hand-set weights: a person&#x27;s judgement");
        page.Body.ShouldContain("in 97 of 100 cases");
        page.Body.ShouldContain("None yet.");
        page.Body.ShouldContain("needs a key: sign in first");
        page.Body.ShouldNotContain("action=\"/model");
        page.Body.ShouldNotContain("<script");
        page.Body.ShouldNotContain("style=\"");
        var aspects = Fit.Families.All[0].Aspects;
        aspects.Count.ShouldBeGreaterThan(10);
        aspects.Where(aspect => aspect.DefaultWeight.Shortfall > 0).ShouldAllBe(aspect => page.Body.Contains($"<h3>{aspect.Title}</h3>", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Every_kind_has_a_page_and_one_that_is_none_has_none_and_nothing_is_done_for_it()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        foreach (var family in Fit.Families.All) (await visitor.GetAsync($"/model?kind={family.Kind}")).Body.ShouldContain($"<h1>What parts are ranked by: {family.Title}</h1>");
        (await visitor.GetAsync("/model")).Body.ShouldContain("<h1>What parts are ranked by: fan motor</h1>");
        (await visitor.GetAsync("/model?kind=banana")).Status.ShouldBe(HttpStatusCode.NotFound);

        var signedIn = await Visitor.SignedInAsync(service);
        await signedIn.GetAsync(Page);
        foreach (var address in (string[])["/model/train", "/model/stop", "/model/back"])
        {
            foreach (var kind in (string[])["contactors", string.Empty]) (await signedIn.SendAsync(address, ("kind", kind))).Status.ShouldBe(HttpStatusCode.NotFound, $"{address} {kind}");
        }

        (await signedIn.GetAsync(Page)).Body.ShouldNotContain("A training goes on");
    }

    [Fact]
    public async Task Trained_by_a_button_the_page_says_from_what_how_well_and_which_parts_do_worse_and_a_button_goes_back()
    {
        await using var service = await TestService.StartAsync();
        await Recorded.OneMotorComesBackAsync(service, 400);
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync(Page);
        visitor.Page.Body.ShouldNotContain("Go back to the weights before", customMessage: "there are none");
        await SendAndFollowAsync(visitor, "/model/train");
        await EndedAsync(visitor);

        var body = visitor.Page.Body;
        body.ShouldContain("These weights were learnt from 400 outcomes from 2025-01-01 to 2025-12-31.");
        body.ShouldContain("To what then happened, on outcomes that were held out place by place, learnt weights gave ");
        body.ShouldContain("<title id=\"drawing-calibration-title\">Likelihood told, and how many were right</title>");
        body.ShouldContain("<th scope=\"col\">By chance alone</th>");
        body.Split("<th scope=\"row\">").Length.ShouldBe(11, "ten bins");
        body.ShouldContain("<a href=\"/parts/QN-200\">QN-200</a>");
        body.ShouldContain("by first: <strong>learnt weights were taken</strong>. 403 outcomes, 3 of them teach nothing");
        (await visitor.GetAsync("/replacements?kind=motor&text=HP+1/4+RPM+1075+V+230+PH+1+HZ+60&site.volts=230")).Body.ShouldContain("Likelihood <a href=\"/model?kind=motor\">from outcomes of past installations</a>.");

        await visitor.GetAsync(Page);
        await SendAndFollowAsync(visitor, "/model/back");
        visitor.Page.Body.ShouldContain("These are hand-set weights");
        visitor.Page.Body.ShouldContain("<strong>went back</strong>");
        await SendAndFollowAsync(visitor, "/model/back");
        visitor.Page.Body.ShouldContain("These weights were learnt from 400 outcomes");
    }

    [Fact]
    public async Task While_a_training_goes_on_the_page_says_how_far_it_is_and_a_button_stops_it()
    {
        await using var service = await TestService.StartAsync();
        await Recorded.OneMotorComesBackAsync(service, Recorded.ForLong);
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync(Page);
        await SendAndFollowAsync(visitor, "/model/train");
        visitor.Page.Body.ShouldContain("A training goes on");
        visitor.Page.Body.ShouldContain(">Look again</a>");
        visitor.Page.Body.ShouldContain("<progress max=\"");
        visitor.Page.Body.ShouldNotContain("Train on all outcomes");
        (await new Visitor(service).GetAsync(Page)).Body.ShouldNotContain("Stop it");

        await SendAndFollowAsync(visitor, "/model/stop");
        await EndedAsync(visitor);
        visitor.Page.Body.ShouldContain("<strong>stopped</strong>");
        visitor.Page.Body.ShouldContain("These are hand-set weights");
    }

    [Fact]
    public async Task Too_few_outcomes_are_told_on_the_page()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync("/model?kind=capacitor");
        (await visitor.SendAsync("/model/train", ("kind", "capacitor"))).Headers["Location"].ShouldBe("/model?kind=capacitor");
        await visitor.FollowAsync();
        await EndedAsync(visitor, "/model?kind=capacitor");
        visitor.Page.Body.ShouldContain("<strong>too few outcomes</strong>. 0 outcomes. Training takes 50 outcomes of parts that fit");
    }

    [Theory]
    [InlineData("/model/train")]
    [InlineData("/model/stop")]
    [InlineData("/model/back")]
    public async Task A_form_without_its_token_or_without_a_key_changes_nothing(string address)
    {
        await using var service = await TestService.StartAsync();
        await Recorded.OneMotorComesBackAsync(service, 400);
        (await new Visitor(service).PostAsync(address, ("kind", "motor"))).Status.ShouldBe(HttpStatusCode.Unauthorized);
        var visitor = await Visitor.SignedInAsync(service);
        var page = await visitor.PostAsync(address, ("kind", "motor"));
        page.Status.ShouldBe(HttpStatusCode.BadRequest);
        page.Body.ShouldContain("Nothing was done; if it is still meant, send it again.");
        (await service.AskAsync("{ model(kind: motor) { run { isRunning } trainings { end } } }")).Text("data.model.run").ShouldBe("");
    }

    [Fact]
    public async Task Weights_from_before_that_cannot_be_read_are_told_of_and_those_that_there_are_stay()
    {
        await using var service = await TestService.StartAsync(clock: null, folder =>
        {
            Directory.CreateDirectory(Path.Combine(folder, "weights"));
            File.WriteAllText(Path.Combine(folder, "weights", "motor.previous.json"), "{}");
        });
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync(Page);
        var page = await visitor.SendAsync("/model/back", ("kind", "motor"));
        page.Status.ShouldBe(HttpStatusCode.Conflict);
        page.Body.ShouldContain("The weights from before cannot be used, and nothing was changed. version is missing.");
        (await visitor.GetAsync(Page)).Body.ShouldContain("These are hand-set weights");
    }

    private static async Task SendAndFollowAsync(Visitor visitor, string address)
    {
        (await visitor.SendAsync(address, ("kind", "motor"))).Status.ShouldBe(HttpStatusCode.SeeOther);
        await visitor.FollowAsync();
    }

    private static async Task EndedAsync(Visitor visitor, string page = Page)
    {
        while ((await visitor.GetAsync(page)).Body.Contains("A training goes on", StringComparison.Ordinal)) await Task.Delay(50, TestContext.Current.CancellationToken);
    }
}
