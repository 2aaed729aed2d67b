using PartsMatch.Learning;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>What is learnt from, and what is told: other places, later. Neither place nor day tells on the other side.</summary>
/// <param name="Learnt">Outcomes of two places in three, up to <see cref="Until"/>, shuffled: the first so many are a fair sample.</param>
/// <param name="HeldOut">Those of the third place, after it; shuffled, too.</param>
internal sealed record Split(IReadOnlyList<Lived> Learnt, IReadOnlyList<Lived> HeldOut)
{
    private const int Parts = 3;
    private const int Seed = 5;

    /// <summary>The last day that is learnt from: eight months before the end, six after times got harder.</summary>
    public static readonly DateOnly Until = new(2026, 2, 28);

    /// <summary>Parts a history.</summary>
    public static Split Of(History history)
    {
        var learnt = history.Lived.Where(one => !IsFar(one) && one.Outcome.On <= Until).ToArray();
        new Random(Seed).Shuffle(learnt);
        var heldOut = history.Lived.Where(one => IsFar(one) && one.Outcome.On > Until).ToArray();
        new Random(Seed).Shuffle(heldOut);
        return new(learnt, heldOut);
    }

    /// <summary>So many examples, in the order of their days; all where there are fewer.</summary>
    public IReadOnlyList<Example> Examples(int count, int from = 0) => [.. Learnt.Skip(from).Take(count).Select(one => one.Case.Example).OrderBy(example => example.On)];

    private static bool IsFar(Lived one) => Folds.Of(one.Outcome.Place, Parts) == 0;
}
