namespace PartsMatch.Fit.Quantities;

/// <summary>One figure or the two ends of a span: 230 V, 208-230 V; 3.5-3.4 A beside 208-230 V are the amps at its ends.</summary>
/// <param name="First">The only figure, or the one at the first end.</param>
/// <param name="Last">The same again, or the one at the other end.</param>
/// <typeparam name="T">The figure's quantity.</typeparam>
public readonly record struct Spread<T>(T First, T Last)
    where T : struct
{
    /// <summary>A single figure: both ends are the same.</summary>
    public Spread(T only)
        : this(only, only)
    {
    }

    /// <summary>Whether there are two different ends.</summary>
    public bool HasTwoEnds => !First.Equals(Last);
}
