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
/// an inlet regulator takes no hot gas, and a differential check valve nothing from the condenser. Where the pipes are laid for what it is, such a pipe goes onto the valve beside it, and is no matter.
/// A part's one size may be that of one port alone. Where it is all that the old one is marked with as well, and both are arranged alike, and the pipes are of that size, it is taken for all its ports.
/// </remarks>
public sealed class PortsByFunction() : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, PortsFacet>("Ports", isDeciding: false, CondensingPressureValveSources.Ports, new(1.5, 1, 0.6))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = PipeFit.Measure;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["condenserPort", "receiverPort", "dischargePort"], ["condenserPipe", "receiverPipe", "dischargePipe"]) { Besides = ["joint", "lineJoint", "arrangement", "needsArrangement"] };

    /// <inheritdoc/>
    public override PortsFacet Read(CondensingPressureValveSpec part) => new(
        part.Joint,
        part.Arrangement,
        Rounded.Millimetres(part.Arrangement.HasCondenserPort() == false ? null : part.CondenserPort),
        Rounded.Millimetres(part.ReceiverPort),
        Rounded.Millimetres(part.Arrangement.HasDischargePort() == false ? null : part.DischargePort));

    /// <inheritdoc/>
    public override Finding Judge(HeadNeed need, PortsFacet facet) => LikeTheOld(need, facet) is { } alike
        ? Fit(need, alike).Then($"One size is given of it, the one that the old valve is marked with: it is taken for all ports of both.")
        : Fit(need, facet);

    private static Finding Fit(HeadNeed need, PortsFacet facet)
    {
        PipeEnd condenser = new("from the condenser", "condenserPort", "condenserPipe", facet.Condenser, Rounded.Millimetres(need.Site.CondenserPipe));
        PipeEnd receiver = new("to the receiver", "receiverPort", "receiverPipe", facet.Receiver, Rounded.Millimetres(need.Site.ReceiverPipe)) { IsOutlet = true };
        PipeEnd discharge = new("for hot gas", "dischargePort", "dischargePipe", facet.Discharge, Rounded.Millimetres(need.Site.DischargePipe));
        if (facet.How.HasCondenserPort() == false && NoPort(need, facet, condenser) is { } noDrain) return noDrain;
        if (facet.How.HasDischargePort() == false && NoPort(need, facet, discharge) is { } noHotGas) return noHotGas;
        return PipeFit.Judge(facet.Joint, need.Site.LineJoint, [.. facet.How.HasCondenserPort() == false ? (PipeEnd[])[] : [condenser], receiver, .. TakesHotGas(facet, discharge) ? (PipeEnd[])[discharge] : []]);
    }

    /// <summary>The only size that is given of a valve of a known arrangement, mm; null where none or more are.</summary>
    private static double? OneSize(PortsFacet facet) => facet switch
    {
        { How: not null, Receiver: null, Condenser: { } size, Discharge: null } => size,
        { How: Arrangement.DifferentialCheck, Receiver: null, Discharge: { } size } => size,
        _ => null,
    };

    /// <summary>It with its one size at every port, as the old valve of the same arrangement and size has it; null where that is not marked alike, or a pipe is of another size.</summary>
    private PortsFacet? LikeTheOld(HeadNeed need, PortsFacet facet)
    {
        if (OneSize(facet) is not { } size) return null;
        var old = Read(need.Plate);
        if (old.How != facet.How || !size.Equals(OneSize(old)) || !size.Equals(Rounded.Millimetres(need.Site.ReceiverPipe))) return null;
        return facet.How.HasDischargePort() == true && !size.Equals(Rounded.Millimetres(need.Site.DischargePipe)) ? null : facet with { Receiver = size, Discharge = size };
    }

    /// <summary>What it is that it has no port for a pipe; null where that goes onto the valve beside it, or is not known to be there.</summary>
    private static Finding? NoPort(HeadNeed need, PortsFacet facet, PipeEnd end)
    {
        var lacks = new Lacks(facet.How!.Value, end);
        if (need.Site.NeedsArrangement is { } needs) return needs == facet.How ? null : Finding.Fails($"{lacks}.");
        return end.Pipe is null ? null : Finding.Unknown(Side.Site, "needsArrangement", $"{lacks}; whether that goes onto another valve beside it is not known.");
    }

    /// <summary>Where its arrangement is not given, only what was read of a port or a pipe asks for the other.</summary>
    private static bool TakesHotGas(PortsFacet facet, PipeEnd discharge) => facet.How.HasDischargePort() ?? (discharge.Valve is not null || discharge.Pipe is not null);

    /// <summary>A port that it lacks, in words; formed only when they are shown.</summary>
    private readonly record struct Lacks(Arrangement How, PipeEnd End)
    {
        public override string ToString() => $"It is {(How == Arrangement.InletRegulator ? "an" : "a")} {new Spelt<Arrangement>(How)}, which has no port for the {(End.Pipe is { } size ? $"{new Shown(size)} pipe" : "pipe")} {End.Word}";
    }
}
