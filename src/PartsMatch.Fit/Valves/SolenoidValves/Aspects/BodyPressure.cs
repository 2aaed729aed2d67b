using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>May the body hold the design pressure of its side?</summary>
/// <remarks>At least the design pressure, edge included; where that was not read, no less than the old one's meets.</remarks>
public sealed class BodyPressure() : Aspect<SolenoidValveSpec, SolenoidValveSite, PressureFacet>("Working pressure", isDeciding: true, ValveSources.WorkingPressure, new(0.3, 0.5, 1.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["workingPressure"], ["designPressure"]);

    /// <inheritdoc/>
    public override PressureFacet Read(SolenoidValveSpec part) => new(Rounded.Kilopascal(part.WorkingPressure));

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, PressureFacet facet) => ValvePressure.Judge(facet, Rounded.Kilopascal(need.Site.DesignPressure), Rounded.Kilopascal(need.Plate.WorkingPressure));
}
