using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>crossReference, through HTTP.</summary>
public sealed class CrossReferenceTests(SharedService shared) : IClassFixture<SharedService>
{
    private const string Shown = "{part{number} fit likelihood score changes{words isCheck} onHand price{amount currency}}";

    private readonly TestService _service = shared.Service;

    [Theory]
    [InlineData("")]
    [InlineData("volts:\"208 V\" hubBore:\"1/2 in\"")]
    public async Task Each_row_is_what_replacements_answers_to_its_number_alone(string site)
    {
        string[] numbers = ["ZV-7", "qn 100", "QN-200", "ZV-8", "ZV-9", "QN-300", "ZV-7", "QN100"];
        var answer = await _service.AskAsync($"query($n:[ID!]!){{crossReference(partNumbers:$n, site:{{motor:{{{site}}}}}){{partNumber oldPart{{number}} replacements(first:5){Shown} why code}}}}", new { n = numbers });
        answer.Codes.ShouldBeEmpty();
        answer.All("data.crossReference", "partNumber").ShouldBe(numbers);
        foreach (var (at, number) in numbers.Index())
        {
            var alone = await _service.AskAsync($"{{replacements(first:5, need:{{motor:{{oldPartNumber:\"{number}\", site:{{{site}}}}}}}){{edges{{node{Shown}}} oldPart{{number}}}}}}");
            var nodes = Enumerable.Range(0, alone.At("data.replacements.edges").GetArrayLength()).Select(node => alone.Text($"data.replacements.edges.{node}.node"));
            Enumerable.Range(0, answer.At($"data.crossReference.{at}.replacements").GetArrayLength()).Select(node => answer.Text($"data.crossReference.{at}.replacements.{node}")).ShouldBe(nodes);
            answer.Text($"data.crossReference.{at}.oldPart").ShouldBe(alone.Text("data.replacements.oldPart"));
        }
    }

    [Fact]
    public async Task What_cannot_be_asked_about_keeps_its_place_with_a_code_and_why()
    {
        var answer = await _service.AskAsync("{crossReference(partNumbers:[\"QN-100\",\"NO-SUCH\",\"CK-5\",\" \",\"qn100\"], site:{motor:{}}){replacements{part{number}} oldPart{number} why code}}");
        answer.Codes.ShouldBeEmpty();
        answer.All("data.crossReference", "code").ShouldBe(["", Codes.PartNotFound, Codes.KindMismatch, Codes.Empty, ""]);
        answer.Text("data.crossReference.1.why").ShouldBe("The catalogue has no part “NO-SUCH”.");
        answer.Text("data.crossReference.2.why").ShouldBe("CK-5 is a run capacitor; what is asked for is a fan motor.");
        answer.Text("data.crossReference.2.oldPart.number").ShouldBe("CK-5");
        (answer.Text("data.crossReference.0.replacements.0.part.number"), answer.Text("data.crossReference.4.replacements.0.part.number")).ShouldBe(("QN-100", "QN-100"));
    }

    [Fact]
    public async Task Without_a_site_numbers_of_all_kinds_are_answered()
    {
        var answer = await _service.AskAsync("{crossReference(partNumbers:[\"CK-5\",\"QN-100\"]){replacements{part{number}}}}");
        (answer.Text("data.crossReference.0.replacements.0.part.number"), answer.Text("data.crossReference.1.replacements.0.part.number")).ShouldBe(("CK-5", "QN-100"));
    }

    [Fact]
    public async Task Two_hundred_numbers_with_all_that_a_list_shows_are_answered_and_one_more_is_refused()
    {
        const string Query = "query($n:[ID!]!){crossReference(partNumbers:$n){partNumber oldPart{number supersededBy{number saidBy on}} replacements(first:5){part{number maker title} fit likelihood changes{words isCheck} onHand price{amount currency}} why code}";
        var most = await _service.AskAsync(Query + "}", new { n = Enumerable.Repeat("QN-100", 200) });
        most.Codes.ShouldBeEmpty();
        most.At("data.crossReference").GetArrayLength().ShouldBe(200);
        var more = await _service.AskAsync(Query + "}", new { n = Enumerable.Repeat("QN-100", 201) });
        (more.Codes.ShouldHaveSingleItem(), more.Places.ShouldHaveSingleItem()).ShouldBe((Codes.ListTooLong, "partNumbers"));
        more.Text("errors.0.message").ShouldBe("At most 200 part numbers are asked about at once; these are 201. Longer lists go to /cross-reference.");
    }

    [Theory]
    [InlineData(3, true)]
    [InlineData(4, false)]
    public async Task Its_cost_grows_with_the_numbers(int numbers, bool isTaken)
    {
        // Worked by hand: 1 for the field, and 50 and its number for each of three: 1 + 3 × 51 = 154.
        await using var narrow = await TestService.StartAsync("--Limits:Cost=154");
        (await narrow.AskAsync("query($n:[ID!]!){crossReference(partNumbers:$n){partNumber}}", new { n = Enumerable.Repeat("QN-100", numbers) })).Codes.ShouldBe(isTaken ? [] : [Codes.QueryTooCostly]);
    }

    [Fact]
    public async Task A_site_that_cannot_be_read_is_refused_once_for_all()
    {
        var answer = await _service.AskAsync("{crossReference(partNumbers:[\"QN-100\",\"QN-200\"], site:{motor:{volts:\"many\"}}){why}}");
        (answer.Codes.ShouldHaveSingleItem(), answer.Places.ShouldHaveSingleItem()).ShouldBe((Codes.Unreadable, "site.motor.volts"));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(6)]
    public async Task A_number_has_1_to_5_replacements(int first) =>
        (await _service.AskAsync($"{{crossReference(partNumbers:[\"QN-100\"]){{replacements(first:{first}){{fit}}}}}}")).Codes.ShouldBe([Codes.FirstOutOfRange]);

    [Fact]
    public async Task No_numbers_are_no_rows() =>
        (await _service.AskAsync("{crossReference(partNumbers:[]){why}}")).At("data.crossReference").GetArrayLength().ShouldBe(0);
}
