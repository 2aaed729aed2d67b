using System.Net;
using System.Text;
using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Tests.Support;
using PartsMatch.Store;

namespace PartsMatch.Service.Tests.Exchange;

/// <summary>Characters that do not show are refused by name at every edge, and what was kept before still goes out and in.</summary>
public sealed class UnseenSignsTests
{
    private const string Override = "U+202E (right-to-left override) stands at character 2. It does not show: take it out.";

    [Fact]
    public async Task An_import_names_row_column_and_character()
    {
        using var catalogue = new Importing();
        var report = await catalogue.TakeAsync("motor", "number,maker,title,status,power\nA\u202E-1,Q\u202Eu,t\u202Ex,current,1\u202E/4 hp\nA-2,Q,\"two\nlines\",current,\nA-3,Q,\"null\u0000\",current,\n");
        (report.New, report.Bad).ShouldBe((0, 3));
        report.Told[0].Wrong.Select(wrong => wrong.Column).ShouldBe(["number", "maker", "title", "power"], ignoreOrder: true);
        report.Told[0].Wrong.ShouldAllBe(wrong => wrong.Message.EndsWith(Override, StringComparison.Ordinal));
        report.Told[0].Number.ShouldBe("A‹U+202E›-1");
        report.Told[1].Wrong.ShouldHaveSingleItem().Message.ShouldStartWith("U+000A (line feed) stands at character 4. Write one line");
        report.Told[2].Wrong.ShouldHaveSingleItem().Message.ShouldStartWith("U+0000 (null) stands at character 5.");
    }

    [Fact]
    public async Task A_known_number_is_not_spelt_anew_with_one_in_it()
    {
        // The key of a number is its letters and digits, so this is QN-100.
        using var catalogue = new Importing();
        var report = await catalogue.TakeAsync("motor", "number\nQ\u202EN-100\n");
        report.Told.ShouldHaveSingleItem().Wrong.ShouldHaveSingleItem().Message.ShouldBe(Override);
        catalogue.Store.Find("QN-100")!.Number.ShouldBe("QN-100");
    }

    [Fact]
    public async Task Supersessions_are_held_to_it_too()
    {
        using var catalogue = new Importing();
        var report = await catalogue.TakeAsync("supersessions", "number,supersededBy,saidBy,on\nQN-200,Q\u202EN-100,m\u202Ex,2024-01-02\n");
        report.Told.ShouldHaveSingleItem().Wrong.Select(wrong => (wrong.Column, wrong.Message)).ShouldBe([("supersededBy", Override), ("saidBy", Override)]);
    }

    [Fact]
    public async Task GraphQL_names_the_place_and_the_character()
    {
        await using var service = await TestService.StartAsync();
        var answer = await service.WriteAsync(
            "mutation($part:PartInput!){addPart(part:$part){__typename}}",
            new { part = new { number = "A\u202E-1", maker = "Q\u202Eu", title = "t\u202Ex", spec = new { motor = new { frame = "4\u202E8" } }, supersededBy = new[] { new { number = "Q\u202EN", saidBy = "m\u202Ex", on = "2024-01-02" } } } });
        answer.Places.ShouldBe(["part.number", "part.maker", "part.title", "part.supersededBy.0.number", "part.supersededBy.0.saidBy", "part.spec.motor.frame"], ignoreOrder: true);
        answer.All("errors", "message").ShouldAllBe(message => message.EndsWith(Override, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("""{"query":"mutation($title:String!){addPart(part:{number:\"A-1\",maker:\"Q\",title:$title,spec:{motor:{}}}){__typename}}","variables":{"title":"t\ud83dx"}}""")]
    [InlineData("""{"query":"mutation{addPart(part:{number:\"A-1\",maker:\"Q\",title:\"t\ud83dx\",spec:{motor:{}}}){__typename}}"}""")]
    [InlineData("""{"query":"mutation{addPart(part:{number:\"A-1\",maker:\"Q\",title:\"t\\ud83dx\",spec:{motor:{}}}){__typename}}"}""")]
    public async Task Half_of_a_surrogate_pair_in_a_query_is_refused_and_written_nowhere(string body)
    {
        await using var service = await TestService.StartAsync();
        var request = new HttpRequestMessage(HttpMethod.Post, "/graphql") { Content = new StringContent(body, Encoding.UTF8, "application/json"), Headers = { { "Authorization", $"Bearer {service.Key}" } } };
        var answer = await service.SendAsync(request);
        ((int)answer.Status).ShouldBeLessThan(500, answer.Body);
        answer.Body.ShouldContain("errors");
        service.Services.GetService(typeof(PartStore)).ShouldBeOfType<PartStore>().Find("A-1").ShouldBeNull();
    }

    [Fact]
    public async Task The_form_says_it_beside_each_input()
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        await visitor.GetAsync("/parts/new?kind=motor");
        await visitor.ResendAsync(
            "/parts/new", ("number", "A\u202E-1"), ("maker", "Q\u202Eu"), ("title", "t\u202Ex"), ("status", "current"), ("spec.frame", "4\u202E8"),
            ("supersededBy.0.number", "Q\u202EN"), ("supersededBy.0.saidBy", "m\u202Ex"), ("supersededBy.0.on", "2024-01-02"));
        visitor.Page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        foreach (var input in (string[])["number", "maker", "title", "spec.frame", "supersededBy.0.number", "supersededBy.0.saidBy"])
            visitor.Page.Body.ShouldContain($"id=\"{input}-wrong\"", customMessage: input);
        WebUtility.HtmlDecode(visitor.Page.Body).Split(Override).Length.ShouldBeGreaterThan(6);
    }

    [Fact]
    public async Task What_was_kept_before_goes_out_and_in_unchanged()
    {
        using var catalogue = new Importing(new SeedData("kept before", [new("A-1", "motor", "Q\u202E", "two\nlines\u0000", PartStatus.Current, [new("power", "1/4\u0000 hp")], [])], []));
        (await catalogue.TakeAsync("motor", await catalogue.ExportAsync("motor"))).Same.ShouldBe(1);
        UnseenSigns.Complaint(catalogue.Store.Find("A-1")!.Title).ShouldNotBeNull();
    }
}
