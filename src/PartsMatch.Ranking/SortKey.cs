using System.Buffers.Text;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.Unicode;
using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking;

/// <summary>How a part can be had, the soonest first.</summary>
internal enum Supply
{
    /// <summary>At least one is known to be at the counter.</summary>
    AtHand,

    /// <summary>It is still made.</summary>
    ToOrder,

    /// <summary>It is discontinued, and none is known to be at hand: it may not be had at all.</summary>
    NoMore,
}

/// <summary>What a ranking is sorted by, best first: likelihood as shown, supply, price (unknown last), number. No two parts share one.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct SortKey(int Percent, OfferKey Offer)
{
    private const int MostCursorCharacters = 2048;

    /// <summary>Orders the better before the worse.</summary>
    public static Comparer<SortKey> BestFirst { get; } = Comparer<SortKey>.Create((one, other) =>
    {
        var order = other.Percent.CompareTo(one.Percent);
        return order == 0 ? OfferKey.BestFirst.Compare(one.Offer, other.Offer) : order;
    });

    /// <summary>The key as an opaque text that stands in a link, with the weights that it belongs to.</summary>
    public string ToCursor(string weightsId)
    {
        var price = Offer.Price?.ToString(CultureInfo.InvariantCulture);
        return Base64Url.EncodeToString(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{weightsId}|{Percent}|{(int)Offer.Supply}|{price}|{Offer.Number}")));
    }

    /// <summary>Reads a cursor; null when it is none. Never throws.</summary>
    public static (SortKey Key, string WeightsId)? OfCursor(string cursor)
    {
        if (cursor.Length > MostCursorCharacters || !Base64Url.IsValid(cursor)) return null;
        var bytes = Base64Url.DecodeFromChars(cursor);
        if (!Utf8.IsValid(bytes)) return null;

        // The number comes last, so that it may hold the mark between the fields.
        if (Encoding.UTF8.GetString(bytes).Split('|', 5) is not [var weightsId, var percentText, "0" or "1" or "2", var priceText, { Length: > 0 } number] fields) return null;
        if (!int.TryParse(percentText, NumberStyles.None, CultureInfo.InvariantCulture, out var percent)) return null;
        var supply = (Supply)(fields[2][0] - '0');
        if (priceText.Length == 0) return (new(percent, new(supply, null, NumberText.Of(number))), weightsId);
        return decimal.TryParse(priceText, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var price)
            ? (new(percent, new(supply, price, NumberText.Of(number))), weightsId)
            : null;
    }
}
