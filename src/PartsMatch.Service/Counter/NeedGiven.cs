using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Counter;

/// <summary>What an edge was given about a failed part and its place, before anything is read.</summary>
public sealed record NeedGiven(
    Family Family,
    IReadOnlyList<NamedText> Plate,
    string? PlateText,
    string? OldPartNumber,
    IReadOnlyList<NamedText> Site)
{
    /// <summary>The old part's entry, where its number was looked up before.</summary>
    public CatalogueEntry? OldPart { get; init; }
}

/// <summary>A spec as it was given: a family and its named texts.</summary>
public sealed record SpecGiven(Family Family, IReadOnlyList<NamedText> Texts);

/// <summary>A site as it was given.</summary>
public sealed record SiteGiven(Family Family, IReadOnlyList<NamedText> Texts);

/// <summary>Readings as they were given.</summary>
public sealed record ReadingsGiven(Family Family, IReadOnlyList<NamedText> Texts);
