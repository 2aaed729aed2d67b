namespace PartsMatch.Browser.Tests.Journeys;

public sealed class UnitsTests(Site site)
{
    [Fact]
    public Task SI_units_stay_chosen_on_the_next_page_until_US_ones_are_chosen() => site.VisitAsync(Look.Phone, async visitor =>
    {
        var facts = visitor.Page.Locator(".facts");
        await visitor.GoAsync(Job.At("/replacements"));
        (await facts.InnerTextAsync()).ShouldContain("1/4 hp");

        await visitor.PressAsync("SI");
        (await visitor.HeadingAsync()).ShouldBe("Parts that fit", "it comes back to where it was chosen");
        await ShouldBeSiAsync();

        await visitor.Page.Locator(".parts h3 a").First.ClickAsync();
        (await visitor.HeadingAsync()).ShouldBe(Job.FittingPart);
        await ShouldBeSiAsync();

        await visitor.PressAsync("US");
        (await visitor.HeadingAsync()).ShouldBe(Job.FittingPart);
        var us = await facts.InnerTextAsync();
        us.ShouldContain("hp");
        us.ShouldContain("1/2 in");
        us.ShouldNotContain("mm");
        (await PressedAsync()).ShouldBe("US");

        async Task ShouldBeSiAsync()
        {
            // 1/2 in is 12.7 mm exactly; 1/4 hp of a motor's plate is 186.5 W (746 W a horsepower, NEMA MG 1 1.40).
            var si = await facts.InnerTextAsync();
            si.ShouldContain("12.7 mm");
            si.ShouldMatch("18[67](\\.\\d+)? W|0\\.18[67]\\d* kW");
            si.ShouldNotContain(" in");
            (await PressedAsync()).ShouldBe("SI");
        }

        Task<string> PressedAsync() => visitor.Page.Locator("button[aria-pressed=true]").InnerTextAsync();
    });
}
