namespace PartsMatch.Ranking.Engine;

/// <summary>A part's stock in a column, five words in place of the eight that two values which may be unknown take; the default is unknown.</summary>
internal readonly struct StockCell
{
    /// <summary>A decimal leaves the lowest bits of its word of sign and scale free.</summary>
    private const int HasOnHand = 1;

    private const int HasPrice = 2;

    private readonly int onHand;
    private readonly int low;
    private readonly int middle;
    private readonly int high;
    private readonly int signAndScale;

    /// <summary>Says it.</summary>
    /// <param name="onHand">Pieces at the counter.</param>
    /// <param name="price">For one piece.</param>
    public StockCell(int? onHand, decimal? price)
    {
        Span<int> words = stackalloc int[4];
        decimal.GetBits(price ?? 0, words);
        (low, middle, high, signAndScale) = (words[0], words[1], words[2], words[3]);
        this.onHand = onHand ?? 0;
        if (onHand is not null) signAndScale |= HasOnHand;
        if (price is not null) signAndScale |= HasPrice;
    }

    /// <summary>Pieces at the counter.</summary>
    public int? OnHand => (signAndScale & HasOnHand) != 0 ? onHand : null;

    /// <summary>For one piece, with all its digits.</summary>
    public decimal? Price => (signAndScale & HasPrice) != 0 ? new decimal([low, middle, high, signAndScale & ~(HasOnHand | HasPrice)]) : null;
}
