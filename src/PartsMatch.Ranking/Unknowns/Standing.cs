namespace PartsMatch.Ranking.Unknowns;

/// <summary>A machine that stands for others that say the same.</summary>
/// <param name="Machine">The machine's place in the table.</param>
/// <param name="Weight">How much they count together.</param>
internal record struct Standing(int Machine, int Weight)
{
    private const int RankBits = 16;

    /// <summary>Like is told from unlike by twice so many of the most telling fields (practice: of five hidden ones, and what the plate lacks anyway).</summary>
    private const int RanksOfWord = 64 / RankBits;

    /// <summary>At most so many: all of them; or, of more, those that lie in the middle of equal lengths when all are laid end to end by what they count, like beside like.</summary>
    /// <remarks>What counts much is taken as often as it is long, and what is taken stands for its neighbours: systematic sampling with probability proportional to size (Madow, 1949; from memory).</remarks>
    /// <param name="all">All of them, no two alike.</param>
    /// <param name="most">How many are taken at most.</param>
    /// <param name="open">The fields in which they differ, the most telling first.</param>
    /// <param name="machines">What they say there.</param>
    /// <param name="codes">How what they say is ordered.</param>
    public static IReadOnlyList<Standing> Of(List<Standing> all, int most, List<int> open, MachineTable machines, FieldCodes codes)
    {
        if (all.Count <= most) return all;

        // By the ranks in the more telling half of the fields, in the other half, and then by the machine's place among all.
        var (first, second) = (Ranks(0), Ranks(RanksOfWord));
        var inOrder = all.Select((one, index) => (First: first[index], Second: second[index], machines.All[one.Machine].Order, Index: index)).ToArray();
        Array.Sort(inOrder);

        // The middles of equal lengths, in units of half a length, so that all of it is whole numbers.
        var (taken, length, end, next) = (new List<Standing>(most), all.Sum(one => (long)one.Weight), 0L, 1L);
        foreach (var laid in inOrder)
        {
            var one = all[laid.Index];
            end += one.Weight;
            var times = 0;
            for (; next * length < 2L * most * end; next += 2) times++;
            if (times > 0) taken.Add(new(one.Machine, times));
        }

        return taken;

        // Field by field, as machines are kept.
        ulong[] Ranks(int from)
        {
            var ranks = new ulong[all.Count];
            for (var field = from; field < from + RanksOfWord; field++)
            {
                var (said, rankOf) = field < open.Count ? (machines.Column(open[field]), codes.Ranks(open[field])) : ([], []);
                for (var index = 0; index < ranks.Length; index++) ranks[index] = (ranks[index] << RankBits) | (rankOf.Length > 0 ? rankOf[said[all[index].Machine]] : 0UL);
            }

            return ranks;
        }
    }
}
