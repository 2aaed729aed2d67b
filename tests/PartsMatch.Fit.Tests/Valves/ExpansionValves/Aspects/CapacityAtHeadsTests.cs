using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Valves.ExpansionValves;
using PartsMatch.Fit.Valves.ExpansionValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves.ExpansionValves.Aspects;

/// <summary>
/// Rating × √(Δp ÷ Δp rated) × Δh ÷ Δh rated × √(ρ ÷ ρ rated) (the root of the drop: published teaching page); 100 to 130 % right, 90 to 150 % to be checked: practice.
/// A valve at the very conditions of its rating passes its rating, whatever the refrigerant: worked by hand; drops are taken to 0.1 kPa, which leaves under 0.01 %.
/// </summary>
[Trait("Source", "expansionValve.capacityAtHeads")]
public sealed class CapacityAtHeadsTests : ExpansionAspectTests<CapacityAtHeads, RatingFacet>
{
    /// <summary>One head for both ends, the very one that the part is rated at: what it passes is its rating.</summary>
    private const string AtRating = "refrigerant=R-404A; evaporatingAt=-6.7 °C; condensingLeast=43.3 °C; condensingMost=43.3 °C; subcooling=5.5 K; hasDistributor=no";

    private const string Rated = "refrigerants=R-404A; ratedWith=R-404A; ratedEvaporatingAt=-6.7 °C; ratedLiquidAt=37.8 °C";

    /// <summary>Bubble pressure at 43.3 °C less dew pressure at −6.7 °C, in kPa, by the published equations: what the losses leave of it is given as the rated drop.</summary>
    private static double FullDrop => Refrigerants.Find("R-404A")!.BubblePressure(UnitsNet.Temperature.FromDegreesCelsius(43.3))!.Value.Kilopascals - Refrigerants.Find("R-404A")!.DewPressure(UnitsNet.Temperature.FromDegreesCelsius(-6.7))!.Value.Kilopascals;

    [Theory]
    [InlineData(1.001, "Meets")]
    [InlineData(1.299, "Meets")]
    [InlineData(0.999, "MeetsWithChanges checkSuperheat")]
    [InlineData(1.301, "MeetsWithChanges checkSuperheat")]
    [InlineData(0.901, "MeetsWithChanges checkSuperheat")]
    [InlineData(1.499, "MeetsWithChanges checkSuperheat")]
    [InlineData(0.899, "Fails")]
    [InlineData(1.501, "Fails")]
    public void At_its_rating_its_rated_capacity_is_held_against_the_load(double ofLoad, string answer) =>
        Answer("", FormattableString.Invariant($"{AtRating}; lineLoss=0 psi; load=10 kW"), FormattableString.Invariant($"{Rated}; ratedDrop={FullDrop:0.0} kPa; ratedCapacity={10 * ofLoad:0.000} kW")).ShouldBe(answer);

    /// <summary>10 kW ÷ 3.51685 kW a ton = 2.84 tons, 43.3 °C × 1.8 + 32 = 109.9 °F: worked by hand.</summary>
    [Fact]
    public void Capacities_are_told_in_tons_and_temperatures_in_degrees_Fahrenheit_first() =>
        Judge("", $"{AtRating}; lineLoss=0 psi; load=10 kW", FormattableString.Invariant($"{Rated}; ratedDrop={FullDrop:0.0} kPa; ratedCapacity=12 kW")).Sentence
            .ShouldSatisfyAllConditions(said => said.ShouldContain(" at 109.9 °F (43.3 °C) condensing and "), said => said.ShouldContain(" % of the load of 2.84 tons (10 kW)"));

