namespace PartsMatch.Fit.Judging;

/// <summary>A piece of a text.</summary>
/// <param name="Text">The piece as it stands there.</param>
/// <param name="From">The index of its first character.</param>
/// <param name="Length">How many characters it has.</param>
public sealed record TextSpan(string Text, int From, int Length);

/// <summary>A field read from a plate's text.</summary>
/// <param name="Field">The field.</param>
/// <param name="Text">Its value, as the field's form writes it.</param>
/// <param name="Spans">The pieces of the plate's text that it came from, in their order; words and figure need not touch.</param>
public sealed record ReadField(Field Field, string Text, IReadOnlyList<TextSpan> Spans)
{
    /// <summary>Slips of the keyboard or of a scanner that were mended for it; empty for nearly all fields.</summary>
    public IReadOnlyList<Mended> Mended { get; init; } = [];
}

/// <summary>A figure with a letter where a digit must stand: 6O HZ, l/4 HP.</summary>
/// <param name="Typed">The figure as it stands in the text: 6O.</param>
/// <param name="ReadAs">What it was read as: 60.</param>
public sealed record Mended(string Typed, string ReadAs);

/// <summary>What a plate's text says.</summary>
/// <param name="Plate">The record with all that was read.</param>
/// <param name="Fields">Each field with where it stood.</param>
/// <param name="Leftovers">Text that could not be placed.</param>
/// <param name="Contradictions">Readings within the text that disagree: none of them is picked.</param>
/// <param name="Complaints">What was wrong with the text as a whole, or with a field that was named but not readable.</param>
public sealed record NameplateReading(
    Spec Plate,
    IReadOnlyList<ReadField> Fields,
    IReadOnlyList<TextSpan> Leftovers,
    IReadOnlyList<Contradiction> Contradictions,
    IReadOnlyList<Complaint> Complaints)
{
    /// <summary>What such a part is called, where the text says it: known, and so neither read nor left over.</summary>
    public IReadOnlyList<TextSpan> Names { get; init; } = [];

    /// <summary>Names of fields of which the text says something that was not taken: two values that differ, a figure that cannot be read, or a word of theirs that is left over and may be another's.</summary>
    public IReadOnlyList<string> Doubted { get; init; } = [];
}
