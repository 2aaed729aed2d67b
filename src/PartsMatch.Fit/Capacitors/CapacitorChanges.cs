using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Capacitors;

/// <summary>What may have to be changed about a capacitor. Efforts are practice: 0 a look, 1 about an hour or a part to be made.</summary>
public static class CapacitorChanges
{
    /// <summary>Bring a second capacitor for the other motor.</summary>
    public static ChangeKind BringSecond { get; } = new("bringSecondCapacitor", 0.5)
    {
        Stage = Stage.Wire,
        HowTo = "Each motor gets the capacitor of its own plate; the line side of both is joined where the common terminal was.",
    };

    /// <summary>Leave one section of a two-section capacitor unused.</summary>
    public static ChangeKind LeaveSectionUnused { get; } = new("leaveCapacitorSectionUnused", 0.2)
    {
        Stage = Stage.Wire,
        HowTo = "Join only the common terminal and the section in use; the other one is live while the motor runs, so cover it.",
    };

    /// <summary>Fit another strap.</summary>
    public static ChangeKind FitStrap { get; } = new("fitStrap", 0.3)
    {
        Stage = Stage.Mount,
        HowTo = "The can stands upright with its terminals free to lift: a strap that squeezes it, or presses on its top, keeps it from opening safely.",
    };
}
