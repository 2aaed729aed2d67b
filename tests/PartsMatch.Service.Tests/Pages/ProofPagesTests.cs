using System.Net;
using PartsMatch.Fit;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>Is it the part, and is the new one right: the pages with a meter in hand.</summary>
public sealed class ProofPagesTests(SharedService shared) : IClassFixture<SharedService>
{
    private readonly Visitor _visitor = new(shared.Service);

    public static TheoryData<string, string> PathsAndKinds { get; } = new(from path in (string[])["/before", "/after"] from family in Families.All select (path, family.Kind));

    [Theory]
    [MemberData(nameof(PathsAndKinds))]
    public async Task Every_kind_of_part_can_be_chosen_and_has_readings_of_its_own(string path, string kind)
    {
        var family = Families.Find(kind)!;
        await _visitor.GetAsync(path);
        _visitor.Page.Body.ShouldContain($"name=\"to\" value=\"{kind}\"");
        (await _visitor.ResendAsync(path, ("to", kind))).Status.ShouldBe(HttpStatusCode.SeeOther);
        _visitor.Page.Headers["Location"].ShouldBe($"{path}?kind={kind}");
        await _visitor.FollowAsync();
        _visitor.Page.Body.ShouldContain($"value=\"{kind}\" aria-pressed=\"true\"");
        foreach (var field in family.ReadingsShape.Fields) _visitor.Page.Body.ShouldContain($"name=\"read.{field.Name}\"");
    }

    [Theory]
    [InlineData("/before")]
    [InlineData("/after")]
    public async Task A_kind_that_was_chosen_wrongly_loses_nothing_that_was_typed(string path)
    {
        await _visitor.GetAsync(path);
        await _visitor.ResendAsync(path, ("text", "HP 1/4 RPM 1075"), ("read.leadVolts", "202 V"), ("to", "contactor"));
        _visitor.Page.Status.ShouldBe(HttpStatusCode.OK);
        _visitor.Page.Body.ShouldContain(">HP 1/4 RPM 1075</textarea>");
        await _visitor.ResendAsync(path, ("text", "HP 1/4 RPM 1075"), ("to", "motor"));
        _visitor.Page.Body.ShouldContain("name=\"read.leadVolts\" value=\"202 V\"");
        _visitor.Page.Body.ShouldContain(">HP 1/4 RPM 1075</textarea>");
    }

    /// <summary>QN-100 and QN-300 are motors: neither is the contactor that is asked about.</summary>
    [Theory]
    [InlineData("/before?kind=motor&old=QN-100", "/before")]
    [InlineData("/after?kind=motor&old=QN-100&part=QN-300", "/after")]
    public async Task Numbers_of_another_kind_do_not_bring_that_kind_back(string address, string path)
    {
        await _visitor.GetAsync(address);
        await _visitor.ResendAsync(path, ("to", "contactor"));
        _visitor.Page.Body.ShouldNotContain("QN-100");
        _visitor.Page.Body.ShouldNotContain("QN-300");
        await _visitor.ResendAsync(path, ("read.coilVolts", "24 V"));
        await _visitor.FollowAsync();
        _visitor.Page.Body.ShouldContain("name=\"kind\" value=\"contactor\"");
        _visitor.Page.Body.ShouldContain("name=\"read.coilVolts\" value=\"24 V\"");
    }
}
