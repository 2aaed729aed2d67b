using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Ignition;

/// <summary>What may have to be checked of a part where something could burn. Efforts are practice: 0 a look, 1 about an hour or a part to be made.</summary>
public static class IgnitionChanges
{
    /// <summary>See what a part is listed for.</summary>
    public static ChangeKind CheckListing { get; } = new("checkListing", 0.3, IsCheck: true)
    {
        Stage = Stage.Bench,
        HowTo = "The listing stands on the part, of a valve on its coil, or in its papers; without one the part does not go in. Ventilate before anything is opened, and keep flames away.",
    };
}
