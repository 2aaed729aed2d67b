using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Notes;

/// <summary>What is not known becomes a step: one a field, however many aspects wait for it.</summary>
internal static class FindOut
{
    public static IEnumerable<Step> Steps(FitSheet sheet, Shape spec, Shape site) =>
        from one in sheet.Findings
        from missing in one.Finding.Missing
        group one.Finding.Sentence by missing into waiting
        select Step(waiting.Key, (waiting.Key.Side == Side.Site ? site : spec).Find(waiting.Key.Field)!, string.Join(' ', waiting.Distinct()));

    private static Step Step(Missing missing, Field field, string why)
    {
        var label = char.ToLowerInvariant(field.Label[0]) + field.Label[1..];
        return missing.Side switch
        {
            Side.Part => new(Stage.Bench, $"look on the new part, or ask the counter: {label}", $"{why} {field.Help}"),
            Side.Plate => new(Stage.NoteWhatIsThere, $"find out on the old part: {label}", $"{why} {field.Help}"),
            _ => new(Stage.NoteWhatIsThere, $"find out at the site: {label}", $"{why} {field.Help}"),
        };
    }
}
