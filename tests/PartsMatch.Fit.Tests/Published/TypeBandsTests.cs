using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Tests.Published;

[Trait("Source", "type-bands.csv")]
public sealed class TypeBandsTests
{
    [Fact]
    public void Every_type_has_its_bands_in_order_and_in_range()
    {
        TypeBands.All.Select(band => band.Type!.Value).ShouldBe(Enum.GetValues<MotorType>(), ignoreOrder: true);
        foreach (var band in TypeBands.All)
        {
            band.Efficiency.Low.ShouldBeInRange(0.01, band.Efficiency.High);
            band.Efficiency.High.ShouldBeLessThan(1);
            band.PowerFactor.Low.ShouldBeInRange(0.01, band.PowerFactor.High);
            band.PowerFactor.High.ShouldBeLessThan(1);
            band.Breakdown.Low.ShouldBeInRange(1, band.Breakdown.High);
        }
    }

    [Theory]

    // Published: article on refrigeration fan motors of 1 to 50 W: shaded pole 15-30 %, permanent split capacitor 35-50 %, electronically commutated 65-75 %.
    [InlineData(MotorType.ShadedPole, 0.15, 0.30)]
    [InlineData(MotorType.PermanentSplitCapacitor, 0.35, 0.50)]
    [InlineData(MotorType.ElectronicallyCommutated, 0.65, 0.75)]

    // Published: 10 CFR 431.446, least and greatest of the capacitor-start rows, 1/4 hp 6-pole and 2 hp 4-pole.
    [InlineData(MotorType.CapacitorStart, 0.622, 0.845)]
    [InlineData(MotorType.CapacitorStartCapacitorRun, 0.622, 0.845)]

    // Published: 10 CFR 431.446, 1/4 hp 2-pole; 10 CFR 431.25, 25 hp 4-pole.
    [InlineData(MotorType.ThreePhaseInduction, 0.656, 0.936)]
    public void Published_efficiencies_lie_inside_the_band(MotorType type, double low, double high)
    {
        var band = TypeBands.Of(type)!.Efficiency;
        band.Holds(low).ShouldBeTrue();
        band.Holds(high).ShouldBeTrue();
    }

    [Fact]
    public void What_was_not_seen_says_that_it_is_from_memory() => TypeBands.All.ShouldAllBe(band => band.Source.Status == SourceStatus.Memory);

    [Fact]
    public void An_unknown_type_has_no_bands() => TypeBands.Of(null).ShouldBeNull();

    // Worked by hand from the table: with a run capacitor only two single-phase types are left; without a type the torque is an induction motor's.
    [Theory]
    [InlineData(Phases.Single, true, 1.3, 2.5, 0.25, 0.87)]
    [InlineData(Phases.Single, false, 1.3, 2.5, 0.10, 0.85)]
    [InlineData(Phases.Three, null, 1.75, 3, 0.30, 0.95)]
    [InlineData(null, null, 1.3, 3, 0.10, 0.95)]
    public void An_unknown_type_has_the_bands_of_all_that_it_may_be(Phases? phases, bool? hasRunCapacitor, double low, double high, double worst, double best)
    {
        var band = TypeBands.Likely(null, phases, hasRunCapacitor);
        band.Breakdown.ShouldBe(new Fit.Quantities.Band(low, high));
        band.Efficiency.ShouldBe(new Fit.Quantities.Band(worst, best));
        band.Source.Status.ShouldBe(SourceStatus.Memory);
    }
}
