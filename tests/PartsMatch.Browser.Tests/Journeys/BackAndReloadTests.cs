namespace PartsMatch.Browser.Tests.Journeys;

public sealed class BackAndReloadTests(Site site)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public Task Going_back_after_each_step_shows_what_was_typed(bool hasScript) => site.VisitAsync(Look.Phone with { HasScript = hasScript }, async visitor =>
    {
        var page = visitor.Page;
        await visitor.GoAsync("/");
        await visitor.Field("text").FillAsync(Job.Plate);
        await visitor.PressAsync("Read it");
        await page.Locator(".read-back").WaitForAsync();
        await visitor.TypeJobAsync();
        await visitor.PressAsync("Find parts that fit");
        await page.Locator(".parts h3 a").First.ClickAsync();
        (await visitor.HeadingAsync()).ShouldBe(Job.FittingPart);

        await page.GoBackAsync();
        (await visitor.HeadingAsync()).ShouldBe("Parts that fit");
        (await page.Locator(".parts h3 a").First.InnerTextAsync()).ShouldEndWith(Job.FittingPart);

        await page.GoBackAsync();
        (await visitor.Field("text").InputValueAsync()).ShouldBe(Job.Plate);
        (await visitor.Field("plate.power").InputValueAsync()).ShouldBe("1/4 hp");
        (await visitor.Field("site.volts").InputValueAsync()).ShouldBe("202");
        (await visitor.Field("plate.shaftForm").InputValueAsync()).ShouldBe("flat");
        (await visitor.Field("plate.mounts").GetByLabel("belly band", new() { Exact = true }).IsCheckedAsync()).ShouldBeTrue();

        await page.GoBackAsync();
        (await visitor.Field("text").InputValueAsync()).ShouldBe(Job.Plate);

        await page.GoForwardAsync();
        (await visitor.Field("plate.power").InputValueAsync()).ShouldBe("1/4 hp");
    });

    /// <summary>A page that is reached by GET is loaded again by GET: no browser asks whether to send a form a second time.</summary>
    [Fact]
    public Task Each_page_of_the_journey_loads_again_without_sending_a_form() => site.VisitAsync(Look.Phone, async visitor =>
    {
        var page = visitor.Page;
        await visitor.GoAsync("/");
        await ShouldLoadAgainAsync("What failed?");
        await visitor.Field("text").FillAsync(Job.Plate);
        await visitor.ArriveByAsync(() => visitor.PressAsync("Read it"));
        await ShouldLoadAgainAsync("What failed?");
        (await visitor.Field("plate.power").InputValueAsync()).ShouldBe("1/4 hp");
        await visitor.ArriveByAsync(() => visitor.PressAsync("Find parts that fit"));
        await ShouldLoadAgainAsync("Parts that may fit");
        await visitor.ArriveByAsync(() => visitor.PressAsync("SI"));
        await ShouldLoadAgainAsync("Parts that may fit");
        await visitor.ArriveByAsync(() => page.Locator(".parts h3 a").First.ClickAsync());
        await ShouldLoadAgainAsync(await visitor.HeadingAsync());

        async Task ShouldLoadAgainAsync(string heading)
        {
            var again = await page.ReloadAsync();
            again!.Request.Method.ShouldBe("GET");
            again.Status.ShouldBe(200);
            (await visitor.HeadingAsync()).ShouldBe(heading);
        }
    });

    [Fact]
    public Task A_link_that_was_sent_shows_the_same_page_to_another() => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync("/");
        await visitor.Field("text").FillAsync(Job.Plate);
        await visitor.PressAsync("Read it");
        await visitor.Page.Locator(".read-back").WaitForAsync();
        await visitor.TypeJobAsync();
        await visitor.PressAsync("Find parts that fit");
        var link = visitor.Page.Url;
        link.Length.ShouldBeLessThanOrEqualTo(2_000);
        var parts = await visitor.Page.Locator(".parts h3 a").AllInnerTextsAsync();
        parts.Count.ShouldBeGreaterThan(1);
        await site.VisitAsync(Look.Desk.InTheDark, async other =>
        {
            await other.GoAsync(link);
            (await other.Page.Locator(".parts h3 a").AllInnerTextsAsync()).ShouldBe(parts);
        });
    });
}
