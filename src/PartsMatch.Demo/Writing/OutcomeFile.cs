using System.Globalization;
using PartsMatch.Demo.Outcomes;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Demo.Writing;

/// <summary>Writes invented outcomes as a table that the service imports: docs/api.md has its columns.</summary>
public static class OutcomeFile
{
    private static readonly string[] Heads = ["id", "kind", "on", "place", "oldPart", "plate", "site", "part", "result", "reason", "note", "corrects"];

    /// <summary>Stands in every record, and so wherever one is shown.</summary>
    private const string Note = "invented";

    /// <summary>Writes those of all families; the same bytes every time.</summary>
    public static void Write(DemoCatalogue catalogue, string path) => SeedFolder.WriteTable(
        path,
        Heads,
        catalogue.Families.SelectMany(family => DemoCatalogue.OutcomesOf(family).Select(outcome => Row(family.Family.Kind, outcome))));

    private static string[] Row(string kind, DemoOutcome outcome) =>
    [
        outcome.Id, kind, outcome.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), outcome.Place, outcome.Old, string.Empty, Cell(outcome.Site), outcome.New, outcome.Result, outcome.Reason, Note, string.Empty,
    ];

    /// <summary>Named texts in one cell.</summary>
    private static string Cell(IEnumerable<NamedText> texts) =>
        string.Join("; ", texts.Select(text => $"{text.Name}={text.Text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace(";", "\\;", StringComparison.Ordinal)}"));
}
