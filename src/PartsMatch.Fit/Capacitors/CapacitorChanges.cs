using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Capacitors;

/// <summary>What may have to be changed about a capacitor. Efforts are practice: 0 a look, 1 about an hour or a part to be made.</summary>
public static class CapacitorChanges
{
    /// <summary>Bring a second capacitor for the other motor.</summary>
    public static ChangeKind BringSecond { get; } = new("bringSecondCapacitor", 0.5);

    /// <summary>Leave one section of a two-section capacitor unused.</summary>
    public static ChangeKind LeaveSectionUnused { get; } = new("leaveCapacitorSectionUnused", 0.2);

    /// <summary>Fit another strap.</summary>
    public static ChangeKind FitStrap { get; } = new("fitStrap", 0.3);
}
