using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Practice: a single-phase motor runs on two legs of three, a three-phase one never on one.</summary>
[Trait("Source", "motor.phase")]
public sealed class PhaseTests : MotorAspectTests<Phase>
{
    [Fact]
    public void A_three_phase_motor_fails_on_one_phase() => Fails(site: "supplyPhase=1", part: "phase=3");

    [Fact]
    public void A_three_phase_motor_fails_where_the_old_one_was_single_phase() => Fails(plate: "phase=1", part: "phase=3");

    [Fact]
    public void A_three_phase_motor_fails_where_the_old_one_was_single_phase_on_a_wye() => Fails(plate: "type=PSC", site: "supplyArrangement=wye", part: "phase=3");

    [Fact]
    public void A_three_phase_motor_meets_where_three_phases_reach_it() => Meets(site: "supplyPhase=3", part: "phase=3");

    [Fact]
    public void A_three_phase_motor_meets_where_three_voltages_were_measured() => Meets(site: "volts=460/467/450 V", part: "type=three-phase induction");

    [Fact]
    public void A_three_phase_motor_is_unknown_where_nobody_counted_the_phases() => Unknown(Side.Site, "supplyPhase", part: "phase=3");

    [Fact]
    public void A_single_phase_motor_in_place_of_a_three_phase_one_takes_two_legs() =>
        MeetsWith([SupplyChanges.UseTwoLegs], plate: "phase=3", part: "phase=1");

    [Fact]
    public void A_single_phase_motor_stays_on_the_two_legs_that_the_old_one_had() => Meets(plate: "phase=1", site: "supplyPhase=3", part: "phase=1");

    [Fact]
    public void A_single_phase_motor_meets_whatever_the_phases() => Meets(part: "phase=1");

    [Fact]
    public void A_part_whose_phases_are_not_given_is_unknown() => Unknown(Side.Part, "phase", site: "supplyPhase=1");

    [Fact]
    public void A_part_whose_phases_are_not_given_meets_where_either_would() => Meets(plate: "phase=1", site: "supplyPhase=3");
}
