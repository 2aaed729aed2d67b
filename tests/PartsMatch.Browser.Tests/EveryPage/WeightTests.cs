namespace PartsMatch.Browser.Tests.EveryPage;

public sealed class WeightTests(Site site, ITestOutputHelper output)
{
    /// <summary>With nothing kept from an earlier visit: the page, its stylesheets and its pictures, as they went over the wire.</summary>
    [Theory]
    [MemberData(nameof(PagesAndLooks.Pages), MemberType = typeof(PagesAndLooks))]
    public Task A_page_is_light_enough_for_one_bar_of_reception(string page) => site.VisitAsync(Look.Phone, async visitor =>
    {
        var asked = SitePage.Named(page);
        await visitor.GoAsync(asked);
        await visitor.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        var weights = new List<(string Path, int Bytes)>();
        foreach (var response in visitor.Responses)
        {
            var sizes = await response.Request.SizesAsync();
            weights.Add((new Uri(response.Url).AbsolutePath, sizes.ResponseBodySize));
        }

        var sum = weights.Sum(one => one.Bytes);
        output.WriteLine(FormattableString.Invariant($"{page}: {sum} of {asked.MostBytes} bytes ({string.Join(", ", weights.Select(one => $"{one.Path} {one.Bytes}"))})"));
        weights.ShouldAllBe(one => one.Bytes > 0);
        sum.ShouldBeLessThan(asked.MostBytes);
    });
}
