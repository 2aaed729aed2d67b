namespace PartsMatch.Fit.Judging;

/// <summary>A kind of change that a part may ask for. Every kind has exactly one step in the notes.</summary>
/// <param name="Name">Its name at every edge, in camel case: setTap.</param>
/// <param name="Effort">How much work it is: 0 for a look, 1 for about an hour or a part to be made (practice).</param>
/// <param name="IsCheck">Whether it is something to check rather than to alter.</param>
public sealed record ChangeKind(string Name, double Effort, bool IsCheck = false);

/// <summary>Something to change or check so that a part fits.</summary>
/// <param name="Kind">What kind of change.</param>
/// <param name="Words">A few words with its numbers: "set the 208-230 V tap".</param>
public sealed record Change(ChangeKind Kind, FormattableString Words)
{
    /// <summary>The words, formed invariantly.</summary>
    public string Text => FormattableString.Invariant(Words);
}
