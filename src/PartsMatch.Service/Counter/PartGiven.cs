using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>A part as a writer gives it, before its spec is read.</summary>
public sealed record PartGiven(string Number, string Maker, string Title, PartStatus Status, SpecGiven Spec, IReadOnlyList<Supersession> SupersededBy);
