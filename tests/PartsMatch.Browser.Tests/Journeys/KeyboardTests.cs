namespace PartsMatch.Browser.Tests.Journeys;

/// <summary>With Tab, Enter and Space alone: a shop's screen has no mouse that survives grease, and some people have no use for one.</summary>
public sealed class KeyboardTests(Site site)
{
    private const int MostTabs = 200;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public Task The_whole_journey_needs_no_mouse(bool hasScript) => site.VisitAsync(Look.Desk with { HasScript = hasScript }, async visitor =>
    {
        var keyboard = visitor.Page.Keyboard;
        await visitor.GoAsync("/");
        await TabToAsync(visitor, "one => one.id === 'text'");
        await keyboard.TypeAsync(Job.Plate);
        await TabToAsync(visitor, "one => one.innerText === 'Read it'");
        await keyboard.PressAsync("Enter");
        await visitor.Field("plate.power").WaitForAsync();

        // A folded group opens by Space, and Tab goes on into it.
        await TabToAsync(visitor, "one => one.tagName === 'SUMMARY' && one.parentElement.querySelector('[id=\"plate.shaftDiameter\"]') !== null");
        await keyboard.PressAsync("Space");
        await TabToAsync(visitor, "one => one.id === 'plate.shaftDiameter'");
        await keyboard.TypeAsync("1/2 in");
        await TabToAsync(visitor, "one => one.id === 'site.volts'");
        await keyboard.TypeAsync("202");
        await TabToAsync(visitor, "one => one.innerText === 'Find parts that fit'");
        await keyboard.PressAsync("Enter");

        await visitor.Page.Locator(".parts").First.WaitForAsync();
        await TabToAsync(visitor, "one => one.closest('.parts h3') !== null");
        var part = await visitor.Page.EvaluateAsync<string>("() => document.activeElement.innerText");
        await keyboard.PressAsync("Enter");
        await visitor.Page.Locator("table.findings").First.WaitForAsync();
        part.ShouldEndWith(await visitor.HeadingAsync());

        // A step is ticked off by Space.
        await TabToAsync(visitor, "one => one.closest('.steps') !== null && one.type === 'checkbox'");
        await keyboard.PressAsync("Space");
        (await visitor.Page.EvaluateAsync<bool>("() => document.activeElement.checked")).ShouldBeTrue();
    });

    [Theory]
    [MemberData(nameof(EveryPage.PagesAndLooks.Pages), MemberType = typeof(EveryPage.PagesAndLooks))]
    public Task The_first_Tab_offers_to_skip_to_the_content(string page) => site.VisitAsync(page, Look.Phone, async (visitor, _) =>
    {
        await visitor.Page.Keyboard.PressAsync("Tab");
        var skip = visitor.Page.Locator(":focus");
        (await skip.InnerTextAsync()).ShouldBe("Skip to the content");
        var box = (await skip.BoundingBoxAsync()).ShouldNotBeNull();
        box.X.ShouldBeGreaterThanOrEqualTo(0, "it shows while it has the focus");
        box.Height.ShouldBeGreaterThanOrEqualTo(44);
        box.Width.ShouldBeGreaterThanOrEqualTo(44);

        await visitor.Page.Keyboard.PressAsync("Enter");
        (await visitor.Page.EvaluateAsync<string>("() => document.activeElement.id")).ShouldBe("main");
        await visitor.Page.Keyboard.PressAsync("Tab");
        (await visitor.Page.EvaluateAsync<bool>("() => document.activeElement.closest('main') !== null || document.activeElement.closest('footer') !== null")).ShouldBeTrue("the head of the page is skipped");
    });

    /// <summary>Each stop shows where the focus is, in the order in which the page is read, and none is missed.</summary>
    [Theory]
    [MemberData(nameof(EveryPage.PagesAndLooks.Pages), MemberType = typeof(EveryPage.PagesAndLooks))]
    public Task Tab_stops_at_everything_in_the_order_of_the_page_and_shows_where_it_is(string page) => site.VisitAsync(page, Look.Desk, async (visitor, _) =>
    {
        var stops = await visitor.Page.EvaluateAsync<int>("""
            () => {
              // Of choices that exclude each other Tab stops at one: the chosen one, or the first. Arrows go on to the others.
              const ofGroup = one => `input[type=radio][name="${one.name}"]`;
              const isPassedOver = one => one.type === 'radio' && one !== (document.querySelector(`${ofGroup(one)}:checked`) ?? document.querySelector(ofGroup(one)));
              window.stops = [...document.querySelectorAll('a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex="0"]')]
                .filter(one => one.checkVisibility() && one.ariaHidden !== 'true' && !isPassedOver(one));
              return window.stops.length;
            }
            """);
        List<string> wrong = [];
        for (var stop = 0; stop < stops; stop++)
        {
            await visitor.Page.Keyboard.PressAsync("Tab");
            wrong.AddRange(await visitor.Page.EvaluateAsync<string[]>("""
                stop => {
                  const one = document.activeElement, style = getComputedStyle(one), box = one.getBoundingClientRect(), told = one.outerHTML.slice(0, 100);
                  return [
                    one === window.stops[stop] ? null : `out of order at ${stop}: ${told}`,
                    style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2 ? null : `no outline: ${told}`,
                    box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth ? null : `out of sight: ${told}`,
                  ].filter(each => each !== null);
                }
                """, stop));
        }

        stops.ShouldBeGreaterThan(5);
        wrong.ShouldBeEmpty();
    });

    private static async Task TabToAsync(Visitor visitor, string isIt)
    {
        for (var tabs = 0; tabs < MostTabs; tabs++)
        {
            await visitor.Page.Keyboard.PressAsync("Tab");
            if (await visitor.Page.EvaluateAsync<bool>($"() => ({isIt})(document.activeElement)")) return;
        }

        throw new InvalidOperationException($"{MostTabs} times Tab did not come to: {isIt}");
    }
}
