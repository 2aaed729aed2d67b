using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Its windings, by whichever of the two rules is its own.</summary>
internal static class Windings
{
    private static readonly SinglePhaseWindings Single = new();
    private static readonly ThreePhaseWindings Three = new();

    /// <summary>What they say; null when none was read or the motor is electronically commutated.</summary>
    public static Ruling? Of(MotorCase one) => Single.Judge(one) ?? Three.Judge(one);

    /// <summary>Whether they were measured, and are whole.</summary>
    public static bool AreGood(MotorCase one) => Of(one) is { Verdict: ReadingVerdict.Good };

    /// <summary>The reading of them that is wanted next.</summary>
    public static string NextField(MotorCase one) => Of(one)?.Asks?.Field ?? (one.IsThreePhase == true ? "ohmsOneToTwo" : "ohmsCommonToRun");
}
