using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>What may have to be changed or checked about a solenoid valve. Efforts are practice: 0 a look, 1 about an hour or a part to be made.</summary>
public static class SolenoidValveChanges
{
    /// <summary>Another coil on the same body.</summary>
    public static ChangeKind ChangeCoil { get; } = new("changeCoil", 0.3)
    {
        Stage = Stage.Bench,
        HowTo = "Swap it on the bench, power off; a coil that is energised off its stem burns within minutes. Mark the valve with the coil's volts.",
    };

    /// <summary>Connect a coil that is made for two voltages.</summary>
    public static ChangeKind ConnectCoil { get; } = new("connectValveCoil", 0.1)
    {
        Stage = Stage.Wire,
        HowTo = "Its diagram shows the leads for each voltage; on the lower one's the higher volts burn it.",
    };

    /// <summary>Whether it lifts at the least load.</summary>
    public static ChangeKind CheckLeastLoad { get; } = new("checkLeastLoad", 0.3, IsCheck: true)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "With one fixture calling, listen: a valve that chatters, or a pipe behind it that goes cold and warm by turns, has too little drop to stay open.",
    };

    /// <summary>Whether the contact that feeds its coil switches it.</summary>
    public static ChangeKind CheckCoilContact { get; } = new("checkCoilContact", 0.2, IsCheck: true)
    {
        Stage = Stage.Wire,
        HowTo = "On the thermostat, timer, control or relay whose contact feeds the coil: a pilot duty such as C300, or VA or amps for coils; amps for heaters say nothing of coils. Add up all coils on it. Where it is marked for less, let it drive a relay, and that the coil.",
    };
}
