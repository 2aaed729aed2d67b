using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>What may have to be changed or checked in the circuit of a motor, its protection and its speed control.</summary>
/// <remarks>Efforts are practice: 0 a look, 1 about an hour or a part to be made.</remarks>
public static class CircuitChanges
{
    /// <summary>See that wire, fuse and contact suit more amps than the old motor took.</summary>
    public static ChangeKind CheckCircuit { get; } = new("checkCircuit", 0.3, IsCheck: true);

    /// <summary>See that contact and fuse stand more amps at the start than the old motor took.</summary>
    public static ChangeKind CheckStart { get; } = new("checkStart", 0.2, IsCheck: true);

    /// <summary>Set the overload device in the circuit to the new motor's amps.</summary>
    public static ChangeKind SetOverload { get; } = new("setOverload", 0.2);

    /// <summary>See that the fuse starts the motor, and still protects it.</summary>
    public static ChangeKind CheckFuse { get; } = new("checkFuse", 0.2, IsCheck: true);

    /// <summary>See that somebody can reach the protector that is set back by hand.</summary>
    public static ChangeKind CheckReset { get; } = new("checkReset", 0.1, IsCheck: true);

    /// <summary>Take the old speed control out of the circuit.</summary>
    public static ChangeKind RemoveSpeedControl { get; } = new("removeSpeedControl", 0.4);

    /// <summary>See what an electronically commutated motor does without a signal, or set the speed it is to run at.</summary>
    public static ChangeKind CheckSpeedSignal { get; } = new("checkSpeedSignal", 0.2, IsCheck: true);
}
