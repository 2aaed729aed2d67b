namespace PartsMatch.Browser.Tests.EveryPage;

/// <summary>What is tapped is large enough for a wet thumb: 44 by 44 CSS pixels at least (WCAG 2.2, 2.5.5).</summary>
public sealed class TargetTests(Site site)
{
    /// <remarks>Exempt, as in 2.5.5: a link inside a running sentence, whose size is the line's. A check box or radio button is tapped on its label. What stands outside the window until it has the focus (the skip link) is measured when it has it, by <see cref="Journeys.KeyboardTests"/>.</remarks>
    private const string TooSmall = """
        () => {
          const isInSentence = link => {
            if (link.tagName !== 'A' || getComputedStyle(link).display !== 'inline') return false;
            const around = link.closest('p, li, dd, td, label');
            return around !== null && around.textContent.trim().length > link.textContent.trim().length;
          };
          const target = one => one.matches('input[type=checkbox], input[type=radio]') ? one.closest('label') ?? one : one;
          return [...document.querySelectorAll('a, button, input:not([type=hidden]), select, textarea, summary')]
            .filter(one => one.checkVisibility() && !isInSentence(one))
            .map(one => ({ one, box: target(one).getBoundingClientRect() }))
            .filter(({ box }) => box.right > 0 && (box.width < 43.99 || box.height < 43.99))
            .map(({ one, box }) => `${one.outerHTML.slice(0, 120)} is ${box.width.toFixed(1)} x ${box.height.toFixed(1)}`);
        }
        """;

    [Theory]
    [MemberData(nameof(PagesAndLooks.Widths), MemberType = typeof(PagesAndLooks))]
    public Task Whatever_is_tapped_is_44_pixels_wide_and_high(string page, string look) => site.VisitAsync(Look.Named(look), async visitor =>
    {
        await visitor.GoAsync(SitePage.Named(page));
        await visitor.UnfoldAsync();
        (await visitor.Page.EvaluateAsync<string[]>(TooSmall)).ShouldBeEmpty();
    });
}
