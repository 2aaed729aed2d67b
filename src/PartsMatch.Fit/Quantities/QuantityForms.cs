using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Fit.Quantities;

/// <summary>The quantities of the trade, each with its units, range and example. Ranges are wide: they refuse slips of the thumb, not rare machines.</summary>
/// <remarks>A plate's horsepower is the electric one, exactly 746 W (NIST SP 811), not 550 ft·lbf/s.</remarks>
public static class QuantityForms
{
    // Before the forms: they are made in the order in which they stand.
    private static readonly UnitText Feet = new(LengthUnit.Foot, "ft", 0, false, "foot", "feet", "'");
    private static readonly UnitText Metres = new(LengthUnit.Meter, "m", 0, false, "metre", "metres", "meter", "meters");

    // 20 in Hg, 20 in. vac., 20 inches of vacuum, 20" Hg: what counts down from the air is inches of mercury, whether they are named or not.
    private static readonly IEnumerable<string> Vacuum =
        from inches in (string[])["in", "in ", "in. ", "inch ", "inches ", "\"", "\" ", "″", "″ ", "”", "” "]
        from what in (string[])["Hg", "Hg.", "Hg vac", "Hg vac.", "Hg vacuum", "vac", "vac.", "vacuum", "mercury", "of Hg", "of mercury", "of vacuum"]
        where $"{inches}{what}" != "inHg"
        select $"{inches}{what}";

    /// <summary>Shaft or input power; 0.1 W to 1 MW.</summary>
    public static QuantityForm<Power> Power { get; } = new(
        "a power", "1/4 hp", 0.1, 1e6,
        us: new(PowerUnit.ElectricalHorsepower, "hp", 4, Fractions: true, "horsepower", "h.p."),
        si: new(PowerUnit.Watt, "W", 1, false, "watt", "watts"),
        new UnitText(PowerUnit.Kilowatt, "kW", 3));

    /// <summary>Voltage; 1 V to 15 kV.</summary>
    public static QuantityForm<ElectricPotential> Volts { get; } = Single<ElectricPotential>(
        "a voltage", "230 V", 1, 15_000, new(ElectricPotentialUnit.Volt, "V", 1, false, "volt", "volts", "VAC", "V AC", "V~"));

    /// <summary>Current; 1 mA to 10 kA.</summary>
    public static QuantityForm<ElectricCurrent> Amps { get; } = Single<ElectricCurrent>(
        "a current", "2.1 A", 0.001, 10_000, new(ElectricCurrentUnit.Ampere, "A", 3, false, "amp", "amps", "ampere", "amperes"));

    /// <summary>What a coil takes, or a transformer gives; 0.1 VA to 100 kVA.</summary>
    public static QuantityForm<ElectricApparentPower> VoltAmperes { get; } = Single<ElectricApparentPower>(
        "an apparent power", "8 VA", 0.1, 100_000, new(ElectricApparentPowerUnit.Voltampere, "VA", 1, false, "V·A", "volt-amperes", "volt-amps", "volt amps"));

    /// <summary>Frequency; 1 to 1000 Hz.</summary>
    public static QuantityForm<Frequency> Hertz { get; } = Single<Frequency>(
        "a frequency", "60 Hz", 1, 1000, new(FrequencyUnit.Hertz, "Hz", 2, false, "hertz", "cycles", "cyc", "cy", "~"));

    /// <summary>Speed of a shaft; 1 to 100 000 rpm.</summary>
    public static QuantityForm<RotationalSpeed> Speed { get; } = Single<RotationalSpeed>(
        "a speed", "1075 rpm", 1, 100_000, new(RotationalSpeedUnit.RevolutionPerMinute, "rpm", 0, false, "r/min", "rev/min", "/min", "1/min", "min-1", "min⁻¹", "u/min", "upm", "tr/min", "r.p.m."));

    /// <summary>Capacitance; 0.01 to 10 000 µF.</summary>
    public static QuantityForm<ElectricCapacitance> Capacitance { get; } = Single<ElectricCapacitance>(
        "a capacitance", "5 µF", 0.01, 10_000, new(ElectricCapacitanceUnit.Microfarad, "µF", 2, false, "uF", "μF", "mfd", "mf", "microfarad", "microfarads"));

