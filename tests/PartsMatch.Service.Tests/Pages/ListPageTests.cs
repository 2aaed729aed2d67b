using System.Net;
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

    private async Task<string> ListAsync(string need)
    {
        var page = await new Visitor(shared.Service).GetAsync($"/replacements?kind=motor&{need}");
        page.Status.ShouldBe(HttpStatusCode.OK, need);
        return page.Body;
    }
}
