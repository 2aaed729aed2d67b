using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the speed control reads of a motor.</summary>
/// <param name="Type">Its type; null when unknown.</param>
/// <param name="IsSaid">Whether it is said what it may be controlled by.</param>
/// <param name="PhaseCut">Whether it is made for phase cutting.</param>
/// <param name="Drive">Whether it is made for a drive.</param>
/// <param name="Voltage">Whether it takes a signal of 0 to 10 V.</param>
/// <param name="Pulse">Whether it takes a pulse-width signal.</param>
/// <param name="NeedsSignal">Whether it is made for signals only, not for full volts alone.</param>
/// <param name="Feedback">Whether it reports its speed; null when unknown.</param>
public readonly record struct SpeedControlFacet(MotorType? Type, bool IsSaid, bool PhaseCut, bool Drive, bool Voltage, bool Pulse, bool NeedsSignal, bool? Feedback)
{
    /// <summary>Whether it is electronically commutated.</summary>
    public bool IsElectronic => Type == MotorType.ElectronicallyCommutated;

    /// <summary>Whether a control runs it.</summary>
    public bool Takes(SpeedControl control) => control switch
    {
        SpeedControl.PhaseCut => PhaseCut,
        SpeedControl.Drive => Drive,
        SpeedControl.VoltageSignal => Voltage,
        SpeedControl.PulseSignal => Pulse,
        _ => true,
    };
}

/// <summary>Does the control that is there run the motor?</summary>
/// <remarks>
/// Deciding: it is open only where a control is there, or where the old motor ran by a signal, and then the wrong motor burns or stands still. Phase cutting fails split-phase and capacitor-start motors, whatever they are marked for; other
/// induction motors must be made for it, a drive needs inverter duty, a signal or speed feedback a motor of the same kind. An electronically commutated motor in place of another has any phase-cut control taken out.
/// Where nobody said what is there, it is taken as none, since the question is put wherever a need is entered.
/// </remarks>
public sealed class ControlledSpeed() : Aspect<MotorSpec, MotorSite, SpeedControlFacet>("Speed control", isDeciding: true, CircuitSources.SpeedControl, new(0.3, 0.6, 0.8))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["speedControls", "type", "speedFeedback"], ["speedControl"]);

    /// <inheritdoc/>
    public override SpeedControlFacet Read(MotorSpec part) => Of(part);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, SpeedControlFacet facet) => need.Site.SpeedControl switch
    {
        SpeedControl.None => FullVolts(facet, []),
        SpeedControl.PhaseCut => OnPhaseCut(facet),
        SpeedControl.Drive => OnDrive(facet),
        { } signal => OnSignal(need, facet, signal),
        null => Unsaid(need, facet),
    };

    private static Finding Unsaid(MotorNeed need, SpeedControlFacet facet)
    {
        var old = need.OnceOfPlate(static plate => Of(plate));
        if (old.Voltage || old.Pulse)
        {
            return (!old.Voltage || facet.Voltage) && (!old.Pulse || facet.Pulse) && (old.Feedback != true || facet.Feedback == true)
                ? Finding.Meets($"It takes the signal that the old motor took.")
                : Finding.Unknown(Side.Site, "speedControl", $"The old motor could be run by a signal that this one does not take: see whether one is used.");
        }

        return FullVolts(facet, facet.IsElectronic && !old.IsElectronic
            ? [new(CircuitChanges.RemoveSpeedControl, $"take out any phase-cut control of the old motor: it would destroy the new one's electronics")]
            : []);
    }

    private static Finding FullVolts(SpeedControlFacet facet, IReadOnlyList<Change> changes) => facet.NeedsSignal
        ? Finding.MeetsWith([.. changes, new(CircuitChanges.CheckSpeedSignal, $"see what it does without a signal: set, or wire, the speed that it is to run at")], $"It is made to be run by a signal, and none is there.")
        : Finding.MeetsWith(changes, $"It runs at full volts, and no speed control is known to be there.");

    private static Finding OnPhaseCut(SpeedControlFacet facet)
    {
        if (MotorKinds.HasStartSwitch(facet.Type)) return Finding.Fails($"A phase-cut control is there, and would keep a motor with a start switch on its start winding: split-phase and capacitor-start motors burn on it.");
        if (facet.PhaseCut) return Finding.Meets($"A phase-cut control is there, and the motor is made for one.");
        if (facet.IsElectronic) return FullVolts(facet, [new(CircuitChanges.RemoveSpeedControl, $"take the phase-cut control out: it would destroy the motor's electronics, which set its speed instead")]);
        return NotMade(facet, "A phase-cut control is there", "a motor made for phase cutting");
    }

    private static Finding OnDrive(SpeedControlFacet facet) =>
        facet.Drive ? Finding.Meets($"A drive is there, and the motor is made for inverter duty.") : NotMade(facet, "A drive is there", "inverter duty (NEMA MG 1 parts 30 and 31)");

    private static Finding OnSignal(MotorNeed need, SpeedControlFacet facet, SpeedControl signal)
    {
        if (!facet.Takes(signal))
        {
            return facet.Type is null or MotorType.ElectronicallyCommutated
                ? NotMade(facet, "A control signal is there", "a motor that takes the same signal")
                : Finding.Fails($"A control signal is there, and needs an electronically commutated motor that takes it.");
        }

        if (need.Plate.SpeedFeedback != true) return Finding.Meets($"It takes the control signal that is there.");
        return facet.Feedback switch
        {
            true => Finding.Meets($"It takes the control signal that is there, and reports its speed as the old motor did."),
            false => Finding.Fails($"The old motor reported its speed to its control, and this one does not."),
            null => Finding.Unknown(Side.Part, "speedFeedback", $"The old motor reported its speed to its control; whether this one does is not given."),
        };
    }

    private static Finding NotMade(SpeedControlFacet facet, string there, string needed) => facet.IsSaid
        ? Finding.Fails($"{there}, which needs {needed}; this one is not made for it.")
        : Finding.Unknown(Side.Part, "speedControls", $"{there}, which needs {needed}; whether this one is made for it is not given.");

    private static SpeedControlFacet Of(MotorSpec motor)
    {
        bool Has(SpeedControl control) => motor.SpeedControls?.Contains(control) == true;
        var (voltage, pulse) = (Has(SpeedControl.VoltageSignal), Has(SpeedControl.PulseSignal));
        return new(motor.Type, motor.SpeedControls is not null, Has(SpeedControl.PhaseCut), Has(SpeedControl.Drive), voltage, pulse, (voltage || pulse) && !Has(SpeedControl.None), motor.SpeedFeedback);
    }
}
