using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Sheets;
using PartsMatch.Store;
using NamedText = PartsMatch.Fit.Judging.NamedText;

namespace PartsMatch.Service.Pages.Needs;

/// <summary>What superseded a part, and whether it does the job that is asked for: that its maker names it says nothing of this shaft or this supply.</summary>
/// <param name="By">Its number, who says so, and since when.</param>
/// <param name="Part">Its entry; null where the catalogue has none of that kind.</param>
/// <param name="Sheet">What is found about it here; null without an entry.</param>
/// <param name="Address">Its sheet for this need; null without an entry.</param>
public sealed record SuccessorHere(Supersession By, CatalogueEntry? Part, FitSheet? Sheet, string? Address)
{
    /// <summary>All that superseded a part.</summary>
    public static IReadOnlyList<SuccessorHere> Of(Shelf shelf, CatalogueEntry part, NeedTyped typed, Need need) => [.. part.Stored.SupersededBy.Select(by =>
        shelf.Find(by.Number) is { } found && found.Family == part.Family
            ? new SuccessorHere(by, found, part.Family.Judge(need, found.Spec), typed.To(SheetEndpoints.Path, new NamedText(SheetEndpoints.Part, found.Stored.Number)))
            : new(by, null, null, null))];

    /// <summary>The questions that it fails, as a clause; null where it fails none.</summary>
    public string? InTheWay => Sheet is { Fit: PartFit.DoesntFit } ? string.Join(", ", Sheet.Failures.Select(one => InSentence.Of(one.Aspect.Title))) : null;
}
