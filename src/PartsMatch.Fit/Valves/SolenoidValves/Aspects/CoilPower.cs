using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of a coil's power.</summary>
/// <param name="Held">VA while held; null where not given.</param>
public readonly record struct CoilPowerFacet(double? Held);

/// <summary>Does the transformer carry its coil?</summary>
/// <remarks>A coil for 100 V or more hangs on the line, not on a control transformer (practice). At most what the transformer has left, edge included. Where that is not known, no more than the old coil's meets, and more is a check.</remarks>
public sealed class CoilPower() : Aspect<SolenoidValveSpec, SolenoidValveSite, CoilPowerFacet>("Coil's power", isDeciding: false, SolenoidValveSources.CoilPower, new(0.3, 0.4, 0.3))
{
    /// <summary>Volts from which on a coil hangs on the line (practice).</summary>
    private const double LineVolts = 100;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["coilPower"], ["transformerLeft", "coilSupplyVolts"]);

    /// <inheritdoc/>
    public override CoilPowerFacet Read(SolenoidValveSpec part) => new(Rounded.Voltamperes(part.CoilPower));

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, CoilPowerFacet facet)
    {
        var left = Rounded.Voltamperes(need.Site.TransformerLeft);
        var old = Rounded.Voltamperes(need.Plate.CoilPower);
        return (left, old, facet.Held) switch
        {
            (_, _, null) => Finding.Unknown(Side.Part, "coilPower", $"The VA of its coil are not given."),
            ({ } most, _, { } held) when Within.AtMost(held, most) => Finding.Meets($"Its coil takes {held:0.#} VA; the transformer has {most:0.#} VA left.") with { Margin = new(most - held, "VA") },
            ({ } most, _, { } held) => Finding.Fails(new(most - held, "VA"), $"Its coil takes {held:0.#} VA; the transformer has {most:0.#} VA left."),
            (null, { } before, { } held) when Within.AtMost(held, before) => Finding.Meets($"Its coil takes {held:0.#} VA, no more than the old one's {before:0.#} VA."),
            (null, _, { } held) when Rounded.Volts(need.Site.CoilSupplyVolts) is >= LineVolts => Finding.Meets($"Its coil takes {held:0.#} VA from the line, which needs no transformer."),
            (null, _, { } held) => Finding.MeetsWith([new(SolenoidValveChanges.CheckTransformer, $"see that the transformer has {held:0.#} VA left for its coil")], $"Its coil takes {held:0.#} VA{(old is { } before ? $", the old one took {before:0.#} VA" : string.Empty)}; what the transformer has left is not known."),
        };
    }
}
