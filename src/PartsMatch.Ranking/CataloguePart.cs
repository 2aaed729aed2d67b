using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking;

/// <summary>A part of the catalogue, as ranking needs it.</summary>
/// <param name="Number">Its number, the same letter for letter wherever ranking meets it; how people vary it is the store's business.</param>
/// <param name="Spec">What is known of it, as read; deductions are added by the catalogue.</param>
/// <param name="IsOffered">False for a retired part: its number still resolves, and it is never offered.</param>
/// <param name="IsMade">False for a discontinued part: it can be had only where one is at hand.</param>
public sealed record CataloguePart(string Number, Spec Spec, bool IsOffered, bool IsMade = true);

/// <summary>What changes hourly and does not make a part work: it orders parts that fit equally well, and is no aspect.</summary>
/// <param name="OnHand">Pieces at the counter; null when not known.</param>
/// <param name="Price">For one piece, in the one currency of the catalogue; null when not known.</param>
public sealed record Stock(int? OnHand, decimal? Price)
{
    /// <summary>Neither is known: also the stock of a part that has no line.</summary>
    public static Stock Unknown { get; } = new(null, null);
}
