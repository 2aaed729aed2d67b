namespace PartsMatch.Browser.Tests.Journeys;

/// <summary>A plate of which only half can be read: what to read next, and what to take along if it cannot be.</summary>
public sealed class UnreadPlateTests(Site site)
{
    private const string Half = "HP 1/4 RPM 1075 V 208-230 PH 1 HZ 60";

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public Task The_next_reading_leads_to_its_field_and_narrows_the_list(bool hasScript) => site.VisitAsync(Look.Phone with { HasScript = hasScript }, async visitor =>
    {
        var page = visitor.Page;
        await visitor.GoAsync($"/replacements?text={Uri.EscapeDataString(Half)}&site.volts=230");
        var before = await HowManyAsync();
        var advice = page.Locator(".next-readings a");
        (await advice.CountAsync()).ShouldBe(3);
        (await advice.AllInnerTextsAsync()).ShouldAllBe(text => text.Contains("It decides ", StringComparison.Ordinal) || text.Contains("It tells which part is the best.", StringComparison.Ordinal) || text.EndsWith("Every part here waits for it.", StringComparison.Ordinal));

        var address = await advice.First.GetAttributeAsync("href");
        var field = address!.Split('#')[1];
        await advice.First.ClickAsync();
        (await visitor.HeadingAsync()).ShouldBe("What failed?");
        await visitor.Field(field).WaitForAsync();
        (await visitor.Field(field).IsVisibleAsync()).ShouldBeTrue(field);

        await visitor.GoAsync($"/replacements?text={Uri.EscapeDataString(Half)}&site.volts=230&plate.shaftDiameter=3/8+in");
        (await HowManyAsync()).ShouldBeLessThan(before);
        (await page.Locator(".next-readings").InnerTextAsync()).ShouldNotContain("shaft diameter");

        async Task<int> HowManyAsync() => int.Parse((await page.Locator(".filter a").First.InnerTextAsync()).Split('(', ')')[1], System.Globalization.CultureInfo.InvariantCulture);
    });

    [Fact]
    public Task What_to_take_along_lists_parts_with_what_they_need_and_leads_to_their_sheets() => site.VisitAsync(Look.Phone, async visitor =>
    {
        var page = visitor.Page;
        await visitor.GoAsync($"/replacements?text={Uri.EscapeDataString(Half)}&site.volts=230");
        await page.Locator(".carry > summary").ClickAsync();

        (await page.Locator(".carry > p").InnerTextAsync()).ShouldMatch(@"^(This part fits|One of these \d+ parts fits) \d+ % of what the old one may be, by \d+ known machines\.");
        (await page.Locator(".carry .kit").First.InnerTextAsync()).ShouldStartWith("With it: ");
        var number = await page.Locator(".carry h3 a").First.InnerTextAsync();
        await page.Locator(".carry h3 a").First.ClickAsync();
        (await visitor.HeadingAsync()).ShouldBe(number);
    });

    [Fact]
    public Task A_plate_that_tells_enough_has_nothing_to_take_along() => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync(Job.At("/replacements"));
        (await visitor.Page.Locator(".carry").CountAsync()).ShouldBe(0);
    });
}
