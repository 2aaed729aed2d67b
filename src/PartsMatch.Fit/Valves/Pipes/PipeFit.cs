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
        HowTo = "Couplings of copper or steel as the pipe is, and on a flare a reducer with flares; neither cup nor flare is bored or drawn to another size. A smaller valve than the line is usual, a larger one than the line is a reason to check its capacity.",
    };

    /// <summary>Another kind of joint than was there.</summary>
    public static ChangeKind ChangeJoint { get; } = new("changeJoint", 0.7)
    {
        Stage = Stage.Mount,
        HowTo = "Cut the tube square and clean, and make the new joint: flare nuts where it has flares, brazed with nitrogen flowing where it has cups.",
    };
}

/// <summary>One of a valve's connections and the pipe that goes onto it.</summary>
/// <param name="Word">What stands behind its size: "in".</param>
/// <param name="PartField">The part's field of its size.</param>
/// <param name="SiteField">The site's field of the pipe's.</param>
/// <param name="Valve">Tube size of the connection, mm; null where not given.</param>
/// <param name="Pipe">Tube size of the pipe, mm; null where not measured.</param>
internal readonly record struct PipeEnd(string Word, string PartField, string SiteField, double? Valve, double? Pipe)
{
    /// <summary>Whether the valve's flow leaves through it.</summary>
    public bool IsOutlet { get; init; }
}

/// <summary>Do the valve's connections go onto the pipes that are there?</summary>
internal static class PipeFit
{
    /// <summary>Tube sizes are 1/8 in apart; these are the same (practice), mm.</summary>
    private const double Same = 0.3;

    /// <summary>What a shortfall is in sizes.</summary>
    public static OwnMeasure Measure { get; } = new("the larger of pipe and connection", "of the smaller", 100, 200, "%") { IsByTimes = true };

    /// <summary>The answer about an inlet and an outlet.</summary>
    /// <param name="facet">The part's connections.</param>
    /// <param name="there">The pipes', by the old valve where nobody measured them.</param>
    public static Finding Judge(ConnectionsFacet facet, ConnectionsFacet there) => Judge(
        facet.Joint,
        there.Joint,
        [new("in", "inletSize", "inletLine", facet.Inlet, there.Inlet), new("out", "outletSize", "outletLine", facet.Outlet, there.Outlet) { IsOutlet = true }]);

    /// <summary>The answer about any connections.</summary>
    /// <param name="joint">How the part is joined; null where not given.</param>
    /// <param name="jointThere">What joints the pipes are made for; null where not known.</param>
    /// <param name="ends">The connections, each with its pipe.</param>
    public static Finding Judge(PipeJoint? joint, PipeJoint? jointThere, IReadOnlyList<PipeEnd> ends)
    {
        if (ends.Where(end => end.Valve is null).Select(end => end.PartField).FirstOrDefault() is { } lacks) return Finding.Unknown(Side.Part, lacks, $"The size of its connections is not given.");
        if (joint is not { } made) return Finding.Unknown(Side.Part, "joint", $"How it is joined to its pipes is not given.");
        var has = new Sizes(made, ends);
        if (ends.Where(end => end.Pipe is null).Select(end => end.SiteField).FirstOrDefault() is { } unmeasured) return Finding.Unknown(Side.Site, unmeasured, $"It has {has}; {(ends.Any(end => end.Pipe is not null) ? "not all pipes there were measured" : "the pipes there were not measured")}.");
        List<Change> changes = [];
        if (jointThere is { } before && before != made) changes.Add(new(PipeChanges.ChangeJoint, $"make {new Spelt<PipeJoint>(made)} joints where {new Spelt<PipeJoint>(before)} ones were") { Kit = KitFor(made, ends) });
        List<PipeEnd> off = [.. ends.Where(end => Off(end.Valve!.Value, end.Pipe!.Value))];
        if (off.Count > 0)
        {
            changes.Add(new(PipeChanges.FitReducers, $"fit {(off.Count > 1 ? "reducers" : "a reducer")}: {new Listed(ends, AtPipes: false)} at the valve, {new Listed(ends, AtPipes: true)} at the pipes")
            {
                Kit = [.. off.Select(end => end.IsOutlet
                    ? new KitItem($"{Reducer(made, jointThere)}, {new Shown(end.Valve!.Value)} to {new Shown(end.Pipe!.Value)}")
                    : new($"{Reducer(made, jointThere)}, {new Shown(end.Pipe!.Value)} to {new Shown(end.Valve!.Value)}"))],
            });
        }

        if (jointThere is not { } there) return Finding.Unknown(Side.Site, "lineJoint", changes, $"It has {has}; the pipes there are {new Listed(ends, AtPipes: true)}, and what joints they are made for is not known.");
        return Finding.MeetsWith(changes, $"It has {has}; the pipes there are {new Listed(ends, AtPipes: true)} for {new Spelt<PipeJoint>(there)} joints.") with
        { Shortfall = off.Count > 0 ? off.Max(end => Apart(end.Valve!.Value, end.Pipe!.Value)) : 0 };
    }

    private static bool Off(double valve, double pipe) => !Within.AtMost(Math.Abs(valve - pipe), Same);

    /// <summary>How far apart two sizes are: 1 where one is twice the other, up or down. A reducer of a size or two is everyday work, beyond that the valve was made for another flow (practice).</summary>
    private static double Apart(double valve, double pipe) => Math.Abs(Math.Log2(valve / pipe));

    /// <summary>What goes between two sizes. Where the joint becomes another the pipe is cut, and the reducer goes into it.</summary>
    private static string Reducer(PipeJoint joint, PipeJoint? jointThere) => joint != (jointThere ?? joint) ? "reducing coupling" : joint switch
    {
        PipeJoint.Flare => "flare reducer",
        PipeJoint.PipeThread => "threaded reducing bushing",
        PipeJoint.ButtWeld => "butt-welding reducer",
        _ => "reducing coupling",
    };

    private static IReadOnlyList<KitItem> KitFor(PipeJoint joint, IReadOnlyList<PipeEnd> ends) => joint switch
    {
        PipeJoint.Flare => [new($"flare nuts, {new Listed(ends, AtPipes: false)}", ends.Count)],
        PipeJoint.Solder => [new($"brazing alloy, and nitrogen to flow through the pipe")],
        PipeJoint.PipeThread => [new($"sealant for refrigerant threads")],
        _ => [],
    };

    /// <summary>The sizes of connections or pipes: one where all are the same; formed only when they are shown.</summary>
    private readonly record struct Listed(IReadOnlyList<PipeEnd> Ends, bool AtPipes)
    {
        public override string ToString()
        {
            var atPipes = AtPipes;
            List<(double Size, string Word)> all = [.. Ends.Select(end => ((atPipes ? end.Pipe : end.Valve)!.Value, end.Word))];
            if (all.TrueForAll(one => !Off(one.Size, all[0].Size))) return new Shown(all[0].Size).ToString();
            List<string> words = [.. all.Select(one => $"{new Shown(one.Size)} {one.Word}")];
            return $"{string.Join(", ", words[..^1])} and {words[^1]}";
        }
    }

    /// <summary>Sizes and joints; formed only when they are shown.</summary>
    private readonly record struct Sizes(PipeJoint Joint, IReadOnlyList<PipeEnd> Ends)
    {
        public override string ToString() => $"{new Spelt<PipeJoint>(Joint)} connections of {new Listed(Ends, AtPipes: false)}";
    }
}
