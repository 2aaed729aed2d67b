using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the phase aspect reads.</summary>
/// <param name="Phases">Phases of the motor; null when unknown.</param>
public readonly record struct PhaseFacet(Phases? Phases);

/// <summary>Can the motor run on the phases that reach it?</summary>
/// <remarks>A single-phase motor runs from two legs of a three-phase supply; a three-phase one never runs on one phase.</remarks>
public sealed class Phase() : Aspect<MotorSpec, MotorSite, PhaseFacet>("Phase", isDeciding: true, MotorSources.PhaseCount, new(1, 0.5, 1.5))
{
    private static readonly Change TwoLegs = new(SupplyChanges.UseTwoLegs, $"connect it to two of the three legs and cap the third") { Kit = [SafeSteps.Connectors(1)] };

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["phase"], ["supplyPhase"]);

    /// <inheritdoc/>
    public override PhaseFacet Read(MotorSpec part) => new(part.Phase);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, PhaseFacet facet) => facet.Phases switch
    {
        Phases.Single => SinglePhase(need),
        Phases.Three => ThreePhase(need),
        _ when need.Site.SupplyPhase == Phases.Three && SinglePhase(need).Verdict == Verdict.Meets => Finding.Meets($"Three phases reach the motor: it runs there whether it needs one or three."),
        _ => Finding.Unknown(Side.Part, "phase", $"Whether the part is single-phase or three-phase is not given."),
    };

    private static Finding SinglePhase(MotorNeed need) =>
        need.Site.SupplyPhase == Phases.Three && need.Plate.Phase != Phases.Single
            ? Finding.MeetsWith([TwoLegs], $"A single-phase motor runs between two of the three legs there.")
            : Finding.Meets($"A single-phase motor needs one phase, or two legs of three.");

    private static Finding ThreePhase(MotorNeed need) => need.Site.SupplyPhase switch
    {
        Phases.Three => Finding.Meets($"The motor needs three phases, and three reach it."),
        Phases.Single => Finding.Fails($"The motor needs three phases, and one reaches it: it would not start."),
        _ => Finding.Unknown(Side.Site, "supplyPhase", $"The motor needs three phases; on one it would not start."),
    };
}
