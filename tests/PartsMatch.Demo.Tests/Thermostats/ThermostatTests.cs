using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats;

namespace PartsMatch.Demo.Tests.Thermostats;

public sealed class ThermostatTests
{
    private static readonly IReadOnlyList<SeedPart<ThermostatSpec>> All = SeedData.Thermostats;

    [Fact]
    public void There_are_280_of_every_function()
    {
        All.Count.ShouldBe(280);
        All.CountBy(part => part.Spec.Function!.Value).OrderBy(pair => pair.Key).Select(pair => pair.Value).ShouldBe([110, 45, 55, 40, 18, 12]);
        All.Count(part => part.Spec is { Function: ThermostatFunction.LowLimit or ThermostatFunction.HighLimit, Reset: ContactReset.Manual }).ShouldBeInRange(8, 24);
    }

    /// <summary>Practice: what opens on rise opens above where it closes, what closes on rise below; worked in °F.</summary>
    [Fact]
    public void What_opens_on_rise_opens_above_where_it_closes()
    {
        foreach (var part in All.Where(part => part.Spec is { CutOut: not null, CutIn: not null }))
        {
            (part.Spec.CutOut!.Value > part.Spec.CutIn!.Value).ShouldBe(part.Spec.Action == ThermostatAction.OpensOnRise, part.Row.Number);
            if (part.Spec is { FanCutOut: { } stops, FanCutIn: { } starts }) (stops > starts).ShouldBeTrue(part.Row.Number);
        }
    }

    /// <summary>Practice: the differential is the distance of cut-in and cut-out.</summary>
    [Fact]
    public void The_setting_as_shipped_lies_in_range_and_differential()
    {
        foreach (var part in All.Where(part => part.Spec is { CutOut: not null, CutIn: not null, Range: not null }))
        {
            var (cutOut, cutIn) = (part.Spec.CutOut!.Value.DegreesFahrenheit, part.Spec.CutIn!.Value.DegreesFahrenheit);
            foreach (var set in new[] { cutOut, cutIn }) Within.Span(set, part.Spec.Range!.Low.DegreesFahrenheit, part.Spec.Range.High.DegreesFahrenheit).ShouldBeTrue(part.Row.Number);
            if (part.Spec.Differential is { } between) Within.Span(Math.Abs(cutOut - cutIn), between.Low.DegreesFahrenheit, between.High.DegreesFahrenheit).ShouldBeTrue(part.Row.Number);
        }
    }

    [Fact]
    public void Every_bulb_bears_more_than_its_setting() =>
        All.Where(part => part.Spec.BulbMost is { } most && (most <= part.Spec.CutOut!.Value || (part.Spec.CutIn is { } cutIn && most <= cutIn))).ShouldBeEmpty();

    [Fact]
    public void Discs_cannot_be_set_and_have_no_capillary() =>
        All.Where(part => part.Spec is { Bulb: BulbForm.StrapOnDisc or BulbForm.ClipOnDisc } and not { IsAdjustable: false, Range: null, Capillary: null }).ShouldBeEmpty();

    [Fact]
    public void Only_change_over_contacts_have_a_common_one() => All.Where(part => part.Spec.Common is not null).ShouldAllBe(part => part.Spec.Action == ThermostatAction.ChangeOver);

    [Fact]
    public void What_is_marked_for_flammable_refrigerants_is_sealed() => All.Where(part => part.Spec.Hazards is not null).ShouldAllBe(part => part.Spec.Contacts != ContactEnclosure.Open);

    [Fact]
    public void One_in_twelve_to_one_in_five_lacks_something() =>
        All.Count(part => part.Spec.BulbMost is null || part.Spec.Contacts is null || part.Spec.LockedRotorAmps is null || part.Spec.Terminals is null || part.Spec.PilotDuty is null).ShouldBeInRange(15, 56);
}
