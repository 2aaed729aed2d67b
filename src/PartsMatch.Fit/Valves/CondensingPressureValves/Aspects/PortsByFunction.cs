using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.Pipes;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

/// <summary>What is read of a valve's ports.</summary>
/// <param name="Joint">How it is joined; null where not given.</param>
/// <param name="How">Its arrangement, which says what ports it has; null where not given.</param>
/// <param name="Condenser">Tube size of the port from the condenser, mm; null where not given.</param>
/// <param name="Receiver">Tube size of the port to the receiver, mm; null where not given.</param>
/// <param name="Discharge">Tube size of the port for hot gas, mm; null where not given.</param>
public readonly record struct PortsFacet(PipeJoint? Joint, Arrangement? How, double? Condenser, double? Receiver, double? Discharge);

/// <summary>Do its ports go onto the pipes there, each by its function?</summary>
/// <remarks>
/// The same size and joint meets; reducers or new joints are changes, that cost the more the further the sizes are apart. A pipe that it has no port for fails:
/// an inlet regulator takes no hot gas, and a differential check valve nothing from the condenser.
/// </remarks>
public sealed class PortsByFunction() : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, PortsFacet>("Ports", isDeciding: false, CondensingPressureValveSources.Ports, new(1.5, 1, 0.6))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["condenserPort", "receiverPort", "dischargePort"], ["condenserPipe", "receiverPipe", "dischargePipe"]) { Besides = ["joint", "lineJoint", "arrangement"] };

    /// <inheritdoc/>
    public override PortsFacet Read(CondensingPressureValveSpec part) => new(
        part.Joint,
        part.Arrangement,
        Rounded.Millimetres(part.Arrangement.HasCondenserPort() == false ? null : part.CondenserPort),
        Rounded.Millimetres(part.ReceiverPort),
        Rounded.Millimetres(part.Arrangement.HasDischargePort() == false ? null : part.DischargePort));

    /// <inheritdoc/>
    public override Finding Judge(HeadNeed need, PortsFacet facet)
    {
        PipeEnd condenser = new("from the condenser", "condenserPort", "condenserPipe", facet.Condenser, Rounded.Millimetres(need.Site.CondenserPipe));
        PipeEnd receiver = new("to the receiver", "receiverPort", "receiverPipe", facet.Receiver, Rounded.Millimetres(need.Site.ReceiverPipe)) { IsOutlet = true };
        PipeEnd discharge = new("for hot gas", "dischargePort", "dischargePipe", facet.Discharge, Rounded.Millimetres(need.Site.DischargePipe));
        if (facet.How.HasCondenserPort() == false && condenser.Pipe is { } drain) return Finding.Fails($"It is a {new Spelt<Arrangement>(facet.How!.Value)}, which has no port for the {new Shown(drain)} pipe from the condenser.");
        if (facet.How.HasDischargePort() == false && discharge.Pipe is { } hot) return Finding.Fails($"It is an {new Spelt<Arrangement>(facet.How!.Value)}, which has no port for the {new Shown(hot)} pipe for hot gas.");
        return PipeFit.Judge(facet.Joint, need.Site.LineJoint, [.. facet.How.HasCondenserPort() == false ? (PipeEnd[])[] : [condenser], receiver, .. TakesHotGas(facet, discharge) ? (PipeEnd[])[discharge] : []]);
    }

    /// <summary>Where its arrangement is not given, only what was read of a port or a pipe asks for the other.</summary>
    private static bool TakesHotGas(PortsFacet facet, PipeEnd discharge) => facet.How.HasDischargePort() ?? (discharge.Valve is not null || discharge.Pipe is not null);
}
