using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace PartsMatch.Browser.Tests.EveryPage;

public sealed class AccessibilityTests(Site site)
{
    private static readonly string[] Rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"];

    /// <summary>WCAG 2.2, 1.4.6 (AAA): 7:1, and 4.5:1 for large text. Axe leaves it out unless it is asked for.</summary>
    private const string SevenToOne = "color-contrast-enhanced";

    private static readonly AxeRunOptions Options = new()
    {
        RunOnly = new() { Type = "tag", Values = [.. Rules] },
        Rules = new() { [SevenToOne] = new() { Enabled = true } },
    };

    [Theory]
    [MemberData(nameof(PagesAndLooks.All), MemberType = typeof(PagesAndLooks))]
    public Task Axe_finds_nothing_wrong_and_text_stands_out_from_its_ground_seven_to_one(string page, string look) => site.VisitAsync(Look.Named(look), async visitor =>
    {
        await visitor.GoAsync(SitePage.Named(page));
        await visitor.UnfoldAsync();
        var found = await visitor.Page.RunAxe(Options);
        found.Violations.SelectMany(Told).ShouldBeEmpty();
        found.Passes.ShouldContain(rule => rule.Id == SevenToOne, "contrast was measured");
        found.Incomplete.Where(rule => rule.Id == SevenToOne).SelectMany(Told).ShouldBeEmpty("what could not be measured was not seen to be good");
    });

    private static IEnumerable<string> Told(AxeResultItem item) => item.Nodes.Select(node => $"{item.Id}: {item.Help} at {node.Target}: {node.Html}{string.Concat(node.Any.Select(check => $" [{check.Message}]"))}");
}
