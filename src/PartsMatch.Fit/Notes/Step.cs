using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Notes;

/// <summary>One thing to do.</summary>
/// <param name="Stage">Where it stands in working order.</param>
/// <param name="Words">What to do, in a few words with its numbers.</param>
/// <param name="Detail">How, and why; null when the words say it all.</param>
/// <param name="Diagram">A drawing in plain text of a fixed width, at most <see cref="DiagramColumns"/> wide; null when there is none.</param>
/// <param name="Kind">The kind of change it carries out; null for what every such job needs, and for what is to be found out.</param>
public sealed record Step(Stage Stage, string Words, string? Detail = null, string? Diagram = null, ChangeKind? Kind = null)
{
    /// <summary>As wide as a phone shows a line of fixed width without breaking it (practice).</summary>
    public const int DiagramColumns = 40;
}

/// <summary>Something to mind, said once, at the stage where it matters.</summary>
/// <param name="Stage">That stage.</param>
/// <param name="Words">The caution, in whole sentences.</param>
public sealed record Caution(Stage Stage, string Words);

/// <summary>Something to bring besides the part.</summary>
/// <param name="Words">What, with its numbers: "belly band for a body of 5.6 in".</param>
/// <param name="Quantity">How many; 1 or more.</param>
public sealed record KitItem(FormattableString Words, int Quantity = 1)
{
    /// <summary>What it is, formed invariantly.</summary>
    public string What => FormattableString.Invariant(Words);
}
