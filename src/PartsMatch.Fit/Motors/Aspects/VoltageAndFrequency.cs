using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the aspect of volts and frequency together reads.</summary>
/// <param name="Connections">Taps and phases.</param>
/// <param name="Frequency">Rated frequencies.</param>
/// <param name="IsIec">Whether its plate follows IEC.</param>
public readonly record struct VoltageAndFrequencyFacet(TapsFacet Connections, FrequencyFacet Frequency, bool IsIec);

/// <summary>Do volts and frequency, each within its own limit, lie off by no more than 10 % together?</summary>
/// <remarks>
/// The absolute percentages are added (NEMA MG 1 12.44); 10 % exactly meets. A deviation beyond its own limit is for its own aspect to judge: here it is not asked.
/// At the rated frequency the volts alone decide, and within 5 % of a tap no allowed frequency takes the sum over 10 %.
/// </remarks>
public sealed class VoltageAndFrequency() : Aspect<MotorSpec, MotorSite, VoltageAndFrequencyFacet>("Volts and frequency together", isDeciding: true, MotorSources.Running, new(0.7, 0, 0.7))
{
    private const double Most = SupplyWindows.MostTogether;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a supply", "off in volts and frequency together", 100 * SupplyWindows.EasyVoltsOff, 100 * Most, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["voltage", "frequency"], ["volts", "supplyFrequency"]) { Besides = ["standard", "phase", "supplyPhase", "neutralVolts", "supplyArrangement"] };

    /// <inheritdoc/>
    public override VoltageAndFrequencyFacet Read(MotorSpec part) => new(TapsFacet.Of(part), FrequencyFacet.Of(part), part.Standard == PlateStandard.Iec);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, VoltageAndFrequencyFacet facet)
    {
        var frequencyOff = facet.Frequency.Off(need.Once(static need => Rounded.Hertz(need.Site.SupplyFrequency)));
        if (frequencyOff is { } off && !Within.AtMost(off, SupplyWindows.MostFrequencyOff)) return Finding.Meets($"The frequency is {off * 100:0.0} % off, beyond its own limit of 5 %, which decides by itself.");
        if (frequencyOff is < 1e-9) return Finding.Meets($"At the rated frequency the volts alone decide: up to 10 %.");
        if (facet.Connections.Taps.Count == 0) return Finding.Unknown(Side.Part, "voltage", $"The part's voltage is not given.");
        return facet.Connections.ForPhases((need, facet, frequencyOff), static (phases, of) => Judge(of.need, of.facet, phases, of.frequencyOff));
    }

    private static Finding Judge(MotorNeed need, VoltageAndFrequencyFacet facet, Phases phases, double? frequencyOff)
    {
        var taps = facet.Connections.Taps;
        var supply = SupplyVolts.Of(need, phases);
        double? voltsOff = TapChoice.Best(taps, supply, null) is { } best && best.Tap.Takes(best.Supply.Volts) ? best.Off : null;
        if (voltsOff is { } easy && frequencyOff is null && Within.AtMost(easy, SupplyWindows.EasyVoltsOff))
        {
            return Finding.Meets($"The volts are {easy * 100:0.0} % off: even with the 5 % allowed for frequency, both together stay within 10 %.");
        }

        if (voltsOff is { } volts && frequencyOff is { } frequency && Within.AtMost(volts + frequency, Most)) return Sum(Finding.Meets, volts, frequency, need, facet);
        if (!supply.LinesMeasured) return Finding.Unknown(Side.Site, "volts", $"Volts and frequency together may be 10 % off: measure the volts at the motor's leads.");
        if (supply.NeutralMayHelpAny(taps, Most - (frequencyOff ?? 0)))
        {
            return Finding.Unknown(Side.Site, "neutralVolts", $"Volts and frequency together may be 10 % off: measure line to neutral, if a neutral is there.");
        }

        if (voltsOff is null) return Finding.Meets($"The volts are beyond their own limit of 10 %, which decides by itself.");
        if (frequencyOff is { } known) return Sum(sentence => Finding.Fails(sentence), voltsOff.Value, known, need, facet);
        return facet.Frequency.Hertz.Count == 0
            ? Finding.Unknown(Side.Part, "frequency", $"The volts are {voltsOff.Value * 100:0.0} % off; the part's frequency is not given.")
            : Finding.Unknown(Side.Site, "supplyFrequency", $"The volts are {voltsOff.Value * 100:0.0} % off, which leaves {(Most - voltsOff.Value) * 100:0.0} % for the frequency: measure it.");
    }

    private static Finding Sum(Func<Reason, Finding> verdict, double volts, double frequency, MotorNeed need, VoltageAndFrequencyFacet facet)
    {
        var sum = volts + frequency;
        return verdict($"Volts {volts * 100:0.0} % and frequency {frequency * 100:0.0} % off are {sum * 100:0.0} % together; the limit is 10 %{Zone(volts, frequency, need, facet)}.") with
        {
            Shortfall = SupplyWindows.Shortfall(sum, SupplyWindows.EasyVoltsOff, Most),
            Margin = new((Most - sum) * 100, "%"),
        };
    }

    private static string Zone(double volts, double frequency, MotorNeed need, VoltageAndFrequencyFacet facet) =>
        !facet.IsIec && need.Plate.Standard != PlateStandard.Iec ? string.Empty
        : Within.AtMost(volts, SupplyWindows.EasyVoltsOff) && Within.AtMost(frequency, SupplyWindows.EasyFrequencyOff) ? ", and it lies in IEC 60034-1 zone A (±5 % V, ±2 % Hz)"
        : ", and it lies outside IEC 60034-1 zone A (±5 % V, ±2 % Hz)";
}
