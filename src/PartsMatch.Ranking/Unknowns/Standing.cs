namespace PartsMatch.Ranking.Unknowns;

/// <summary>A machine that stands for others that say the same.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Weight">How much they count together.</param>
internal readonly record struct Standing(Machine Machine, int Weight)
{
    /// <summary>Like is told from unlike by so many of the most telling fields (practice: of five hidden ones, and what the plate lacks anyway).</summary>
    private const int Compared = 8;

    /// <summary>At most so many: all of them; or, of more, those that lie in the middle of equal lengths when all are laid end to end by what they count, like beside like.</summary>
    /// <remarks>What counts much is taken as often as it is long, and what is taken stands for its neighbours: systematic sampling with probability proportional to size (Madow, 1949; from memory).</remarks>
    /// <param name="all">All of them, no two alike.</param>
    /// <param name="most">How many are taken at most.</param>
    /// <param name="open">The fields in which they differ, the most telling first.</param>
    /// <param name="codes">What they say there.</param>
    public static IReadOnlyList<Standing> Of(List<Standing> all, int most, List<int> open, FieldCodes codes)
    {
        if (all.Count <= most) return all;
        List<(int At, double[] Places)> compared = [.. open.Take(Compared).Select(at => (at, codes.Places(at)))];
        var places = all.Select(one => compared.Select(field => field.Places[one.Machine.Codes[field.At]]).ToArray()).ToArray();
        var inOrder = Enumerable.Range(0, all.Count).ToArray();
        Array.Sort(inOrder, (one, other) =>
        {
            var order = places[one].AsSpan().SequenceCompareTo(places[other]);
            return order != 0 ? order : all[one].Machine.Order.CompareTo(all[other].Machine.Order);
        });

        // The middles of equal lengths, in units of half a length, so that all of it is whole numbers.
        var (taken, length, end, next) = (new List<Standing>(most), all.Sum(one => (long)one.Weight), 0L, 1L);
        foreach (var one in inOrder.Select(index => all[index]))
        {
            end += one.Weight;
            var times = 0;
            for (; next * length < 2L * most * end; next += 2) times++;
            if (times > 0) taken.Add(new(one.Machine, times));
        }

        return taken;
    }
}
