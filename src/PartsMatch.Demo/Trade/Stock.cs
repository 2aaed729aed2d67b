namespace PartsMatch.Demo.Trade;

/// <summary>What parts cost and how many lie at the counter: invented, and only roughly like the trade.</summary>
public static class Stock
{
    /// <summary>A price that ends as shop prices end.</summary>
    public static decimal Price(double usual, Maker maker, Draw draw)
    {
        var dollars = Math.Max(2, Math.Floor(usual * maker.PriceFactor * draw.Between(0.93, 1.09)));
        return (decimal)dollars + draw.Of((0.95m, 4), (0.49m, 2), (0.00m, 1));
    }

    /// <summary>A counter keeps many of what serves many, few of the rest, and only leftovers of what is made no more.</summary>
    public static int OnHand(bool discontinued, bool universal, Draw draw)
    {
        if (discontinued) return draw.Chance(0.88) ? 0 : draw.Whole(1, 2);
        if (universal) return draw.Chance(0.15) ? 0 : draw.Whole(1, 9);
        return draw.Chance(0.55) ? 0 : draw.Whole(1, 4);
    }
}
