using PartsMatch.Fit.Judging;
using PartsMatch.Store;
using NamedText = PartsMatch.Fit.Judging.NamedText;

namespace PartsMatch.Service.Counter;

/// <summary>A part of the catalogue as it is shown: what the store keeps, read by its family.</summary>
public sealed class CatalogueEntry(Family family, StoredPart stored, StockLine? stock)
{
    // What was read once reads again; a field that a later version dropped is unknown.
    private readonly Lazy<Spec> _spec = new(() => family.ReadSpec([.. stored.Spec.Select(text => new NamedText(text.Name, text.Text))]).Spec);

    public Family Family => family;

    public StoredPart Stored => stored;

    public StockLine? Stock => stock;

    /// <summary>Read when first asked for: most answers do not show it.</summary>
    public Spec Spec => _spec.Value;
}
