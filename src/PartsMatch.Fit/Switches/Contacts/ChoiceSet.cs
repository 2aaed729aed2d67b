using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Several of a few choices, as facets hold them: one bit a choice; none of them where they are not known.</summary>
/// <typeparam name="T">The choices.</typeparam>
/// <param name="Bits">The bits.</param>
public readonly record struct ChoiceSet<T>(int Bits)
    where T : struct, Enum
{
    private static readonly T[] Every = Enum.GetValues<T>();

    /// <summary>Whether nothing is known of them.</summary>
    public bool IsUnknown => Bits == 0;

    /// <summary>The first of them.</summary>
    public T First => Chosen.First();

    private IEnumerable<T> Chosen => Every.Where(Has);

    /// <summary>The set of some choices.</summary>
    public static ChoiceSet<T> Of(Choices<T>? choices) => new((choices ?? Enumerable.Empty<T>()).Aggregate(0, (bits, choice) => bits | Bit(choice)));

    /// <summary>Whether one is among them.</summary>
    public bool Has(T choice) => (Bits & Bit(choice)) != 0;

    /// <summary>One that both have; null when there is none.</summary>
    public T? SharedWith(ChoiceSet<T> other) => (Bits & other.Bits) == 0 ? null : new ChoiceSet<T>(Bits & other.Bits).First;

    /// <summary>Their words, with an "or" between; for sentences.</summary>
    public override string ToString() => string.Join(" or ", Chosen.Select(choice => new Spelt<T>(choice)));

    private static int Bit(T choice) => 1 << Array.IndexOf(Every, choice);
}
