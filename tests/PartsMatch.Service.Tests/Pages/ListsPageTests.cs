using System.Net;
using PartsMatch.Fit;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>A list of old parts sent by someone at a browser: the answer is what programs get.</summary>
public sealed class ListsPageTests(SharedService shared) : IClassFixture<SharedService>
{
    private const string List = "number,note\nZV-7,ours\nNOPE-1,?\n";

    private readonly Visitor _visitor = new(shared.Service);

    [Fact]
    public async Task The_page_says_which_columns_a_list_takes_and_how_long_it_may_be()
    {
        var page = await _visitor.GetAsync("/lists");
        page.Status.ShouldBe(HttpStatusCode.OK);
        foreach (var column in (string[])["number", "text", "kind", "site.volts, site.hubBore and so on"]) page.Body.ShouldContain($"<dt>{column}</dt>");
        foreach (var family in Families.All) page.Body.ShouldContain(family.Kind);
        page.Body.ShouldContain("at most 100000 rows and 32 MB");
        (await _visitor.GetAsync("/")).Body.ShouldContain("<a href=\"/lists\">");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public async Task Pasted_lines_and_a_file_come_back_as_the_address_for_programs_answers_them(int first)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, FormattableString.Invariant($"/cross-reference?first={first}")) { Content = new StringContent(List, System.Text.Encoding.UTF8, "text/csv") };
        var expected = (await shared.Service.SendAsync(request)).Body;
        expected.ShouldContain("ZV-7,ours,QN-100");
        var wanted = ("first", first.ToString(System.Globalization.CultureInfo.InvariantCulture));
        await _visitor.GetAsync("/lists");
        foreach (var answer in (Answered[])[await _visitor.SendAsync("/lists", ("text", List), wanted), await _visitor.UploadAsync("/lists", "file", List, wanted)])
        {
            (answer.Status, answer.MediaType).ShouldBe((HttpStatusCode.OK, "text/csv"));
            answer.Headers["Content-Disposition"].ShouldBe("attachment; filename=replacements.csv");
            answer.Body.ShouldBe(expected);
        }
    }

    [Theory]
    [InlineData("shelf\nA-3\n", "There is no column “number”, nor one “text”")]
    [InlineData("number\tnote\nZV-7\tours\n", "comma")]
    [InlineData("", "There is no list yet")]
    public async Task What_is_no_list_is_refused_with_what_would_be_right_and_the_lines_stay(string lines, string says)
    {
        var page = await _visitor.PostAsync("/lists", ("text", lines), ("first", "2"));
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.MediaType.ShouldBe("text/html");
        page.Headers.ShouldNotContainKey("Content-Disposition");
        WebUtility.HtmlDecode(page.Body).ShouldContain(says);
        page.Body.ShouldContain("<option value=\"2\" selected");
        if (lines.Length > 0) WebUtility.HtmlDecode(page.Body).ShouldContain(lines.Split('\n')[1]);
    }

    [Fact]
    public async Task A_list_of_too_many_rows_is_refused_on_the_page()
    {
        await using var narrow = await TestService.StartAsync("--CrossReference:Rows=1");
        var page = await new Visitor(narrow).PostAsync("/lists", ("text", List));
        page.Status.ShouldBe(HttpStatusCode.RequestEntityTooLarge);
        page.Body.ShouldContain("A list has at most 1 rows; this one has 2.");
    }

    [Fact]
    public async Task Other_units_show_the_page_again_with_the_lines_that_were_pasted()
    {
        var page = await _visitor.PostAsync("/lists", ("text", List), ("units", "si"));
        page.Status.ShouldBe(HttpStatusCode.OK);
        page.Body.ShouldContain("NOPE-1,?");
    }
}
