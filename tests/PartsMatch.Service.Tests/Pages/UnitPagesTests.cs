using System.Net;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>The units that were chosen hold for all that a sheet says in figures: deductions, margins, differences.</summary>
public sealed class UnitPagesTests(SharedService shared) : IClassFixture<SharedService>
{
    private const string Sheet = "/sheet?part=QN-300&kind=motor&plate.power=1/4+hp&plate.speed=1075+rpm&plate.voltage=208-230+V&plate.phase=1&plate.frequency=60+Hz&plate.frame=48&plate.type=PSC&site.altitude=5000+ft";

    [Theory]
    [InlineData("given", "1/2 in")]
    [InlineData("us", "1/2 in")]
    [InlineData("si", "12.7 mm")]
    public async Task A_deduction_is_written_in_them(string units, string bore)
    {
        // NEMA MG 1 gives frame 48 a shaft of 1/2 in.
        var body = await GetAsync(Sheet, units);
        body.ShouldContain($"Hub bore: <strong>{bore}</strong>");
    }

    [Theory]
    [InlineData("given", " hp</td>", " W</td>")] // in which the plate and the part are written
    [InlineData("us", " hp</td>", " W</td>")]
    [InlineData("si", " W</td>", " hp</td>")]
    public async Task A_margin_is_written_in_them(string units, string unit, string other)
    {
        var body = await GetAsync(Sheet, units);
        var margins = body.Split("<td data-label=\"To the limit\">").Skip(1).Select(cell => cell.Split("</td>")[0] + "</td>").ToList();
        margins.ShouldContain(margin => margin.EndsWith(unit, StringComparison.Ordinal));
        margins.ShouldNotContain(margin => margin.EndsWith(other, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("given", " hp</td>", " W</td>")] // in which the plate and the part are written
    [InlineData("us", " hp</td>", " W</td>")]
    [InlineData("si", " W</td>", " hp</td>")]
    public async Task A_difference_of_power_is_written_in_them(string units, string unit, string other)
    {
        var rows = (await GetAsync(Sheet, units)).Split("class=\"differences\"")[1].Split("</table>")[0];
        rows.ShouldContain(unit);
        rows.ShouldNotContain(other);
    }

    [Fact]
    public async Task An_altitude_and_a_forms_hint_are_written_in_them()
    {
        (await GetAsync(Sheet, "si")).ShouldContain("1524 m");
        (await GetAsync("/?kind=motor&plate.frame=48", "si")).ShouldContain("Taken as 12.7 mm");
        (await GetAsync("/?kind=motor&plate.frame=48", "us")).ShouldContain("Taken as 1/2 in");
    }

    [Theory]
    [InlineData("given", "A shaft 1/8 in (3.18 mm) shorter than the old one ", "; at 1/4 in (6.35 mm), its limit, ")]
    [InlineData("us", "A shaft 0.125 in shorter than the old one ", "; at 0.25 in, its limit, ")]
    [InlineData("si", "A shaft 3.18 mm shorter than the old one ", "; at 6.35 mm, its limit, ")]
    public async Task How_far_a_part_falls_short_is_told_in_them_where_the_question_has_a_figure_of_its_own(string units, string half, string limit)
    {
        var body = await GetAsync("/model?kind=motor", units);
        body.ShouldContain($"<p>{half}");
        body.ShouldContain(limit);
        body.ShouldContain("<p>A speed 3.5 % off the old one's ");
        body.ShouldContain("<p>Half way to its limit it ");
    }

    private async Task<string> GetAsync(string address, string units)
    {
        var answer = await shared.Service.SendAsync(new(HttpMethod.Get, address) { Headers = { { "Cookie", $"units={units}" } } });
        answer.Status.ShouldBe(HttpStatusCode.OK);
        return WebUtility.HtmlDecode(answer.Body);
    }
}
