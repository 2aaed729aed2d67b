using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the aspects of supply read of a motor's connections.</summary>
/// <param name="Taps">Its taps; empty when unknown.</param>
/// <param name="Phases">Its phases; null when unknown.</param>
public readonly record struct TapsFacet(Sequence<VoltTap> Taps, Phases? Phases)
{
    /// <summary>What they are for a motor.</summary>
    public static TapsFacet Of(MotorSpec part) => new(VoltTap.Of(part.Voltage), part.Phase);

    /// <summary>Judges for the motor's phases; when they are unknown, for both: the same verdict twice is the verdict.</summary>
    /// <param name="of">What is judged; given along, so that nothing need be captured a thousand times a query.</param>
    /// <param name="judge">Judges it for motors of so many phases.</param>
    public Finding ForPhases<T>(T of, Func<Phases, T, Finding> judge)
    {
        if (Phases is { } phases) return judge(phases, of);
        var (single, three) = (judge(Motors.Phases.Single, of), judge(Motors.Phases.Three, of));
        return single.Verdict == three.Verdict
            ? single
            : Finding.Unknown(Side.Part, "phase", $"Whether the part is single-phase or three-phase is not given, and the volts there suit only one of them.");
    }
}
