using PartsMatch.Fit.Tests.Notes;
using PartsMatch.Fit.Tests.Valves.CondensingPressureValves;
using PartsMatch.Fit.Tests.Valves.ExpansionValves;
using PartsMatch.Fit.Tests.Valves.SolenoidValves;
using PartsMatch.Fit.Valves;
using PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;
using PartsMatch.Fit.Valves.ExpansionValves.Aspects;
using PartsMatch.Fit.Valves.SolenoidValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves;

/// <summary>Oil listed meets, unlisted is unknown: practice.</summary>
[Trait("Source", "solenoidValve.oilListed")]
public sealed class OilListedTests : SolenoidAspectTests<OilListed, OilFacet>
{
    [Theory]
    [InlineData("", "oil=POE", "oils=mineral oil, polyolester", "Meets")]
    [InlineData("", "oil=POE", "oils=mineral oil, alkylbenzene", "Unknown Part oils")]
    [InlineData("", "oil=POE", "", "Unknown Part oils")]
    [InlineData("", "", "oils=mineral oil", "Meets")] // nothing says which oil is there
    [InlineData("", "", "", "Meets")]
    [InlineData("oils=PAG", "", "oils=PAG, POE", "Meets")] // an old valve for one oil alone tells what is there
    [InlineData("oils=PAG", "", "oils=POE", "Unknown Part oils")]
    [InlineData("oils=PAG", "oil=POE", "oils=POE", "Meets")] // what was read outranks that
    public void A_valve_is_used_with_the_oils_that_it_lists(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Theory]
    [InlineData("oils=MO, POE", "oils=MO, AB, POE", "Meets")]
    [InlineData("oils=MO, POE", "oils=MO", "Unknown Site oil")]
    [InlineData("oils=MO, AB", "oils=POE, PVE", "Unknown Part oils")]
    [InlineData("oils=MO, POE", "", "Unknown Part oils")]
    public void Where_the_oil_was_not_read_the_old_valves_list_is_followed(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Fact]
    public void An_oil_that_the_old_valve_does_not_list_is_a_contradiction()
    {
        var family = Families.Find("solenoidValve")!;
        var found = family.ReadNeed(new(null, [new("oils", "MO, AB")], [new("oil", "POE")])).Contradictions.Single();
        found.Fields.ShouldBe(["oils"]);
        found.SiteFields.ShouldBe(["oil"]);
        family.ReadNeed(new(null, [new("oils", "MO, AB")], [new("oil", "AB")])).Contradictions.ShouldBeEmpty();
    }

    /// <summary>Polyolester, polyvinylether and polyalkylene glycol take up water from the air, mineral oil and alkylbenzene hardly: from memory.</summary>
    [Theory]
    [InlineData("solenoidValve", "POE", true)]
    [InlineData("expansionValve", "PVE", true)]
    [InlineData("condensingPressureValve", "PAG", true)]
    [InlineData("solenoidValve", "MO", false)]
    [InlineData("solenoidValve", "AB", false)]
    public void Oil_that_takes_up_water_is_cautioned_of(string kind, string oil, bool isCautioned) =>
        NotesCases.Of(kind, string.Empty, $"oil={oil}", string.Empty).Notes.Cautions.Any(caution => caution.Words.Contains("takes up water", StringComparison.Ordinal)).ShouldBe(isCautioned);
}

/// <summary>As for solenoid valves: practice.</summary>
[Trait("Source", "expansionValve.expansionOil")]
public sealed class ExpansionOilTests : ExpansionAspectTests<ExpansionOil, OilFacet>
{
    [Theory]
    [InlineData("", "oil=POE", "oils=POE", "Meets")]
    [InlineData("", "oil=POE", "oils=MO", "Unknown Part oils")]
    [InlineData("oils=MO, POE", "", "oils=MO", "Unknown Site oil")]
    public void A_valve_is_used_with_the_oils_that_it_lists(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}

/// <summary>As for solenoid valves: practice.</summary>
[Trait("Source", "condensingPressureValve.headOil")]
public sealed class HeadOilTests : HeadAspectTests<HeadOil, OilFacet>
{
    [Theory]
    [InlineData("", "oil=POE", "oils=POE", "Meets")]
    [InlineData("", "oil=POE", "oils=MO", "Unknown Part oils")]
    [InlineData("oils=MO, POE", "", "oils=MO", "Unknown Site oil")]
    public void A_valve_is_used_with_the_oils_that_it_lists(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
