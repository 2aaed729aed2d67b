using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Valves.Pipes;

namespace PartsMatch.Fit.Valves;

/// <summary>What ammonia attacks of a valve.</summary>
internal static class Ammonia
{
    /// <summary>Whether a refrigerant is ammonia.</summary>
    public static bool Is(Refrigerant there) => there.Name == "R-717";

    /// <summary>Whether joints are of copper: solder cups and flares are for copper tube; null where not given.</summary>
    public static bool? HasCopper(PipeJoint? joint) => joint is { } made ? made is PipeJoint.Solder or PipeJoint.Flare : null;

    /// <summary>An answer about a valve's list, where its joints bear what is there: with ammonia copper fails whatever is listed.</summary>
    /// <param name="listed">The answer about its list.</param>
    /// <param name="there">The refrigerant there.</param>
    /// <param name="hasCopperJoints">Whether its joints are of copper; null where not given.</param>
    public static Finding AtJoints(Finding listed, Refrigerant there, bool? hasCopperJoints) => (Is(there), hasCopperJoints) switch
    {
        (false, _) or (_, false) => listed,
        (_, true) => Finding.Fails($"R-717 (ammonia) attacks copper, and its joints are for copper tube."),
        _ => Finding.Unknown(Side.Part, "joint", $"R-717 (ammonia) attacks copper; whether its joints are for copper tube is not given.").OrWorse(listed),
    };
}
