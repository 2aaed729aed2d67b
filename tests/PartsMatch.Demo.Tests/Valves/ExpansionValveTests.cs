using PartsMatch.Fit.Valves.ExpansionValves;

namespace PartsMatch.Demo.Tests.Valves;

public sealed class ExpansionValveTests
{
    private static readonly IReadOnlyList<SeedPart<ExpansionValveSpec>> All = SeedData.Parts<ExpansionValveSpec>("expansionValves.csv");

    [Fact]
    public void There_are_350_of_every_charge_and_either_equaliser()
    {
        All.Count.ShouldBe(350);
        All.Select(part => part.Spec.Charge).Distinct().Count().ShouldBe(4);
        All.Count(part => part.Spec.Equaliser == Equaliser.Internal).ShouldBeInRange(60, 160);
    }

    [Fact]
    public void Only_a_pressure_limited_charge_has_a_limit() =>
        All.Where(part => part.Spec.LimitsAt is not null).ShouldAllBe(part => part.Spec.Charge == BulbCharge.PressureLimited);

    [Fact]
    public void Every_capacity_stands_with_its_conditions_but_for_the_gaps() =>
        All.Count(part => part.Spec is { RatedWith: not null, RatedEvaporatingAt: not null, RatedLiquidAt: not null, RatedDrop: not null }).ShouldBeInRange(315, 345);
}
