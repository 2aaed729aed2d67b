using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors;

/// <summary>What may have to be changed or checked in the circuit of a motor, its protection and its speed control.</summary>
/// <remarks>Efforts are practice: 0 a look, 1 about an hour or a part to be made.</remarks>
public static class CircuitChanges
{
    /// <summary>See that wire, fuse and contact suit more amps than the old motor took.</summary>
    public static ChangeKind CheckCircuit { get; } = new("checkCircuit", 0.3, IsCheck: true)
    {
        Stage = Stage.Bench,
        HowTo = "Read wire, fuse and the contact's own marking before it goes up; whatever carries less is changed first.",
    };

    /// <summary>See that contact and fuse stand more amps at the start than the old motor took.</summary>
    public static ChangeKind CheckStart { get; } = new("checkStart", 0.2, IsCheck: true)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "Clamp the first second of a start, and look that contact and fuse take it, cold and hot.",
    };

    /// <summary>Set the overload device in the circuit to the new motor's amps.</summary>
    public static ChangeKind SetOverload { get; } = new("setOverload", 0.2)
    {
        Stage = Stage.Wire,
        HowTo = "Set it to the amps on the new motor's plate, and write the old setting down; never higher to stop it from tripping.",
    };

    /// <summary>See that the fuse starts the motor, and still protects it.</summary>
    public static ChangeKind CheckFuse { get; } = new("checkFuse", 0.2, IsCheck: true)
    {
        Stage = Stage.Bench,
        HowTo = "Read the fuse or breaker itself, not the label of the box, and its kind: with delay or without.",
    };

    /// <summary>See that somebody can reach the protector that is set back by hand.</summary>
    public static ChangeKind CheckReset { get; } = new("checkReset", 0.1, IsCheck: true)
    {
        Stage = Stage.Mount,
        HowTo = "Turn the motor so that the button can be reached with the guard on, and tell whoever will have to press it.",
    };

    /// <summary>Take the old speed control out of the circuit.</summary>
    public static ChangeKind RemoveSpeedControl { get; } = new("removeSpeedControl", 0.4)
    {
        Stage = Stage.Wire,
        HowTo = "Take it out of the circuit, and join line to line where it was; one that is only turned up still cuts the wave.",
    };

    /// <summary>See what an electronically commutated motor does without a signal, or set the speed it is to run at.</summary>
    public static ChangeKind CheckSpeedSignal { get; } = new("checkSpeedSignal", 0.2, IsCheck: true)
    {
        Stage = Stage.Wire,
        HowTo = "Its own sheet says what it does with no signal: full speed, a set speed, or none at all.",
    };
}
