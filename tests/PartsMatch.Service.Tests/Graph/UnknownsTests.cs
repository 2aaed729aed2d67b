using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>What a plate leaves open, through HTTP: likelihoods over known machines, next readings, what to carry.</summary>
public sealed class UnknownsTests(SharedService shared) : IClassFixture<SharedService>
{
    private const string Unread = "need:{motor:{plateText:\"HP 1/4 RPM 1075 V 208-230 PH 1 HZ 60\", site:{volts:\"230 V\"}}}";

    private readonly TestService _service = shared.Service;

    [Fact]
    public async Task A_likelihood_says_over_how_many_known_machines_it_was_averaged()
    {
        var answer = await _service.AskAsync($"{{replacements({Unread}){{edges{{node{{part{{number}} likelihood likelihoodOver}}}}}}}}");
        answer.Codes.ShouldBeEmpty();

        // Of the six motors of the catalogue, the retired one too, three agree with all that is known: half of them are enough, and what is further off counts nothing.
        answer.All("data.replacements.edges", "node.likelihoodOver").ShouldAllBe(machines => machines == "3");
    }

    [Fact]
    public async Task The_sheet_tells_the_same_likelihood_as_the_list()
    {
        var answer = await _service.AskAsync($"{{replacements({Unread}){{edges{{node{{part{{number}} likelihood score}}}}}} fitSheet({Unread}, partNumber:\"QN-100\"){{likelihood likelihoodOver score}}}}");
        answer.Text("data.replacements.edges.0.node.part.number").ShouldBe("QN-100");
        answer.Text("data.fitSheet.likelihood").ShouldBe(answer.Text("data.replacements.edges.0.node.likelihood"));
        answer.Text("data.fitSheet.score").ShouldBe(answer.Text("data.replacements.edges.0.node.score"));
        answer.Text("data.fitSheet.likelihoodOver").ShouldBe("3");
    }

    [Fact]
    public async Task The_shaft_is_to_be_measured_and_why_is_said()
    {
        var answer = await _service.AskAsync($"{{nextReadings({Unread}, first:20){{side field label help minutes narrowing parts isEstimated sentence}}}}");
        answer.Codes.ShouldBeEmpty();
        answer.All("data.nextReadings", "field").ShouldContain("shaftDiameter");
        answer.All("data.nextReadings", "sentence").ShouldContain(sentence => sentence.StartsWith("Measure with calipers: shaft diameter. It ", StringComparison.Ordinal));
        answer.All("data.nextReadings", "minutes").Select(minutes => minutes).ShouldContain("3");
    }

    [Fact]
    public async Task As_many_readings_are_told_as_are_asked_for()
    {
        var answer = await _service.AskAsync($"{{nextReadings({Unread}, first:1){{field}}}}");
        answer.At("data.nextReadings").GetArrayLength().ShouldBe(1);
        (await _service.AskAsync($"{{nextReadings({Unread}, first:0){{field}}}}")).Codes.ShouldBe([Codes.FirstOutOfRange]);
    }

    [Fact]
    public async Task What_to_carry_names_parts_with_their_kit_and_how_far_they_get()
    {
        var answer = await _service.AskAsync($"{{carrySet({Unread}){{parts{{part{{number}} share kit{{what quantity}}}} machines reached isSmallest}}}}");
        answer.Codes.ShouldBeEmpty();
        answer.Text("data.carrySet.machines").ShouldBe("3");
        answer.At("data.carrySet.reached").GetDouble().ShouldBeInRange(0.5, 1);
        answer.All("data.carrySet.parts", "part.number").ShouldBeSubsetOf(["QN-100", "QN-200", "QN-300", "ZV-7", "ZV-9"]);
        answer.All("data.carrySet.parts", "part.number").ShouldNotBeEmpty();
        answer.At("data.carrySet.parts.0.kit").GetArrayLength().ShouldBeGreaterThan(0);
    }

    [Fact]
    public async Task A_share_that_is_none_is_refused_with_its_place()
    {
        var answer = await _service.AskAsync($"{{carrySet({Unread}, atLeast:95){{machines}}}}");
        answer.Codes.ShouldBe([Codes.ShareOutOfRange]);
        answer.Text("errors.0.extensions.at").ShouldBe("atLeast");
        answer.Text("errors.0.message").ShouldBe("atLeast is a share, 0 to 1; 95 was asked for.");
    }

    [Fact]
    public async Task A_need_that_cannot_be_read_is_refused_here_too() =>
        (await _service.AskAsync("{nextReadings(need:{motor:{plate:{power:\"much\"}}}){field}}")).Codes.ShouldBe([Codes.Unreadable]);
}
