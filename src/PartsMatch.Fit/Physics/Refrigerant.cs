using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Physics;

/// <summary>The temperatures at which a refrigerant boils and condenses at one pressure; without glide all three are one.</summary>
/// <param name="Bubble">Where the first bubble forms: liquid leaving a condenser, condensing split, subcooling.</param>
/// <param name="Dew">Where the last drop goes: suction superheat.</param>
public readonly record struct SaturationTemperatures(Temperature Bubble, Temperature Dew)
{
    /// <summary>Half way between the two.</summary>
    public Temperature Mean => Temperature.FromKelvins((Bubble.Kelvins + Dew.Kelvins) / 2);

    /// <summary>From bubble to dew.</summary>
    public TemperatureDelta Glide => TemperatureDelta.FromKelvins(Dew.Kelvins - Bubble.Kelvins);
}

/// <summary>A refrigerant: its name and safety class, and where its equations are known, its pressure at saturation. There is one object a refrigerant; get it from <see cref="Refrigerants"/>.</summary>
/// <remarks>
/// Pressures are absolute except in <see cref="SaturationAtGauge"/>. A temperature or pressure outside the equations' range has no answer (null), and neither has any
/// of a refrigerant without equations. Bubble and dew pressures agree with the full equations of state within 0.03 % from −50 to 60 °C; R-448A's and R-449A's are
/// fitted to a mixture model and perhaps 1 % off.
/// </remarks>
public sealed class Refrigerant : IHaveTextForm<Refrigerant>
{
    private readonly SaturationCurve? bubble;
    private readonly SaturationCurve? dew;
    private readonly SaturatedStates? states;

    internal Refrigerant(string name, string safetyClass, IReadOnlyList<string> alsoCalled, Source classSource, SaturationCurve? bubble, SaturationCurve? dew, SaturatedStates? states)
    {
        (Name, SafetyClass, AlsoCalled, ClassSource) = (name, safetyClass, alsoCalled, classSource);
        (this.bubble, this.dew, this.states) = (bubble, dew, states);
    }

    /// <inheritdoc/>
    public static TextForm<Refrigerant> Form { get; } = new RefrigerantForm();

    /// <summary>The designation of ASHRAE 34: R-404A.</summary>
    public string Name { get; }

    /// <summary>The safety class of ASHRAE 34: A1, A2L, A3, B1, B2L.</summary>
    public string SafetyClass { get; }

    /// <summary>Whether it burns: any class but a 1.</summary>
    public bool IsFlammable => Flammability > 0;

    /// <summary>How readily it burns, by the order of ASHRAE 34: 0 for a class of 1, then 2L, 2 and, most readily, 3.</summary>
    public int Flammability => SafetyClass[1..] switch { "1" => 0, "2L" => 1, "2" => 2, _ => 3 };

    /// <summary>Whether it is of higher toxicity: class B.</summary>
    public bool IsToxic => SafetyClass.StartsWith('B');

    /// <summary>Common names for the same substance: propane.</summary>
    public IReadOnlyList<string> AlsoCalled { get; }

    /// <summary>Where the safety class comes from.</summary>
    public Source ClassSource { get; }

    /// <summary>Whether its saturation can be computed here.</summary>
    public bool HasCurve => bubble is not null;

    /// <summary>Where its equations come from; null without any.</summary>
    public Source? CurveSource => bubble?.Source;

    /// <summary>The lowest temperature that both of its equations hold for; null without any.</summary>
    public Temperature? LeastTemperature => bubble is null || dew is null ? null : Temperature.FromKelvins(Math.Max(bubble.LeastKelvin, dew.LeastKelvin));

    /// <summary>The highest temperature that both of its equations hold for; null without any.</summary>
    public Temperature? MostTemperature => bubble is null || dew is null ? null : Temperature.FromKelvins(Math.Min(bubble.MostKelvin, dew.MostKelvin));

