using Bogus;

namespace PartsMatch.Demo.Trade;

/// <summary>Chance with a seed of its own, so that a further family never changes what another one draws.</summary>
public sealed class Draw(int seed)
{
    private readonly Randomizer random = new(seed);

    /// <summary>Whether something with this probability (0 to 1) happens.</summary>
    public bool Chance(double probability) => random.Double() < probability;

    /// <summary>A number between two, evenly.</summary>
    public double Between(double least, double most) => random.Double(least, most);

    /// <summary>A whole number from one to another, both included.</summary>
    public int Whole(int least, int most) => random.Number(least, most);

    /// <summary>One of a list, each as likely.</summary>
    public T Pick<T>(IReadOnlyList<T> all) => all[random.Number(0, all.Count - 1)];

    /// <summary>One of several, by weight.</summary>
    public T Of<T>(params ReadOnlySpan<(T Value, int Weight)> choices)
    {
        var total = 0;
        foreach (var (_, weight) in choices) total += weight;
        var drawn = random.Number(0, total - 1);
        foreach (var (value, weight) in choices)
        {
            if (drawn < weight) return value;
            drawn -= weight;
        }

        throw new ArgumentException("No choice has any weight.", nameof(choices));
    }

    /// <summary>Several of a list, none twice.</summary>
    public IReadOnlyList<T> Some<T>(IReadOnlyList<T> all, int count) => [.. random.Shuffle(all).Take(count)];

    /// <summary>A day between two, the same whatever today is.</summary>
    public DateOnly Day(DateOnly first, DateOnly last) => first.AddDays(random.Number(0, last.DayNumber - first.DayNumber));
}
