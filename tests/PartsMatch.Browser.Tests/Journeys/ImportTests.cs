using System.Text;

namespace PartsMatch.Browser.Tests.Journeys;

/// <summary>A table is sent, looked at, and its good rows are taken.</summary>
public sealed class ImportTests(SmallSite site) : IClassFixture<SmallSite>
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public Task A_table_is_looked_at_first_and_its_good_rows_are_taken_when_asked(bool hasScript) => site.VisitSignedInAsync(Look.Phone with { HasScript = hasScript }, async visitor =>
    {
        var table = $"""
            number,maker,title,status,power,speed
            TAB{hasScript}-1,Quennor,fan motor,current,1/2 hp,1075 rpm
            TAB{hasScript}-2,Quennor,fan motor,current,a lot,fast
            """;
        await SendAsync(visitor, table);
        await DoneAsync(visitor, "What the file says");
        var text = await visitor.Page.Locator("main").InnerTextAsync();
        text.ShouldContain("1 new");
        text.ShouldContain("1 cannot be taken");
        text.ShouldContain($"Row 3 TAB{hasScript}-2");
        text.ShouldContain("power: “a lot” is not");

        await visitor.PressAsync("Take the good rows (1)");
        await DoneAsync(visitor, "The file was taken");
        await visitor.GoAsync($"/parts/TAB{hasScript}-1");
        (await visitor.Page.Locator("main").InnerTextAsync()).ShouldContain("1/2 hp");

        await SendAsync(visitor, table);
        await DoneAsync(visitor, "What the file says");
        (await visitor.Page.Locator("main").InnerTextAsync()).ShouldContain("1 the same");
    });

    [Theory]
    [InlineData("number;maker;title\nA;B;C", "comma")]
    [InlineData("", "Choose a file")]
    public Task What_is_no_table_is_told_with_what_would_be_right(string text, string told) => site.VisitSignedInAsync(Look.Phone.WithoutScript, async visitor =>
    {
        visitor.Expect(422);
        await SendAsync(visitor, text);
        await visitor.Page.Locator("[role=alert]").First.WaitForAsync();
        (await visitor.Page.Locator("[role=alert]").First.InnerTextAsync()).ShouldContain(told);
    });

    private static async Task SendAsync(Visitor visitor, string table)
    {
        await visitor.GoAsync("/tables");
        await visitor.Field("file").SetInputFilesAsync(new FilePayload { Name = "motors.csv", MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes(table) });
        await visitor.PressAsync("Look at it");
    }

    /// <summary>Nobody presses anything: the page looks again by itself.</summary>
    private static Task DoneAsync(Visitor visitor, string heading) => visitor.Page.GetByRole(AriaRole.Heading, new() { Name = heading }).WaitForAsync();
}