    /// <summary>Length, diameter, stroke, altitude; 0.01 mm to 11 km, as high as the standard atmosphere is known here.</summary>
    public static QuantityForm<Length> Length { get; } = new(
        "a length", "1/2 in", 0.01, 1.1e7,
        us: new(LengthUnit.Inch, "in", 3, Fractions: true, "inch", "inches", "\"", "″", "”"),
        si: new(LengthUnit.Millimeter, "mm", 2, false, "millimetre", "millimetres", "millimeter", "millimeters"),
        Feet,
        new UnitText(LengthUnit.Centimeter, "cm", 2),
        Metres)
    {
        FractionsOfInches = true,
        MostDigits = 6,

        // No part is 10 m long: that is an altitude.
        Large = (Feet, Metres, 10_000),
    };

    /// <summary>Temperature; −100 to 300 °C.</summary>
    public static QuantityForm<Temperature> Temperature { get; } = new(
        "a temperature", "60 °C", -100, 300,
        us: new(TemperatureUnit.DegreeFahrenheit, "°F", 1, false, "F", "degF", "deg F", "º F", "ºF", "° F"),
        si: new(TemperatureUnit.DegreeCelsius, "°C", 1, false, "C", "degC", "deg C", "º C", "ºC", "° C"))
    {
        Step = 10,
    };

    /// <summary>Angle of a blade; 0.1 to 360 degrees.</summary>
    public static QuantityForm<Angle> Angle { get; } = Single<Angle>(
        "an angle", "27 °", 0.1, 360, new(AngleUnit.Degree, "°", 1, false, "deg", "degrees"));

    /// <summary>A ratio in percent; 0.01 to 1000 %.</summary>
    public static QuantityForm<Ratio> Percent { get; } = Single<Ratio>(
        "a percentage", "68 %", 0.01, 1000, new(RatioUnit.Percent, "%", 2, false, "percent", "pct"));

    /// <summary>A difference of temperatures; 0 to 100 K.</summary>
    public static QuantityForm<TemperatureDelta> TemperatureDifference { get; } = new(
        "a temperature difference", "20 °F", 0, 100,
        us: new(TemperatureDeltaUnit.DegreeFahrenheit, "°F", 1, false, "F", "degF", "deg F", "° F"),
        si: new(TemperatureDeltaUnit.Kelvin, "K", 1, false, "°C", "C", "degC", "deg C", "° C"));

    /// <summary>What a pressure gauge shows, zero being the air round it; a full vacuum to 20 MPa.</summary>
    public static QuantityForm<Pressure> GaugePressure { get; } = new(
        "a gauge pressure", "220 psi", -101.325, 20_000,
        us: new(PressureUnit.PoundForcePerSquareInch, "psi", 1, false, "psig", "lb/in²", "lbf/in²", "lb", "lbs", "#"),
        si: new(PressureUnit.Kilopascal, "kPa", 0, false, "kPag"),
        new UnitText(PressureUnit.Bar, "bar", 2, false, "barg", "bar g"),
        new UnitText(PressureUnit.Megapascal, "MPa", 3),
        new UnitText(PressureUnit.InchOfMercury, "inHg", 1, false, [.. Vacuum]) { CountsDown = true })
    {
        Step = 100,
    };

    /// <summary>Volts that a meter shows: zero, too.</summary>
    public static QuantityForm<ElectricPotential> MeteredVolts { get; } = Metered(Volts);

    /// <summary>Amps that a meter shows: zero, too.</summary>
    public static QuantityForm<ElectricCurrent> MeteredAmps { get; } = Metered(Amps);

    /// <summary>Microfarads that a meter shows: zero, too.</summary>
    public static QuantityForm<ElectricCapacitance> MeteredCapacitance { get; } = Metered(Capacitance);

    private static QuantityForm<T> Metered<T>(QuantityForm<T> plates)
        where T : struct, IQuantity => new(plates.Name, plates.Example, 0, plates.Most, plates.Us, plates.Si);

    private static QuantityForm<T> Single<T>(string name, string example, double least, double most, UnitText unit)
        where T : struct, IQuantity => new(name, example, least, most, unit, unit);
}
