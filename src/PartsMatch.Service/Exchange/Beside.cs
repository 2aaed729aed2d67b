using PartsMatch.Store;

namespace PartsMatch.Service.Exchange;

/// <summary>What the rows of a file are held beside: the catalogue at one moment, the outcomes, and the day that it is.</summary>
internal sealed record Beside(CatalogueSnapshot Catalogue, StoredOutcomes Outcomes, DateOnly Today);
