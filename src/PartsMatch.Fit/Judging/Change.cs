using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Judging;

/// <summary>A kind of change that a part may ask for. It cannot be declared without its place in the notes: every change becomes exactly one step there.</summary>
/// <param name="Name">Its name at every edge, in camel case: setTap.</param>
/// <param name="Effort">How much work it is: 0 for a look, 1 for about an hour or a part to be made (practice).</param>
/// <param name="IsCheck">Whether it is something to check rather than to alter.</param>
public sealed record ChangeKind(string Name, double Effort, bool IsCheck = false)
{
    /// <summary>When it is done.</summary>
    public required Stage Stage { get; init; }

    /// <summary>How it is done, in one or two sentences without numbers.</summary>
    public required string HowTo { get; init; }
}

/// <summary>Something to change or check so that a part fits.</summary>
/// <param name="Kind">What kind of change.</param>
/// <param name="Words">A few words with its numbers: "set the 208-230 V tap".</param>
public sealed record Change(ChangeKind Kind, FormattableString Words)
{
    /// <summary>The words, formed invariantly.</summary>
    public string Text => FormattableString.Invariant(Words);

    /// <summary>What to bring for it.</summary>
    public IReadOnlyList<KitItem> Kit { get; init; } = [];
}
