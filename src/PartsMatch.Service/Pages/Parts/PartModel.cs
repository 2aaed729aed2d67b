using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Needs;
using PartsMatch.Store;

namespace PartsMatch.Service.Pages.Parts;

/// <summary>All that the catalogue says of a part, and how it came to say so.</summary>
public sealed class PartModel(CatalogueEntry part, IReadOnlyList<Successor> successors, IReadOnlyList<Replaced> replaced, IReadOnlyList<PartEdit> history, OutcomePage outcomes)
{
    public CatalogueEntry Part => part;

    public StoredPart Stored => part.Stored;

    /// <summary>What replaced it, with the address of the page where the catalogue has it.</summary>
    public IReadOnlyList<Successor> Successors => successors;

    /// <summary>What it replaced.</summary>
    public IReadOnlyList<Replaced> Replaced => replaced;

    public IReadOnlyList<PartEdit> History => history;

    /// <summary>The newest records of what became of it.</summary>
    public OutcomePage Outcomes => outcomes;

    public PartEdit? Latest => history.Count > 0 ? history[0] : null;

    public bool IsRetired => Stored.Status == PartStatus.Retired;

    public IReadOnlyList<Deduction> Deductions { get; } = part.Family.Deduce(part.Spec).Deductions;

    public IReadOnlyList<Contradiction> Contradictions { get; } = part.Family.Contradictions(part.Spec);

    public string Replacements => new NeedTyped(part.Family, string.Empty, string.Empty, Stored.Number, [], [], []).To(Pages.Replacements.ReplacementsEndpoints.Path);

    public string Change => PartAddress.Of(Stored.Number, PartAddress.Change);

    public string Retire => PartAddress.Of(Stored.Number, PartAddress.Retire);

    public static PartModel Of(Shelf shelf, CatalogueEntry part, IReadOnlyList<PartEdit> history, OutcomePage outcomes) =>
        new(part, [.. part.Stored.SupersededBy.Select(by => new Successor(by, shelf.Find(by.Number) is { } there ? PartAddress.Of(there.Stored.Number) : null))],
            [.. shelf.ReplacedBy(part.Stored.Number).SelectMany(old => old.Stored.SupersededBy.Where(by => PartNumber.Key(by.Number) == PartNumber.Key(part.Stored.Number)).Select(by => new Replaced(old.Stored.Number, by)))], history, outcomes);
}

/// <summary>What replaced a part.</summary>
/// <param name="By">Its number, who says so, and since when.</param>
/// <param name="Address">Its page; null when the catalogue does not have it.</param>
public sealed record Successor(Supersession By, string? Address);

/// <summary>What a part replaced.</summary>
/// <param name="Number">The number of the one before.</param>
/// <param name="By">Who says so, and since when.</param>
public sealed record Replaced(string Number, Supersession By);
