using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>None in the motor and none in the circuit fails: NFPA 70 430.32 (published). What comes back by itself, and what does not: 430.43 (from memory) and practice.</summary>
[Trait("Source", "motor.overloadProtection")]
public sealed class OverloadProtectionTests : MotorAspectTests<OverloadProtection>
{
    [Fact]
    public void None_in_the_motor_takes_one_in_the_circuit()
    {
        Fails(site: "overloadInCircuit=no", part: "protection=none");
        Meets(site: "overloadInCircuit=yes", part: "protection=none");
        Unknown(Side.Site, "overloadInCircuit", part: "protection=none");
    }

    [Fact]
    public void An_overload_that_is_set_to_something_is_there_unless_somebody_says_no()
    {
        Meets(site: "overloadSetting=2 A", part: "protection=none");
        Fails(site: "overloadSetting=2 A; overloadInCircuit=no", part: "protection=none");
    }

    [Theory]
    [InlineData("automatic")]
    [InlineData("thermal")]
    [InlineData("impedance")]
    public void What_guards_itself_needs_nothing_in_the_circuit(string protection)
    {
        var finding = Meets(site: "overloadInCircuit=no", part: $"protection={protection}");
        finding.Caution.ShouldBeNull();
        finding.Shortfall.ShouldBe(0);
    }

    [Fact]
    public void An_automatic_one_in_place_of_a_manual_one_restarts_without_warning()
    {
        Meets(plate: "protection=manual", part: "protection=automatic").Caution!.ShouldContain("restarts without warning");
        Meets(plate: "protection=manual", part: "protection=thermal").Caution!.ShouldContain("may restart without warning");
        Meets(plate: "protection=manual", part: "protection=impedance").Caution.ShouldBeNull();
    }

    [Fact]
    public void A_manual_one_in_place_of_another_must_be_within_reach()
    {
        Meets(plate: "protection=manual", part: "protection=manual");
        foreach (var plate in (string[])["", "protection=automatic", "protection=thermal", "protection=none"]) MeetsWith([CircuitChanges.CheckReset], plate: plate, part: "protection=manual");
    }

    [Fact]
    public void A_part_that_does_not_say_is_unknown() => Unknown(Side.Part, "protection", site: "overloadInCircuit=yes");
}
