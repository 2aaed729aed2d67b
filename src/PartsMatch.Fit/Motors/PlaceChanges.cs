using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors;

/// <summary>What a motor's place may ask to check: position, air, blade and room.</summary>
/// <remarks>Efforts are practice: 0 a look, 1 about an hour or a part to be made.</remarks>
public static class PlaceChanges
{
    /// <summary>Ask whether a motor marked for other positions may be put in as needed.</summary>
    public static ChangeKind AskPosition { get; } = new("askPosition", 0.2, IsCheck: true)
    {
        Stage = Stage.Bench,
        HowTo = "Ask the maker or the counter before it goes up: a sleeve bearing that stands wrong runs dry.",
    };

    /// <summary>See how hot or cold the air round the motor gets.</summary>
    public static ChangeKind CheckAir { get; } = new("checkAir", 0.1, IsCheck: true)
    {
        Stage = Stage.NoteWhatIsThere,
        HowTo = "Take the air's temperature where the motor sits, with the equipment at its hardest.",
    };

    /// <summary>See whether a lower class of insulation will do.</summary>
    public static ChangeKind CheckInsulation { get; } = new("checkInsulation", 0.1, IsCheck: true)
    {
        Stage = Stage.Bench,
        HowTo = "Compare both plates' class and ambient: a lower class in the same heat lives shorter.",
    };

    /// <summary>Ask for the maker's word on the altitude.</summary>
    public static ChangeKind AskAltitude { get; } = new("askAltitude", 0.2, IsCheck: true)
    {
        Stage = Stage.Bench,
        HowTo = "Thin air cools less: have the maker's word for this height in writing.",
    };

    /// <summary>See that the new blade does not take more than the motor gives.</summary>
    public static ChangeKind CheckBladePower { get; } = new("checkBladePower", 0.3, IsCheck: true)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "Clamp its amps with the guard on: over the plate, the blade is too much for it.",
    };

    /// <summary>See that a longer body has room.</summary>
    public static ChangeKind CheckBodyLength { get; } = new("checkBodyLength", 0.1, IsCheck: true)
    {
        Stage = Stage.Mount,
        HowTo = "Hold it in place with the blade on before anything is fastened, and look at both ends.",
    };
}
