using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>What may have to be changed about a contactor. Efforts are practice: 0 a look, 1 about an hour or a part to be made.</summary>
public static class ContactorChanges
{
    /// <summary>Put another coil into its body.</summary>
    public static ChangeKind ChangeCoil { get; } = new("changeContactorCoil", 0.4)
    {
        Stage = Stage.Bench,
        HowTo = "Take it apart with the power off, lay the parts in their order, change the coil, and see that the armature moves freely and its faces are clean.",
    };

    /// <summary>Connect a coil that is made for two voltages.</summary>
    public static ChangeKind ConnectCoil { get; } = new("connectContactorCoil", 0.1)
    {
        Stage = Stage.Wire,
        HowTo = "Its diagram shows the terminals or the link for each voltage; on the lower one's the higher volts burn it.",
    };

    /// <summary>Leave a pole unused.</summary>
    public static ChangeKind LeavePoleUnused { get; } = new("leavePoleUnused", 0.05)
    {
        Stage = Stage.Wire,
        HowTo = "Leave the spare pole without wires on either side.",
    };

    /// <summary>Use the pole of two that does what is needed.</summary>
    public static ChangeKind UsePoleThatDoes { get; } = new("usePoleThatDoes", 0.1)
    {
        Stage = Stage.Wire,
        HowTo = "Measure ohms through both poles before a wire is on: the normally closed one is closed, the normally open one closes as the armature is pressed in by hand.",
    };

    /// <summary>Feed the crankcase heat from elsewhere.</summary>
    public static ChangeKind FeedCrankcaseHeat { get; } = new("feedCrankcaseHeat", 0.6)
    {
        Stage = Stage.Wire,
        HowTo = "Both lines open now, so that nothing warms the oil while it is off: feed the crankcase heater from the line side, through a normally closed auxiliary contact or all the time, as the equipment's diagram allows.",
    };

    /// <summary>See whether the shunt fed anything.</summary>
    public static ChangeKind CheckShunt { get; } = new("checkShunt", 0.1, IsCheck: true)
    {
        Stage = Stage.NoteWhatIsThere,
        HowTo = "Follow the wires of the shunt's side: a crankcase heater, or a winding that is kept warm through its run capacitor, loses its feed when both lines open.",
    };

    /// <summary>Join a line through where a shunt was.</summary>
    public static ChangeKind JoinLine { get; } = new("joinLine", 0.3)
    {
        Stage = Stage.Wire,
        HowTo = "Splice the line that went over the shunt with a connector rated for its amps. It stays live while the contactor is off: mark it.",
    };

    /// <summary>Add auxiliary contacts.</summary>
    public static ChangeKind AddAuxiliaries { get; } = new("addAuxiliaries", 0.2)
    {
        Stage = Stage.Bench,
        HowTo = "Snap or screw the block on before it is mounted, and try by hand that it moves with the armature.",
    };

    /// <summary>Bring its interlock.</summary>
    public static ChangeKind BringInterlock { get; } = new("bringInterlock", 0.1, IsCheck: true)
    {
        Stage = Stage.Bench,
        HowTo = "See before leaving whether the lever is on it. One of another maker or size seldom joins the second contactor: it takes the lever made for the two.",
    };

    /// <summary>Fit its mount.</summary>
    public static ChangeKind FitMount { get; } = new("fitMount", 0.4)
    {
        Stage = Stage.Mount,
        HowTo = "Keep chips and filings out of everything in the box; the armature must move as it was made to, so mind which way is up.",
    };
}
