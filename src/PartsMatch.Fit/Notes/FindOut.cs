using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Notes;

/// <summary>What is not known becomes a step: one a field, however many aspects wait for it. The first says why, the others are only named.</summary>
internal static class FindOut
{
    public static IEnumerable<Step> Steps(FitSheet sheet, Shape spec, Shape site) =>
        from one in sheet.Findings
        from missing in one.Finding.Missing
        group one by missing into waiting
        select Step(waiting.Key, (waiting.Key.Side == Side.Site ? site : spec).Find(waiting.Key.Field)!, Why([.. waiting]));

    private static string Why(IReadOnlyList<AspectFinding> waiting) => waiting.Count == 1
        ? waiting[0].Finding.Sentence
        : $"{waiting[0].Finding.Sentence} It also settles: {string.Join(", ", waiting.Skip(1).Select(one => InSentence.Of(one.Aspect.Title)))}.";

    private static Step Step(Missing missing, Field field, string why)
    {
        var label = InSentence.Of(field.Label);
        return missing.Side switch
        {
            Side.Part => new(Stage.Bench, $"look on the new part, or ask the counter: {label}", $"{why} {field.Help}"),
            Side.Plate => new(Stage.NoteWhatIsThere, $"find out on the old part: {label}", $"{why} {field.Help}"),
            _ => new(Stage.NoteWhatIsThere, $"find out at the site: {label}", $"{why} {field.Help}"),
        };
    }
}
