using System.Numerics;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>The fewest sets that cover so much weight of at most 64 things (partial set cover).</summary>
/// <remarks>
/// Greedy takes the set that covers most of what is left, and takes at most 1 + ln(needed) times as many sets as are needed (Wolsey, An analysis of the greedy algorithm for the submodular
/// set covering problem, Combinatorica 2, 1982; from memory). Fewer are then looked for by trying all, each branch bounded by the largest gains still to be had, up to a number of tries.
/// </remarks>
public static class Cover
{
    /// <summary>So many branches are tried before the greedy answer stands: some tens of milliseconds.</summary>
    public const int MostTries = 200_000;

    /// <summary>Chooses sets.</summary>
    /// <param name="sets">A bit for each thing that a set covers. Of equal ones the first is taken.</param>
    /// <param name="weights">What each thing weighs, 1 or more.</param>
    /// <param name="needed">How much is to be covered; when all sets together cover less, all that they cover.</param>
    /// <param name="mostTries">After so many tries greedy's answer stands.</param>
    /// <returns>The indexes of the sets, and whether there are surely no fewer.</returns>
    public static (IReadOnlyList<int> Chosen, bool IsSmallest) Smallest(IReadOnlyList<ulong> sets, IReadOnlyList<int> weights, int needed, int mostTries = MostTries)
    {
        needed = Math.Min(needed, Weight(sets.Aggregate(0UL, (all, set) => all | set), weights));

        // A set within another is never needed.
        List<int> useful = [.. Enumerable.Range(0, sets.Count)
            .Where(one => sets[one] != 0 && !Enumerable.Range(0, sets.Count).Any(other => (sets[one] & ~sets[other]) == 0 && (sets[one] != sets[other] || other < one)))
            .OrderByDescending(set => Weight(sets[set], weights))];
        var greedy = Greedy(sets, useful, weights, needed);
        var search = new Search(sets, useful, weights, needed, mostTries);
        for (var count = 1; count < greedy.Count; count++)
        {
            if (search.Find(count) is { } fewer) return (fewer, true);
            if (search.IsTired) return (greedy, false);
        }

        return (greedy, true);
    }

    private static List<int> Greedy(IReadOnlyList<ulong> sets, List<int> useful, IReadOnlyList<int> weights, int needed)
    {
        var (chosen, covered) = (new List<int>(), 0UL);
        while (Weight(covered, weights) < needed)
        {
            var next = useful.MaxBy(set => Weight(sets[set] & ~covered, weights));
            chosen.Add(next);
            covered |= sets[next];
        }

        return chosen;
    }

    private static int Weight(ulong bits, IReadOnlyList<int> weights)
    {
        var sum = 0;
        for (var left = bits; left != 0; left &= left - 1) sum += weights[BitOperations.TrailingZeroCount(left)];
        return sum;
    }

    private sealed class Search(IReadOnlyList<ulong> sets, List<int> useful, IReadOnlyList<int> weights, int needed, int mostTries)
    {
        private readonly Stack<int> chosen = new();
        private int tries;

        public bool IsTired => tries >= mostTries;

        public IReadOnlyList<int>? Find(int count)
        {
            chosen.Clear();
            return Extend(0UL, 0, count) ? [.. chosen.Reverse()] : null;
        }

        private bool Extend(ulong covered, int from, int left)
        {
            var weight = Weight(covered, weights);
            if (weight >= needed) return true;
            if (left == 0 || IsTired) return false;
            tries++;
            var most = useful.Skip(from).Select(set => Weight(sets[set] & ~covered, weights)).OrderDescending().Take(left).Sum();
            if (weight + most < needed) return false;
            for (var index = from; index < useful.Count; index++)
            {
                chosen.Push(useful[index]);
                if (Extend(covered | sets[useful[index]], index + 1, left - 1)) return true;
                chosen.Pop();
            }

            return false;
        }
    }
}
