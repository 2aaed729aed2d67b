namespace PartsMatch.Fit.Judging;

/// <summary>How a family's plates name a field: by a label before the figure or behind it, and by its units.</summary>
/// <param name="Field">The field's name.</param>
/// <param name="Labels">Words that announce the field: RPM, HP, FR, INS CLASS. Units that its form knows are labels of their own.</param>
public sealed record PlateLabel(string Field, params string[] Labels);

/// <summary>A word that is a field's value by itself: TEAO, PSC, CWSE, SLEEVE.</summary>
/// <param name="Field">The field's name.</param>
/// <param name="Word">The word or words as plates print them, upper case, single spaces.</param>
/// <param name="Value">The value as the field's form reads it.</param>
public sealed record PlateWord(string Field, string Word, string Value);

/// <summary>The words of a family's plates.</summary>
/// <param name="Labels">Words that announce fields.</param>
/// <param name="Words">Words that are values.</param>
public sealed record Vocabulary(IReadOnlyList<PlateLabel> Labels, IReadOnlyList<PlateWord> Words);
