namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>What a plate's text says, before it becomes a record.</summary>
/// <param name="Fields">Each field with where it stood, in the shape's order.</param>
/// <param name="Leftovers">Text that could not be placed, in its order.</param>
/// <param name="Contradictions">Readings that disagree.</param>
/// <param name="Complaints">What was wrong.</param>
public sealed record PlateFindings(
    IReadOnlyList<ReadField> Fields,
    IReadOnlyList<TextSpan> Leftovers,
    IReadOnlyList<Contradiction> Contradictions,
    IReadOnlyList<Complaint> Complaints)
{
    /// <summary>What such a part is called, where the text says it.</summary>
    public IReadOnlyList<TextSpan> Names { get; init; } = [];

    /// <summary>Fields of which the text says something that was not taken.</summary>
    public IReadOnlyList<Field> Doubted { get; init; } = [];
}

/// <summary>Reads free text as typed from a plate, in any order and layout.</summary>
/// <remarks>
/// The text is cut into words and figures; every stretch that can be read by itself (a label and its figure, a word that is a value) is found;
/// then those are chosen that together cover most (<see cref="Cover"/>). It knows no family: the words come from the vocabulary and from the forms of the shape's fields.
/// </remarks>
public sealed class NameplateReader
{
    /// <summary>The longest text that is read; no plate says more.</summary>
    public const int LongestText = 4000;

    private const int LongestQuote = 40;
    private const string WholeText = "plateText";

    private readonly Lexicon lexicon;
    private readonly string example;

    /// <summary>A reader of the plates of one family.</summary>
    /// <exception cref="InvalidOperationException">The vocabulary does not belong to the shape.</exception>
    public NameplateReader(Shape shape, Vocabulary vocabulary) => (lexicon, example) = (new(shape, vocabulary), vocabulary.Example);

    /// <summary>Reads a plate's text; never throws.</summary>
    public PlateFindings Read(string text)
    {
        if (string.IsNullOrWhiteSpace(text)) return Refused(ComplaintCode.Empty, string.Empty, $"There is no text on the plate; type what it says, such as {example}.");
        if (text.Length > LongestText)
        {
            return Refused(ComplaintCode.TooLong, $"{text[..LongestQuote]}…", FormattableString.Invariant($"The text has {text.Length} characters; a plate's text may have {LongestText}."));
        }

        var findings = new Mending(text, lexicon, slips => Read(new PlateText(text, lexicon, slips))).Best();
        return findings.Fields.Count + findings.Contradictions.Count + findings.Complaints.Count > 0 ? findings : findings with { Complaints = [NothingRead(text)] };
    }

    private PlateFindings Read(PlateText plate)
    {
        var reach = new FigureReach(plate, lexicon);
        var units = new PlateUnits(plate, lexicon, reach);
        var reader = new ValueReader(lexicon, units);
        var all = new PlacementSearch(plate, lexicon, reader, reach).All();
        var chosen = UntoldSettings.TakenBack(lexicon, BetweenLabels.GivenBack(Cover.Best(plate, all), all), all);
        var choice = units.TakenBack(CutFigures.TakenBack(plate, reader, reach, LentFigures.TakenBack(plate, reader, chosen, all)));
        return new PlateReport(plate, lexicon, reader, RatedAt.Joined(plate, lexicon, reader, reach, choice)).Findings();
    }

    private Complaint NothingRead(string text)
    {
        var given = text.Trim();
        return new(ComplaintCode.NothingRead, WholeText, given.Length <= LongestQuote ? given : $"{given[..LongestQuote]}…", $"Nothing on the plate could be read; type what it says, each figure with its label or unit, such as {example}.");
    }

    private static PlateFindings Refused(string code, string given, string message) => new([], [], [], [new(code, WholeText, given, message)]);
}
