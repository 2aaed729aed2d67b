namespace PartsMatch.Fit.Quantities;

/// <summary>A range in a sentence, from one figure to another; one whose ends are written alike is said as the single figure that it is. Formed only when the sentence is shown.</summary>
/// <typeparam name="T">What each end is shown as, or a number.</typeparam>
/// <param name="Low">The lower end.</param>
/// <param name="High">The higher end.</param>
/// <param name="Over">What stands before two ends: "from ".</param>
/// <param name="At">What stands before a single figure: "to ".</param>
/// <param name="Unit">What stands behind both, where an end does not say its unit itself.</param>
internal readonly record struct ShownRange<T>(T Low, T High, string Over, string At, string Unit)
    where T : notnull
{
    /// <inheritdoc/>
    public override string ToString()
    {
        var (low, high) = (FormattableString.Invariant($"{Low:0.#}"), FormattableString.Invariant($"{High:0.#}"));
        return low == high ? $"{At}{low}{Unit}" : $"{Over}{low} to {high}{Unit}";
    }
}

/// <summary>How ranges are worded behind the words that lead to them.</summary>
internal static class ShownRange
{
    /// <summary>Behind "it can be set": from 20 to 80 °F, to 30 °F.</summary>
    public static ShownRange<T> Set<T>(T low, T high, string unit = "")
        where T : notnull => new(low, high, "from ", "to ", unit);

    /// <summary>Behind what has the range: goes from 4 to 110 min, is 30 min.</summary>
    public static ShownRange<T> Goes<T>(T low, T high, string unit = "")
        where T : notnull => new(low, high, "goes from ", "is ", unit);

    /// <summary>Behind "the old one's", which goes or is so as well: from 4 to 110 min, 30 min.</summary>
    public static ShownRange<T> AsWell<T>(T low, T high, string unit = "")
        where T : notnull => new(low, high, "from ", string.Empty, unit);
}
