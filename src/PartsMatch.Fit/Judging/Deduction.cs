namespace PartsMatch.Fit.Judging;

/// <summary>A value that follows from others: frame 48 implies a 1/2 in shaft. A reading outranks it.</summary>
/// <param name="Side">Whether it fills the plate or the site.</param>
/// <param name="Field">The field it fills.</param>
/// <param name="Text">Its value as text.</param>
/// <param name="Because">What it follows from, in a few words.</param>
/// <param name="From">The fields it follows from.</param>
/// <param name="Source">The table or rule.</param>
public sealed record Deduction(Side Side, string Field, string Text, string Because, IReadOnlyList<string> From, Source Source);

/// <summary>Readings that cannot all be true.</summary>
/// <param name="Fields">The fields of the plate that disagree.</param>
/// <param name="Sentence">What disagrees, in plain words; never which one is right.</param>
/// <param name="Source">The rule they break.</param>
public sealed record Contradiction(IReadOnlyList<string> Fields, string Sentence, Source Source)
{
    /// <summary>The fields of the site that disagree with them; none where the plate contradicts itself.</summary>
    public IReadOnlyList<string> SiteFields { get; init; } = [];
}
