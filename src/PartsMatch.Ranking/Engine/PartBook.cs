using PartsMatch.Ranking.Columns;

namespace PartsMatch.Ranking.Engine;

/// <summary>What a catalogue knows of its parts beside their facets: by number and index where each stands, and what is said of stock and price. Immutable.</summary>
internal sealed class PartBook
{
    private readonly PartNumbers numbers;
    private readonly Column<PartState> states;
    private readonly Column<StockCell> stock;
    private readonly RoughOffers offers;

    private PartBook(PartNumbers numbers, Column<PartState> states, Column<StockCell> stock, RoughOffers offers) =>
        (this.numbers, this.states, this.stock, this.offers) = (numbers, states, stock, offers);

    /// <summary>How many parts there may be: more than every index.</summary>
    public int Count => states.Count;

    /// <summary>The indexes of all parts, retired ones too.</summary>
    public int[] Parts => [.. Enumerable.Range(0, states.Count).Where(part => states[part].Standing != Standing.Absent)];

    /// <summary>A book of no part.</summary>
    public static PartBook Empty() => new(new(new([], [])), Column<PartState>.Empty, Column<StockCell>.Empty, RoughOffers.None);

    /// <summary>The book that was written: to be made only once it is known that nothing of it was damaged, since more follows from it.</summary>
    /// <param name="from">What was written.</param>
    public static Func<PartBook> ReadFrom(ColumnsReader from)
    {
        var (numbers, states, stock) = (Numbered.ReadFrom(from), Column<PartState>.ReadFrom(from), Column<StockCell>.ReadFrom(from));
        return () => new(new(numbers), states, stock, RoughOffers.Of(states, stock));
    }

    /// <summary>Adds it to what is written.</summary>
    public void AddTo(ColumnsWriter to)
    {
        numbers.All.AddTo(to);
        states.AddTo(to);
        stock.AddTo(to);
    }

    /// <summary>The index of a number; a new one gets the next, and stays unknown to this book.</summary>
    public int IndexOf(string number) => numbers.Add(number);

    /// <summary>The part of a number, letter for letter; null when there is none.</summary>
    public int? Find(string number) => numbers.Find(number) is { } part && states[part].Standing != Standing.Absent ? part : null;

    /// <summary>The number of a part.</summary>
    public string NumberOf(int part) => numbers[part].ToString();

    /// <summary>Where a part stands.</summary>
    public PartState StateOf(int part) => states[part];

    /// <summary>What is said of a part's stock.</summary>
    public Stock StockOf(int part) => new(stock[part].OnHand, stock[part].Price);

    /// <summary>How a part can be had.</summary>
    public OfferKey OfferOf(int part) => new(RoughOffers.SupplyOf(states[part], stock[part]), stock[part].Price, numbers[part]);

    /// <summary>What is offered in a place, roughly: <see cref="OfferKey.Rough"/>; 0 where the row is out of date.</summary>
    public uint RoughOfferAt(int place) => offers[place];

    /// <summary>The book where some parts stand elsewhere.</summary>
    public PartBook With(IReadOnlyCollection<KeyValuePair<int, PartState>> became)
    {
        var now = states.With(became);
        return new(numbers, now, stock, offers.With(became.Select(one => one.Key), states, now, stock));
    }

    /// <summary>The book with what is said of stock and price; of numbers that it does not have nothing is kept.</summary>
    /// <param name="lines">The last one said of a number counts.</param>
    public PartBook WithStock(IEnumerable<KeyValuePair<string, Stock>> lines)
    {
        List<KeyValuePair<int, StockCell>> known = [];
        foreach (var (number, said) in lines)
        {
            if (Find(number) is { } part) known.Add(KeyValuePair.Create(part, new StockCell(said.OnHand, said.Price)));
        }

        var now = stock.With(known);
        return new(numbers, states, now, offers.With(known.Select(line => line.Key), states, states, now));
    }

    /// <summary>The book where every part that is offered stands in a new place, and what was in places before is forgotten.</summary>
    /// <param name="placed">Of each its state in its new place.</param>
    public PartBook PlacedAnew(IReadOnlyCollection<KeyValuePair<int, PartState>> placed)
    {
        var now = states.With(placed);
        return new(numbers, now, stock, RoughOffers.Of(now, stock));
    }

    /// <summary>The book with another's stock, and parts that stand elsewhere.</summary>
    /// <param name="became">Where they stand.</param>
    /// <param name="other">One of the same numbers.</param>
    public PartBook With(IReadOnlyCollection<KeyValuePair<int, PartState>> became, PartBook other)
    {
        var now = states.With(became);
        return new(numbers, now, other.stock, RoughOffers.Of(now, other.stock));
    }
}
