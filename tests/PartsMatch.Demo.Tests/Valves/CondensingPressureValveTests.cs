using PartsMatch.Fit.Valves.CondensingPressureValves;

namespace PartsMatch.Demo.Tests.Valves;

public sealed class CondensingPressureValveTests
{
    private static readonly IReadOnlyList<SeedPart<CondensingPressureValveSpec>> All = SeedData.Parts<CondensingPressureValveSpec>("condensingPressureValves.csv");

    [Fact]
    public void There_are_100_of_three_arrangements()
    {
        All.Count.ShouldBe(100);
        All.Select(part => part.Spec.Arrangement).Distinct().Count().ShouldBe(3);
    }

    [Fact]
    public void Only_inlet_regulators_are_set_over_a_range() =>
        All.ShouldAllBe(part => part.Spec.SettingLeast.HasValue == (part.Spec.Arrangement == Arrangement.InletRegulator));
}
