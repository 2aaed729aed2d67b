using System.Net;
using System.Text.RegularExpressions;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>What the list of parts says of each, and of all of them.</summary>
public sealed class ListPageTests(SharedService shared) : IClassFixture<SharedService>
{
    /// <summary>Of QN-100 three are at hand, of QN-300 none, and of QN-200 nobody says (stock.csv of these tests).</summary>
    [Theory]
    [InlineData("QN-100", "The same part, still at hand.")]
    [InlineData("QN-300", "The same part.")]
    [InlineData("QN-200", "The same part.")]
    public async Task The_same_part_is_said_to_be_still_at_hand_only_where_it_is(string old, string says) =>
        (await ListAsync($"old={old}")).ShouldContain($"<p class=\"notice\">{says}</p>");

    /// <summary>QN-100 superseded ZV-7, whose figures it has: supply from 187.2 V on (208 V - 10 %) is good for both; 690 V for neither; nothing was said of the site where it is not known.</summary>
    [Theory]
    [InlineData("/replacements", "", "can't tell yet", "")]
    [InlineData("/", "", "can't tell yet", "")]
    [InlineData("/replacements", "&site.volts=690+V", "doesn't fit", " supply voltage.")]
    [InlineData("/", "&site.volts=690+V", "doesn't fit", " supply voltage.")]
    public async Task What_superseded_the_old_part_is_a_link_to_its_sheet_with_its_verdict_here(string path, string site, string verdict, string inTheWay)
    {
        var body = WebUtility.HtmlDecode((await new Visitor(shared.Service).GetAsync($"{path}?kind=motor&old=ZV-7{site}")).Body);
        var said = Regex.Replace(body[body.IndexOf("It was superseded by", StringComparison.Ordinal)..], "\\s+", " ");
        said.ShouldStartWith($"It was superseded by <a href=\"/sheet?part=QN-100&kind=motor&old=ZV-7{site}\">QN-100</a> on 2021-04-30, as maker says. Here: <span class=\"fit");
        said[..400].ShouldContain($">{verdict}</span>{inTheWay}");
    }

    private async Task<string> ListAsync(string need)
    {
        var page = await new Visitor(shared.Service).GetAsync($"/replacements?kind=motor&{need}");
        page.Status.ShouldBe(HttpStatusCode.OK, need);
        return page.Body;
    }
}
