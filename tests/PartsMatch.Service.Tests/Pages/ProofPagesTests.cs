using System.Net;
using System.Text.RegularExpressions;
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

    /// <summary>2.1 µF is 58 % under the plate's 5 µF, and ±6 % is usual: the capacitor is to be replaced, not the motor.</summary>
    [Theory]
    [InlineData("plate.runCapacitor=5/370", "kind=capacitor&site.motorAsksFor=5+µF+370+V&site.supplyFrequency=60+Hz")]
    [InlineData("plate.runCapacitor=5/370&site.capacitorThere=7.5/440", "kind=capacitor&site.motorAsksFor=5+µF+370+V&site.supplyFrequency=60+Hz")]
    [InlineData("site.capacitorThere=5/440", "kind=capacitor&plate.rating=5+µF+440+V&site.supplyFrequency=60+Hz")]
    [InlineData("plate.runCapacitor=5/370&site.capacitorThere=45%2B5/440", "kind=capacitor&plate.rating=45+5+µF+440+V&site.secondMotorAsksFor=5+µF+370+V&site.supplyFrequency=60+Hz")]
    public async Task Where_a_motors_capacitor_has_failed_the_way_leads_to_capacitors_that_it_asks_for(string known, string need)
    {
        await _visitor.GetAsync($"/before?kind=motor&plate.voltage=208-230&plate.frequency=60&plate.fullLoadAmps=2.1&{known}&read.circuitCalls=yes&read.leadVolts=202&read.turns=no&read.hums=yes&read.motorAmps=6&read.spinsFreely=yes&read.capacitorMicrofarads=2.1");
        var body = WebUtility.HtmlDecode(_visitor.Page.Body);
        body.ShouldContain("It is not the part");
        var first = Regex.Match(body, "<a class=\"button first\" href=\"(?<address>[^\"]*)\">Replacements for the run capacitor</a>", RegexOptions.None, TimeSpan.FromSeconds(1)).Groups["address"].Value;
        Uri.UnescapeDataString(first).ShouldBe($"/replacements?{need}");
        body.ShouldNotContain(">Parts that fit</a>");
        (await _visitor.GetAsync(first)).Body.ShouldContain("CK-5");
    }

    /// <summary>No volts at the leads of a circuit that calls: nothing of the motor is to be bought, nor anything that is named.</summary>
    [Fact]
    public async Task Where_it_is_not_the_part_and_nothing_else_is_named_no_button_leads_to_parts()
    {
        await _visitor.GetAsync("/before?kind=motor&old=QN-100&read.circuitCalls=yes&read.leadVolts=0+V");
        _visitor.Page.Body.ShouldContain("It is not the part");
        _visitor.Page.Body.ShouldNotContain("class=\"button first\" href");
        _visitor.Page.Body.ShouldContain(">Replacements for the fan motor all the same</a>");
    }

    [Fact]
    public async Task Where_the_part_has_failed_the_way_leads_to_parts_that_fit_first()
    {
        await _visitor.GetAsync("/before?kind=capacitor&old=CK-5&read.bulges=yes");
        _visitor.Page.Body.ShouldContain("The part has failed");
        _visitor.Page.Body.ShouldContain("class=\"button first\" href=\"/replacements?kind=capacitor&amp;old=CK-5&amp;read.bulges=yes\">Parts that fit</a>");
    }
}
