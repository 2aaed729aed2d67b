using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Pages.Parts;

/// <summary>One thing of which the catalogue and what was typed say something, and what was said when the typing began.</summary>
public sealed record ConflictRow(string Name, string Label, string Began, string Now, string Mine)
{
    public bool Differs => Now != Mine;

    public string WhoChanged => (Now != Began, Mine != Began) switch
    {
        (true, true) => "both changed it",
        (true, false) => "they changed it, you did not: sending yours undoes that",
        _ => "you changed it",
    };
}

/// <summary>Someone else changed a part while it was changed here: both versions, thing by thing.</summary>
/// <param name="Sentence">What is in the way, in plain words.</param>
/// <param name="Now">The part as the catalogue has it.</param>
/// <param name="Began">The version that the typing began with.</param>
/// <param name="Latest">Who changed it last; null when the history does not tell.</param>
/// <param name="Rows">Everything that either says.</param>
public sealed record ConflictModel(string Sentence, CatalogueEntry Now, int Began, PartEdit? Latest, IReadOnlyList<ConflictRow> Rows)
{
    public IEnumerable<ConflictRow> Differing => Rows.Where(row => row.Differs);

    public IEnumerable<ConflictRow> Agreeing => Rows.Where(row => !row.Differs);

    /// <summary>Whether something was changed there that was left alone here.</summary>
    public bool CanTakeOver => Differing.Any(row => row.Mine == row.Began);

    /// <summary>Said beside a field of the form.</summary>
    public IReadOnlyDictionary<string, string> Known => Differing.ToDictionary(row => row.Name, row => $"In the catalogue now: {(row.Now.Length > 0 ? row.Now : "nothing")}.");

    public static ConflictModel Of(string sentence, CatalogueEntry now, IReadOnlyList<PartEdit> history, int versionRead, PartGiven given)
    {
        var (stands, mine) = (PartTexts.Of(now.Family, now.Stored), PartTexts.Of(given));
        // A version that the history does not have was never read: then all that differs was typed.
        var began = history.FirstOrDefault(edit => edit.Change.Version == versionRead) is { } read ? PartTexts.Of(now.Family, read.Change.After) : stands;
        return new(sentence, now, versionRead, history.Count > 0 ? history[0] : null,
            [.. stands.Concat(mine).DistinctBy(text => text.Name)
                .Select(text => new ConflictRow(text.Name, text.Label, PartTexts.TextOf(began, text.Name), PartTexts.TextOf(stands, text.Name), PartTexts.TextOf(mine, text.Name)))
                .Where(row => row.Now.Length + row.Mine.Length > 0)]);
    }
}
