using PartsMatch.Fit;

namespace PartsMatch.Browser.Tests.Journeys;

/// <summary>The same way leads every family from its plate to the sheet on paper; no page knows one from another.</summary>
public sealed class FamilyJourneyTests(Site site)
{
    public static TheoryData<string> Kinds { get; } = [.. FamilyJob.All.Select(job => job.Kind)];

    [Fact]
    public void Every_family_has_its_journey() => FamilyJob.All.Select(job => job.Kind).ShouldBe(Families.All.Select(family => family.Kind), ignoreOrder: true);

    [Theory]
    [MemberData(nameof(Kinds))]
    public Task A_phone_gets_from_the_plate_to_the_sheet(string kind) => site.VisitAsync(Look.Phone, async visitor =>
    {
        var (job, page) = (FamilyJob.Named(kind), visitor.Page);
        await visitor.GoAsync("/");
        await visitor.PressAsync(job.Title);
        await visitor.Field("text").FillAsync(job.Plate);
        await visitor.PressAsync("Read it");
        await page.GetByRole(AriaRole.Heading, new() { Name = "This is how it was read" }).WaitForAsync();
        (await page.Locator(".plate mark.left").CountAsync()).ShouldBe(0, "nothing is left over");
        foreach (var (field, text) in job.Typed) await visitor.FillAsync(field, text);
        await visitor.PressAsync("Find parts that fit");

        var isKnownOfSome = (await page.GetByRole(AriaRole.Navigation, new() { Name = "Show" }).InnerTextAsync()) is var shown && (shown.Contains("fits with changes", StringComparison.Ordinal) || shown.Contains("drop-in", StringComparison.Ordinal));
        (await visitor.HeadingAsync()).ShouldBe(isKnownOfSome ? "Parts that fit" : "Parts that may fit");
        var number = (await page.Locator(".parts h3 a").First.InnerTextAsync()).Split(' ', 2)[^1].Trim();
        await page.Locator(".parts h3 a").First.ClickAsync();
        (await visitor.HeadingAsync()).ShouldBe(number);
        if (await page.Locator("summary", new() { HasText = "met as" }).CountAsync() > 0) await page.Locator("summary", new() { HasText = "met as" }).First.ClickAsync();
        (await page.Locator("main").InnerTextAsync()).ShouldContain(job.OnSheet);
        (await page.Locator(".steps").First.InnerTextAsync()).ShouldContain("lock");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        (await page.Locator("table.findings").First.IsVisibleAsync()).ShouldBeTrue();
    });

    [Theory]
    [MemberData(nameof(Kinds))]
    public Task Readings_tell_whether_it_is_the_part(string kind) => site.VisitAsync(Look.Phone, async visitor =>
    {
        var job = FamilyJob.Named(kind);
        await visitor.GoAsync(job.At("/before", job.Read.Select(one => $"{one.Field}={Uri.EscapeDataString(one.Text)}")));
        (await visitor.Page.Locator("main").InnerTextAsync()).ShouldContain(job.Concluded);
    });
}
