using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.Pipes;

/// <summary>What is read of a valve's connections.</summary>
/// <param name="Joint">How it is joined; null where not given.</param>
/// <param name="Inlet">Tube size of the inlet, mm; null where not given.</param>
/// <param name="Outlet">Tube size of the outlet, mm; null where not given.</param>
public readonly record struct ConnectionsFacet(PipeJoint? Joint, double? Inlet, double? Outlet);

/// <summary>Changes at the pipes.</summary>
public static class PipeChanges
{
    /// <summary>Reducers between the tubes and the valve.</summary>
    public static ChangeKind FitReducers { get; } = new("fitReducers", 0.6)
    {
        Stage = Stage.Mount,
        HowTo = "Couplings of copper or steel as the pipe is; the valve's cup is never bored or drawn to another size. A smaller valve than the line is usual, a larger one than the line is a reason to check its capacity.",
    };

    /// <summary>Another kind of joint than was there.</summary>
    public static ChangeKind ChangeJoint { get; } = new("changeJoint", 0.7)
    {
        Stage = Stage.Mount,
        HowTo = "Cut the tube square and clean, and make the new joint: flare nuts where it has flares, brazed with nitrogen flowing where it has cups.",
    };
}

/// <summary>How a family names the fields of its connections.</summary>
/// <param name="Inlet">The part's first size.</param>
/// <param name="Outlet">The part's second size.</param>
/// <param name="InletPipe">The site's first size.</param>
/// <param name="OutletPipe">The site's second size.</param>
internal sealed record PipeFields(string Inlet, string Outlet, string InletPipe, string OutletPipe)
{
    /// <summary>Of valves with an inlet and an outlet.</summary>
    public static PipeFields Usual { get; } = new("inletSize", "outletSize", "inletLine", "outletLine");
}

/// <summary>Do the valve's connections go onto the pipes that are there?</summary>
internal static class PipeFit
{
    /// <summary>Tube sizes are 1/8 in apart; these are the same (practice), mm.</summary>
    private const double Same = 0.3;

    /// <summary>The answer of an aspect.</summary>
    /// <param name="facet">The part's connections.</param>
    /// <param name="there">The pipes', by the old valve where nobody measured them.</param>
    /// <param name="fields">How its fields are named; those of an inlet and an outlet where nothing is said.</param>
    public static Finding Judge(ConnectionsFacet facet, ConnectionsFacet there, PipeFields? fields = null)
    {
        fields ??= PipeFields.Usual;
        if (facet is { Inlet: null } or { Outlet: null }) return Finding.Unknown(Side.Part, facet.Inlet is null ? fields.Inlet : fields.Outlet, $"The size of its connections is not given.");
        if (facet.Joint is not { } joint) return Finding.Unknown(Side.Part, "joint", $"How it is joined to its pipes is not given.");
        if (there.Inlet is not { } inlet) return Finding.Unknown(Side.Site, fields.InletPipe, $"It has {new Sizes(facet)}; the pipes there were not measured.");
        if (there.Outlet is not { } outlet) return Finding.Unknown(Side.Site, fields.OutletPipe, $"It has {new Sizes(facet)}; the second pipe there was not measured.");
        List<Change> changes = [];
        if (there.Joint is { } before && before != joint) changes.Add(new(PipeChanges.ChangeJoint, $"make {new Spelt<PipeJoint>(joint)} joints where {new Spelt<PipeJoint>(before)} ones were") { Kit = KitFor(joint, facet) });
        var (inletOff, outletOff) = (Off(facet.Inlet!.Value, inlet), Off(facet.Outlet!.Value, outlet));
        if (inletOff || outletOff)
        {
            changes.Add(new(PipeChanges.FitReducers, $"fit {(inletOff && outletOff ? "reducers" : "a reducer")}: {new Pair(facet.Inlet.Value, facet.Outlet.Value)} at the valve, {new Pair(inlet, outlet)} at the pipes")
            {
                Kit =
                [
                    .. inletOff ? (KitItem[])[new($"reducing coupling, {new Shown(inlet)} to {new Shown(facet.Inlet.Value)}")] : [],
                    .. outletOff ? (KitItem[])[new($"reducing coupling, {new Shown(facet.Outlet.Value)} to {new Shown(outlet)}")] : [],
                ],
            });
        }

        if (there.Joint is null) return Finding.Unknown(Side.Site, "lineJoint", changes, $"It has {new Sizes(facet)}; the pipes there are {new Pair(inlet, outlet)}, and what joints they are made for is not known.");
        return Finding.MeetsWith(changes, $"It has {new Sizes(facet)}; the pipes there are {new Pair(inlet, outlet)} for {new Spelt<PipeJoint>(there.Joint.Value)} joints.") with
        { Shortfall = Math.Max(inletOff ? Apart(facet.Inlet.Value, inlet) : 0, outletOff ? Apart(facet.Outlet.Value, outlet) : 0) };
    }

    private static bool Off(double valve, double pipe) => !Within.AtMost(Math.Abs(valve - pipe), Same);

    /// <summary>How far apart two sizes are: 1 where one is twice the other, up or down. A reducer of a size or two is everyday work, beyond that the valve was made for another flow (practice).</summary>
    private static double Apart(double valve, double pipe) => Math.Abs(Math.Log2(valve / pipe));

    private static IReadOnlyList<KitItem> KitFor(PipeJoint joint, ConnectionsFacet facet) => joint switch
    {
        PipeJoint.Flare => [new($"flare nuts, {new Pair(facet.Inlet!.Value, facet.Outlet!.Value)}", 2)],
        PipeJoint.Solder => [new($"brazing alloy, and nitrogen to flow through the pipe")],
        PipeJoint.PipeThread => [new($"sealant for refrigerant threads")],
        _ => [],
    };

    /// <summary>Two sizes; formed only when they are shown.</summary>
    private readonly record struct Pair(double Inlet, double Outlet)
    {
        public override string ToString() => Off(Inlet, Outlet) ? $"{new Shown(Inlet)} in and {new Shown(Outlet)} out" : new Shown(Inlet).ToString();
    }

    /// <summary>Sizes and joints; formed only when they are shown.</summary>
    private readonly record struct Sizes(ConnectionsFacet Facet)
    {
        public override string ToString() => $"{new Spelt<PipeJoint>(Facet.Joint!.Value)} connections of {new Pair(Facet.Inlet!.Value, Facet.Outlet!.Value)}";
    }
}