    /// <summary>At the very conditions of its rating it passes that and nothing else: edges belong to the milder side, and 1 W of 10 kW beyond them is beyond.</summary>
    [Theory]
    [InlineData(10_000, "Meets")]
    [InlineData(9_999, "MeetsWithChanges checkSuperheat")]
    [InlineData(13_000, "Meets")]
    [InlineData(13_001, "MeetsWithChanges checkSuperheat")]
    [InlineData(9_000, "MeetsWithChanges checkSuperheat")]
    [InlineData(8_999, "Fails")]
    [InlineData(15_000, "MeetsWithChanges checkSuperheat")]
    [InlineData(15_001, "Fails")]
    public void The_edges_of_what_it_may_pass_belong_to_the_milder_side(int watts, string answer)
    {
        var need = new Need<ExpansionValveSpec, ExpansionValveSite>(ExpansionValveFamily.ExpansionValve.ReadNeed(new(null, [], Named.Texts($"{AtRating}; lineLoss=0 psi; load=10 kW"))).Need);
        var there = ExpansionCapacity.HeadsAt(need).Heads![0];
        var finding = new CapacityAtHeads().Judge(need, new(watts, RefrigerantList.PlaceOf(Refrigerants.Find("R-404A")!), there.Evaporating, there.Liquid, there.Drop));
        string.Join(' ', [$"{finding.Verdict}", .. finding.Changes.Select(change => change.Kind.Name)]).ShouldBe(answer);
    }

    /// <summary>Twice the drop is 1.414 times the capacity (published): rated at half the drop that is there, 1 kW becomes 1.414 kW.</summary>
    [Theory]
    [InlineData(14.0, "Meets")]
    [InlineData(15.5, "MeetsWithChanges checkSuperheat")]
    [InlineData(16.0, "Fails")]
    public void Twice_the_rated_drop_passes_1_414_times_the_rating(double load, string answer) =>
        Answer("", FormattableString.Invariant($"{AtRating}; lineLoss=0 psi; load={load} kW"), FormattableString.Invariant($"{Rated}; ratedDrop={FullDrop / 2:0.0} kPa; ratedCapacity=10 kW")).ShouldBe(answer);

    [Fact]
    public void The_worse_of_both_heads_decides()
    {
        const string Site = "refrigerant=R-404A; evaporatingAt=20 °F; subcooling=10 °F; hasDistributor=no; lineLoss=0 psi; load=10 kW; condensingMost=110 °F; condensingLeast=";
        var part = FormattableString.Invariant($"{Rated}; ratedDrop={FullDrop:0.0} kPa; ratedCapacity=11 kW");
        Answer("", Site + "100 °F", part).ShouldBe("Meets");
        Answer("", Site + "50 °F", part).ShouldBe("Fails");
        Judge("", Site + "50 °F", part).Sentence.ShouldContain("too small");
    }

    [Fact]
    public void Losses_count_and_where_they_leave_nothing_no_valve_will_do()
    {
        var part = FormattableString.Invariant($"{Rated}; ratedDrop={FullDrop:0.0} kPa; ratedCapacity=10 kW");
        Answer("", $"{AtRating}; lineLoss=60 psi; load=10 kW", part).ShouldBe("Fails");
        Judge("", $"{AtRating}; lineLoss=300 psi; load=10 kW", part).Sentence.ShouldContain("nothing drives refrigerant");
    }

    [Theory]
    [InlineData("refrigerant=R-404A; evaporatingAt=20 °F; condensingLeast=80 °F; condensingMost=110 °F; subcooling=10 °F; hasDistributor=no; load=10 kW", "Unknown Site lineLoss")]
    [InlineData("refrigerant=R-404A; evaporatingAt=20 °F; condensingLeast=80 °F; condensingMost=110 °F; subcooling=10 °F; lineLoss=0 psi; load=10 kW", "Unknown Site hasDistributor")]
    [InlineData("refrigerant=R-404A; evaporatingAt=20 °F; condensingLeast=80 °F; condensingMost=110 °F; subcooling=10 °F; hasDistributor=yes; lineLoss=0 psi; load=10 kW", "Unknown Site distributorLoss")]
    [InlineData("refrigerant=R-404A; evaporatingAt=20 °F; condensingLeast=80 °F; condensingMost=110 °F; hasDistributor=no; lineLoss=0 psi; load=10 kW", "Unknown Site subcooling")]
    [InlineData("refrigerant=R-404A; evaporatingAt=20 °F; condensingLeast=80 °F; subcooling=10 °F; hasDistributor=no; lineLoss=0 psi; load=10 kW", "Unknown Site condensingMost")]
    [InlineData("refrigerant=R-404A", "Unknown Site load")]
    [InlineData("refrigerant=R-744; load=10 kW", "Unknown Site refrigerant")] // no neighbour's figures
    public void What_is_missing_is_named(string site, string answer) => Answer("", site, $"{Rated}; ratedDrop=100 psi; ratedCapacity=10 kW").ShouldBe(answer);

