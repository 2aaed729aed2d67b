namespace PartsMatch.Ranking.Engine;

/// <summary>What is offered in every place, roughly (<see cref="OfferKey.Rough"/>): one figure, where the offer itself lies in three columns by part. Immutable.</summary>
internal sealed class RoughOffers
{
    private readonly Column<uint> byPlace;

    private RoughOffers(Column<uint> byPlace) => this.byPlace = byPlace;

    /// <summary>Nothing is offered anywhere.</summary>
    public static RoughOffers None { get; } = new(Column<uint>.Empty);

    /// <summary>What is offered in a place; 0 where the row is out of date.</summary>
    public uint this[int place] => byPlace[place];

    /// <summary>The offers of all parts.</summary>
    public static RoughOffers Of(Column<PartState> states, Column<StockCell> stock) => new(Column<uint>.Empty.With(
        [.. Enumerable.Range(0, states.Count).Where(part => states[part].IsOffered).Select(part => Offer(part, states, stock))]));

    /// <summary>The same where some parts came, went or changed.</summary>
    /// <param name="changed">Which parts.</param>
    /// <param name="before">Where they stood.</param>
    /// <param name="states">Where they stand now.</param>
    /// <param name="stock">All parts' stock now.</param>
    public RoughOffers With(IEnumerable<int> changed, Column<PartState> before, Column<PartState> states, Column<StockCell> stock)
    {
        List<KeyValuePair<int, uint>> offered = [];
        foreach (var part in changed)
        {
            if (before[part].IsOffered) offered.Add(KeyValuePair.Create(before[part].Place, 0u));
            if (states[part].IsOffered) offered.Add(Offer(part, states, stock));
        }

        return new(byPlace.With(offered));
    }

    /// <summary>How a part can be had.</summary>
    public static Supply SupplyOf(PartState state, StockCell stock) => OfferKey.SupplyOf(state.Standing == Standing.Made, stock.OnHand);

    private static KeyValuePair<int, uint> Offer(int part, Column<PartState> states, Column<StockCell> stock) =>
        new(states[part].Place, OfferKey.Rough(SupplyOf(states[part], stock[part]), stock[part].Price));
}
