using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>Does the transformer carry the coil that goes in?</summary>
/// <remarks>A coil for 100 V or more hangs on the line, not on a control transformer (practice). At most what the transformer has left, edge included. Where that is not known, no more than the old coil's meets, and more is a check. Where the volts there ask for another coil of its body, that one's VA count.</remarks>
public sealed class CoilPower() : Aspect<SolenoidValveSpec, SolenoidValveSite, CoilPowerFacet>("Coil's power", isDeciding: false, SolenoidValveSources.CoilPower, new(0.3, 0.4, 0.3))
{
    /// <summary>Volts from which on a coil hangs on the line (practice).</summary>
    private const double LineVolts = 100;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["coilPower", "furtherCoils"], ["transformerLeft", "coilSupplyVolts"]) { Besides = ["coilVolts", "coilFrequency", "coilCurrent", "coilSupplyFrequency", "coilSupplyCurrent"] };

    /// <inheritdoc/>
    public override CoilPowerFacet Read(SolenoidValveSpec part) => CoilPowerFacet.Of(part.CoilPower, part.CoilVolts, part.CoilCurrent, part.CoilFrequency, part.FurtherCoils);

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, CoilPowerFacet facet) =>
        CoilGoingIn.Judge(facet, SolenoidCoils.Supply(need), SolenoidCoils.Window, SolenoidCoils.Names, (coil, va) => Takes(need, coil, va));

    private static Finding Takes(SolenoidNeed need, CoilName coil, double va)
    {
        var (left, old) = (Rounded.Voltamperes(need.Site.TransformerLeft), Rounded.Voltamperes(need.Plate.CoilPower));
        if (left is { } most)
        {
            FormattableString sentence = $"{coil} takes {va:0.#} VA; the transformer has {most:0.#} VA left.";
            return (Within.AtMost(va, most) ? Finding.Meets(sentence) : Finding.Fails(sentence)) with { Margin = new(most - va, "VA") };
        }

        if (old is { } before && Within.AtMost(va, before)) return Finding.Meets($"{coil} takes {va:0.#} VA, no more than the old one's {before:0.#} VA.");
        var supply = SolenoidCoils.Supply(need);
        return (supply.Volts ?? (supply.Old.Count > 0 ? supply.Old.Min(coil => coil.Low) : null)) is >= LineVolts
            ? Finding.Meets($"{coil} takes {va:0.#} VA from the line, which needs no transformer.")
            : Finding.MeetsWith([new(SolenoidValveChanges.CheckTransformer, $"see that the transformer has {va:0.#} VA left for its coil")], $"{coil} takes {va:0.#} VA{(old is { } took ? $", the old one took {took:0.#} VA" : string.Empty)}; what the transformer has left is not known.");
    }
}
