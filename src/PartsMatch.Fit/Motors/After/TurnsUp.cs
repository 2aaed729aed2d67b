using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.After;

/// <summary>Does it turn?</summary>
/// <remarks>Without volts no motor does, and electronics that take a command stand still without it, as they should.</remarks>
public sealed class TurnsUp() : ReadingRule<SwapCase>("Running", MotorReadingSources.TurnsUp)
{
    /// <inheritdoc/>
    public override Ruling Judge(SwapCase one) => one switch
    {
        { StandsStill: null } => Ruling.CantTell($"Whether it turns was not looked at."),
        { StandsStill: false } => Ruling.Good($"It turns."),
        { AsMotor.HasVolts: false } => Ruling.CantTell($"It stands still, as a motor without volts does: see to its volts first."),
        { AsMotor.IsElectronic: true, Readings.SignalThere: null } when TakesCommand(one.Part) => Ruling.CantTell($"It stands still, as electronics without their command do: is its speed signal there?"),
        { AsMotor.IsElectronic: true, Readings.SignalThere: false } when TakesCommand(one.Part) => Ruling.CantTell($"It stands still, as electronics without their command do: look at its control."),
        { AsMotor.TakesNoCurrent: true } => Ruling.Bad($"It stands still and takes no current: look for an open lead or joint, and hold its connection against its diagram."),
        _ => Ruling.Bad($"It stands still: power off at once, before its winding burns. Look at {(one.AsMotor.HasCapacitor == false ? string.Empty : "its run capacitor, at ")}tap and connection, and turn it by hand."),
    };

    private static bool TakesCommand(MotorSpec part) => part.SpeedControls?.Any(control => control != SpeedControl.None) != false;
}
