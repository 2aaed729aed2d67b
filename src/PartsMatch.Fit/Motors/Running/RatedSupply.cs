using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors.Running;

/// <summary>Whether a supply is what motors are rated at.</summary>
public static class RatedSupply
{
    /// <summary>Rated volts, as a meter reads them (practice).</summary>
    internal const double SameVolts = 0.02;

    /// <summary>Unbalance up to which a motor carries its rating (NEMA MG 1 12.45), percent.</summary>
    internal const double MostUnbalance = 1;

    /// <summary>What is left of a three-phase motor's power on unbalanced volts: 1 for others, up to 1 %, where not all three were measured, and beyond 5 %, where another aspect refuses every motor.</summary>
    public static double Derating(MotorNeed need, Phases? phases) => phases != Phases.Three ? 1
        : need.Once(static need => need.Site.Volts is { Count: 3 } volts ? Published.UnbalanceDerating.Factor(Percent(volts)) ?? 1 : 1);

    /// <summary>
    /// A service factor holds at rated volts, frequency and balance only (NEMA MG 1 14.37); where nobody measured, it does not count.
    /// Above 1000 m it makes up for the thin air, and is not there for load as well (MG 1 14.4, from memory).
    /// </summary>
    public static bool ServiceFactorCounts(MotorNeed need, RatedPoint motor) => Math.Abs(motor.VoltsRatio - 1) <= SameVolts && need.Once(static need =>
        need.Site.Volts is { } volts
        && (need.Site.Altitude is not { } altitude || IsLow(altitude))
        && (volts.Count < 3 || Percent(volts) <= MostUnbalance));

    /// <summary>Whether volts that were read are a tap's own; of a span either end and what lies between.</summary>
    internal static bool AreVoltsOf(VoltTap tap, double volts) => tap.Takes(volts, SameVolts);

    /// <summary>Whether a supply's frequency is a rated one.</summary>
    internal static bool IsFrequencyOf(Frequency rated, Frequency supply) => Within.AtMost(SupplyWindows.FrequencyOff(rated.Hertz, supply.Hertz), SupplyWindows.EasyFrequencyOff);

    /// <summary>Whether three legs that were read are as alike as a rating asks for.</summary>
    internal static bool IsBalanced(IReadOnlyList<double> legs) => Within.AtMost(Physics.Unbalance.Percent(legs[0], legs[1], legs[2]), MostUnbalance);

    /// <summary>Whether a place lies no higher than ratings hold.</summary>
    internal static bool IsLow(Length altitude) => Within.AtMost(altitude.Meters, Aspects.AirDensity.UsualMost);

    private static double Percent(Figures<ElectricPotential> volts) => Physics.Unbalance.Percent(volts[0].Volts, volts[1].Volts, volts[2].Volts);
}
