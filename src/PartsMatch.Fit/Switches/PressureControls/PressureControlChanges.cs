using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>What may have to be changed about a pressure control. Efforts are practice: 0 a look, 1 about an hour or a part to be made.</summary>
public static class PressureControlChanges
{
    /// <summary>Set it.</summary>
    public static ChangeKind SetControl { get; } = new("setControl", 0.1)
    {
        Stage = Stage.Bench,
        HowTo = "Scales on controls are rough: set it by its scale here, and by a gauge once it is in.",
    };

    /// <summary>Fit a stop.</summary>
    public static ChangeKind FitStop { get; } = new("fitStop", 0.3)
    {
        Stage = Stage.Bench,
        HowTo = "Fit the maker's limit stop or seal, so that nobody can turn it higher; try that it holds.",
    };

    /// <summary>Adapt its connection.</summary>
    public static ChangeKind AdaptConnection { get; } = new("adaptConnection", 0.6)
    {
        Stage = Stage.Mount,
        HowTo = "By someone certified for the refrigerant. Use a fitting rated for the pressure and the refrigerant, and test it for leaks.",
    };
}
