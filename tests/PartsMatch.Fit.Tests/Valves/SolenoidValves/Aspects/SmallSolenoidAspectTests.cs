using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Valves;
using PartsMatch.Fit.Valves.Pipes;
using PartsMatch.Fit.Valves.SolenoidValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves.SolenoidValves.Aspects;

/// <summary>Reducers for another size, new joints for another kind: practice.</summary>
[Trait("Source", "solenoidValve.connections")]
public sealed class ConnectionsTests : SolenoidAspectTests<Connections, ConnectionsFacet>
{
    [Theory]
    [InlineData("joint=ODF; inletSize=3/8 in", "", "joint=ODF; inletSize=3/8 in", "Meets")]
    [InlineData("joint=ODF; inletSize=3/8 in", "", "joint=ODF; inletSize=9.5 mm", "Meets")] // 9.525 mm
    [InlineData("joint=ODF; inletSize=3/8 in", "", "joint=ODF; inletSize=10 mm", "MeetsWithChanges fitReducers")]
    [InlineData("joint=ODF; inletSize=3/8 in", "", "joint=ODF; inletSize=1/2 in", "MeetsWithChanges fitReducers")]
    [InlineData("joint=ODF; inletSize=3/8 in", "", "joint=flare; inletSize=3/8 in", "MeetsWithChanges changeJoint")]
    [InlineData("joint=ODF; inletSize=3/8 in", "", "joint=flare; inletSize=1/2 in", "MeetsWithChanges changeJoint fitReducers")]
    [InlineData("", "inletLine=3/8 in; outletLine=1/2 in; lineJoint=ODF", "joint=ODF; inletSize=3/8 in", "MeetsWithChanges fitReducers")]
    [InlineData("", "", "joint=ODF; inletSize=3/8 in", "Unknown Site inletLine")]
    [InlineData("joint=ODF; inletSize=3/8 in", "", "joint=ODF", "Unknown Part inletSize")]
    [InlineData("joint=ODF; inletSize=3/8 in", "", "inletSize=3/8 in", "Unknown Part joint")]
    public void Pipes_and_valve_are_joined(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>Worked by hand: shortfall is log2 of the sizes' ratio, of the worse end.</summary>
    [Theory]
    [InlineData("3/8 in", "3/8 in", 0)]
    [InlineData("3/8 in", "1/2 in", 0.415)] // log2(4/3)
    [InlineData("5/8 in", "1/2 in", 0.322)] // log2(5/4)
    [InlineData("1/4 in", "1/2 in", 1)]
    [InlineData("5/8 in", "1/4 in", 1.322)] // log2(5/2)
    public void The_further_the_sizes_are_apart_the_more_it_costs(string pipe, string valve, double shortfall) =>
        Judge($"joint=ODF; inletSize={pipe}", "", $"joint=ODF; inletSize={valve}").Shortfall.ShouldBe(shortfall, 0.001);

    [Fact]
    public void What_is_to_be_fitted_is_in_the_kit_with_its_sizes() =>
        Judge("joint=ODF; inletSize=3/8 in", "", "joint=ODF; inletSize=1/2 in").Changes.Single().Kit.Select(item => item.What)
            .ShouldBe(["reducing coupling, 3/8 in (9.53 mm) to 1/2 in (12.7 mm)", "reducing coupling, 1/2 in (12.7 mm) to 3/8 in (9.53 mm)"]);

    [Theory]
    [InlineData("flare", "flare", "flare reducer, ")]
    [InlineData("pipe thread", "pipe thread", "threaded reducing bushing, ")]
    [InlineData("butt weld", "butt weld", "butt-welding reducer, ")]
    [InlineData("ODF", "flare", "reducing coupling, ")] // in the cut pipe, with a flare of the valve's size on it
    public void A_reducer_is_of_the_kind_of_its_joint(string before, string joint, string item) =>
        Judge($"joint={before}; inletSize=3/8 in; outletSize=3/8 in", "", $"joint={joint}; inletSize=1/2 in; outletSize=3/8 in").Changes.Single(one => one.Kind == PipeChanges.FitReducers).Kit
            .ShouldHaveSingleItem().What.ShouldBe($"{item}3/8 in (9.53 mm) to 1/2 in (12.7 mm)");
}

/// <summary>A one-way valve is lifted by pressure from behind: practice.</summary>
[Trait("Source", "solenoidValve.flowBothWays")]
public sealed class FlowBothWaysTests : SolenoidAspectTests<FlowBothWays, WaysFacet>
{
    [Theory]
    [InlineData("", "flowReverses=yes", "bothWays=no", "Fails")]
    [InlineData("", "flowReverses=yes", "bothWays=yes", "Meets")]
    [InlineData("", "flowReverses=yes", "", "Unknown Part bothWays")]
    [InlineData("", "flowReverses=no", "bothWays=no", "Meets")]
    [InlineData("", "", "bothWays=no", "Meets")]
    [InlineData("bothWays=yes", "", "bothWays=no", "Unknown Site flowReverses")]
    public void A_one_way_valve_fails_where_the_flow_reverses(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Theory]
    [InlineData("solenoidValve", "flowBothWays")]
    [InlineData("expansionValve", "expansionBothWays")]
    public void A_valve_that_may_be_for_one_way_is_not_said_to_fit_a_cycle_that_reverses(string kind, string aspect)
    {
        var family = Families.Find(kind)!;
        var need = family.ReadNeed(new(null, [], [new("flowReverses", "yes")])).Need;
        var found = family.Judge(need, family.ReadSpec([]).Spec).Findings.Single(found => found.Aspect.Name == aspect);
        new FitSheet([found]).Fit.ShouldBe(PartFit.CantTellYet);
    }
}

/// <summary>All coils together within the transformer's VA: practice.</summary>
[Trait("Source", "solenoidValve.coilPower")]
public sealed class CoilPowerTests : SolenoidAspectTests<CoilPower, CoilPowerFacet>
{
    [Theory]
    [InlineData("", "transformerLeft=15 VA", "coilPower=15 VA", "Meets")]
    [InlineData("", "transformerLeft=15 VA", "coilPower=15.1 VA", "Fails")]
    [InlineData("coilPower=15 VA", "", "coilPower=15 VA", "Meets")]
    [InlineData("coilPower=15 VA", "", "coilPower=18 VA", "Unknown Site transformerLeft")]
    [InlineData("", "", "coilPower=18 VA", "Unknown Site transformerLeft")]
    [InlineData("", "coilSupplyVolts=100 V", "coilPower=18 VA", "Meets")]
    [InlineData("", "coilSupplyVolts=99.9 V", "coilPower=18 VA", "Unknown Site transformerLeft")]
    [InlineData("coilVolts=208-240 V", "", "coilPower=18 VA", "Meets")] // the old coil hung on the line
    [InlineData("coilVolts=24/120 V", "", "coilPower=18 VA", "Unknown Site transformerLeft")] // on which of the two is not known
    [InlineData("", "transformerLeft=15 VA", "", "Unknown Part coilPower")]
    public void The_transformer_carries_its_coil(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>A body whose own coil is for 120 V and takes 10 VA; that for 24 V takes 15 VA.</summary>
    private const string Body = "coilVolts=120 V; coilFrequency=60 Hz; coilPower=10 VA; furtherCoils=24 V 60 Hz 15 VA = QC-24";

    [Theory]
    [InlineData("transformerLeft=14 VA; coilSupplyVolts=120 V; coilSupplyFrequency=60 Hz", Body, "Meets")]
    [InlineData("transformerLeft=14 VA; coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz", Body, "Fails")]
    [InlineData("transformerLeft=15 VA; coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz", Body, "Meets")]
    [InlineData("transformerLeft=14 VA", Body, "Unknown Site coilSupplyVolts")]
    [InlineData("transformerLeft=9 VA", Body, "Fails")]
    [InlineData("coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz", Body, "Unknown Site transformerLeft")]
    [InlineData("transformerLeft=14 VA; coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz", "coilVolts=120 V; coilFrequency=60 Hz; coilPower=10 VA; furtherCoils=24 V 60 Hz = QC-24", "Unknown Part furtherCoils")]
    public void The_coil_that_goes_in_counts(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Fact]
    public void What_the_transformer_is_asked_for_are_the_va_of_the_coil_that_goes_in() =>
        Judge("", "coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz", Body).Sentence.ShouldBe("Its coil for 24 V 60 Hz takes 15 VA; what the transformer has left is not known.");
}

/// <summary>Classes by ASHRAE 34, from memory: R-290 A3, R-454B A2L, R-404A A1, R-717 B2L.</summary>
[Trait("Source", "solenoidValve.hazardousPlace")]
public sealed class HazardousPlaceTests : SolenoidAspectTests<HazardousPlace, CoiledIgnitionFacet>
{
    [Theory]
    [InlineData("", "refrigerant=R-404A", "", "Meets")]
    [InlineData("", "refrigerant=R-404A", "hazards=ordinary places", "Meets")]
    [InlineData("", "refrigerant=R-290", "", "MeetsWithChanges checkListing")] // it has no contacts
    [InlineData("", "refrigerant=R-454B", "", "MeetsWithChanges checkListing")]
    [InlineData("", "refrigerant=R-454B", "hazards=A2L", "Meets")]
    [InlineData("", "refrigerant=R-454B", "hazards=A3", "Meets")]
    [InlineData("", "refrigerant=R-290", "hazards=A2L", "MeetsWithChanges checkListing")]
    [InlineData("", "refrigerant=R-290", "hazards=ordinary places", "Fails")]
    [InlineData("", "refrigerant=R-290; hazard=none", "hazards=ordinary places", "Meets")]
    [InlineData("", "refrigerant=R-290; hazard=A2L", "hazards=A2L", "MeetsWithChanges checkListing")] // the stricter of the two is taken
    [InlineData("", "refrigerant=R-717", "", "Meets")]
    [InlineData("", "hazard=class I division 2", "", "Unknown Part hazards")]
    [InlineData("", "hazard=class I division 2", "hazards=C1D2", "Meets")]
    [InlineData("", "", "", "Meets")]
    [InlineData("hazards=A2L", "", "", "Unknown Site hazard")]
    [InlineData("hazards=A2L", "refrigerant=R-404A", "", "Meets")]
    public void Beside_what_burns_its_marks_count(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void A_place_called_milder_than_its_refrigerant_is_a_contradiction() =>
        Families.Find("solenoidValve")!.ReadNeed(new(null, [], [new("refrigerant", "R-290"), new("hazard", "A2L")])).Contradictions.Single().Sentence.ShouldStartWith("R-290 is of class A3 and burns well");

    /// <summary>Its mark is that of the valve with its own coil.</summary>
    [Theory]
    [InlineData("coilSupplyVolts=120 V; coilSupplyFrequency=60 Hz", "Meets")]
    [InlineData("coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz", "MeetsWithChanges checkListing")]
    [InlineData("", "Meets")] // which coil goes in is another question
    public void The_mark_of_a_valve_is_not_that_of_another_coil(string supply, string answer) =>
        Answer("", $"hazard=A3 refrigerant; {supply}", "hazards=A3; coilVolts=120 V; coilFrequency=60 Hz; furtherCoils=24 V 60 Hz 15 VA = QC-24").ShouldBe(answer);

    /// <summary>Another coil is judged as unmarked: in a classified area that is unknown, beside an A2L refrigerant a check, and a mark for ordinary places alone is the own coil's.</summary>
    [Theory]
    [InlineData("hazard=class I division 1", "hazards=C1D1", "24 V", "Meets")]
    [InlineData("hazard=class I division 1", "hazards=C1D1", "120 V", "Unknown Part hazards")]
    [InlineData("hazard=class I division 2", "hazards=C1D1", "120 V", "Unknown Part hazards")]
    [InlineData("hazard=class I division 1", "", "120 V", "Unknown Part hazards")]
    [InlineData("hazard=A2L", "hazards=ordinary places", "24 V", "Fails")]
    [InlineData("hazard=A2L", "hazards=ordinary places", "120 V", "MeetsWithChanges checkListing")]
    [InlineData("hazard=class I division 1", "hazards=ordinary places", "120 V", "Unknown Part hazards")]
    [InlineData("hazard=none", "hazards=ordinary places", "120 V", "Meets")]
    [InlineData("hazard=A2L", "hazards=ordinary places", null, "Unknown Site coilSupplyVolts")] // the own coil fails, the other one need not
    [InlineData("hazard=A2L", "hazards=A2L", null, "Meets")]
    public void Another_coil_that_goes_in_is_judged_as_unmarked(string site, string part, string? supply, string answer) =>
        Answer("", supply is null ? site : $"{site}; coilSupplyVolts={supply}; coilSupplyFrequency=60 Hz", $"{part}; coilVolts=24 V; coilFrequency=60 Hz; furtherCoils=120 V 60 Hz 10 VA = QC-120").ShouldBe(answer);

    /// <summary>A valve marked for ordinary places alone is not marked for the place, and its other coil is not marked "too".</summary>
    [Fact]
    public void Nothing_is_said_of_what_the_valve_is_marked_for_where_another_coil_goes_in() =>
        Judge("", "hazard=A2L; coilSupplyVolts=120 V; coilSupplyFrequency=60 Hz", "hazards=ordinary places; coilVolts=24 V; coilFrequency=60 Hz; furtherCoils=120 V 60 Hz 10 VA = QC-120").Changes.ShouldHaveSingleItem().Text
            .ShouldBe("see that the coil for 120 V 60 Hz that goes in is marked for the place: the valve's mark is that of the coil that comes on it");

    [Fact]
    public void Where_the_old_one_was_marked_another_coil_that_goes_in_is_asked_for_its_mark_too() =>
        Answer("hazards=C1D2", "coilSupplyVolts=120 V; coilSupplyFrequency=60 Hz", "hazards=C1D2; coilVolts=24 V; coilFrequency=60 Hz; furtherCoils=120 V 60 Hz 10 VA = QC-120").ShouldBe("Unknown Site hazard");
}
