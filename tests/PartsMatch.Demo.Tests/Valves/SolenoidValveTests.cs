using PartsMatch.Fit.Valves.SolenoidValves;

namespace PartsMatch.Demo.Tests.Valves;

public sealed class SolenoidValveTests
{
    private static readonly IReadOnlyList<SeedPart<SolenoidValveSpec>> All = SeedData.Parts<SolenoidValveSpec>("solenoidValves.csv");

    [Fact]
    public void There_are_350_for_many_refrigerants_and_coils()
    {
        All.Count.ShouldBe(350);
        All.Count(part => part.Spec.NormalState == NormalState.Open).ShouldBe(40);
        All.Select(part => part.Row["coilVolts"]).Distinct().Count().ShouldBe(4);
        All.Count(part => part.Spec.Refrigerants!.Any(one => one.IsFlammable)).ShouldBe(115, "high pressure, hydrocarbons and ammonia");
    }

    /// <summary>Practice: ports of 1/4 in tube are small enough for the magnet alone; these need no drop.</summary>
    [Fact]
    public void Direct_acting_ones_need_no_drop_and_pilot_operated_ones_do()
    {
        All.Where(part => part.Spec is { Lift: Lift.Direct, LeastDifferential: not null }).ShouldAllBe(part => part.Spec.LeastDifferential!.Value.Value.Kilopascals == 0);
        All.Where(part => part.Spec is { Lift: Lift.Pilot, LeastDifferential: not null }).ShouldAllBe(part => part.Spec.LeastDifferential!.Value.Value.Kilopascals > 0);
    }

    [Fact]
    public void A_larger_tube_passes_more()
    {
        var bySize = All.Where(part => part.Spec.FlowCoefficient is not null).GroupBy(part => part.Spec.InletSize!.Value.Inches).OrderBy(group => group.Key).Select(group => group.Average(part => part.Spec.FlowCoefficient!.Value.Kv)).ToList();
        bySize.Count.ShouldBeGreaterThan(6);
        bySize[0].ShouldBeLessThan(bySize[^1]);
    }

    [Fact]
    public void One_in_twelve_to_one_in_five_lacks_something() =>
        All.Count(part => part.Spec is { LeastDifferential: null } or { CoilPower: null } or { FurtherCoils: null } or { FlowCoefficient: null } or { Body: null } or { WorkingPressure: null }).ShouldBeInRange(25, 75);
}
