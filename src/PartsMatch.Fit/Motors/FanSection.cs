using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>Which section of a capacitor that is shared with the compressor is the fan's, in whatever order the two are written.</summary>
internal static class FanSection
{
    /// <summary>The one that has what the fan motor asks for, within the usual tolerance; else the smaller of them (practice). The only one where there is one; null where there is none.</summary>
    public static ElectricCapacitance? Of(CapacitorRating? rating, ElectricCapacitance? asked = null) => rating switch
    {
        { Capacitance: { } one, SecondSection: { } other } => asked is { } wanted && new[] { one, other }.MinBy(section => Off(section, wanted)) is var nearest && Within.AtMost(Off(nearest, wanted), MeasuredCapacitor.UsualPercent)
            ? nearest
            : new[] { one, other }.MinBy(section => section.Microfarads),
        _ => rating?.Capacitance,
    };

    /// <summary>What a motor's plate asks for; where it says two sections, they are those of the capacitor that it shares.</summary>
    public static ElectricCapacitance? AskedBy(MotorSpec motor) => Of(motor.RunCapacitor);

    private static double Off(ElectricCapacitance section, ElectricCapacitance asked) => Math.Abs(section.Microfarads - asked.Microfarads) / asked.Microfarads * 100;
}
