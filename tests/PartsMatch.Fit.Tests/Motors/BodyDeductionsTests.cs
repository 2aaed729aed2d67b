using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

/// <summary>What the old motor tells of its place: practice.</summary>
public sealed class BodyDeductionsTests
{
    [Fact]
    public void The_old_motor_tells_hub_mount_turn_and_capacitor()
    {
        var (site, deductions) = Deduce("rotation=CW lead end; shaftDiameter=1/2 in; shaftForm=flat; shaftLength=4 in; mounts=belly band; bodyDiameter=5.6 in; studCircle=5 in; faceBoltCircle=3.75 in; runCapacitor=5 µF 370 V", "");
        Shape<MotorSite>.Of.Write(site).Select(text => $"{text.Name}={text.Text}").ShouldBe(
        [
            "turnNeeded=CW lead end", "hubBore=1/2 in", "hubHoldsOn=flat", "shaftLengthNeeded=3-3/4 in", "mountThere=belly band", "mountDiameter=5.6 in",
            "bracketStudCircle=5 in", "faceBoltCircleThere=3-3/4 in", "capacitorThere=5 µF 370 V",
        ]);
        deductions.Count.ShouldBe(9);
        deductions.ShouldAllBe(deduction => deduction.Side == Side.Site && deduction.From.Count == 1);
        deductions.First(deduction => deduction.Field == "hubBore").Because.ShouldBe("the old motor's shaft diameter");
    }

    [Fact]
    public void What_is_known_of_the_site_stands() =>
        Deduce("shaftDiameter=1/2 in", "hubBore=5/8 in").Deductions.ShouldBeEmpty();

    [Fact]
    public void A_turn_that_names_no_end_tells_nothing() =>
        Deduce("rotation=CW", "").Site.TurnNeeded.ShouldBeNull();

    private static (MotorSite Site, IReadOnlyList<Deduction> Deductions) Deduce(string plate, string site) =>
        BodyDeductions.DeduceSite(Named.Record<MotorSpec>(plate), Named.Record<MotorSite>(site));
}
