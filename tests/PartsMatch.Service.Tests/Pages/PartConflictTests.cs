using System.Net;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>Two people change one part at the same time: both versions are shown, and neither is lost.</summary>
public sealed class PartConflictTests : IAsyncLifetime
{
    private const string Change = "/parts/QN-100/change";
    private const string Retire = "/parts/QN-100/retire";
    private TestService _service = null!;
    private Visitor _mine = null!;

    /// <summary>Mine: power and shaft. Theirs, saved first: power, speed and the title.</summary>
    public async ValueTask InitializeAsync()
    {
        _service = await TestService.StartAsync();
        _mine = await Visitor.SignedInAsync(_service);
        await _mine.GetAsync(Change);
        var theirs = await Visitor.SignedInAsync(_service);
        await theirs.GetAsync(Change);
        (await theirs.ResendAsync(Change, ("spec.power", "1/3 hp"), ("spec.speed", "1140 rpm"), ("title", "their title"))).Status.ShouldBe(HttpStatusCode.SeeOther);
        await _mine.ResendAsync(Change, ("spec.power", "1/2 hp"), ("spec.shaftDiameter", "5/8 in"));
    }

    public ValueTask DisposeAsync() => _service.DisposeAsync();

    [Fact]
    public async Task Both_versions_stand_beside_each_other_and_what_was_typed_stands_in_the_form()
    {
        _mine.Page.Status.ShouldBe(HttpStatusCode.Conflict);
        Row("Power").ShouldBe(["1/3 hp", "1/2 hp", "both changed it"]);
        Row("Title").ShouldBe(["their title", "fan motor 1/4 hp", "they changed it, you did not: sending yours undoes that"]);
        Row("Shaft diameter").ShouldBe(["1/2 in", "5/8 in", "you changed it"]);
        _mine.Page.Body.ShouldContain("name=\"spec.power\" value=\"1/2 hp\"");
        _mine.Page.Body.ShouldContain("In the catalogue now: 1/3 hp.");
        _mine.Page.Body.ShouldContain("Changed by first at ");
        // What agrees is no row of the table.
        _mine.Page.Body.ShouldNotContain("<th scope=\"row\">Voltage</th>");
        _mine.Page.Body.ShouldContain("<dt>Voltage</dt><dd>208-230 V</dd>");

        var part = (await _mine.GetAsync("/parts/QN-100")).Body;
        part.ShouldContain("<dt>Power</dt><dd>1/3 hp</dd>");
        part.ShouldContain("version 2");
    }

    [Fact]
    public async Task Sent_again_on_the_new_version_mine_is_saved_and_theirs_stays_in_the_history()
    {
        (await _mine.ResendAsync(Change)).Status.ShouldBe(HttpStatusCode.SeeOther);
        var body = (await _mine.FollowAsync()).Body;
        body.ShouldContain("<dt>Power</dt><dd>1/2 hp</dd>");
        body.ShouldContain("fan motor 1/4 hp, Quennor");
        body.ShouldContain("their title");
        body.ShouldContain("version 3");
    }

    [Fact]
    public async Task What_they_changed_and_I_did_not_is_taken_over_into_the_form_and_saved_only_when_sent()
    {
        await _mine.ResendAsync(Change, ("then", "theirs"));
        _mine.Page.Status.ShouldBe(HttpStatusCode.OK);
        foreach (var value in (string[])["1/2 hp", "1140 rpm", "5/8 in", "their title"]) _mine.Page.Body.ShouldContain($"value=\"{value}\"", customMessage: value);
        _mine.Page.Body.ShouldContain("Nothing is saved yet");
        (await new Visitor(_service).GetAsync("/parts/QN-100")).Body.ShouldNotContain("version 3");
        (await _mine.ResendAsync(Change)).Status.ShouldBe(HttpStatusCode.SeeOther);
        var body = (await _mine.FollowAsync()).Body;
        body.ShouldContain("<dt>Power</dt><dd>1/2 hp</dd>");
        body.ShouldContain("their title, Quennor");
    }

    [Fact]
    public async Task A_conflict_upon_a_conflict_is_shown_again()
    {
        var third = await Visitor.SignedInAsync(_service);
        await third.GetAsync(Change);
        await third.ResendAsync(Change, ("title", "a third title"));
        (await _mine.ResendAsync(Change)).Status.ShouldBe(HttpStatusCode.Conflict);
        Row("Title").ShouldBe(["a third title", "fan motor 1/4 hp", "both changed it"]);
        (await _mine.ResendAsync(Change)).Status.ShouldBe(HttpStatusCode.SeeOther);
    }

    [Fact]
    public async Task Retiring_what_was_changed_meanwhile_shows_what_was_changed_and_asks_again()
    {
        await _mine.GetAsync(Retire);
        await _mine.ResendAsync(Retire, ("version", "1"));
        _mine.Page.Status.ShouldBe(HttpStatusCode.Conflict);
        _mine.Page.Body.ShouldContain("<td data-label=\"After\">their title</td>");
        (await _mine.GetAsync("/parts/QN-100")).Body.ShouldNotContain("Retired:");
        await _mine.GetAsync(Retire);
        await _mine.ResendAsync(Retire, ("version", "1"));
        (await _mine.ResendAsync(Retire)).Status.ShouldBe(HttpStatusCode.SeeOther);
        (await _mine.FollowAsync()).Body.ShouldContain("Retired:");
        (await _mine.SendAsync(Retire, ("version", "3"))).Body.ShouldContain("was retired before");
    }

    private IReadOnlyList<string> Row(string label)
    {
        var row = WebUtility.HtmlDecode(_mine.Page.Body).Split($"<th scope=\"row\">{label}</th>")[1].Split("</tr>")[0];
        return [.. row.Split("<td").Skip(1).Select(cell => cell[(cell.IndexOf('>', StringComparison.Ordinal) + 1)..].Split("</td>")[0].Replace("<mark>", string.Empty, StringComparison.Ordinal).Replace("</mark>", string.Empty, StringComparison.Ordinal))];
    }
}
