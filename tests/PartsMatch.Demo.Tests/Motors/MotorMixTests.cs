using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Demo.Tests.Motors;

/// <summary>The mix of the catalogue: what it was asked to hold (counts are the assignment's, not ours).</summary>
public sealed class MotorMixTests
{
    private static readonly IReadOnlyList<SeedPart<MotorSpec>> All = SeedData.Motors;

    [Fact]
    public void There_are_3000_motors_of_fourteen_makers()
    {
        All.Count.ShouldBe(3000);
        All.Select(part => part.Row["maker"]).Distinct().Count().ShouldBe(14);
    }

    [Theory]
    [InlineData(MotorType.PermanentSplitCapacitor, 1200, 1700)]
    [InlineData(MotorType.ShadedPole, 400, 700)]
    [InlineData(MotorType.ThreePhaseInduction, 500, 700)]
    [InlineData(MotorType.ElectronicallyCommutated, 130, 300)]
    [InlineData(MotorType.CapacitorStart, 60, 160)]
    [InlineData(MotorType.SplitPhase, 50, 150)]
    [InlineData(MotorType.CapacitorStartCapacitorRun, 20, 80)]
    public void Every_type_is_there_in_its_number(MotorType type, int least, int most) =>
        All.Count(part => part.Spec.Type == type).ShouldBeInRange(least, most);

    [Fact]
    public void Some_are_european_and_some_run_on_either_frequency()
    {
        All.Count(part => part.Spec.Standard == PlateStandard.Iec).ShouldBeInRange(350, 700);
        All.Count(part => part.Spec.Standard == PlateStandard.Iec && part.Row["ipCode"].Length == 0).ShouldBe(0);
        All.Count(part => part.Spec.Frequency!.Count == 2).ShouldBeGreaterThan(100);
        All.Count(part => part.Spec.PowerMeaning == PowerMeaning.Input).ShouldBeGreaterThan(50);
    }

    [Fact]
    public void Universal_motors_take_several_taps_mounts_and_turns_on_a_long_shaft_that_can_be_cut()
    {
        All.Count(part => part.Spec is { Mounts.Count: > 1, Reversing: Reversing.ByPlug, ShaftCanBeCut: true } && part.Spec.ShaftLength?.Inches >= 5).ShouldBeInRange(150, 500);
        All.Count(part => part.Spec.Voltage!.Count == 2).ShouldBeGreaterThan(400);
        All.Count(part => part.Spec.Speeds > 1).ShouldBeGreaterThan(300);
    }

    [Fact]
    public void About_one_in_eight_is_discontinued() => ((double)All.Count(part => part.IsDiscontinued) / All.Count).ShouldBeInRange(0.10, 0.14);

    [Fact]
    public void Ten_to_twenty_percent_lack_fields_that_such_motors_otherwise_give()
    {
        var lacking = All.Count(part =>
            part.Spec.BodyLength is null || part.Spec.DrainHoles is null || part.Spec.ShaftPositions is null || part.Spec.Insulation is null || part.Spec.ShaftCanBeCut is null
            || (part.Spec.LockedRotorAmps is null && part.Spec.Type != MotorType.ElectronicallyCommutated)
            || (part.Spec.ConnectedFor is null && part.Spec.Voltage!.Count > 1));

        ((double)lacking / All.Count).ShouldBeInRange(0.10, 0.20);
    }

    [Fact]
    public void A_few_lack_what_decides()
    {
        var lacking = All.Count(part => part.Spec.ShaftLength is null || part.Spec.Enclosure is null || part.Spec.BodyDiameter is null || part.Spec.FullLoadAmps is null || part.Spec.Reversing is null || part.Spec.Rotation is { SeenFrom: null });

        lacking.ShouldBeInRange(30, 110);
    }

    [Fact]
    public void Turns_are_named_from_the_shaft_end_by_some_makers_and_from_the_lead_end_by_others()
    {
        var ends = All.Where(part => part.Spec.Rotation?.SeenFrom is not null).GroupBy(part => part.Row["maker"]).Select(maker => maker.Select(part => part.Spec.Rotation!.SeenFrom!.Value).Distinct().Single()).ToList();

        ends.Count(end => end == MotorEnd.Shaft).ShouldBeGreaterThan(3);
        ends.Count(end => end == MotorEnd.Lead).ShouldBeGreaterThan(3);
    }

    /// <summary>What the generator was asked for: IEC plates mostly name their 1000 m, NEMA entries rarely name an altitude.</summary>
    [Theory]
    [InlineData(PlateStandard.Iec, 0.5, 0.7)]
    [InlineData(PlateStandard.Nema, 0.08, 0.16)]
    public void A_share_of_motors_says_how_high_it_carries_its_rating(PlateStandard standard, double least, double most)
    {
        var motors = All.Where(part => part.Spec.Standard == standard).ToList();
        var marked = motors.Where(part => part.Spec.AltitudeMost is not null).ToList();

        ((double)marked.Count / motors.Count).ShouldBeInRange(least, most);
        marked.ShouldAllBe(part => part.Spec.AltitudeMost!.Value.Meters >= 1000 && part.Spec.AltitudeMost.Value.Meters < 3000);
    }

    [Fact]
    public void Near_equal_parts_of_several_makers_stand_side_by_side()
    {
        var shared = All.GroupBy(part => part.Row["title"]).Where(title => title.Select(part => part.Row["maker"]).Distinct().Count() >= 3).Sum(title => title.Count());

        shared.ShouldBeGreaterThan(1500);
    }

    /// <summary>The plate of the main example: 1/4 hp, 1075 rpm, 208-230 V, 48Y, CCW seen from the lead end, 5 µF, closed, on a 1/2 in shaft and a belly band.</summary>
    [Fact]
    public void A_quarter_horsepower_condenser_fan_has_choices_that_fit_that_need_changes_and_that_fail()
    {
        var near = All.Where(part => part.Row["power"] is "1/4 hp" or "1/3 hp" && part.Row["shaftDiameter"] == "1/2 in" && part.Row["frame"] == "48Y"
            && part.Spec is { Type: MotorType.PermanentSplitCapacitor, Poles: 6, Enclosure: Enclosure.EnclosedAirOver } && part.Spec.Mounts!.Contains(MountKind.BellyBand)).ToList();
        var asOld = near.Where(part => part.Row["power"] == "1/4 hp" && part.Row["voltage"] == "208-230 V" && part.Spec.RunCapacitor!.Capacitance!.Value.Microfarads is 5
            && part.Spec.Rotation?.FacingShaft == Direction.Clockwise && part.Spec.AmbientMost!.Value.DegreesCelsius >= 60).ToList();

        near.Count.ShouldBeInRange(40, 150);
        near.Count(part => part.Row["voltage"] == "230 V").ShouldBeGreaterThanOrEqualTo(3);
        near.Count(part => part.Spec.Reversing == Reversing.Fixed).ShouldBeGreaterThanOrEqualTo(10);
        near.Count(part => part.Spec.Reversing == Reversing.ByPlug).ShouldBeGreaterThanOrEqualTo(20);
        asOld.Count(part => !part.IsDiscontinued).ShouldBeGreaterThanOrEqualTo(3);
    }
}
