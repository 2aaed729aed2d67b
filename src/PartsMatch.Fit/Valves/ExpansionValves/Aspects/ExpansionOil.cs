using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.ExpansionValves.Aspects;

/// <summary>Is the valve listed for the oil there?</summary>
/// <remarks>Listed meets; not listed is unknown, for only its maker can say whether its seals bear it. Where the oil was not read, the oils of the old one's list are followed.</remarks>
public sealed class ExpansionOil() : Aspect<ExpansionValveSpec, ExpansionValveSite, OilFacet>("Oil", isDeciding: false, ValveSources.Oil, new(0.3, 0.3, 0.6))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["oils"], ["oil"]);

    /// <inheritdoc/>
    public override OilFacet Read(ExpansionValveSpec part) => OilFacet.Of(part.Oils);

    /// <inheritdoc/>
    public override Finding Judge(ExpansionNeed need, OilFacet facet) => ValveOil.Judge(facet, need.Site.Oil, need.OnceOfPlate(static plate => OilFacet.Of(plate.Oils)));
}
