namespace PartsMatch.Browser.Tests.EveryPage;

/// <summary>Rows for tests that hold on every page: each page, and each page in each look.</summary>
internal static class PagesAndLooks
{
    public static TheoryData<string> Pages { get; } = [.. SitePage.All.Select(page => page.Name)];

    public static TheoryData<string, string> All { get; } = Of(Look.All);

    /// <summary>Phone and desk by light.</summary>
    public static TheoryData<string, string> Widths { get; } = Of([Look.Phone, Look.Desk]);

    private static TheoryData<string, string> Of(IReadOnlyList<Look> looks)
    {
        TheoryData<string, string> rows = [];
        foreach (var page in SitePage.All)
        {
            foreach (var look in looks) rows.Add(page.Name, look.Name);
        }

        return rows;
    }
}
