namespace PartsMatch.Fit.Quantities;

/// <summary>A length in a sentence, in inches and millimetres; formed only when the sentence is shown.</summary>
/// <param name="Millimetres">The length, as a facet holds it.</param>
internal readonly record struct Shown(double Millimetres)
{
    private const double InchInMillimetres = 25.4;

    /// <summary>Facets are rounded to 0.01 mm: a fraction of an inch is meant when it lies that near.</summary>
    private const double Near = 0.006;

    /// <summary>1/2 in (12.7 mm), 5.6 in (142.24 mm), 8 mm (0.315 in).</summary>
    public override string ToString()
    {
        var sixtyFourths = Math.Round(Millimetres * 64 / InchInMillimetres);
        var hundredths = Math.Round(Millimetres / InchInMillimetres, 2);
        if (Math.Abs((sixtyFourths * InchInMillimetres / 64) - Millimetres) < Near)
        {
            var inches = sixtyFourths / 64;
            return FormattableString.Invariant($"{FractionText.Exactly(inches) ?? inches.ToString("0", global::System.Globalization.CultureInfo.InvariantCulture)} in ({Millimetres:0.##} mm)");
        }

        return Math.Abs((hundredths * InchInMillimetres) - Millimetres) < Near
            ? FormattableString.Invariant($"{hundredths:0.##} in ({Millimetres:0.##} mm)")
            : FormattableString.Invariant($"{Millimetres:0.##} mm ({Millimetres / InchInMillimetres:0.###} in)");
    }
}

/// <summary>The temperature of air round a motor in a sentence, in °C and °F as motors are marked; formed only when the sentence is shown.</summary>
/// <param name="Celsius">The temperature, as a facet holds it.</param>
internal readonly record struct ShownAir(double Celsius)
{
    /// <summary>60 °C (140 °F).</summary>
    public override string ToString() => FormattableString.Invariant($"{Celsius:0.#;−0.#;0} °C ({(Celsius * 1.8) + 32:0;−0;0} °F)");
}

/// <summary>A temperature in a sentence, in °F and °C; formed only when the sentence is shown.</summary>
/// <param name="Celsius">As a facet holds it.</param>
internal readonly record struct ShownTemperature(double Celsius)
{
    /// <summary>55 °F (12.8 °C).</summary>
    public override string ToString() => FormattableString.Invariant($"{(Celsius * 1.8) + 32:0.#;−0.#;0} °F ({Celsius:0.#;−0.#;0} °C)");
}

/// <summary>A refrigerating capacity or a load in a sentence, in tons and kW; formed only when the sentence is shown.</summary>
/// <param name="Watts">As a facet holds it.</param>
internal readonly record struct ShownCapacity(double Watts)
{
    /// <summary>12 000 Btu/h in watts, as <see cref="CoolingLoad"/> has it.</summary>
    private const double WattsATon = 3516.85;

    /// <summary>2 tons (7.03 kW), 1 ton (3.52 kW).</summary>
    public override string ToString()
    {
        var tons = Math.Round(Watts / WattsATon, 2);
        return FormattableString.Invariant($"{tons:0.##} {(tons.Equals(1) ? "ton" : "tons")} ({Watts / 1000:0.##} kW)");
    }
}

/// <summary>A difference of temperatures in a sentence, in °F and K; formed only when the sentence is shown.</summary>
/// <param name="Kelvins">As a facet holds it.</param>
internal readonly record struct ShownDifference(double Kelvins)
{
    /// <summary>So far off a whole °F, K, it is the one that was rounded to 2.8 or 5.6 K; a tenth of a °F is more.</summary>
    private const double Near = 0.05;

    /// <summary>5 °F (2.8 K).</summary>
    public override string ToString()
    {
        var whole = Math.Round(Kelvins * 1.8);
        return FormattableString.Invariant($"{(Math.Abs((whole / 1.8) - Kelvins) < Near ? whole : Kelvins * 1.8):0.#} °F ({Kelvins:0.#} K)");
    }
}

/// <summary>An altitude in a sentence, in m and ft; formed only when the sentence is shown.</summary>
/// <param name="Metres">Above sea level.</param>
internal readonly record struct ShownAltitude(double Metres)
{
    /// <summary>1524 m (5000 ft).</summary>
    public override string ToString() => FormattableString.Invariant($"{Metres:0} m ({Metres / 0.3048:0} ft)");
}

/// <summary>A pressure or a difference of pressures in a sentence, in psi and kPa; formed only when the sentence is shown.</summary>
/// <param name="Kilopascals">As a facet holds it.</param>
internal readonly record struct ShownPressure(double Kilopascals)
{
    private const double KilopascalsAPsi = 6.894757;

    /// <summary>300 psi (2068 kPa); under 20 psi with a digit behind the point.</summary>
    public override string ToString()
    {
        var psi = Kilopascals / KilopascalsAPsi;
        return Math.Abs(psi) < 20 ? FormattableString.Invariant($"{psi:0.#;−0.#;0} psi ({Kilopascals:0.#;−0.#;0} kPa)") : FormattableString.Invariant($"{psi:0;−0;0} psi ({Kilopascals:0;−0;0} kPa)");
    }
}

/// <summary>A choice in a sentence, by its words; formed only when the sentence is shown.</summary>
/// <typeparam name="T">The choices.</typeparam>
/// <param name="Choice">The choice.</param>
internal readonly record struct Spelt<T>(T Choice)
    where T : struct, Enum
{
    private static readonly EnumForm<T> Form = new();

    /// <summary>The words as they are written.</summary>
    public override string ToString() => Form.Write(Choice);
}
