namespace PartsMatch.Browser.Tests.EveryPage;

public sealed class WidthTests(Site site)
{
    /// <summary>What sticks out of the window; what scrolls by itself, as a drawing does, may be wider inside.</summary>
    private const string SticksOut = """
        () => {
          const width = document.documentElement.clientWidth;
          if (document.documentElement.scrollWidth <= width) return [];
          return [`the page is ${document.documentElement.scrollWidth} wide`, ...[...document.querySelectorAll('body *')]
            .filter(one => one.getBoundingClientRect().right > width + .5)
            .map(one => one.outerHTML.slice(0, 100))];
        }
        """;

    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public Task Nothing_scrolls_sideways_on_a_phone(string page) => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync(SitePage.Named(page));
        await visitor.UnfoldAsync();
        foreach (var width in (int[])[Look.Phone.Width, Look.Narrowest])
        {
            await visitor.Page.SetViewportSizeAsync(width, Look.Phone.Height);
            (await visitor.Page.EvaluateAsync<string[]>(SticksOut)).ShouldBeEmpty(FormattableString.Invariant($"{width} px wide"));
        }
    });
}
