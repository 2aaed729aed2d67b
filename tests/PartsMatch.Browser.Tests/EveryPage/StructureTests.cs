namespace PartsMatch.Browser.Tests.EveryPage;

/// <summary>What a screen reader, a search through open tabs and a hurried reader go by.</summary>
public sealed class StructureTests(Site site)
{
    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public Task A_page_says_its_language_has_one_first_heading_and_its_landmarks(string page) => OnAsync(page, async visitor =>
    {
        (await visitor.Page.Locator("html").GetAttributeAsync("lang")).ShouldBe("en");
        (await visitor.Page.TitleAsync()).ShouldEndWith(" · PartsMatch");
        (await visitor.Page.Locator("h1").CountAsync()).ShouldBe(1);
        (await visitor.Page.Locator("main h1").CountAsync()).ShouldBe(1);
        foreach (var landmark in (AriaRole[])[AriaRole.Banner, AriaRole.Main, AriaRole.Contentinfo]) (await visitor.Page.GetByRole(landmark).CountAsync()).ShouldBe(1, landmark.ToString());
        (await visitor.Page.GetByRole(AriaRole.Navigation, new() { Name = "Pages" }).CountAsync()).ShouldBe(1);
    });

    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public Task Headings_do_not_skip_a_level(string page) => OnAsync(page, async visitor =>
    {
        var levels = await visitor.Page.EvaluateAsync<int[]>("() => [...document.querySelectorAll('h1, h2, h3, h4, h5, h6')].map(one => Number(one.tagName[1]))");
        levels[0].ShouldBe(1);
        levels.Zip(levels.Skip(1), (before, next) => next - before).ShouldAllBe(step => step <= 1, string.Join(' ', levels));
    });

    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public Task Every_input_has_a_label_that_shows(string page) => OnAsync(page, async visitor =>
    {
        await visitor.UnfoldAsync();
        var unlabelled = await visitor.Page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('input:not([type=hidden]), select, textarea')]
              .filter(one => ![...one.labels].some(label => label.checkVisibility() && label.innerText.trim() !== ''))
              .map(one => one.outerHTML.slice(0, 120))
            """);
        unlabelled.ShouldBeEmpty();
    });

    /// <summary>Two tabs are told apart, and nothing on a page is named twice.</summary>
    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public Task Every_id_is_used_once_and_whatever_is_referred_to_is_there(string page) => OnAsync(page, async visitor =>
    {
        var wrong = await visitor.Page.EvaluateAsync<string[]>("""
            () => {
              const ids = [...document.querySelectorAll('[id]')].map(one => one.id);
              const twice = ids.filter((id, at) => ids.indexOf(id) !== at);
              const referred = [...document.querySelectorAll('[aria-describedby], [aria-labelledby], label[for], a[href^="#"]')]
                .flatMap(one => [one.getAttribute('aria-describedby'), one.getAttribute('aria-labelledby'), one.getAttribute('for'), one.getAttribute('href')?.startsWith('#') ? decodeURIComponent(one.getAttribute('href').slice(1)) : null])
                .flatMap(names => names === null || names === undefined ? [] : names.split(' '))
                .filter(id => id !== '' && !ids.includes(id));
              return [...twice.map(id => `twice: ${id}`), ...referred.map(id => `not there: ${id}`)];
            }
            """);
        wrong.ShouldBeEmpty();
    });

    [Fact]
    public async Task Pages_about_different_things_have_titles_of_their_own()
    {
        List<string> titles = [];
        foreach (var address in (string[])["/", Job.At("/replacements"), Job.At("/sheet", $"part={Job.FittingPart}"), Job.At("/sheet", $"part={Job.UnfitPart}")])
        {
            await site.VisitAsync(Look.Phone, async visitor =>
            {
                await visitor.GoAsync(address);
                titles.Add(await visitor.Page.TitleAsync());
            });
        }

        titles.ShouldBeUnique();
    }

    private Task OnAsync(string page, Func<Visitor, Task> look) => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync(SitePage.Named(page));
        await look(visitor);
    });
}
