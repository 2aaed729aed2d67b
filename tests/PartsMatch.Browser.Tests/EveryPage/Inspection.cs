using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace PartsMatch.Browser.Tests.EveryPage;

/// <summary>What was seen of a page in one look. Each test asks for one thing of it; the page is visited once for all of them.</summary>
/// <param name="Language">What the page says that its language is.</param>
/// <param name="Title">As in the browser's tab.</param>
/// <param name="Landmarks">How many there are of each that a page has one of.</param>
/// <param name="HeadingLevels">Of all headings in order: 1 for h1.</param>
/// <param name="Weights">Bytes over the wire, by path, with nothing kept from before.</param>
/// <param name="Picture">Bytes of its picture.</param>
/// <param name="Unlabelled">Inputs without a label that shows.</param>
/// <param name="WrongIds">Ids that are used twice, and such as are referred to and are not there.</param>
/// <param name="TooSmall">What is tapped and too small for a thumb.</param>
/// <param name="SticksOut">What makes the page scroll sideways.</param>
/// <param name="Axe">What the accessibility rules found.</param>
public sealed record Inspection(
    string? Language,
    string Title,
    IReadOnlyDictionary<string, int> Landmarks,
    IReadOnlyList<int> HeadingLevels,
    IReadOnlyList<Weight> Weights,
    int Picture,
    IReadOnlyList<string> Unlabelled,
    IReadOnlyList<string> WrongIds,
    IReadOnlyList<string> TooSmall,
    IReadOnlyList<string> SticksOut,
    AxeResult Axe)
{
    /// <summary>WCAG 2.2, 1.4.6 (AAA): 7:1, and 4.5:1 for large text. Axe leaves it out unless it is asked for.</summary>
    public const string SevenToOne = "color-contrast-enhanced";

    private static readonly string Pictures = Path.Combine(Repository.Root, "TestResults", "screens");

    private static readonly AxeRunOptions Rules = new()
    {
        RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"] },
        Rules = new() { [SevenToOne] = new() { Enabled = true } },
        // Of what passed one example is enough; writing down each would take most of the time.
        ResultTypes = [ResultType.Violations, ResultType.Incomplete],
    };

    /// <summary>Of the page that a visitor is at, first as it comes, then with all that is folded opened.</summary>
    public static async Task<Inspection> OfAsync(Visitor visitor, SitePage asked, Look look)
    {
        var page = visitor.Page;
        var weights = await page.EvaluateAsync<Weight[]>(PageScripts.Weights);
        var picture = await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, $"{asked.Name}-{look.Name}.png"), FullPage = true });
        var landmarks = new Dictionary<string, int>
        {
            ["h1 in main"] = await page.Locator("main h1").CountAsync(),
            ["pages to go to"] = await page.GetByRole(AriaRole.Navigation, new() { Name = "Pages" }).CountAsync(),
        };
        foreach (var role in (AriaRole[])[AriaRole.Banner, AriaRole.Main, AriaRole.Contentinfo]) landmarks[role.ToString()] = await page.GetByRole(role).CountAsync();
        await visitor.UnfoldAsync();
        return new(
            await page.Locator("html").GetAttributeAsync("lang"),
            await page.TitleAsync(),
            landmarks,
            await page.EvaluateAsync<int[]>(PageScripts.HeadingLevels),
            weights,
            picture.Length,
            await page.EvaluateAsync<string[]>(PageScripts.Unlabelled),
            await page.EvaluateAsync<string[]>(PageScripts.WrongIds),
            await page.EvaluateAsync<string[]>(PageScripts.TooSmall),
            [.. await SticksOutAsync(page, look, look.Width), .. look.Width == Look.Phone.Width ? await SticksOutAsync(page, look, Look.Narrowest) : []],
            await page.RunAxe(Rules));
    }

    /// <summary>Leaves the window as wide as it was.</summary>
    private static async Task<IEnumerable<string>> SticksOutAsync(IPage page, Look look, int width)
    {
        if (width != look.Width) await page.SetViewportSizeAsync(width, look.Height);
        var found = await page.EvaluateAsync<string[]>(PageScripts.SticksOut);
        if (width != look.Width) await page.SetViewportSizeAsync(look.Width, look.Height);
        return found.Select(one => FormattableString.Invariant($"at {width} px: {one}"));
    }
}

/// <summary>What one thing that a page asked for weighs over the wire, in bytes, without its headers.</summary>
public sealed record Weight
{
    public string Path { get; set; } = string.Empty;

    public int Bytes { get; set; }
}
