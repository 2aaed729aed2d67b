using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Phase cutting needs a motor made for it, a drive inverter duty (NEMA MG 1 parts 30, 31), a signal the same kind of motor: practice.</summary>
[Trait("Source", "motor.controlledSpeed")]
public sealed class ControlledSpeedTests : MotorAspectTests<ControlledSpeed>
{
    [Theory]
    [InlineData("split phase")]
    [InlineData("capacitor start")]
    [InlineData("capacitor start capacitor run")]
    public void Phase_cutting_never_suits_a_motor_with_a_start_switch(string type)
    {
        Fails(site: "speedControl=phase cut", part: $"type={type}").Sentence.ShouldContain("start switch");
        Fails(site: "speedControl=phase cut", part: $"type={type}; speedControls=phase cut");
    }

    [Fact]
    public void Phase_cutting_takes_a_motor_made_for_it()
    {
        Meets(site: "speedControl=phase cut", part: "type=PSC; speedControls=phase cut");
        Fails(site: "speedControl=phase cut", part: "type=PSC; speedControls=none");
        Fails(site: "speedControl=phase cut", part: "type=three-phase induction; speedControls=drive");
        Unknown(Side.Part, "speedControls", site: "speedControl=phase cut", part: "type=PSC");
        Unknown(Side.Part, "speedControls", site: "speedControl=phase cut");
    }

    [Fact]
    public void A_drive_takes_inverter_duty()
    {
        Meets(site: "speedControl=drive", part: "type=three-phase induction; speedControls=drive");
        Fails(site: "speedControl=drive", part: "type=three-phase induction; speedControls=none").Sentence.ShouldContain("MG 1 parts 30 and 31");
        Unknown(Side.Part, "speedControls", site: "speedControl=drive", part: "type=three-phase induction");
    }

    [Fact]
    public void A_signal_takes_the_same_kind_of_motor()
    {
        const string site = "speedControl=0-10 V signal";
        Meets(site: site, part: "type=ECM; speedControls=0-10 V signal");
        Fails(site: site, part: "type=ECM; speedControls=PWM signal");
        Fails(site: site, part: "type=PSC");
        Unknown(Side.Part, "speedControls", site: site, part: "type=ECM");
        Meets(site: "speedControl=PWM signal", part: "type=ECM; speedControls=0-10 V signal, PWM signal");
    }

    [Fact]
    public void Speed_feedback_takes_a_motor_that_gives_it()
    {
        const string plate = "type=ECM; speedFeedback=yes";
        const string site = "speedControl=PWM signal";
        const string part = "type=ECM; speedControls=PWM signal";
        Meets(plate, site, $"{part}; speedFeedback=yes");
        Fails(plate, site, $"{part}; speedFeedback=no");
        Unknown(Side.Part, "speedFeedback", plate, site, part);
        Meets("type=ECM; speedFeedback=no", site, part);
    }

    [Fact]
    public void An_electronically_commutated_motor_has_phase_cutting_taken_out()
    {
        MeetsWith([CircuitChanges.RemoveSpeedControl], site: "speedControl=phase cut", part: "type=ECM; speedControls=none");
        MeetsWith([CircuitChanges.RemoveSpeedControl], plate: "type=PSC", part: "type=ECM; speedControls=none").Changes[0].Text.ShouldStartWith("take out any phase-cut control");
        Meets(plate: "type=PSC", site: "speedControl=none", part: "type=ECM; speedControls=none");
        Meets(plate: "type=ECM", part: "type=ECM; speedControls=none");
        Meets(site: "speedControl=phase cut", part: "type=ECM; speedControls=phase cut");
    }

    [Fact]
    public void One_that_runs_by_a_signal_only_is_to_be_checked_where_there_is_none()
    {
        MeetsWith([CircuitChanges.CheckSpeedSignal], plate: "type=ECM; speedControls=none", site: "speedControl=none", part: "type=ECM; speedControls=PWM signal");
        MeetsWith([CircuitChanges.RemoveSpeedControl, CircuitChanges.CheckSpeedSignal], plate: "type=PSC", part: "type=ECM; speedControls=PWM signal");
        Meets(site: "speedControl=none", part: "type=ECM; speedControls=none, PWM signal");
    }

    [Fact]
    public void Without_a_word_of_the_control_only_an_old_motor_run_by_a_signal_leaves_it_open()
    {
        Meets(plate: "type=PSC; speedControls=phase cut", part: "type=PSC");
        Meets(part: "type=split phase");
        Meets(plate: "type=ECM; speedControls=PWM signal", part: "type=ECM; speedControls=PWM signal, 0-10 V signal");
        Unknown(Side.Site, "speedControl", plate: "type=ECM; speedControls=PWM signal", part: "type=ECM; speedControls=0-10 V signal");
        Unknown(Side.Site, "speedControl", plate: "type=ECM; speedControls=PWM signal", part: "type=PSC");
        Meets(plate: "type=ECM; speedControls=PWM signal", site: "speedControl=none", part: "type=PSC");
    }
}
