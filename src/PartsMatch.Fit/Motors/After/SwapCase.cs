using PartsMatch.Fit.Motors.Before;
using PartsMatch.Fit.Physics;
using UnitsNet;

namespace PartsMatch.Fit.Motors.After;

/// <summary>A new motor and what was read at it, with the plain figures that several rules take from them.</summary>
/// <param name="Need">What it replaced, and where.</param>
/// <param name="Part">The new motor, with what was deduced of it.</param>
/// <param name="Readings">The readings.</param>
public sealed record SwapCase(MotorNeed Need, MotorSpec Part, MotorReadings Readings)
{
    /// <summary>The new motor as if it were the old one: what is true of volts and amps at a plate is true of both. Any of its taps may be the one that was set.</summary>
    public MotorCase AsMotor { get; } = new(new(Part with { ConnectedFor = null }, Need.Site with { Volts = null }), Readings);

    /// <summary>Whether it stands still, by what was seen of it or of its propeller's air; where nothing was, by locked amps. Null where nothing tells.</summary>
    public bool? StandsStill =>
        Readings.Turns is { } turns ? !turns
        : Readings.Hums == true ? true
        : Readings.RunningSpeed is not null || Readings.TurnsRightWay == true || (Readings.AirRightWay == true && Need.Site.FanKind == FanKind.Propeller) ? false
        : AsMotor.IsStalled;

    /// <summary>Mean of the volts at its leads; null when not read.</summary>
    public double? Volts => AsMotor.Volts.Count == 0 ? null : AsMotor.Volts.Average();

    /// <summary>Whether an altitude was given; without one, sea level stands in, and the sentence says so.</summary>
    public bool AltitudeKnown => (Readings.Altitude ?? Need.Site.Altitude) is not null;

    /// <summary>Bubble, mean and dew temperature at a gauge pressure; null when pressure or refrigerant is not known or has no answer.</summary>
    public SaturationTemperatures? At(Pressure? gauge) =>
        gauge is { } pressure ? Readings.Refrigerant?.SaturationAtGauge(pressure, Readings.Altitude ?? Need.Site.Altitude ?? Length.Zero) : null;
}

/// <summary>Temperatures in sentences, US and SI.</summary>
internal static class Degrees
{
    /// <summary>95 °F (35 °C).</summary>
    public static string Of(Temperature temperature) => FormattableString.Invariant($"{temperature.DegreesFahrenheit:0.#} °F ({temperature.DegreesCelsius:0.#} °C)");

    /// <summary>20 °F (11.1 K), of a difference in K.</summary>
    public static string Apart(double kelvin) => FormattableString.Invariant($"{kelvin * 1.8:0.#} °F ({kelvin:0.#} K)");
}
