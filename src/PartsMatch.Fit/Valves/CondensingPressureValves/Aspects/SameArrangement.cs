using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

/// <summary>What is read of a valve's arrangement.</summary>
/// <param name="How">How it keeps the pressure up; null where not given.</param>
public readonly record struct ArrangementFacet(Arrangement? How);

/// <summary>Is it the arrangement that the pipes are laid for?</summary>
/// <remarks>The same or not at all.</remarks>
public sealed class SameArrangement() : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, ArrangementFacet>("Arrangement", isDeciding: true, CondensingPressureValveSources.HeadArrangement, new(0.3, 0.5, 2))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["arrangement"], ["needsArrangement"]);

    /// <inheritdoc/>
    public override ArrangementFacet Read(CondensingPressureValveSpec part) => new(part.Arrangement);

    /// <inheritdoc/>
    public override Finding Judge(HeadNeed need, ArrangementFacet facet) => (need.Site.NeedsArrangement, facet.How) switch
    {
        (_, null) => Finding.Unknown(Side.Part, "arrangement", $"How it keeps the pressure up is not given."),
        (null, { } has) => Finding.Unknown(Side.Site, "needsArrangement", $"It is a {new Spelt<Arrangement>(has)}; what the pipes there are laid for is not known."),
        ({ } needs, { } has) when needs == has => Finding.Meets($"It is a {new Spelt<Arrangement>(has)}, as the pipes are laid for."),
        ({ } needs, { } has) => Finding.Fails($"It is a {new Spelt<Arrangement>(has)}; the pipes are laid for a {new Spelt<Arrangement>(needs)}."),
    };
}
