using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Notes;

/// <summary>What a family says of every job, whatever is changed: the steps round the changes, with the need's and the part's numbers in them.</summary>
/// <param name="Before">Steps that stand before the changes of their stage, in order.</param>
/// <param name="After">Steps that stand behind them.</param>
public sealed record JobSteps(IReadOnlyList<Step> Before, IReadOnlyList<Step> After)
{
    /// <summary>What every such job needs besides the part.</summary>
    public IReadOnlyList<KitItem> Kit { get; init; } = [];

    /// <summary>What to mind on every such job.</summary>
    public IReadOnlyList<Caution> Cautions { get; init; } = [];

    /// <summary>The drawing that goes with a change, where there is one; null for a change that needs none.</summary>
    public Func<Change, string?> Diagram { get; init; } = _ => null;
}
