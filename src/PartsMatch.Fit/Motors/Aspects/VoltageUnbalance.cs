using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>Are the three voltages near enough to one another for a three-phase motor?</summary>
/// <remarks>
/// Up to 1 % meets; up to 5 % the motor carries less, by the curve; beyond, edges excluded, no three-phase motor is to run until the supply is mended (NEMA MG 1 12.45, 14.36).
/// It takes three readings: with fewer it is a reading to take. A single-phase motor meets trivially.
/// </remarks>
public sealed class VoltageUnbalance() : Aspect<MotorSpec, MotorSite, PhaseFacet>("Unbalance", isDeciding: false, CircuitSources.Unbalance, new(0.5, 0, 0.2))
{
    private const double Easy = 1;

    private const double Most = 5;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a supply", "out of balance", Easy, Most, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["phase"], ["volts"]);

    /// <inheritdoc/>
    public override PhaseFacet Read(MotorSpec part) => new(part.Phase);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, PhaseFacet facet)
    {
        return facet.Phases switch
        {
            Phases.Single => OnOnePhase(),
            Phases.Three => OnThreePhases(need),
            _ => OneVerdict.Of([OnOnePhase(), OnThreePhases(need)], () => Finding.Unknown(Side.Part, "phase", $"Whether the part is three-phase, and so minds unbalance, is not given.")),
        };
    }

    private static Finding OnOnePhase() => Finding.Meets($"A single-phase motor sees one voltage: there is nothing to be out of balance.");

    private static Finding OnThreePhases(MotorNeed need)
    {
        if (need.Site.Volts is not { Count: 3 } volts) return Finding.Unknown(Side.Site, "volts", $"Unbalance needs all three voltages between lines; up to 1 % costs nothing, 5 % is the limit.");
        var percent = Physics.Unbalance.Percent(Rounded.To(volts[0].Volts, 1), Rounded.To(volts[1].Volts, 1), Rounded.To(volts[2].Volts, 1));
        var finding = UnbalanceDerating.Factor(percent) is { } factor
            ? Finding.Meets($"The three voltages are {percent:0.00} % out of balance; up to 1 % costs nothing, 5 % is the limit.") with
            {
                CautionWords = Within.AtMost(percent, Easy)
                    ? null
                    : (FormattableString)$"At {percent:0.00} % unbalance a three-phase motor carries {factor:0.00} of its power, and its windings heat {Physics.Unbalance.AddedRisePercent(percent):0} % more (NEMA MG 1 14.36): look for the cause.",
            }
            : Finding.Fails($"The three voltages are {percent:0.00} % out of balance, and 5 % is the limit: no three-phase motor fits this supply; mend it first.");
        return finding with { Shortfall = SupplyWindows.Shortfall(percent, Easy, Most), Margin = new(Most - percent, "%") };
    }
}
