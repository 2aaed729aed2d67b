namespace PartsMatch.Browser.Tests.Journeys;

/// <summary>The job of the README's first command, from the plate to the sheet on paper.</summary>
public sealed class JourneyTests(Site site)
{
    [Fact]
    public Task A_phone_gets_from_the_plate_to_the_sheet() => site.VisitAsync(Look.Phone, JourneyAsync);

    [Fact]
    public Task A_desk_gets_from_the_plate_to_the_sheet() => site.VisitAsync(Look.Desk, JourneyAsync);

    [Fact]
    public Task A_phone_gets_there_without_JavaScript() => site.VisitAsync(Look.Phone.WithoutScript, JourneyAsync);

    [Fact]
    public Task A_desk_gets_there_without_JavaScript() => site.VisitAsync(Look.Desk.WithoutScript, JourneyAsync);

    private static async Task JourneyAsync(Visitor visitor)
    {
        var page = visitor.Page;
        await visitor.GoAsync("/");
        (await visitor.HeadingAsync()).ShouldBe("What failed?");

        await visitor.Field("text").FillAsync(Job.Plate);
        await visitor.PressAsync("Read it");

        // What stands on the plate, as the README says that it is read.
        (await page.GetByRole(AriaRole.Heading, new() { Name = "This is how it was read" }).IsVisibleAsync()).ShouldBeTrue();
        (await visitor.Field("plate.power").InputValueAsync()).ShouldBe("1/4 hp");
        (await visitor.Field("plate.voltage").InputValueAsync()).ShouldBe("208-230 V");
        (await visitor.Field("plate.rotation").InputValueAsync()).ShouldBe("CCW lead end");
        (await page.Locator(".plate mark.read").AllInnerTextsAsync()).ShouldContain("RPM 1075");

        await visitor.TypeJobAsync();
        await visitor.PressAsync("Find parts that fit");

        // The README's list begins with this part.
        (await visitor.HeadingAsync()).ShouldBe("Parts that fit");
        (await page.Locator(".parts h3 a").First.InnerTextAsync()).ShouldEndWith(Job.FittingPart);
        (await page.Locator(".parts > li").First.InnerTextAsync()).ShouldContain("capacitor");

        await page.Locator(".parts h3 a").First.ClickAsync();
        (await visitor.HeadingAsync()).ShouldBe(Job.FittingPart);
        (await page.Locator("[aria-labelledby=to-do]").InnerTextAsync()).ShouldContain("fit a separate run capacitor of 7.5 µF, 370 V or more");
        await page.Locator("summary", new() { HasText = "met as it is" }).ClickAsync();
        (await page.Locator("table.findings.met").InnerTextAsync()).ShouldContain("202 V measured; the 208-230 V tap takes 187.2 to 253 V.");
        (await page.Locator(".steps").First.InnerTextAsync()).ShouldContain("Open the disconnect");

        // On paper stands what is worked by, and nothing that is pressed.
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        (await page.Locator("h1").IsVisibleAsync()).ShouldBeTrue();
        (await page.Locator("table.findings").First.IsVisibleAsync()).ShouldBeTrue();
        (await page.Locator(".steps").Last.IsVisibleAsync()).ShouldBeTrue();
        foreach (var button in await page.Locator("nav, button, .button, header.site, footer.site").AllAsync()) (await button.IsVisibleAsync()).ShouldBeFalse();
    }
}
