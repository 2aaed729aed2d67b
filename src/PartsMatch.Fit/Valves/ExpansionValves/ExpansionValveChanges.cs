using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>What may have to be changed or checked about an expansion valve. Efforts are practice: 0 a look, 1 about an hour or a part to be made.</summary>
public static class ExpansionValveChanges
{
    /// <summary>A tap for the external equaliser.</summary>
    public static ChangeKind FitEqualiserTap { get; } = new("fitEqualiserTap", 0.7)
    {
        Stage = Stage.Mount,
        HowTo = "Into the top of the suction pipe, some 6 to 8 in behind the bulb, never capped or kinked: a blocked equaliser starves the coil.",
    };

    /// <summary>Whether it is still right at one of the heads.</summary>
    public static ChangeKind CheckSuperheat { get; } = new("checkSuperheat", 0.4, IsCheck: true)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "Let it run a quarter of an hour between turns of the stem, a quarter of a turn each; it neither floods at the one head nor starves at the other.",
    };

    /// <summary>Whether an internal equaliser will do.</summary>
    public static ChangeKind CheckCoilDrop { get; } = new("checkCoilDrop", 0.5, IsCheck: true)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "Pressure at the coil's inlet less pressure at its outlet, running: beyond 2 °F (1.1 K) of saturation it needs an external equaliser.",
    };

    /// <summary>A bulb that is too thick for its well.</summary>
    public static ChangeKind StrapBulbOn { get; } = new("strapBulbOn", 0.4)
    {
        Stage = Stage.Mount,
        HowTo = "On clean, straight pipe, well wrapped against the air; the well is plugged, so that no water freezes in it.",
    };

    /// <summary>A bulb with play in its well.</summary>
    public static ChangeKind FillWell { get; } = new("fillWell", 0.2)
    {
        Stage = Stage.Mount,
        HowTo = "Paste that stays soft in the cold, to the brim: air between bulb and well makes the valve slow, and it hunts.",
    };

    /// <summary>Whether there is room for the bulb.</summary>
    public static ChangeKind CheckBulbRoom { get; } = new("checkBulbRoom", 0.3, IsCheck: true)
    {
        Stage = Stage.Mount,
        HowTo = "All of a bulb that is strapped on lies on straight pipe, never over a coupling or a bend; one that stands out of its well is wrapped.",
    };

    /// <summary>Whether the compressor bears a start against a warm coil.</summary>
    public static ChangeKind CheckWarmStart { get; } = new("checkWarmStart", 0.4, IsCheck: true)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "Start it on a warm box and watch the compressor's amps and the suction pressure: the old valve held it down, this one does not.",
    };
}
