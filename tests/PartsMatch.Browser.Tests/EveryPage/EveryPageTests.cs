using Deque.AxeCore.Commons;

namespace PartsMatch.Browser.Tests.EveryPage;

/// <summary>What every page keeps, on a phone and at a desk, by light and in the dark.</summary>
public sealed class EveryPageTests(Site site, ITestOutputHelper output)
{
    [Theory]
    [MemberData(nameof(PagesAndLooks.All), MemberType = typeof(PagesAndLooks))]
    public async Task Axe_finds_nothing_wrong(string page, string look) =>
        (await site.InspectAsync(page, look)).Axe.Violations.Where(rule => rule.Id != Inspection.SevenToOne).SelectMany(Told).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(PagesAndLooks.All), MemberType = typeof(PagesAndLooks))]
    public async Task Text_stands_out_from_its_ground_seven_to_one(string page, string look)
    {
        var axe = (await site.InspectAsync(page, look)).Axe;
        axe.Passes.ShouldContain(rule => rule.Id == Inspection.SevenToOne, "contrast was measured");
        axe.Violations.Concat(axe.Incomplete).Where(rule => rule.Id == Inspection.SevenToOne).SelectMany(Told).ShouldBeEmpty("what could not be measured was not seen to be good");
    }

    [Theory]
    [MemberData(nameof(PagesAndLooks.All), MemberType = typeof(PagesAndLooks))]
    public async Task Whatever_is_tapped_is_44_pixels_wide_and_high(string page, string look) => (await site.InspectAsync(page, look)).TooSmall.ShouldBeEmpty();

    /// <summary>At 360 and 320 px on a phone.</summary>
    [Theory]
    [MemberData(nameof(PagesAndLooks.All), MemberType = typeof(PagesAndLooks))]
    public async Task Nothing_scrolls_sideways(string page, string look) => (await site.InspectAsync(page, look)).SticksOut.ShouldBeEmpty();

    /// <summary>For people to look at, in TestResults/screens.</summary>
    [Theory]
    [MemberData(nameof(PagesAndLooks.All), MemberType = typeof(PagesAndLooks))]
    public async Task Every_page_has_its_picture_taken(string page, string look) => (await site.InspectAsync(page, look)).Picture.ShouldBeGreaterThan(5_000, "an empty page would be smaller");

    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public async Task A_page_is_light_enough_for_one_bar_of_reception(string page)
    {
        var (asked, weights) = (SitePage.Named(page), (await site.InspectAsync(page, Look.Phone.Name)).Weights);
        var sum = weights.Sum(one => one.Bytes);
        output.WriteLine(FormattableString.Invariant($"{page}: {sum} of {asked.MostBytes} bytes ({string.Join(", ", weights.Select(one => $"{one.Path} {one.Bytes}"))})"));
        weights.ShouldAllBe(one => one.Bytes > 0);
        weights.ShouldContain(one => one.Path.EndsWith(".css", StringComparison.Ordinal));
        sum.ShouldBeLessThan(asked.MostBytes);
    }

    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public async Task A_page_says_its_language_and_name_and_has_its_landmarks_once(string page)
    {
        var seen = await site.InspectAsync(page, Look.Phone.Name);
        seen.Language.ShouldBe("en");
        seen.Title.ShouldEndWith(" · PartsMatch");
        seen.Title.Length.ShouldBeGreaterThan(" · PartsMatch".Length);
        seen.Landmarks.ShouldAllBe(one => one.Value == 1);
    }

    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public async Task Headings_begin_at_one_and_skip_no_level(string page)
    {
        var levels = (await site.InspectAsync(page, Look.Phone.Name)).HeadingLevels;
        levels.Count(level => level == 1).ShouldBe(1);
        levels[0].ShouldBe(1);
        levels.Zip(levels.Skip(1), (before, next) => next - before).ShouldAllBe(step => step <= 1, string.Join(' ', levels));
    }

    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public async Task Every_input_has_a_label_that_shows(string page) => (await site.InspectAsync(page, Look.Phone.Name)).Unlabelled.ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public async Task Every_id_is_used_once_and_whatever_is_referred_to_is_there(string page) => (await site.InspectAsync(page, Look.Phone.Name)).WrongIds.ShouldBeEmpty();

    /// <summary>Two tabs are told apart.</summary>
    [Fact]
    public async Task Pages_about_different_things_have_titles_of_their_own()
    {
        var titles = await Task.WhenAll(SitePage.All.Where(page => page.HasOwnTitle).Select(async page => (await site.InspectAsync(page.Name, Look.Phone.Name)).Title));
        titles.Length.ShouldBeGreaterThan(5);
        titles.ShouldBeUnique();
    }

    private static IEnumerable<string> Told(AxeResultItem item) => item.Nodes.Select(node => $"{item.Id}: {item.Help} at {node.Target}: {node.Html}{string.Concat(node.Any.Select(check => $" [{check.Message}]"))}");
}
