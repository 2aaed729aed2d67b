using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Capacitors.Aspects;

/// <summary>What duty reads of a capacitor.</summary>
/// <param name="MadeTo">Run or start; null when not known.</param>
public readonly record struct DutyFacet(CapacitorDuty? MadeTo);

/// <summary>Is the capacitor made to stay in circuit?</summary>
/// <remarks>A start capacitor left in circuit bursts within minutes: it fails.</remarks>
public sealed class Duty() : Aspect<CapacitorSpec, CapacitorSite, DutyFacet>("Run or start", isDeciding: true, CapacitorSources.CapacitorDuty, new(0.3, 1, 2.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["duty"], []);

    /// <inheritdoc/>
    public override DutyFacet Read(CapacitorSpec part) => new(part.Duty);

    /// <inheritdoc/>
    public override Finding Judge(CapacitorNeed need, DutyFacet facet) => facet.MadeTo switch
    {
        CapacitorDuty.Run => Finding.Meets($"It is a run capacitor, made to stay in circuit."),
        CapacitorDuty.Start => Finding.Fails($"It is a start capacitor, made for seconds; a run capacitor stays in circuit."),
        _ => Finding.Unknown(Side.Part, "duty", $"A run capacitor is needed; whether it is one is not known."),
    };
}
