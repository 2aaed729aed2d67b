using PartsMatch.Fit;
using PartsMatch.Ranking;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

public sealed class CursorTests
{
    private const string Page = "query($after: String){replacements(need:{motor:{}}, first:2, after:$after){edges{node{part{number}}} pageInfo{endCursor}}}";

    [Fact]
    public async Task A_cursor_of_other_weights_has_expired()
    {
        await using var before = await TestService.StartAsync();
        var after = (await before.AskAsync(Page)).Text("data.replacements.pageInfo.endCursor");

        await using var other = await TestService.StartAsync(clock: null, inDataFolder: WriteOtherWeights);
        var answer = await other.AskAsync(Page, new { after });
        answer.Codes.ShouldBe([Codes.CursorExpired]);
        answer.Places.ShouldBe(["after"]);
    }

    [Fact]
    public async Task A_cursor_outlives_a_restart_under_the_same_weights()
    {
        await using var before = await TestService.StartAsync();
        var after = (await before.AskAsync(Page)).Text("data.replacements.pageInfo.endCursor");
        var next = await before.AskAsync(Page, new { after });
        await using var another = await TestService.StartAsync();
        (await another.AskAsync(Page, new { after })).Body.ShouldBe(next.Body);
    }

    [Fact]
    public async Task A_part_added_between_two_pages_disturbs_neither()
    {
        await using var service = await TestService.StartAsync();
        const string page = "query($after: String){parts(first:3, after:$after){edges{node{number}} pageInfo{endCursor}}}";
        var first = await service.AskAsync(page);
        await service.WriteAsync("mutation{addPart(part:{number:\"AA-1\", maker:\"Quennor\", title:\"before all\", spec:{motor:{}}}){__typename}}");
        var second = await service.AskAsync(page, new { after = first.Text("data.parts.pageInfo.endCursor") });
        string.Join(", ", second.All("data.parts.edges", "node.number")).ShouldBe("QN-300, ZV-7, ZV-9");
    }

    private static void WriteOtherWeights(string dataFolder)
    {
        var folder = Directory.CreateDirectory(Path.Combine(dataFolder, "weights")).FullName;
        var family = Families.All[0];
        File.WriteAllText(Path.Combine(folder, $"{family.Kind}.json"), WeightsFile.Write(Weights.Of(family, new(WeightsOrigin.Trained, 2.5) { MadeOn = new(2026, 1, 2) })));
    }
}
