using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Counter.Lists;

/// <summary>One old part of a list, as an edge was given it.</summary>
/// <param name="Kind">What kind of part it is; null when nobody said.</param>
/// <param name="Number">Its number; empty when there is none.</param>
/// <param name="PlateText">Its plate's text; empty when there is none.</param>
/// <param name="Site">What the new part will meet.</param>
public sealed record OldPart(Family? Kind, string Number, string PlateText, IReadOnlyList<NamedText> Site);
