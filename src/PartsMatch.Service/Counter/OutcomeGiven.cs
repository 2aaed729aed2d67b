using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Counter;

/// <summary>An outcome as an edge was given it, before any of it is read; what was not said is empty.</summary>
/// <param name="Id">Made by who records it.</param>
/// <param name="Kind">The kind of part.</param>
/// <param name="On">The day on which it was known, such as 2026-03-14.</param>
/// <param name="Place">Where, in the recorder's own words.</param>
/// <param name="OldPart">The number of what was replaced.</param>
/// <param name="Plate">What its plate said.</param>
/// <param name="Site">What was read of the site.</param>
/// <param name="Part">The number of what was put in.</param>
/// <param name="Result">What became of it, in the words of <see cref="OutcomeWords"/>.</param>
/// <param name="Reason">Why it was not right, in the same words.</param>
/// <param name="Note">Free words.</param>
/// <param name="Corrects">The id of the record that this one takes the place of.</param>
public sealed record OutcomeGiven(
    string Id,
    string Kind,
    string On,
    string Place,
    string OldPart,
    IReadOnlyList<NamedText> Plate,
    IReadOnlyList<NamedText> Site,
    string Part,
    string Result,
    string Reason,
    string Note,
    string Corrects)
{
    /// <summary>The plate's text: what it says stands beside what is given field by field. Only its fields are kept.</summary>
    public string? PlateText { get; init; }
}
