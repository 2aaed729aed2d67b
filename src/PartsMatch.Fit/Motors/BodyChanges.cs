using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors;

/// <summary>What may have to be changed or checked about a motor's turn, mount, shaft, enclosure and capacitor.</summary>
/// <remarks>Efforts are practice: 0 a look, 1 about an hour or a part to be made.</remarks>
public static class BodyChanges
{
    /// <summary>Turn the motor's rotation round by plug, leads or setting.</summary>
    public static ChangeKind Reverse { get; } = new("reverse", 0.2)
    {
        Stage = Stage.Wire,
        HowTo = "Mark the old position first. The motor's own diagram says which plug, leads or setting; the start proves it.",
    };

    /// <summary>See which way the fan turns, then set the motor so.</summary>
    public static ChangeKind SeeTurn { get; } = new("seeTurn", 0.1, IsCheck: true)
    {
        Stage = Stage.FirstStart,
        HowTo = "Guard on, hands off: start it for a second and look while it runs down. Lock out again and prove dead before anything is changed.",
    };

    /// <summary>Fit a belly band of the new body's diameter.</summary>
    public static ChangeKind FitBand { get; } = new("fitBand", 0.3)
    {
        Stage = Stage.Mount,
        HowTo = "Tighten it evenly, clear of vents and seams, so that the motor neither turns in it nor is dented.",
    };

    /// <summary>Fit studs, or an adapter for another stud circle.</summary>
    public static ChangeKind FitStuds { get; } = new("fitStuds", 0.6)
    {
        Stage = Stage.Bench,
        HowTo = "Replace or lengthen one through bolt at a time, so that the end bells stay in line; use lock nuts.",
    };

    /// <summary>Drill the base for other feet.</summary>
    public static ChangeKind DrillBase { get; } = new("drillBase", 0.8)
    {
        Stage = Stage.Bench,
        HowTo = "Mark the holes through the new feet with the shaft in line, take the base out to drill it, and keep chips out of the motor.",
    };

    /// <summary>Hold the new mount against the place before climbing.</summary>
    public static ChangeKind CompareMount { get; } = new("compareMount", 0.2, IsCheck: true)
    {
        Stage = Stage.Bench,
        HowTo = "Lay the new motor on the old one's holes on the ground, with the bolts in hand.",
    };

    /// <summary>See that a larger body clears what is round it.</summary>
    public static ChangeKind CheckBodyRoom { get; } = new("checkBodyRoom", 0.1, IsCheck: true)
    {
        Stage = Stage.Mount,
        HowTo = "Hold it in place before anything is fastened: wires, braces, guard and coil stay clear all round.",
    };

    /// <summary>Set the blade at its old depth on a shaft a little shorter.</summary>
    public static ChangeKind SetBladeBack { get; } = new("setBladeBack", 0.1, IsCheck: true)
    {
        Stage = Stage.Mount,
        HowTo = "Slide the hub to the tip of the shaft as far as its whole screw still bears, and measure the depth in the ring.",
    };

    /// <summary>Put a bushing between shaft and hub.</summary>
    public static ChangeKind FitBushing { get; } = new("fitBushing", 0.2)
    {
        Stage = Stage.Mount,
        HowTo = "Clean shaft and bore, turn the bushing's slot under the set screw, and see that the blade runs true.",
    };

    /// <summary>Cut the shaft.</summary>
    public static ChangeKind CutShaft { get; } = new("cutShaft", 0.4)
    {
        Stage = Stage.Bench,
        HowTo = "Clamp the shaft itself, never the body, cut it square, and break the edge with a file; keep chips out of the bearing.",
    };

    /// <summary>See that the shaft clears the guard.</summary>
    public static ChangeKind CheckShaftRoom { get; } = new("checkShaftRoom", 0.1, IsCheck: true)
    {
        Stage = Stage.Mount,
        HowTo = "Put the guard on before the blade is fixed, and turn the shaft by hand.",
    };

    /// <summary>File a flat under the set screw.</summary>
    public static ChangeKind FileFlat { get; } = new("fileFlat", 0.3)
    {
        Stage = Stage.Bench,
        HowTo = "Wrap the end bell against filings, and file it as long as the hub and no deeper than the screw needs.",
    };

    /// <summary>See what the hub's screw sits on.</summary>
    public static ChangeKind CheckHub { get; } = new("checkHub", 0.1, IsCheck: true)
    {
        Stage = Stage.Bench,
        HowTo = "Try the hub on the new shaft before it goes up: a screw on a round shaft works loose, a key without its way cannot drive.",
    };

    /// <summary>Guard the shaft end that drives nothing.</summary>
    public static ChangeKind GuardSecondShaft { get; } = new("guardSecondShaft", 0.3, IsCheck: true)
    {
        Stage = Stage.Mount,
        HowTo = "A bare shaft that turns takes hold of sleeves and wires: cover it, and see that nothing touches it.",
    };

    /// <summary>Open the lowest drain hole, plug the others.</summary>
    public static ChangeKind OpenLowestDrain { get; } = new("openLowestDrain", 0.1)
    {
        Stage = Stage.Mount,
        HowTo = "Do it once it is in place: water leaves at the lowest hole and enters at the others.",
    };

    /// <summary>Fit the capacitor that the new motor asks for.</summary>
    public static ChangeKind FitCapacitor { get; } = new("fitCapacitor", 0.2)
    {
        Stage = Stage.Wire,
        HowTo = "It belongs to the new motor: take its µF exactly and its volts at least, never the old motor's.",
    };

    /// <summary>Take the old capacitor out.</summary>
    public static ChangeKind RemoveCapacitor { get; } = new("removeCapacitor", 0.1)
    {
        Stage = Stage.Wire,
        HowTo = "Take it out of the circuit and out of the box, so that nobody joins it again; insulate what is left.",
    };

    /// <summary>Leave the fan's section of a shared capacitor unused.</summary>
    public static ChangeKind LeaveSectionUnused { get; } = new("leaveSectionUnused", 0.1)
    {
        Stage = Stage.Wire,
        HowTo = "Take the wire off that terminal only and cover the terminal: it stays live while the other section runs.",
    };
}
