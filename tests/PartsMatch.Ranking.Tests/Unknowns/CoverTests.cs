using System.Numerics;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Tests.Unknowns;

/// <summary>The fewest sets, against trying every choice.</summary>
public sealed class CoverTests
{
    private static Gen<(ulong[] Sets, int[] Weights, int Needed)> Small { get; } =
        from things in Gen.Choose(1, 8)
        from sets in Gen.Choose(0, (1 << things) - 1).Select(bits => (ulong)bits).ArrayOf().Resize(9)
        from weights in Gen.Choose(1, 5).ArrayOf(64)
        from needed in Gen.Choose(0, 30)
        select (sets, weights, needed);

    [Property(MaxTest = 1000)]
    public Property No_choice_of_fewer_sets_covers_as_much() => Prop.ForAll(Small.ToArbitrary(), given =>
    {
        var (sets, weights, needed) = given;
        var (chosen, isSmallest) = Cover.Smallest(sets, weights, needed);
        var reachable = Math.Min(needed, Weight(sets.Aggregate(0UL, (all, set) => all | set), weights));
        var fewest = Enumerable.Range(0, 1 << sets.Length).Where(choice => Covered(sets, choice, weights) >= reachable).Min(choice => BitOperations.PopCount((uint)choice));

        isSmallest.ShouldBeTrue();
        chosen.ShouldBeUnique();
        chosen.Count.ShouldBe(fewest);
        Weight(chosen.Aggregate(0UL, (all, index) => all | sets[index]), weights).ShouldBeGreaterThanOrEqualTo(reachable);
    });

    [Property(MaxTest = 300)]
    public Property When_it_gives_up_looking_it_says_so_and_keeps_to_greedy_s_bound() => Prop.ForAll(Small.ToArbitrary(), given =>
    {
        var (sets, weights, needed) = given;
        var (chosen, isSmallest) = Cover.Smallest(sets, weights, needed, mostTries: 0);
        var (fewest, _) = Cover.Smallest(sets, weights, needed);

        if (isSmallest) chosen.Count.ShouldBe(fewest.Count);
        chosen.Count.ShouldBeLessThanOrEqualTo((int)Math.Floor((1 + Math.Log(Math.Max(1, needed))) * fewest.Count + 1e-9));
    });

    [Fact]
    public void Where_greedy_takes_three_the_search_finds_two()
    {
        // The classic case: rows {0 1 2} and {3 4 5} cover all, but {1 2 3 4} is the largest and leaves both ends. Worked by hand.
        ulong[] sets = [0b011110, 0b000111, 0b111000];
        Cover.Smallest(sets, [1, 1, 1, 1, 1, 1], 6, mostTries: 0).Chosen.Count.ShouldBe(3);

        var (chosen, isSmallest) = Cover.Smallest(sets, [1, 1, 1, 1, 1, 1], 6);

        chosen.ShouldBe([1, 2], ignoreOrder: true);
        isSmallest.ShouldBeTrue();
    }

    private static int Covered(ulong[] sets, int choice, int[] weights) => Weight(sets.Where((_, index) => (choice >> index & 1) == 1).Aggregate(0UL, (all, set) => all | set), weights);

    private static int Weight(ulong bits, int[] weights) => weights.Where((_, index) => (bits >> index & 1) == 1).Sum();
}
