using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What may have to be changed or checked on any switch. Efforts are practice: 0 a look, 1 about an hour or a part to be made.</summary>
public static class SwitchChanges
{
    /// <summary>Use one side of change-over contacts.</summary>
    public static ChangeKind UseOneSide { get; } = new("useOneSide", 0.1)
    {
        Stage = Stage.Wire,
        HowTo = "Wire common and the side that is needed; the other side is live whenever the contact rests on it, so leave it without wire and covered.",
    };

    /// <summary>Live with manual reset.</summary>
    public static ChangeKind AcceptManualReset { get; } = new("acceptManualReset", 0.5)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "It stays open until a hand resets it: see that somebody can reach it, and that whoever looks after the place knows.",
    };

    /// <summary>See whether it may restart by itself.</summary>
    public static ChangeKind CheckAutomaticReset { get; } = new("checkAutomaticReset", 0.2, IsCheck: true)
    {
        Stage = Stage.NoteWhatIsThere,
        HowTo = "With automatic reset it restarts without warning, and short-cycles on a leak: the equipment's diagram tells whether that is allowed.",
    };

    /// <summary>End wires anew.</summary>
    public static ChangeKind FitTerminals { get; } = new("fitTerminals", 0.3)
    {
        Stage = Stage.Wire,
        HowTo = "Cut back to bright copper, crimp or clamp what the terminal takes, and pull at each wire.",
    };
}
