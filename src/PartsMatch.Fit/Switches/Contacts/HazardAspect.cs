using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Is the switch no source of ignition where something could burn?</summary>
/// <remarks>By its contacts and its marks, as every part that could set something alight is judged: see the rule.</remarks>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
public abstract class HazardAspect<TSpec, TSite>() : Aspect<TSpec, TSite, IgnitionFacet>("Hazard", isDeciding: true, IgnitionSources.Hazard, new(0.3, 0.5, 1))
    where TSpec : ContactSpec
    where TSite : ContactSite
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["contacts", "hazards"], ["hazard", "refrigerant"]);

    /// <inheritdoc/>
    public override IgnitionFacet Read(TSpec part) => IgnitionFacet.Of(part.Contacts, part.Hazards);

    /// <inheritdoc/>
    public override Finding Judge(Need<TSpec, TSite> need, IgnitionFacet facet) => IgnitionRule.Judge(Read(need.Plate), facet, need.Site.Hazard, need.Site.Refrigerant);
}
