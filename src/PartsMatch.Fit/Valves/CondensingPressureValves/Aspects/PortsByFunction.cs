using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.Pipes;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

/// <summary>Do its ports go onto the pipes there, each by its function?</summary>
/// <remarks>The same size and joint meets; reducers or new joints are changes, that cost the more the further the sizes are apart.</remarks>
public sealed class PortsByFunction() : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, ConnectionsFacet>("Ports", isDeciding: false, ValveSources.Connections, new(1.5, 1, 0.6))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["condenserPort", "receiverPort", "joint"], ["condenserPipe", "receiverPipe", "lineJoint"]);

    /// <inheritdoc/>
    public override ConnectionsFacet Read(CondensingPressureValveSpec part) => new(part.Joint, Rounded.Millimetres(part.CondenserPort), Rounded.Millimetres(part.ReceiverPort));

    /// <inheritdoc/>
    public override Finding Judge(HeadNeed need, ConnectionsFacet facet) => PipeFit.Judge(
        facet,
        need.Once(static need => new ConnectionsFacet(need.Site.LineJoint, Rounded.Millimetres(need.Site.CondenserPipe), Rounded.Millimetres(need.Site.ReceiverPipe))),
        new PipeFields("condenserPort", "receiverPort", "condenserPipe", "receiverPipe"));
}
