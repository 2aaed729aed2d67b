using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Judging;

/// <summary>What was read at a run capacitor, by itself or beside its motor.</summary>
/// <param name="Meter">µF by a meter, power off.</param>
/// <param name="Volts">Volts across it under load.</param>
/// <param name="Amps">Amps in its lead under load.</param>
internal sealed record MeasuredCapacitor(Measured<ElectricCapacitance>? Meter, Measured<ElectricPotential>? Volts, Measured<ElectricCurrent>? Amps)
{
    /// <summary>Percent either way (EIA-456-A practice).</summary>
    public const double UsualPercent = 6;

    /// <summary>What public supplies have (IEC 60196).</summary>
    private static readonly double[] PublicHertz = [50, 60];

    /// <summary>Whether it was judged by volts and amps under load, and not by a meter at the capacitor itself.</summary>
    public bool IsUnderLoad => Meter is null && Amps is not null;

    /// <summary>Whether there is current in its lead under load.</summary>
    public bool CarriesCurrent => Amps?.Legs[0].Amperes > 0;

    /// <summary>Compares what was measured with what is asked for; null when nothing was read.</summary>
    /// <param name="asked">µF asked for; null when not known.</param>
    /// <param name="percent">Tolerance either way, percent.</param>
    /// <param name="hertz">Frequency, Hz; without it a reading under load counts only if it says the same at 50 and at 60 Hz.</param>
    public Ruling? Judge(double? asked, double percent, double? hertz)
    {
        if (Meter is { } meter) return Compare(asked, percent, FormattableString.Invariant($"A meter shows {meter.Legs[0].Microfarads:0.##} µF"), meter.Legs[0].Microfarads);
        if (Volts is null && Amps is null) return null;
        if (Volts is null) return Ruling.Read("capacitorVolts", "Measure the volts across the capacitor as well: its µF follow from amps and volts.");
        if (Amps is null) return Ruling.Read("capacitorAmps", "Measure the amps in the capacitor's lead as well: its µF follow from amps and volts.");
        var (volts, amps) = (Volts.Legs[0].Volts, Amps.Legs[0].Amperes);
        if (volts <= 0) return Ruling.CantTell($"There are no volts across the capacitor, so its amps say nothing.").ThenRead("capacitorMicrofarads", "There are no volts across the capacitor: power off, discharge it through a resistor, and measure its µF with a meter.");
        if (amps <= 0) return Ruling.Bad($"{volts:0.#} V across it and no current: the capacitor is open.", $"a current");
        List<Ruling> each = [.. (hertz is { } known ? [known] : PublicHertz).Select(frequency => Compare(
            asked,
            percent,
            FormattableString.Invariant($"{amps:0.###} A at {volts:0.#} V and {frequency:0.##} Hz are {CapacitorFormula.Microfarads(amps, volts, frequency):0.0#} µF"),
            CapacitorFormula.Microfarads(amps, volts, frequency)))];
        return each.TrueForAll(one => one.Verdict == each[0].Verdict)
            ? each[^1]
            : Ruling.CantTell($"At 50 Hz {amps:0.###} A and {volts:0.#} V would say one thing and at 60 Hz another: the supply's frequency is not known.").ThenRead("supplyFrequency", "Its µF follow from amps, volts and frequency: is the supply 50 or 60 Hz?", Side.Site);
    }

    /// <summary>The µF that were read, or that follow from what was; null when neither, or when they hang on a frequency that is not known.</summary>
    /// <param name="hertz">Frequency, Hz.</param>
    public double? Microfarads(double? hertz) =>
        Meter is { } meter ? meter.Legs[0].Microfarads
        : Volts?.Legs[0].Volts is > 0 and var volts && Amps?.Legs[0].Amperes is > 0 and var amps && hertz is { } known ? CapacitorFormula.Microfarads(amps, volts, known) : null;

    private static Ruling Compare(double? asked, double percent, string measured, double microfarads)
    {
        if (asked is not { } right) return Ruling.CantTell($"{measured}; what is asked for is not known.");
        FormattableString limit = $"{right * (1 - (percent / 100)):0.##} to {right * (1 + (percent / 100)):0.##} µF";
        return Within.AtMost(Math.Abs(microfarads - right) / right * 100, percent)
            ? Ruling.Good($"{measured}; {right:0.##} µF ±{percent:0.#} % are asked for.", limit)
            : Ruling.Bad($"{measured}; {right:0.##} µF ±{percent:0.#} % are asked for: replace the capacitor.", limit);
    }
}
