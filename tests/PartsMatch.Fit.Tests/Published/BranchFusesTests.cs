using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Tests.Published;

[Trait("Source", "nec-430-52.csv")]
public sealed class BranchFusesTests
{
    // Published: NFPA 70 table 430.52, retyped from a second copy.
    [Theory]
    [InlineData(BranchMotor.SinglePhase, BranchDevice.NonTimeDelayFuse, 300)]
    [InlineData(BranchMotor.SinglePhase, BranchDevice.TimeDelayFuse, 175)]
    [InlineData(BranchMotor.SquirrelCage, BranchDevice.InverseTimeBreaker, 250)]
    [InlineData(BranchMotor.SquirrelCage, BranchDevice.InstantaneousTripBreaker, 800)]
    [InlineData(BranchMotor.DesignBEnergyEfficient, BranchDevice.InstantaneousTripBreaker, 1100)]
    [InlineData(BranchMotor.WoundRotor, BranchDevice.TimeDelayFuse, 150)]
    [InlineData(BranchMotor.DirectCurrent, BranchDevice.InstantaneousTripBreaker, 250)]
    public void Percentages_are_those_of_a_second_copy(BranchMotor motor, BranchDevice device, double percent)
    {
        BranchFuses.Percent(motor, device).ShouldBe(percent);
        BranchFuses.SourceOf(motor).Status.ShouldBe(SourceStatus.Published);
    }

    // Arithmetic on NFPA 70 tables 430.248, 430.250 and 430.52: 3/4 hp, 230 V, single-phase 6.9 A; 5 hp, 230 V, three-phase 15.2 A.
    [Theory]
    [InlineData(6.9, BranchMotor.SinglePhase, BranchDevice.TimeDelayFuse, 12.075, 15)]
    [InlineData(6.9, BranchMotor.SinglePhase, BranchDevice.InverseTimeBreaker, 17.25, 20)]
    [InlineData(15.2, BranchMotor.SquirrelCage, BranchDevice.TimeDelayFuse, 26.6, 30)]
    [InlineData(15.2, BranchMotor.SquirrelCage, BranchDevice.InverseTimeBreaker, 38.0, 40)]
    public void Fuse_and_breaker_are_the_next_standard_size(double fullLoad, BranchMotor motor, BranchDevice device, double most, double size)
    {
        BranchFuses.MostAmps(fullLoad, motor, device).ShouldBe(most, 1e-9);
        BranchFuses.StandardSize(fullLoad, motor, device).ShouldBe(size);
    }

    // 10 A × 250 % is 25 A, itself a standard size; a hair more takes the next (arithmetic).
    [Theory]
    [InlineData(10, 25)]
    [InlineData(10.001, 30)]
    [InlineData(9.999, 25)]
    public void A_limit_that_is_a_standard_size_is_not_rounded_up(double fullLoad, double size) =>
        BranchFuses.StandardSize(fullLoad, BranchMotor.SinglePhase, BranchDevice.InverseTimeBreaker).ShouldBe(size);

    [Fact]
    public void Fuses_have_sizes_below_15_amps_and_breakers_have_none()
    {
        BranchFuses.StandardSize(1, BranchMotor.SinglePhase, BranchDevice.TimeDelayFuse).ShouldBe(3);
        BranchFuses.StandardSize(1, BranchMotor.SinglePhase, BranchDevice.InverseTimeBreaker).ShouldBe(15);
    }

    [Fact]
    public void There_is_no_size_above_the_list_or_for_a_breaker_that_is_set()
    {
        BranchFuses.StandardSize(240, BranchMotor.SinglePhase, BranchDevice.InverseTimeBreaker).ShouldBe(600);
        BranchFuses.StandardSize(241, BranchMotor.SinglePhase, BranchDevice.InverseTimeBreaker).ShouldBeNull();
        BranchFuses.StandardSize(10, BranchMotor.SinglePhase, BranchDevice.InstantaneousTripBreaker).ShouldBeNull();
    }

    [Fact]
    public void Every_kind_of_motor_has_a_percentage_for_every_device()
    {
        foreach (var motor in Enum.GetValues<BranchMotor>())
        {
            foreach (var device in Enum.GetValues<BranchDevice>()) BranchFuses.Percent(motor, device).ShouldBeInRange(150, 1100);
        }
    }

    [Fact]
    public void A_current_that_cannot_be_is_refused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => BranchFuses.MostAmps(0, BranchMotor.SinglePhase, BranchDevice.TimeDelayFuse));
}
