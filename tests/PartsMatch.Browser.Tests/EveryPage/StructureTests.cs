namespace PartsMatch.Browser.Tests.EveryPage;

/// <summary>What a screen reader, a search through open tabs and a hurried reader go by.</summary>
public sealed class StructureTests(Site site)
{
    /// <summary>Inputs without a label that shows.</summary>
    private const string Unlabelled = """
        () => [...document.querySelectorAll('input:not([type=hidden]), select, textarea')]
          .filter(one => ![...one.labels].some(label => label.checkVisibility() && label.innerText.trim() !== ''))
          .map(one => one.outerHTML.slice(0, 120))
        """;

    /// <summary>Ids that are used twice, and such as are referred to and are not there.</summary>
    private const string WrongIds = """
        () => {
          const ids = [...document.querySelectorAll('[id]')].map(one => one.id);
          const twice = ids.filter((id, at) => ids.indexOf(id) !== at);
          const referred = [...document.querySelectorAll('[aria-describedby], [aria-labelledby], label[for], a[href^="#"]')]
            .flatMap(one => [one.getAttribute('aria-describedby'), one.getAttribute('aria-labelledby'), one.getAttribute('for'), one.getAttribute('href')?.startsWith('#') ? decodeURIComponent(one.getAttribute('href').slice(1)) : null])
            .flatMap(names => names?.split(' ') ?? [])
            .filter(id => id !== '' && !ids.includes(id));
          return [...twice.map(id => `twice: ${id}`), ...referred.map(id => `not there: ${id}`)];
        }
        """;

    private const string HeadingLevels = "() => [...document.querySelectorAll('h1, h2, h3, h4, h5, h6')].map(one => Number(one.tagName[1]))";

    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public Task A_page_says_what_it_is_and_names_each_thing_on_it(string page) => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync(SitePage.Named(page));
        (await visitor.Page.Locator("html").GetAttributeAsync("lang")).ShouldBe("en");
        (await visitor.Page.TitleAsync()).ShouldEndWith(" · PartsMatch");
        (await visitor.Page.Locator("h1").CountAsync()).ShouldBe(1);
        (await visitor.Page.Locator("main h1").CountAsync()).ShouldBe(1);
        foreach (var landmark in (AriaRole[])[AriaRole.Banner, AriaRole.Main, AriaRole.Contentinfo]) (await visitor.Page.GetByRole(landmark).CountAsync()).ShouldBe(1, landmark.ToString());
        (await visitor.Page.GetByRole(AriaRole.Navigation, new() { Name = "Pages" }).CountAsync()).ShouldBe(1);

        var levels = await visitor.Page.EvaluateAsync<int[]>(HeadingLevels);
        levels[0].ShouldBe(1);
        levels.Zip(levels.Skip(1), (before, next) => next - before).ShouldAllBe(step => step <= 1, $"no heading skips a level: {string.Join(' ', levels)}");

        await visitor.UnfoldAsync();
        (await visitor.Page.EvaluateAsync<string[]>(Unlabelled)).ShouldBeEmpty("every input has a label that shows");
        (await visitor.Page.EvaluateAsync<string[]>(WrongIds)).ShouldBeEmpty("every id is used once, and whatever is referred to is there");
    });

    [Fact]
    public async Task Pages_about_different_things_have_titles_of_their_own()
    {
        List<string> titles = [];
        foreach (var address in (string[])["/", Job.At("/replacements"), Job.At("/sheet", $"part={Job.FittingPart}"), Job.At("/sheet", $"part={Job.UnfitPart}"), "/before", "/after", "/compare"])
        {
            await site.VisitAsync(Look.Phone, async visitor =>
            {
                await visitor.GoAsync(address);
                titles.Add(await visitor.Page.TitleAsync());
            });
        }

        titles.ShouldBeUnique();
    }
}