    /// <summary>Where its critical point lies, as its bubble equation takes it: the pressure that it is reduced by, absolute; null without any.</summary>
    /// <remarks>
    /// R-448A's and R-449A's, 4.75 and 4.51 MPa, are constants of a fit that holds to 65 °C, and no critical pressures: those are 4.66 and 4.45 MPa (from memory, unchecked).
    /// What is asked of it is the drop at which liquid chokes: 3 % off here are under 1.5 % there, at whatever inlet, since only a root of it enters.
    /// </remarks>
    public Pressure? CriticalPressure => bubble is null ? null : Pressure.FromPascals(bubble.ReducingPascal);

    /// <summary>Whether density and enthalpy, and so the flow that a load asks for, can be computed here.</summary>
    public bool HasStates => states is not null;

    /// <summary>Density of liquid on the bubble line, kg/m³, −40 to 60 °C; null without tables or outside them.</summary>
    /// <param name="celsius">Its temperature, °C.</param>
    public double? LiquidDensity(double celsius) => states?.LiquidDensity(celsius);

    /// <summary>Density of vapour on the dew line, kg/m³, −40 to 60 °C; null without tables or outside them.</summary>
    /// <param name="celsius">Its temperature, °C.</param>
    public double? VapourDensity(double celsius) => states?.VapourDensity(celsius);

    /// <summary>Enthalpy of liquid on the bubble line, kJ/kg (200 at 0 °C), −40 to 60 °C; null without tables or outside them.</summary>
    /// <param name="celsius">Its temperature, °C.</param>
    public double? LiquidEnthalpy(double celsius) => states?.LiquidEnthalpy(celsius);

    /// <summary>Enthalpy of vapour on the dew line, kJ/kg (200 for liquid at 0 °C), −40 to 60 °C; null without tables or outside them.</summary>
    /// <param name="celsius">Its temperature, °C.</param>
    public double? VapourEnthalpy(double celsius) => states?.VapourEnthalpy(celsius);

    /// <summary>Absolute pressure at which liquid of a temperature begins to boil; null outside the range.</summary>
    public Pressure? BubblePressure(Temperature temperature) => PressureOn(bubble, temperature);

    /// <summary>Absolute pressure at which vapour of a temperature begins to condense; null outside the range.</summary>
    public Pressure? DewPressure(Temperature temperature) => PressureOn(dew, temperature);

    /// <summary>Temperature at which liquid under an absolute pressure begins to boil; null outside the range.</summary>
    public Temperature? BubbleTemperature(Pressure absolute) => TemperatureOn(bubble, absolute);

    /// <summary>Temperature at which vapour under an absolute pressure begins to condense; null outside the range.</summary>
    public Temperature? DewTemperature(Pressure absolute) => TemperatureOn(dew, absolute);

    /// <summary>Bubble, mean and dew temperature for what a gauge shows.</summary>
    /// <param name="gauge">Above the air round it, in any unit (psig, bar); negative for a vacuum.</param>
    /// <param name="altitude">Of the site, −500 to 11 000 m: at 1500 m the air is 17 kPa thinner, and so is the absolute pressure behind the same reading.</param>
    /// <returns>The temperatures; null without equations, outside their range, or outside the range of altitudes.</returns>
    public SaturationTemperatures? SaturationAtGauge(Pressure gauge, Length altitude)
    {
        if (!Air.Holds(altitude.Meters)) return null;
        var absolute = Pressure.FromPascals(gauge.Pascals + Air.Pressure(altitude.Meters));
        return BubbleTemperature(absolute) is { } boils && DewTemperature(absolute) is { } condenses ? new(boils, condenses) : null;
    }

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static Pressure? PressureOn(SaturationCurve? curve, Temperature temperature) =>
        curve?.Pascal(temperature.Kelvins) is { } pascal ? Pressure.FromPascals(pascal) : null;

    private static Temperature? TemperatureOn(SaturationCurve? curve, Pressure absolute) =>
        curve?.Kelvin(absolute.Pascals) is { } kelvin ? Temperature.FromKelvins(kelvin) : null;
}
