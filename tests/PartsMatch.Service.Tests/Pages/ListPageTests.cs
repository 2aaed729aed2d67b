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
        (await ListAsync($"kind=motor&old={old}")).ShouldContain($"<p class=\"notice\">{says}</p>");

    /// <summary>QN-100 superseded ZV-7, whose figures it has: supply from 187.2 V on (208 V - 10 %) is good for both; 690 V for neither; nothing was said of the site where it is not known.</summary>
    [Theory]
    [InlineData("/replacements", "", "can't tell yet", "")]
    [InlineData("/", "", "can't tell yet", "")]
    [InlineData("/replacements", "&site.volts=690+V", "doesn't fit", " supply voltage.")]
    [InlineData("/", "&site.volts=690+V", "doesn't fit", " supply voltage.")]
    public async Task What_superseded_the_old_part_is_a_link_to_its_sheet_with_its_verdict_here(string path, string site, string verdict, string inTheWay)
    {
        var body = WebUtility.HtmlDecode((await new Visitor(shared.Service).GetAsync($"{path}?kind=motor&old=ZV-7{site}")).Body);
        var said = Regex.Replace(body[body.IndexOf("It was superseded by", StringComparison.Ordinal)..], "\\s+", " ", RegexOptions.None, TimeSpan.FromSeconds(1));
        said.ShouldStartWith($"It was superseded by <a href=\"/sheet?part=QN-100&kind=motor&old=ZV-7{site}\">QN-100</a> on 2021-04-30, as maker says. Here: <span class=\"fit");
        said[..400].ShouldContain($">{verdict}</span>{inTheWay}");
    }

    /// <summary>Without volts at the site nobody can tell of any motor; on 690 V none fits, which is said below.</summary>
    [Theory]
    [InlineData("kind=motor&old=ZV-7", "Parts that may fit")]
    [InlineData("kind=motor&old=ZV-7&site.volts=690+V", "Parts that fit")]
    public async Task The_list_promises_no_parts_that_fit_where_of_none_it_is_known(string need, string heading) =>
        (await ListAsync(need)).ShouldContain($"<h1>{heading}</h1>");

    /// <summary>A can of 45 µF alone leaves the 5 µF of the fan to a second one; one of 45+5 µF is as the old one was.</summary>
    [Fact]
    public async Task A_row_of_the_list_gives_its_changes_with_their_figures_and_what_tells_it_from_the_others()
    {
        using var seed = new TestFolder();
        seed.Write("capacitors.csv", """
            number,maker,title,status,rating,duty,tolerance,isProtected,temperatureMost,frequency,can
            CK-45,Ombrel,45 microfarads,current,45 µF 440 V,run,6 %,yes,70 °C,50/60 Hz,round
            CK-44,Ombrel,45 microfarads too,current,45 µF 440 V,run,6 %,yes,,50/60 Hz,round
            CK-46,Ombrel,two sections,current,45+5 µF 440 V,run,6 %,yes,70 °C,50/60 Hz,round
            """);
        await using var service = await TestService.StartAsync($"--Data:SeedFolder={seed.Path}");
        var visitor = new Visitor(service);
        var list = WebUtility.HtmlDecode((await visitor.GetAsync("/replacements?kind=capacitor&old=CK-46")).Body);
        list.ShouldContain("<h1>Parts that fit</h1>");
        var change = Regex.Match(list[list.IndexOf(">CK-45</a>", StringComparison.Ordinal)..], "<ul class=\"to-do\">\\s*<li>(?<words>[^<]*)</li>", RegexOptions.None, TimeSpan.FromSeconds(1)).Groups["words"].Value;
        change.ShouldContain("5 µF");
        WhyOf("CK-44").ShouldNotBe(WhyOf("CK-45"), "two of three lack the second section; only one leaves its highest temperature open");
        WebUtility.HtmlDecode((await visitor.GetAsync("/sheet?part=CK-45&kind=capacitor&old=CK-46")).Body).ShouldContain($"<li class=\"change\">{change}</li>");

        string WhyOf(string number) => Regex.Match(list[list.IndexOf($">{number}</a>", StringComparison.Ordinal)..], "<p class=\"why\">(?<why>[^<]*)", RegexOptions.None, TimeSpan.FromSeconds(1)).Groups["why"].Value;
    }

    private async Task<string> ListAsync(string need)
    {
        var page = await new Visitor(shared.Service).GetAsync($"/replacements?{need}");
        page.Status.ShouldBe(HttpStatusCode.OK, need);
        return page.Body;
    }
}
