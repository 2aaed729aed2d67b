using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace PartsMatch.Browser.Tests.EveryPage;

public sealed class AccessibilityTests(Site site)
{
    private static readonly string[] Rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"];

    [Theory]
    [MemberData(nameof(PagesAndLooks.All), MemberType = typeof(PagesAndLooks))]
    public Task Axe_finds_nothing_wrong(string page, string look) => ShouldPassAsync(page, look, new() { RunOnly = new() { Type = "tag", Values = [.. Rules] } });

    /// <summary>WCAG 2.2, 1.4.6 (AAA): 7:1, and 4.5:1 for large text.</summary>
    [Theory]
    [MemberData(nameof(PagesAndLooks.All), MemberType = typeof(PagesAndLooks))]
    public Task Text_stands_out_from_its_ground_seven_to_one(string page, string look) => ShouldPassAsync(page, look, new() { RunOnly = new() { Type = "rule", Values = ["color-contrast-enhanced"] } }, mayStayOpen: false);

    private Task ShouldPassAsync(string page, string look, AxeRunOptions options, bool mayStayOpen = true) => site.VisitAsync(Look.Named(look), async visitor =>
    {
        await visitor.GoAsync(SitePage.Named(page));
        await visitor.UnfoldAsync();
        var found = await visitor.Page.RunAxe(options);
        found.Violations.SelectMany(Told).ShouldBeEmpty();
        found.Passes.ShouldNotBeEmpty("the rules were tried");
        if (!mayStayOpen) found.Incomplete.SelectMany(Told).ShouldBeEmpty("what cannot be judged was not seen to be good");
    });

    private static IEnumerable<string> Told(AxeResultItem item) => item.Nodes.Select(node => $"{item.Id}: {item.Help} at {node.Target}: {node.Html}{string.Concat(node.Any.Select(check => $" [{check.Message}]"))}");
}
