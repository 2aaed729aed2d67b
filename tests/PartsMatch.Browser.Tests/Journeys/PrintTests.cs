using System.Text;

namespace PartsMatch.Browser.Tests.Journeys;

public sealed class PrintTests(Site site, ITestOutputHelper output)
{
    /// <summary>Two sides of one sheet of paper go with the technician onto the roof.</summary>
    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public Task The_sheet_of_the_README_s_motor_prints_on_two_pages_at_most(string paper) => site.VisitAsync(Look.Desk, async visitor =>
    {
        await visitor.GoAsync(Job.At("/sheet", $"part={Job.FittingPart}"));
        var pages = PagesOf(await visitor.Page.PdfAsync(new() { Format = paper, PreferCSSPageSize = false }));
        output.WriteLine(FormattableString.Invariant($"{paper}: {pages} pages"));
        pages.ShouldBeInRange(1, 2);
    });

    /// <summary>A PDF's page objects (ISO 32000-1, 7.7.3.3); Chromium writes them unpacked.</summary>
    private static int PagesOf(byte[] pdf) => Encoding.Latin1.GetString(pdf).Split("/Type /Page\n").Length - 1;
}
