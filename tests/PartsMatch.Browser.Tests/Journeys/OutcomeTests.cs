namespace PartsMatch.Browser.Tests.Journeys;

/// <summary>Back from the roof: how it went is told from the fit sheet, and put right when it turns out otherwise.</summary>
public sealed class OutcomeTests(SmallSite site) : IClassFixture<SmallSite>
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public Task How_it_went_is_told_from_the_sheet_and_put_right_later(bool hasScript) => site.VisitSignedInAsync(Look.Phone with { HasScript = hasScript }, async visitor =>
    {
        var place = hasScript ? "roof 1" : "roof 2";
        await visitor.GoAsync("/sheet?kind=motor&old=ZV-7&site.volts=202+V&part=QN-100");
        await visitor.Page.GetByRole(AriaRole.Link, new() { Name = "How did it go?" }).ClickAsync();
        (await visitor.HeadingAsync()).ShouldBe("How did it go?");
        (await visitor.Field("on").InputValueAsync()).ShouldMatch(@"^\d{4}-\d{2}-\d{2}$");

        // Nothing is chosen for anybody.
        await visitor.Field("place").FillAsync(place);
        visitor.Expect(422);
        await visitor.PressAsync("Keep it");
        (await visitor.Page.Locator("[role=alert] li").CountAsync()).ShouldBe(1);
        (await visitor.Field("place").InputValueAsync()).ShouldBe(place);
        await visitor.Page.GetByText("Right first time", new() { Exact = true }).ClickAsync();
        await visitor.PressAsync("Keep it");
        (await visitor.HeadingAsync()).ShouldBe("How it went");
        (await visitor.Page.Locator("main").InnerTextAsync()).ShouldContain("right first time");

        await visitor.Page.GetByRole(AriaRole.Link, new() { Name = "Put it right" }).ClickAsync();
        (await visitor.Field("place").InputValueAsync()).ShouldBe(place);
        await visitor.Page.GetByText("Came back", new() { Exact = true }).ClickAsync();
        await visitor.Field("reason").SelectOptionAsync("failed again");
        await visitor.PressAsync("Keep it");
        (await visitor.Page.Locator("main").InnerTextAsync()).ShouldContain("came back: failed again");

        await visitor.Page.GetByRole(AriaRole.Link, new() { Name = "an earlier record" }).ClickAsync();
        (await visitor.Page.Locator("main").InnerTextAsync()).ShouldContain("a later record took the place of this one");
        await visitor.GoAsync("/parts/QN-100");
        (await visitor.Page.Locator("[aria-labelledby=outcomes] li").Filter(new() { HasText = place }).CountAsync()).ShouldBe(2);
    });
}
