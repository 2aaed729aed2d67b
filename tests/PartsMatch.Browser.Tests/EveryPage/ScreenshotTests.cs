namespace PartsMatch.Browser.Tests.EveryPage;

/// <summary>Pictures of every page for people to look at, in TestResults/screens.</summary>
public sealed class ScreenshotTests(Site site)
{
    private static readonly string Folder = Path.Combine(Repository.Root, "TestResults", "screens");

    [Theory]
    [MemberData(nameof(PagesAndLooks.All), MemberType = typeof(PagesAndLooks))]
    public Task Every_page_has_its_picture_taken(string page, string look) => site.VisitAsync(Look.Named(look), async visitor =>
    {
        await visitor.GoAsync(SitePage.Named(page));
        var picture = await visitor.Page.ScreenshotAsync(new() { Path = Path.Combine(Folder, $"{page}-{look}.png"), FullPage = true });
        picture.Length.ShouldBeGreaterThan(5_000, "an empty page would be smaller");
    });
}
