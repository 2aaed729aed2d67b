using System.Text;

namespace PartsMatch.Browser.Tests.Journeys;

/// <summary>Two sides of one sheet of paper go with the technician onto the roof, and can be read there.</summary>
public sealed class PrintTests(Site site, ITestOutputHelper output)
{
    private const string AtHeight = "&site.altitude=5000+ft";

    /// <summary>CSS pixels of 8.5 pt: 96 an inch, 72 points an inch (CSS Values, 5.2).</summary>
    private const double SmallestLetter = 8.5 * 96 / 72;

    /// <summary>A4 is 210 mm wide, less the style sheet's margins of 7 mm; in CSS pixels.</summary>
    private const int PaperWidth = (int)((210 - 14) / 25.4 * 96);

    /// <summary>The README's, and pairs of the demo catalogue: those of a sample of sixty with most changes and unknowns, one with two and one with four speeds, three-phase ones with wiring drawn, one that does not fit, and capacitors.</summary>
    public static TheoryData<string> Sheets { get; } =
    [
        Job.At("/sheet", $"part={Job.FittingPart}"),
        Job.At("/sheet", $"part={Job.UnfitPart}"),
        $"/sheet?kind=motor&old=WPZ-4798&part=OSK+69+27X&site.volts=202{AtHeight}",
        $"/sheet?kind=motor&old=TZD6098V&part=TZL4551V&site.volts=202{AtHeight}",
        $"/sheet?kind=motor&old=BQ6-0X-31&part=OSK+13+44A&site.volts=460{AtHeight}",
        $"/sheet?kind=motor&old=K1D77R1&part=EG05K-82&site.volts=202{AtHeight}",
        $"/sheet?kind=motor&old=OSK+03+81V&part=V0U29-E1&site.volts=202{AtHeight}",
        $"/sheet?kind=motor&old=V5U33-M6&part=EG89M-68&site.volts=202{AtHeight}",
        $"/sheet?kind=motor&old=47-ZEM-98W&part=OSK+43+27L&site.volts=115{AtHeight}",
        $"/sheet?kind=motor&old=OSK+38+33N&part=V3U85-A6&site.volts=115{AtHeight}",
        $"/sheet?kind=motor&old=F0A2N-24&part=V1U68-C1&site.volts=202{AtHeight}",
        "/sheet?kind=motor&old=EG54W-70&part=MW-5X3-36&site.volts=202",
        "/sheet?kind=motor&old=UGL99.10-K&part=K0D20N1&site.volts=202",
        "/sheet?kind=capacitor&old=G-20W85H&part=G-06W95L",
        "/sheet?kind=capacitor&old=G-22W42D&part=G-13W90W",
        "/sheet?kind=capacitor&old=G-15W47R&part=G-30W94K",
    ];

    [Theory]
    [MemberData(nameof(Sheets))]
    public Task A_sheet_prints_on_two_pages_at_most_in_letters_that_can_be_read(string address) => site.VisitAsync(Look.Desk, async visitor =>
    {
        var page = visitor.Page;
        await visitor.GoAsync(address);
        foreach (var paper in (string[])["A4", "Letter"])
        {
            var pages = PagesOf(await page.PdfAsync(new() { Format = paper, PreferCSSPageSize = false }));
            output.WriteLine(FormattableString.Invariant($"{paper}: {pages} pages"));
            pages.ShouldBeInRange(1, 2, paper);
        }

        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.SetViewportSizeAsync(PaperWidth, 1000);
        (await page.EvaluateAsync<string[]>(TooSmallToRead, SmallestLetter)).ShouldBeEmpty();
        (await page.EvaluateAsync<string[]>(EveryPage.PageScripts.SticksOut)).ShouldBeEmpty("nothing is cut off at the paper's edge");
        (await page.Locator(".steps .number").CountAsync()).ShouldBe(await page.Locator(".steps .number:visible").CountAsync(), "every step is printed");
    });

    /// <summary>Letters of drawings are as many times smaller or larger as the drawing is.</summary>
    private const string TooSmallToRead = """
        smallest => {
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          const found = new Set();
          while (walker.nextNode()) {
            const one = walker.currentNode.parentElement;
            if (walker.currentNode.textContent.trim() === '' || !one.checkVisibility() || one.closest('title, desc') || one.getBoundingClientRect().right < 0) continue;
            const picture = one.closest('svg');
            const scale = picture ? picture.getBoundingClientRect().width / picture.viewBox.baseVal.width : 1;
            const size = parseFloat(getComputedStyle(one).fontSize) * scale;
            if (size < smallest - .01) found.add(`${size.toFixed(2)} px: ${one.outerHTML.slice(0, 90)}`);
          }
          return [...found];
        }
        """;

    /// <summary>A PDF's page objects (ISO 32000-1, 7.7.3.3); Chromium writes them unpacked.</summary>
    private static int PagesOf(byte[] pdf) => Encoding.Latin1.GetString(pdf).Split("/Type /Page\n").Length - 1;
}
