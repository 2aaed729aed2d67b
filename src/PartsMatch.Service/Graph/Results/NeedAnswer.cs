using System.ComponentModel;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Results;

/// <summary>What every answer to a need says of how the need was understood.</summary>
internal abstract class NeedAnswer(NeedRead need)
{
    [Description("How the plate's text was read; null when there was none.")]
    public NameplateOut? Nameplate => need.Reading.Nameplate is { } reading ? new(need.Family, reading) : null;

    [Description("The old part's catalogue entry, when its number was given: also who says what replaced it.")]
    public Part? OldPart => need.OldPart is { } entry ? new(entry) : null;

    [Description("What was deduced for the plate and for the site, and from what.")]
    public IEnumerable<DeductionOut> Deductions => need.Reading.Deductions.Select(one => new DeductionOut(one));

    [Description("What disagrees in what was given.")]
    public IEnumerable<ContradictionOut> Contradictions => need.Reading.Contradictions.Select(one => new ContradictionOut(one));
}
