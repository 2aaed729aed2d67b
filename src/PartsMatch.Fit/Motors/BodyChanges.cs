using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>What may have to be changed or checked about a motor's turn, mount, shaft, enclosure and capacitor.</summary>
/// <remarks>Efforts are practice: 0 a look, 1 about an hour or a part to be made.</remarks>
public static class BodyChanges
{
    /// <summary>Turn the motor's rotation round by plug, leads or setting.</summary>
    public static ChangeKind Reverse { get; } = new("reverse", 0.2);

    /// <summary>See which way the fan turns, then set the motor so.</summary>
    public static ChangeKind SeeTurn { get; } = new("seeTurn", 0.1, IsCheck: true);

    /// <summary>Fit a belly band of the new body's diameter.</summary>
    public static ChangeKind FitBand { get; } = new("fitBand", 0.3);

    /// <summary>Fit studs, or an adapter for another stud circle.</summary>
    public static ChangeKind FitStuds { get; } = new("fitStuds", 0.6);

    /// <summary>Drill the base for other feet.</summary>
    public static ChangeKind DrillBase { get; } = new("drillBase", 0.8);

    /// <summary>Hold the new mount against the place before climbing.</summary>
    public static ChangeKind CompareMount { get; } = new("compareMount", 0.2, IsCheck: true);

    /// <summary>See that a larger body clears what is round it.</summary>
    public static ChangeKind CheckBodyRoom { get; } = new("checkBodyRoom", 0.1, IsCheck: true);

    /// <summary>Set the blade at its old depth on a shaft a little shorter.</summary>
    public static ChangeKind SetBladeBack { get; } = new("setBladeBack", 0.1, IsCheck: true);

    /// <summary>Put a bushing between shaft and hub.</summary>
    public static ChangeKind FitBushing { get; } = new("fitBushing", 0.2);

    /// <summary>Cut the shaft.</summary>
    public static ChangeKind CutShaft { get; } = new("cutShaft", 0.4);

    /// <summary>See that the shaft clears the guard.</summary>
    public static ChangeKind CheckShaftRoom { get; } = new("checkShaftRoom", 0.1, IsCheck: true);

    /// <summary>File a flat under the set screw.</summary>
    public static ChangeKind FileFlat { get; } = new("fileFlat", 0.3);

    /// <summary>See what the hub's screw sits on.</summary>
    public static ChangeKind CheckHub { get; } = new("checkHub", 0.1, IsCheck: true);

    /// <summary>Guard the shaft end that drives nothing.</summary>
    public static ChangeKind GuardSecondShaft { get; } = new("guardSecondShaft", 0.3, IsCheck: true);

    /// <summary>Open the lowest drain hole, plug the others.</summary>
    public static ChangeKind OpenLowestDrain { get; } = new("openLowestDrain", 0.1);

    /// <summary>Fit the capacitor that the new motor asks for.</summary>
    public static ChangeKind FitCapacitor { get; } = new("fitCapacitor", 0.2);

    /// <summary>Take the old capacitor out.</summary>
    public static ChangeKind RemoveCapacitor { get; } = new("removeCapacitor", 0.1);

    /// <summary>Leave the fan's section of a shared capacitor unused.</summary>
    public static ChangeKind LeaveSectionUnused { get; } = new("leaveSectionUnused", 0.1);
}
