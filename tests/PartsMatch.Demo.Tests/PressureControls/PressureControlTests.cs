using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls;

namespace PartsMatch.Demo.Tests.PressureControls;

public sealed class PressureControlTests
{
    private static readonly IReadOnlyList<SeedPart<PressureControlSpec>> All = SeedData.PressureControls;

    [Fact]
    public void There_are_300_of_every_function()
    {
        All.Count.ShouldBe(300);
        All.Count(part => part.Spec.Function == PressureFunction.HighPressure).ShouldBe(135);
        All.Count(part => part.Spec.Function == PressureFunction.LowPressure).ShouldBe(115);
        All.Count(part => part.Spec.Function == PressureFunction.FanCycling).ShouldBe(50);
        All.Count(part => part.Spec is { Function: PressureFunction.HighPressure, Reset: ContactReset.Manual }).ShouldBeInRange(30, 70);
    }

    /// <summary>Published articles: high opens on rise, low on fall; practice: fan-cycling controls close on rise.</summary>
    [Fact]
    public void What_opens_on_rise_opens_above_where_it_closes()
    {
        foreach (var part in All)
        {
            (part.Spec.Action == PressureAction.OpensOnRise).ShouldBe(part.Spec.Function == PressureFunction.HighPressure, part.Row.Number);
            if (part.Spec is { CutOut: { } cutOut, CutIn: { } cutIn }) (cutOut > cutIn).ShouldBe(part.Spec.Function == PressureFunction.HighPressure, part.Row.Number);
        }
    }

    /// <summary>Differential = distance of cut-in and cut-out (published articles); worked in psi.</summary>
    [Fact]
    public void The_setting_as_shipped_lies_in_range_and_differential()
    {
        foreach (var part in All.Where(part => part.Spec is { CutOut: not null, CutIn: not null }))
        {
            var (cutOut, cutIn) = (part.Spec.CutOut!.Value.PoundsForcePerSquareInch, part.Spec.CutIn!.Value.PoundsForcePerSquareInch);
            if (part.Spec.Range is { } range) foreach (var set in new[] { cutOut, cutIn }) Within.Span(set, range.Low.PoundsForcePerSquareInch, range.High.PoundsForcePerSquareInch).ShouldBeTrue(part.Row.Number);
            if (part.Spec.Differential is { } between) Within.Span(Math.Abs(cutOut - cutIn), between.Low.PoundsForcePerSquareInch, between.High.PoundsForcePerSquareInch).ShouldBeTrue(part.Row.Number);
        }
    }

    [Fact]
    public void Each_bears_more_than_it_can_be_set_to() =>
        All.Where(part => part.Spec.PressureMost is not null).ShouldAllBe(part => part.Spec.PressureMost!.Value > (part.Spec.Range == null ? part.Spec.CutOut!.Value : part.Spec.Range.High));

    [Fact]
    public void Discs_cannot_be_set_and_switch_coils_alone() =>
        All.Where(part => part.Spec.IsAdjustable == false).ShouldAllBe(part => part.Spec.Range == null && part.Spec.FullLoadAmps == null);

    [Fact]
    public void One_in_twelve_to_one_in_five_lacks_something() =>
        All.Count(part => part.Spec.Materials is null || part.Spec.PressureMost is null || part.Spec.Contacts is null || part.Spec.PilotDuty is null || part.Spec.Connection is null).ShouldBeInRange(20, 60);
}
