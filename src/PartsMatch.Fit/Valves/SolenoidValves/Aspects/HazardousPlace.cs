using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>Is the valve with its coil no source of ignition where something could burn?</summary>
/// <remarks>It has no contacts, and goes by its marks: one for the place meets, for ordinary places alone fails, and where none is given its listing is to be checked beside an A2L or A3 refrigerant.</remarks>
public sealed class HazardousPlace() : Aspect<SolenoidValveSpec, SolenoidValveSite, IgnitionFacet>("Hazard", isDeciding: true, IgnitionSources.Hazard, new(0.3, 0.2, 1))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["hazards"], ["hazard", "refrigerant"]);

    /// <inheritdoc/>
    public override IgnitionFacet Read(SolenoidValveSpec part) => IgnitionFacet.Of(ContactEnclosure.SolidState, part.Hazards);

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, IgnitionFacet facet) => IgnitionRule.Judge(Read(need.Plate), facet, need.Site.Hazard, need.Site.Refrigerant);
}
