using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>How a write ended that was not refused: it is on the disk, or the catalogue has something else there.</summary>
/// <param name="Part">The part as the catalogue has it.</param>
/// <param name="Conflict">What is in the way; null where nothing is.</param>
/// <param name="WasSame">Whether the catalogue said all of it already: then nothing was written.</param>
public sealed record PartWrite(CatalogueEntry Part, string? Conflict, bool WasSame = false);

/// <summary>Adds, changes and retires parts. Places are those of the part that was given. What an edge could not even read is told with all else that is wrong.</summary>
internal sealed class PartWrites(PartStore store, Catalogues catalogues)
{
    public Task<Answer<PartWrite>> AddAsync(PartGiven given, string by, params IReadOnlyList<Refusal> unreadable) =>
        WriteAsync(given, unreadable, draft => AnswerAsync(() => store.AddAsync(draft, by)));

    public Task<Answer<PartWrite>> ChangeAsync(int versionRead, PartGiven given, string by, params IReadOnlyList<Refusal> unreadable) =>
        WriteAsync(given, [.. unreadable, .. OtherKind(given)], draft => Same(versionRead, draft) is { } same
            ? Task.FromResult<Answer<PartWrite>>(same)
            : AnswerAsync(() => store.ChangeAsync(given.Number, versionRead, draft, by), versionRead));

    public Task<Answer<PartWrite>> RetireAsync(string number, int versionRead, string by) =>
        AnswerAsync(() => store.RetireAsync(number, versionRead, by), versionRead);

    private static async Task<Answer<PartWrite>> WriteAsync(PartGiven given, IEnumerable<Refusal> alreadyWrong, Func<PartDraft, Task<Answer<PartWrite>>> write)
    {
        var family = given.Spec.Family;
        var (spec, complaints) = family.ReadSpec(given.Spec.Texts);
        List<Refusal> refusals = [.. PartWords.Number(given.Number, "number"), .. PartWords.Words(given.Maker, "maker"), .. PartWords.Words(given.Title, "title"), .. Superseding(given.SupersededBy), .. alreadyWrong, .. Needs.Refusals(complaints, $"spec.{family.Kind}")];
        if (refusals.Count > 0) return Answer<PartWrite>.Refused(refusals);
        var texts = family.SpecShape.Write(spec).Select(text => new NamedText(text.Name, text.Text));
        return await write(new(given.Number, family.Kind, given.Maker.Trim(), given.Title.Trim(), given.Status, [.. texts], given.SupersededBy));
    }

    private async Task<Answer<PartWrite>> AnswerAsync(Func<Task<WriteResult>> write, int versionRead = 0)
    {
        try
        {
            return await write() switch
            {
                WriteResult.Written(var part) => Written(part, conflict: null),
                WriteResult.AlreadyThere(var present) => Written(present, $"The catalogue has a part {present.Number} already."),
                WriteResult.Conflict(var present) => Written(present, FormattableString.Invariant($"{present.Number} is at version {present.Version}, and the version sent was {versionRead}: nothing was written. Look at the part as it is now, and send version {present.Version} if the change still holds.")),
                WriteResult.AlreadyRetired(var present) => Written(present, $"{present.Number} was retired before."),
                WriteResult.NotThere(var number) => Needs.NotFound(number, "number"),
                WriteResult.BadNumber(var why) => new Refusal(Codes.NumberUnusable, "number", why),
                var other => throw new InvalidOperationException($"The store answered {other.GetType().Name}."),
            };
        }
        catch (StoreFailedException failed)
        {
            return new Refusal(Codes.StoreFailed, string.Empty, failed.Message);
        }
    }

    /// <summary>A version that says nothing new would only make others' changes conflicts.</summary>
    private PartWrite? Same(int versionRead, PartDraft draft)
    {
        if (catalogues.Shelf.Find(draft.Number) is not { } present || present.Stored.Version != versionRead) return null;
        // As it would be written: a seed or an earlier version may have spelt the same figures otherwise.
        var spelt = present.Family.SpecShape.Write(present.Spec).Select(text => new NamedText(text.Name, text.Text));
        var (now, then) = (PartTexts.Of(present.Family, present.Stored with { Spec = [.. spelt] }), PartTexts.Of(present.Family, StoredPart.From(draft, versionRead)));
        return PartTexts.Between(now, then).Count == 0 ? new(present, Conflict: null, WasSame: true) : null;
    }

    private PartWrite Written(StoredPart part, string? conflict) => new(catalogues.Shelf.Show(part)!, conflict);

    private IEnumerable<Refusal> OtherKind(PartGiven given)
    {
        if (catalogues.Shelf.Find(given.Number) is { } present && present.Family != given.Spec.Family)
            yield return new(Codes.KindMismatch, "spec", $"{present.Stored.Number} is a {present.Family.Title} and cannot become a {given.Spec.Family.Title}.");
    }

    /// <summary>What a form could not read it has told already, and left out here.</summary>
    private static IEnumerable<Refusal> Superseding(IEnumerable<Supersession> all) =>
        all.SelectMany((by, at) => PartWords.Number(by.Number, FormattableString.Invariant($"supersededBy.{at}.number")).Concat(PartWords.Words(by.SaidBy, FormattableString.Invariant($"supersededBy.{at}.saidBy"))));
}
