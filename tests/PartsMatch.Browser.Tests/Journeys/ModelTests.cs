namespace PartsMatch.Browser.Tests.Journeys;

/// <summary>From a likelihood to what it comes from, and a training that somebody asks for.</summary>
public sealed class ModelTests(SmallSite site) : IClassFixture<SmallSite>
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public Task A_likelihood_leads_to_what_it_comes_from(bool hasScript) => site.VisitAsync(Look.Phone with { HasScript = hasScript }, async visitor =>
    {
        await visitor.GoAsync("/replacements?kind=motor&text=HP+1/4+RPM+1075+V+230+PH+1+HZ+60&site.volts=230");
        await visitor.Page.GetByRole(AriaRole.Link, new() { Name = "from hand-set weights, not yet from outcomes" }).ClickAsync();
        (await visitor.HeadingAsync()).ShouldBe("What parts are ranked by: fan motor");
        (await visitor.Page.Locator("main").InnerTextAsync()).ShouldContain("These are hand-set weights: a person's judgement");
        (await visitor.Page.Locator(".costs .drawing svg").First.IsVisibleAsync()).ShouldBeTrue();
        (await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Train on all outcomes" }).CountAsync()).ShouldBe(0);

        await visitor.Page.GetByRole(AriaRole.Link, new() { Name = "thermostat" }).ClickAsync();
        (await visitor.HeadingAsync()).ShouldBe("What parts are ranked by: thermostat or defrost switch");
    });

    [Fact]
    public async Task Whoever_signed_in_asks_for_a_training_and_reads_what_came_of_it()
    {
        // One after the other: while one training goes on nobody is offered another.
        await AskForATrainingAsync(hasScript: true);
        await AskForATrainingAsync(hasScript: false);
    }

    private Task AskForATrainingAsync(bool hasScript) => site.VisitSignedInAsync(Look.Phone with { HasScript = hasScript }, async visitor =>
    {
        await visitor.GoAsync("/parts?kind=motor");
        await visitor.Page.GetByRole(AriaRole.Link, new() { Name = "What parts are ranked by" }).ClickAsync();
        var trainings = await visitor.Page.Locator(".history > li").CountAsync();
        await visitor.PressAsync("Train on all outcomes");
        for (var again = visitor.Page.GetByRole(AriaRole.Link, new() { Name = "Look again" }); await again.CountAsync() > 0;) await again.ClickAsync();
        var told = await visitor.Page.Locator(".history > li").First.InnerTextAsync();
        told.ShouldContain("too few outcomes. 3 outcomes, 3 of them teach nothing");
        told.ShouldContain("Training takes 50 outcomes");
        (await visitor.Page.Locator(".history > li").CountAsync()).ShouldBe(trainings + 1);

        // Nothing was sent twice by going back and reloading.
        await visitor.Page.ReloadAsync();
        (await visitor.Page.Locator(".history > li").CountAsync()).ShouldBe(trainings + 1);
    });
}
