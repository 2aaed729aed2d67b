using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>What a shortfall is in an aspect's own unit, against what the aspect answers; worked by hand.</summary>
public sealed class OwnMeasureTests
{
    public static TheoryData<string> Measured => [.. Families.All.SelectMany(family => family.Aspects.Where(aspect => aspect.Measure is not null).Select(aspect => $"{family.Kind}.{aspect.Name}"))];

    [Theory]
    [InlineData("motor", "shaftLength", "shaftLength=4 in", "", "shaftLength=3.875 in", "a shaft 1/8 in (3.17 mm) shorter than the old one")] // facets are in whole hundredths of a millimetre
    [InlineData("motor", "speed", "speed=1000 rpm; frequency=60 Hz; speeds=1; power=1/4 hp", "supplyFrequency=60 Hz", "speed=1035 rpm; frequency=60 Hz; speeds=1; power=1/4 hp", "a speed 3.5 % off the old one's")]
    [InlineData("motor", "supplyVoltage", "", "volts=213 V; supplyPhase=1; supplyFrequency=60 Hz", "voltage=230 V; phase=1; frequency=60 Hz", "a voltage 7.4 % off its tap")]
    [InlineData("motor", "bodyLength", "bodyLength=4 in", "", "bodyLength=4.5 in", "a body 1/2 in (12.7 mm) longer than the old one")]
    [InlineData("motor", "voltageUnbalance", "phase=3", "volts=464/464/448.5 V; supplyPhase=3", "phase=3", "a supply 2.3 % out of balance")]
    [InlineData("solenoidValve", "opensAgainst", "", "inletMost=280 psi; outletLeast=10 psi", "openingDifferential=300 psi", "a pressure difference 90 % of the most that it opens against")]
    public void It_is_what_the_aspect_found(string kind, string name, string plate, string site, string part, string words)
    {
        var family = Families.Find(kind)!;
        var aspect = family.Aspects.Single(aspect => aspect.Name == name);
        var need = family.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Need;
        var finding = aspect.Judge(need, aspect.FacetOf(family.Deduce(family.ReadSpec(Named.Texts(part)).Spec).Spec));

        finding.Shortfall.ShouldBeInRange(0.01, 0.99, finding.Sentence);
        aspect.Measure!.Words(finding.Shortfall, Units.AsGiven).ShouldBe(words);
    }

    [Theory]
    [MemberData(nameof(Measured))]
    public void It_moves_all_the_way_from_where_nobody_gives_it_a_thought_to_the_limit(string aspect)
    {
        var measure = Families.Find(aspect.Split('.')[0])!.Aspects.Single(one => one.Name == aspect.Split('.')[1]).Measure!;

        measure.Easy.ShouldNotBe(measure.Limit);
        foreach (var units in Enum.GetValues<Units>()) measure.Figure(0.5, units).ShouldNotBe(measure.Figure(1, units));
    }

    [Fact]
    public void Pairs_are_of_two_aspects_of_their_family_and_say_why()
    {
        foreach (var family in Families.All)
        {
            family.Pairs.Select(pair => pair.Name).ShouldBeUnique();
            foreach (var pair in family.Pairs)
            {
                family.Aspects.Select(aspect => aspect.Name).ShouldContain(pair.One);
                family.Aspects.Select(aspect => aspect.Name).ShouldContain(pair.Other);
                pair.One.ShouldNotBe(pair.Other);
                pair.Why.ShouldNotBeNullOrWhiteSpace();
            }
        }
    }
}
