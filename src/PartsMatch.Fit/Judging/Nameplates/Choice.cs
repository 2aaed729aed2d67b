namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>What was chosen of the ways to read a plate.</summary>
/// <param name="Certain">Placements that every best reading of the plate has, or agrees with.</param>
/// <param name="Doubtful">Runs of placements that some best readings have and others contradict: none of them is taken.</param>
internal sealed record Choice(IReadOnlyList<Placement> Certain, IReadOnlyList<IReadOnlyList<Placement>> Doubtful)
{
    /// <summary>Placements that hold a part of a figure only: none of them is taken.</summary>
    public IReadOnlyList<Placement> Cut { get; init; } = [];

    /// <summary>Parts what stands on best readings into what is certain and what is not.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="chosen">All placements of best readings.</param>
    /// <param name="steps">The stretches of these, and of the chunks that some best reading leaves over.</param>
    /// <param name="oneWay">Finds one best reading.</param>
    /// <remarks>A placement is certain when no other step of a best reading overlaps it: then none can do without it.</remarks>
    public static Choice Of(PlateText plate, List<Placement> chosen, List<Stretch> steps, Func<List<Placement>> oneWay)
    {
        var ways = new int[plate.Count];
        foreach (var step in steps)
        {
            for (var at = step.From; at < step.To; at++) ways[at]++;
        }

        var certain = chosen.FindAll(IsCertain);
        var doubtful = new List<IReadOnlyList<Placement>>();
        if (certain.Count == chosen.Count) return new(certain, doubtful);
        var way = oneWay();
        foreach (var run in Runs(chosen.FindAll(placement => !IsCertain(placement))))
        {
            var (from, to) = (run[0].From, run.Max(placement => placement.To));
            List<Placement> through = [.. way.SkipWhile(placement => placement.From < from).TakeWhile(placement => placement.From < to)];
            if (Agree(run, through)) certain.AddRange(through);
            else doubtful.Add(run);
        }

        return new(certain, doubtful);

        bool IsCertain(Placement placement) => !ways.AsSpan(placement.From, placement.To - placement.From).ContainsAnyExcept(1);
    }

    /// <summary>Whether all ways through a run say the same: CLASS F INS CL B is F and B, wherever it is parted.</summary>
    private static bool Agree(IReadOnlyList<Placement> run, IReadOnlyList<Placement> through)
    {
        var said = through.SelectMany(placement => placement.Values).Select(value => (value.Field, value.Text)).ToHashSet();
        return run.All(placement => placement.Unread is null && placement.Values.All(value => said.Contains((value.Field, value.Text))));
    }

    /// <summary>Placements that overlap, directly or over others.</summary>
    private static List<List<Placement>> Runs(IReadOnlyList<Placement> placements)
    {
        var runs = new List<List<Placement>>();
        var to = 0;
        foreach (var placement in placements.OrderBy(placement => placement.From).ThenBy(placement => placement.To))
        {
            if (placement.From >= to) runs.Add([]);
            runs[^1].Add(placement);
            to = Math.Max(to, placement.To);
        }

        return runs;
    }
}
