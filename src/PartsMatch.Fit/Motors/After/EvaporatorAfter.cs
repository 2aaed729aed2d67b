using PartsMatch.Fit.Judging;
using UnitsNet;

namespace PartsMatch.Fit.Motors.After;

/// <summary>May anything be judged on the evaporator's side yet?</summary>
/// <remarks>On a warm box its fans start late by design: until they run nothing is judged and no refrigerant added. Suction vapour is judged by its dew temperature.</remarks>
public sealed class EvaporatorAfter() : ReadingRule<SwapCase>("Evaporator", MotorReadingSources.WarmBox)
{
    /// <summary>10 °F in K: warmer over its setpoint a box is still pulling down (practice); so is a suction over its design a heavy load.</summary>
    private const double WarmKelvin = 10 / 1.8;

    /// <inheritdoc/>
    public override Ruling? Judge(SwapCase one)
    {
        var readings = one.Readings;
        if (readings.EvaporatorFansRun == false) return Ruling.NotApplicable($"The evaporator fans do not run yet; on a warm box they start late by design. Judge nothing there and add no refrigerant until they run.");
        if (IsWarm(readings))
        {
            return readings.EvaporatorFansRun == true
                ? Ruling.CantTell($"The box is more than {Degrees.Apart(WarmKelvin)} over its setting and still pulling down: suction pressure and load are not the usual ones. Add no refrigerant by them.", $"box within {Degrees.Apart(WarmKelvin)} of its setting")
                : Ruling.CantTell($"The box is warm, and whether the evaporator fans run was not looked at: they start late by design. Judge nothing there and add no refrigerant until they run.", $"box within {Degrees.Apart(WarmKelvin)} of its setting");
        }

        if (one.At(readings.SuctionPressure) is not { } suction) return null;
        if (readings.DesignEvaporating is not { } design) return Ruling.CantTell($"The suction evaporates at {Degrees.Of(suction.Dew)} (dew); what it is designed for is not known.");
        return SuctionIsHigh(one)
            ? Ruling.Bad($"The suction evaporates at {Degrees.Of(suction.Dew)} (dew), more than {Degrees.Apart(WarmKelvin)} over the design of {Degrees.Of(design)}: heavy load.", $"within {Degrees.Apart(WarmKelvin)} of the design")
            : Ruling.Good($"The suction evaporates at {Degrees.Of(suction.Dew)} (dew); the design is {Degrees.Of(design)}, and {Degrees.Apart(WarmKelvin)} over it still passes.", $"within {Degrees.Apart(WarmKelvin)} of the design");
    }

    /// <summary>Whether the evaporator's fans stand still on a box that is warm, or of which nobody knows that it is cold: then no pressure means anything yet.</summary>
    internal static bool IsWaitedFor(MotorReadings readings) =>
        readings.EvaporatorFansRun == false && (readings is { BoxTemperature: null } or { BoxSetpoint: null } || IsWarm(readings));

    /// <summary>Whether the box is far over its setpoint.</summary>
    internal static bool IsWarm(MotorReadings readings) =>
        readings is { BoxTemperature: { } box, BoxSetpoint: { } setpoint } && IsOver(box, setpoint);

    /// <summary>Whether the suction evaporates far over its design.</summary>
    internal static bool SuctionIsHigh(SwapCase one) =>
        one.At(one.Readings.SuctionPressure) is { } suction && one.Readings.DesignEvaporating is { } design && IsOver(suction.Dew, design);

    private static bool IsOver(Temperature one, Temperature other) => !Quantities.Within.AtMost(one.Kelvins - other.Kelvins, WarmKelvin);
}
