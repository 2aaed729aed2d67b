using System.Net;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>A table taken in by someone at a browser: looked at first, taken when asked, the same a second time.</summary>
public sealed class TablePagesTests
{
    private const string Table = """
        number,maker,title,status,power,speed
        QN-900,Quennor,fan motor 1/2 hp,current,1/2 hp,1075 rpm
        QN-901,Quennor,fan motor,current,a lot,fast
        =QN-902,Quennor,<script>alert(1)</script>,current,1/4 hp,1075 rpm
        """;

    [Fact]
    public async Task A_file_is_previewed_taken_when_asked_and_changes_nothing_a_second_time()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        await SendAsync(visitor);
        visitor.Page.Body.ShouldContain("2 new");
        visitor.Page.Body.ShouldContain("1 cannot be taken");
        visitor.Page.Body.ShouldContain("<strong>Row 3</strong> QN-901");
        visitor.Page.Body.ShouldContain("“a lot” is not");
        visitor.Page.Body.ShouldContain("“fast” is not");
        (await visitor.GetAsync("/parts/QN-900")).Status.ShouldBe(HttpStatusCode.NotFound, "a preview writes nothing");

        await SendAsync(visitor);
        await visitor.SendAsync(Action(visitor), []);
        await DoneAsync(visitor, visitor.Page.Headers["Location"]);
        visitor.Page.Body.ShouldContain("The file was taken");
        (await visitor.GetAsync("/parts/QN-900")).Body.ShouldContain("fan motor 1/2 hp");
        (await visitor.GetAsync("/parts?text=QN-902")).Body.ShouldNotContain("<script>");

        await SendAsync(visitor);
        visitor.Page.Body.ShouldContain("2 the same");
        visitor.Page.Body.ShouldContain("There is nothing to take");
    }

    [Fact]
    public async Task The_page_says_how_many_more_rows_are_bad_and_all_of_them_are_a_table_for_whoever_sent_the_file()
    {
        await using var service = await TestService.StartAsync("--Exchange:RowsTold=2");
        var visitor = await Visitor.SignedInAsync(service);
        await SendAsync(visitor, "number,maker,title,status\n" + string.Concat(Enumerable.Range(1, 7).Select(at => FormattableString.Invariant($"'=N-{at},Quennor,t,sold\n"))));
        visitor.Page.Body.ShouldContain("And 5 more rows that this page does not list.");
        var address = visitor.Page.Body.Split("href=\"").Select(part => part.Split('"')[0]).Single(link => link.EndsWith("/refused.csv", StringComparison.Ordinal));
        var table = await visitor.GetAsync(address);
        (table.MediaType, table.Headers["Content-Disposition"]).ShouldBe(("text/csv", "attachment; filename=refused.csv; filename*=UTF-8''refused.csv"));
        var lines = table.Body.Split('\n');
        lines.Length.ShouldBe(9);
        lines[0].ShouldBe("row,number,column,code,complaint");
        lines[7].ShouldBe("8,'=N-7,status,UNREADABLE,\"A status is one of current, discontinued, retired.\"");
        (await new Visitor(service).GetAsync(address)).Status.ShouldBe(HttpStatusCode.SeeOther);
    }

    [Fact]
    public async Task What_is_no_table_is_refused_with_what_would_be_right()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync("/tables");
        await visitor.UploadAsync("/tables", "file", "number;maker;title", ("kind", "motor"));
        (await DoneAsync(visitor, visitor.Page.Headers["Location"])).Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        visitor.Page.Body.ShouldContain("role=\"alert\"");
        visitor.Page.Body.ShouldContain("comma");
    }

    [Fact]
    public async Task Without_a_key_or_the_forms_token_no_file_is_looked_at()
    {
        await using var service = await TestService.StartAsync();
        var stranger = new Visitor(service);
        (await stranger.GetAsync("/tables")).Body.ShouldNotContain("type=\"file\"");
        (await stranger.UploadAsync("/tables", "file", Table, ("kind", "motor"))).Status.ShouldBe(HttpStatusCode.Unauthorized);
        var visitor = await Visitor.SignedInAsync(service);
        (await visitor.UploadAsync("/tables", "file", Table, ("kind", "motor"))).Status.ShouldBe(HttpStatusCode.BadRequest, "the page shown last held no token of this form");
    }

    [Fact]
    public async Task A_file_is_shown_to_nobody_but_whoever_sent_it_and_not_for_ever()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        (await visitor.GetAsync("/tables/0123456789abcdef")).Status.ShouldBe(HttpStatusCode.NotFound);
        visitor.Page.Body.ShouldContain("kept for half an hour");
    }

    /// <summary>No script and no meta element: a header does it, and only while there is something to wait for.</summary>
    [Fact]
    public async Task A_page_of_a_file_that_is_being_read_looks_again_by_itself_until_it_is_read_or_asked_to_stand_still()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync("/tables");
        await visitor.UploadAsync("/tables", "file", string.Join('\n', (string[])["number,maker,title,status,power,speed", .. Enumerable.Range(0, 80_000).Select(at => FormattableString.Invariant($"LONG-{at},Quennor,fan motor,current,1/4 hp,1075 rpm"))]), ("kind", "motor"));
        var address = visitor.Page.Headers["Location"];
        await visitor.GetAsync(address);
        visitor.Page.Body.ShouldContain("<progress");
        visitor.Page.Headers["Refresh"].ShouldBe("2");
        visitor.Page.Body.ShouldNotContain("http-equiv");
        visitor.Page.Body.ShouldContain($"href=\"{address}?still=1\"");

        await visitor.GetAsync($"{address}?still=1");
        visitor.Page.Body.ShouldContain("Look again");
        visitor.Page.Headers.ShouldNotContainKey("Refresh");
        await DoneAsync(visitor, address);
        visitor.Page.Headers.ShouldNotContainKey("Refresh");
        visitor.Page.Body.ShouldContain("<li class=\"change\">80000 new</li>");
    }

    private static async Task SendAsync(Visitor visitor, string table = Table)
    {
        await visitor.GetAsync("/tables");
        await visitor.UploadAsync("/tables", "file", table, ("kind", "motor"));
        visitor.Page.Status.ShouldBe(HttpStatusCode.SeeOther);
        await DoneAsync(visitor, visitor.Page.Headers["Location"]);
    }

    /// <summary>Looks again until it is done.</summary>
    private static async Task<Answered> DoneAsync(Visitor visitor, string address)
    {
        do
        {
            await visitor.GetAsync(address);
        }
        while (visitor.Page.Body.Contains("<progress", StringComparison.Ordinal));

        return visitor.Page;
    }

    private static string Action(Visitor visitor) => System.Text.RegularExpressions.Regex.Match(visitor.Page.Body, "action=\"(?<at>/tables/[0-9a-f]+)\"", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)).Groups["at"].Value;
}