    [Theory]
    [InlineData("ratedDrop=100 psi", "Unknown Part ratedCapacity")]
    [InlineData("ratedCapacity=1 ton", "Unknown Part ratedDrop")]
    public void A_capacity_without_its_conditions_says_nothing(string part, string answer) => Answer("", AtRating, $"{Rated}; {part}").ShouldBe(answer);

    /// <summary>Practice: within 10 % of the old one's, at the same conditions.</summary>
    [Theory]
    [InlineData("11 kW", "100 psi", "Meets")]
    [InlineData("9 kW", "100 psi", "Meets")]
    [InlineData("11.01 kW", "100 psi", "Unknown Site load")]
    [InlineData("10 kW", "90 psi", "Unknown Site load")]
    public void Without_a_load_the_old_ones_rating_at_the_same_conditions_is_followed(string capacity, string drop, string answer) =>
        Answer($"{Rated}; ratedCapacity=10 kW; ratedDrop=100 psi", "", $"{Rated}; ratedCapacity={capacity}; ratedDrop={drop}").ShouldBe(answer);

    /// <summary>Neither the load nor a condition would help: nothing is asked of them.</summary>
    [Theory]
    [InlineData("R-744", "load=10 kW", "11.01 kW", "100 psi")]
    [InlineData("R-32", "", "8 kW", "100 psi")]
    [InlineData("R-744", "load=10 kW", "10 kW", "90 psi")]
    public void Off_the_old_ones_rating_nothing_can_be_computed_of_a_refrigerant_without_tables(string refrigerant, string load, string capacity, string drop)
    {
        const string Old = $"{Rated}; ratedCapacity=10 kW; ratedDrop=100 psi";
        var part = $"{Rated}; ratedCapacity={capacity}; ratedDrop={drop}";
        Answer(Old, $"refrigerant={refrigerant}; {load}", part).ShouldBe("Unknown Site refrigerant");
        var sentence = Judge(Old, $"refrigerant={refrigerant}; {load}", part).Sentence;
        sentence.ShouldContain($"cannot be computed for {refrigerant} here");
        sentence.ShouldNotContain("has to be known");
        Judge(Old, "refrigerant=R-404A", part).Sentence.ShouldContain("the load");
    }

    [Property(MaxTest = 200)]
    public Property A_larger_drop_passes_more_and_a_colder_coil_less_at_the_same_drop() => Prop.ForAll(
        (from name in Gen.Elements<string>([.. Refrigerants.All.Where(one => one.HasStates).Select(one => one.Name)])
         from evaporating in Gen.Choose(-38, 8)
         from liquid in Gen.Choose(15, 45)
         from drop in Gen.Choose(200, 1500)
         select (Refrigerant: Refrigerants.Find(name)!, evaporating, liquid, drop)).ToArbitrary(),
        one =>
        {
            var rating = RatingFacet.Of(Named.Record<ExpansionValveSpec>($"{Rated}; ratedDrop=100 psi; ratedCapacity=10 kW"));
            double At(double drop, double evaporating) => ExpansionCapacity.Watts(rating, one.Refrigerant, new(drop, evaporating, one.liquid, one.liquid + 5))!.Value;
            At(one.drop + 10, one.evaporating).ShouldBeGreaterThan(At(one.drop, one.evaporating));
            At(one.drop, one.evaporating - 1).ShouldBeLessThan(At(one.drop, one.evaporating));
        });
}
