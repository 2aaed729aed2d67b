namespace PartsMatch.Browser.Tests.EveryPage;

/// <summary>Rows for tests that hold on every page: each page, and each page in each look.</summary>
internal static class PagesAndLooks
{
    public static TheoryData<string> Pages { get; } = [.. SitePage.All.Select(page => page.Name)];

    public static TheoryData<string, string> All { get; } = [.. SitePage.All.SelectMany(page => Look.All.Select(look => (page.Name, look.Name)))];
}
