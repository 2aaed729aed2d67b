using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>What may have to be changed or checked about a condensing-pressure valve. Efforts are practice: 0 a look, 1 about an hour or a part to be made.</summary>
public static class CondensingPressureValveChanges
{
    /// <summary>Turn it to its setting.</summary>
    public static ChangeKind SetPressure { get; } = new("setPressure", 0.2)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "With a gauge at the receiver, the condenser cold enough for it to work; a quarter of a turn, then wait.",
    };

    /// <summary>Whether the head is right although the setting differs.</summary>
    public static ChangeKind CheckHead { get; } = new("checkHead", 0.3, IsCheck: true)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "Watch superheat at the expansion valves at the coldest head, and the compressor's amps at the warmest.",
    };
}
