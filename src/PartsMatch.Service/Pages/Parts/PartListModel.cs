using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Store;
using NamedText = PartsMatch.Fit.Judging.NamedText;

namespace PartsMatch.Service.Pages.Parts;

/// <summary>A page of the catalogue.</summary>
/// <param name="Text">The words that were looked for.</param>
/// <param name="Kind">The one kind that is shown; null for all.</param>
/// <param name="Page">The parts.</param>
/// <param name="Same">The part whose number the words are, when there is one; retired ones are not in the list.</param>
public sealed record PartListModel(string Text, Family? Kind, PartPage Page, CatalogueEntry? Same)
{
    public const int PageSize = 30;
    public const string TextName = "text";
    public const string KindName = "kind";
    public const string After = "after";

    public static IReadOnlyList<Family> Kinds => Families.All;

    public CatalogueEntry? Retired => Same is { Stored.Status: PartStatus.Retired } ? Same : null;

    public string LinkFor(Family? kind) => Link.To(PartAddress.List, [new(TextName, Text), new(KindName, kind?.Kind ?? string.Empty)]);

    /// <summary>The same list from its beginning.</summary>
    public string First => LinkFor(Kind);

    /// <summary>The page that follows; null when there is none.</summary>
    public string? Next => Page.HasNext ? Link.To(PartAddress.List, [new(TextName, Text), new(KindName, Kind?.Kind ?? string.Empty), new NamedText(After, PartLists.Cursor(Page.Parts[^1]))]) : null;

    /// <summary>Where a part of a kind is added.</summary>
    public static string Add(Family kind) => Link.To(PartAddress.New, [new NamedText(KindName, kind.Kind)]);
}
