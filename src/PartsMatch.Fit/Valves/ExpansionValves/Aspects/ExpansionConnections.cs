using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.Pipes;

namespace PartsMatch.Fit.Valves.ExpansionValves.Aspects;

/// <summary>Do its connections go onto the pipes there?</summary>
/// <remarks>The same size and joint meets; reducers or new joints are changes, that cost the more the further the sizes are apart.</remarks>
public sealed class ExpansionConnections() : Aspect<ExpansionValveSpec, ExpansionValveSite, ConnectionsFacet>("Connections", isDeciding: false, ValveSources.Connections, new(1.5, 1, 0.6))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = PipeFit.Measure;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["joint", "inletSize", "outletSize"], ["lineJoint", "inletLine", "outletLine"]);

    /// <inheritdoc/>
    public override ConnectionsFacet Read(ExpansionValveSpec part) => new(part.Joint, Rounded.Millimetres(part.InletSize), Rounded.Millimetres(part.OutletSize));

    /// <inheritdoc/>
    public override Finding Judge(ExpansionNeed need, ConnectionsFacet facet) =>
        PipeFit.Judge(facet, need.Once(static need => new ConnectionsFacet(need.Site.LineJoint, Rounded.Millimetres(need.Site.InletLine), Rounded.Millimetres(need.Site.OutletLine))));
}
