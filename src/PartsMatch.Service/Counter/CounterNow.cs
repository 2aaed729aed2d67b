using System.Collections.Immutable;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;

namespace PartsMatch.Service.Counter;

/// <summary>Catalogue and weights at one moment: what one request goes by from its beginning to its end, whatever is written and trained meanwhile.</summary>
/// <param name="Shelf">The catalogue.</param>
/// <param name="Weights">The weights of every family.</param>
public sealed record CounterNow(Shelf Shelf, ImmutableDictionary<Family, Weights> Weights);
