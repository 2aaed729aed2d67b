using System.Runtime.InteropServices;

namespace PartsMatch.Ranking.Engine;

/// <summary>What parts that do equally well are sorted by: supply, price (unknown last), number.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct OfferKey(Supply Supply, decimal? Price, NumberText Text)
{
    private const int PriceBits = 29;
    private const uint MostPrice = (1u << PriceBits) - 1;

    /// <summary>Orders the better before the worse.</summary>
    public static Comparer<OfferKey> BestFirst { get; } = Comparer<OfferKey>.Create((one, other) =>
    {
        var order = one.Supply.CompareTo(other.Supply);
        if (order == 0) order = ComparePrices(one.Price, other.Price);
        return order == 0 ? NumberText.Compare(one.Text, other.Text) : order;
    });

    /// <summary>The part's number.</summary>
    public string Number => Text.ToString();

    /// <summary>How a part can be had, as far as the counter's stock is known.</summary>
    public static Supply SupplyOf(bool isMade, int? onHand) => onHand > 0 ? Supply.AtHand : isMade ? Supply.ToOrder : Supply.NoMore;

    /// <summary>The key but for the number, in one figure and rounded: a better key never has a greater one. Never 0.</summary>
    /// <param name="supply">How it can be had.</param>
    /// <param name="price">Its price.</param>
    public static uint Rough(Supply supply, decimal? price) => 1 + (((uint)supply << PriceBits) | (price is { } known ? (uint)(100 * Math.Clamp(known, 0, (MostPrice - 1) / 100)) : MostPrice));

    /// <summary>The lower price first, an unknown one last.</summary>
    private static int ComparePrices(decimal? one, decimal? other) => (one, other) switch
    {
        (null, null) => 0,
        (null, _) => 1,
        (_, null) => -1,
        ({ } price, { } otherPrice) => price.CompareTo(otherPrice),
    };
}
