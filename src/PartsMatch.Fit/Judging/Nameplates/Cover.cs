namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Chooses the placements that do not overlap and together cover most of a plate.</summary>
/// <remarks>
/// Whether a figure belongs to the word before or behind it is mostly settled by covering alone: where words and figures take turns and each figure has its word, only one way leaves nothing over.
/// Where one is missing, plates that put labels before figures go on doing so: changing sides costs a little. Where two ways are still equally good, neither is taken.
/// A chunk (1/20HP, 115V/60HZ, a serial number) is covered as a whole or left as a whole: a number is never cut out of a code.
/// </remarks>
internal sealed class Cover
{
    /// <summary>What it is worth to cover a token; nothing else weighs as much.</summary>
    public const int Token = 100;

    /// <summary>What weighs more than that a reading needs one placement more, with its label on the other side.</summary>
    public const int MoreThanPlacement = EachPlacement + (4 * ChangeOfSide);

    private const int EachPlacement = 10;
    private const int ChangeOfSide = 1;
    private const int Never = int.MinValue / 2;
    private static readonly LabelStands[] Sides = Enum.GetValues<LabelStands>();

    private readonly PlateText plate;
    private readonly Placement[] placements;
    private readonly int[] starts;
    private readonly int[,] before;
    private readonly int[,] behind;

    private Cover(PlateText plate, List<Placement> placements)
    {
        this.plate = plate;
        this.placements = new Placement[placements.Count];
        starts = new int[plate.Count + 1];
        foreach (var placement in placements) starts[placement.From + 1]++;
        for (var at = 0; at < plate.Count; at++) starts[at + 1] += starts[at];
        var next = starts.ToArray();
        foreach (var placement in placements) this.placements[next[placement.From]++] = placement;
        before = new int[plate.Count + 1, Sides.Length];
        behind = new int[plate.Count + 1, Sides.Length];
    }

    /// <summary>The cost that makes so many tokens worth only so little.</summary>
    public static int WorthOnly(int tokens, int worth) => (Token * tokens) - EachPlacement - worth;

    /// <summary>The best covering; time in proportion to the number of placements.</summary>
    public static Choice Best(PlateText plate, List<Placement> placements)
    {
        var cover = new Cover(plate, placements);
        cover.MeasureBehind();
        cover.MeasureBefore();
        return cover.Choose();
    }

    /// <summary>The placements that begin with a token.</summary>
    private ReadOnlySpan<Placement> StartingAt(int at) => placements.AsSpan(starts[at]..starts[at + 1]);

    private static int Worth(Placement placement, LabelStands side) =>
        (Token * (placement.To - placement.From)) - EachPlacement - placement.Cost - (Changes(placement, side) ? ChangeOfSide : 0);

    private static bool Changes(Placement placement, LabelStands side) =>
        placement.Stands != LabelStands.Nowhere && side != LabelStands.Nowhere && side != placement.Stands;

    private static LabelStands After(Placement placement, LabelStands side) => placement.Stands == LabelStands.Nowhere ? side : placement.Stands;

    /// <summary>For each token and side: the most that the text from there on is worth.</summary>
    private void MeasureBehind()
    {
        for (var at = plate.Count - 1; at >= 0; at--)
        {
            foreach (var side in Sides)
            {
                var best = plate.BeginsChunk(at) ? behind[plate.ChunkEnd(at), (int)side] : Never;
                foreach (var placement in StartingAt(at)) best = Math.Max(best, Worth(placement, side) + behind[placement.To, (int)After(placement, side)]);
                behind[at, (int)side] = best;
            }
        }
    }

    /// <summary>For each token and side: the most that the text up to there is worth.</summary>
    private void MeasureBefore()
    {
        for (var at = 0; at <= plate.Count; at++)
        {
            foreach (var side in Sides) before[at, (int)side] = at == 0 && side == LabelStands.Nowhere ? 0 : Never;
        }

        for (var at = 0; at < plate.Count; at++)
        {
            foreach (var side in Sides)
            {
                var here = before[at, (int)side];
                if (here < Never / 2) continue;
                if (plate.BeginsChunk(at)) Raise(plate.ChunkEnd(at), side, here);
                foreach (var placement in StartingAt(at)) Raise(placement.To, After(placement, side), here + Worth(placement, side));
            }
        }

        void Raise(int to, LabelStands side, int worth) => before[to, (int)side] = Math.Max(before[to, (int)side], worth);
    }

    /// <summary>All placements and steps over chunks that stand on some best covering, and one whole best covering.</summary>
    private Choice Choose()
    {
        var best = behind[0, (int)LabelStands.Nowhere];
        var chosen = new List<Placement>();
        var steps = new List<Stretch>();
        for (var at = 0; at < plate.Count; at++)
        {
            if (plate.BeginsChunk(at) && IsLeftOnBest(at, best)) steps.Add(new(at, plate.ChunkEnd(at)));
            foreach (var placement in StartingAt(at))
            {
                if (!IsOnBest(placement, best) || IsSaid(chosen, placement)) continue;
                chosen.Add(placement);
                steps.Add(new(placement.From, placement.To));
            }
        }

        return Choice.Of(plate, chosen, steps, OneWay);
    }

    private List<Placement> OneWay()
    {
        var way = new List<Placement>();
        var side = LabelStands.Nowhere;
        for (var at = 0; at < plate.Count;)
        {
            if (Next(at, side) is { } next)
            {
                way.Add(next);
                (at, side) = (next.To, After(next, side));
            }
            else
            {
                at = plate.ChunkEnd(at);
            }
        }

        return way;
    }

    private Placement? Next(int at, LabelStands side)
    {
        foreach (var placement in StartingAt(at))
        {
            if (Worth(placement, side) + behind[placement.To, (int)After(placement, side)] == behind[at, (int)side]) return placement;
        }

        return null;
    }

    /// <summary>Whether one that was chosen before says the same of the same stretch.</summary>
    private static bool IsSaid(List<Placement> chosen, Placement placement)
    {
        for (var last = chosen.Count - 1; last >= 0 && chosen[last].From == placement.From; last--)
        {
            if (chosen[last].To == placement.To && chosen[last].SaysAs(placement)) return true;
        }

        return false;
    }

    /// <summary>Whether some best covering leaves over the chunk that begins with a token.</summary>
    private bool IsLeftOnBest(int at, int best)
    {
        foreach (var side in Sides)
        {
            if (before[at, (int)side] + behind[plate.ChunkEnd(at), (int)side] == best) return true;
        }

        return false;
    }

    private bool IsOnBest(Placement placement, int best)
    {
        foreach (var side in Sides)
        {
            if (before[placement.From, (int)side] + Worth(placement, side) + behind[placement.To, (int)After(placement, side)] == best) return true;
        }

        return false;
    }
}
