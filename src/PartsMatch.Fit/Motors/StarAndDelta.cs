using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>Two voltages of one winding: the lower in delta, the higher in star.</summary>
internal static class StarAndDelta
{
    /// <summary>Two voltages stand as 1 to √3 within so much (practice: 220-240/380-415).</summary>
    private const double RatioWithin = 0.05;

    /// <summary>Whether a motor has two voltages that stand 1 to √3.</summary>
    public static bool AreVolts(MotorSpec motor) =>
        VoltTap.Of(motor.Voltage) is { Count: 2 } taps && Within.Ratio(taps.Max(tap => tap.High) / taps.Min(tap => tap.High), Math.Sqrt(3), 1 + RatioWithin);

    /// <summary>How it is joined for one of its voltages, by the names of IEC 60034-8 unless its terminals have others: star (W2, U2 and V2 bridged).</summary>
    public static string Joined(bool isStar, bool hasIecTerminals) => (isStar, hasIecTerminals) switch
    {
        (true, true) => "in star (W2-U2-V2 bridged)",
        (false, true) => "in delta (U1-W2, V1-U2 and W1-V2 bridged)",
        (true, false) => "in star",
        (false, false) => "in delta",
    };
}
