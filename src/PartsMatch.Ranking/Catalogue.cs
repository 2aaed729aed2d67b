using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking;

/// <summary>An immutable snapshot of one family's parts, held in columns: a query that has taken one is not disturbed by writes.</summary>
/// <remarks>
/// Every spec is deduced once, when it comes in; what is kept is the facets read from it. Most rows are sorted by their facets, those that came since stand in a tail that is
/// walked one by one, and rows out of date are left where they are: <see cref="Sorted"/> makes order again.
/// </remarks>
public sealed class Catalogue
{
    /// <summary>Below so many rows in the tail or out of date it is not worth sorting anew.</summary>
    private const int FewUnsorted = 256;

    private const int NoPlace = -1;

    /// <summary>Stands for no part.</summary>
    private const int NoPart = -1;

    private readonly Numbered<string> numbers;
    private readonly Column<PartState> states;
    private readonly Column<StockCell> stock;

    /// <summary>By place: what is offered there, roughly (<see cref="OfferKey.Rough"/>); 0 where the row is out of date.</summary>
    private readonly Column<uint> offers;

    private readonly int outOfDate;

    private Catalogue(Family family)
    {
        Family = family;
        Facets = [.. family.Aspects.Select(_ => NoFacets())];
        (numbers, states, stock, offers) = (new(StringComparer.Ordinal), Column<PartState>.Empty, Column<StockCell>.Empty, Column<uint>.Empty);
        Rows = SortedRows.Of([], IsDeciding, [.. Facets.Select(_ => 0)], [.. Facets.Select(_ => Array.Empty<int>())]);
        Tail = TailRows.Empty;
    }

    private Catalogue(Catalogue before, Numbered<object>[] facets, SortedRows rows, TailRows tail, Column<PartState> states, Column<StockCell> stock, Column<uint> offers, int outOfDate)
    {
        (Family, numbers, Facets) = (before.Family, before.numbers, facets);
        (Rows, Tail, this.states, this.stock, this.offers, this.outOfDate) = (rows, tail, states, stock, offers, outOfDate);
    }

    /// <summary>The family of all its parts.</summary>
    public Family Family { get; }

    /// <summary>How many parts are offered: each has one row that is not out of date.</summary>
    public int Offered => Rows.Count + Tail.All.Length - outOfDate;

    /// <summary>Whether so many rows came or went since the sorting, over 1 %, that sorting anew is worth it.</summary>
    public bool WantsSorting => Tail.All.Length + outOfDate > Math.Max(FewUnsorted, Rows.Count / 100);

    /// <summary>How large it is.</summary>
    public CatalogueFigures Figures => new(Rows.Count, Tail.All.Length, Rows.Bytes, [.. Facets.Select(table => table.Count)]);

    /// <summary>The distinct facets of every aspect, in the family's order.</summary>
    internal Numbered<object>[] Facets { get; }

    internal SortedRows Rows { get; }

    internal TailRows Tail { get; }

    /// <summary>Makes a sorted snapshot. Of parts with the same number the last one counts.</summary>
    /// <param name="family">The family whose specs the parts have.</param>
    /// <param name="parts">The parts.</param>
    public static Catalogue Of(Family family, IEnumerable<CataloguePart> parts) => new Catalogue(family).With(parts).Sorted();

    /// <summary>A new snapshot with parts added, or put in the place of those with the same number; to retire a part is to put it in as not offered.</summary>
    /// <remarks>They come into the tail: see <see cref="WantsSorting"/>.</remarks>
    public Catalogue With(IEnumerable<CataloguePart> changed)
    {
        var tail = Tail.All.ToBuilder();
        var (became, gone) = (new Dictionary<int, PartState>(), outOfDate);
        foreach (var (part, facets) in changed.AsParallel().AsOrdered().Select(Read))
        {
            var index = numbers.Add(part.Number);
            if (became.TryGetValue(index, out var before) ? before.IsOffered : StateOf(index).IsOffered) gone++;
            became[index] = new(!part.IsOffered ? Standing.Retired : part.IsMade ? Standing.Made : Standing.Discontinued, part.IsOffered ? Rows.Count + tail.Count : NoPlace);
            if (part.IsOffered) tail.Add(new(index, CodesOf(facets)));
        }

        var now = states.With(became);
        return new(this, Facets, Rows, new(tail.ToImmutable()), now, stock, OffersWith(became.Keys, now, stock), gone);
    }

    /// <summary>A new snapshot with what is said of stock and price; of numbers that the catalogue does not have nothing is kept.</summary>
    /// <param name="lines">The last one said of a number counts.</param>
    public Catalogue WithStock(IEnumerable<KeyValuePair<string, Stock>> lines)
    {
        List<KeyValuePair<int, StockCell>> known = [.. lines.Select(line => KeyValuePair.Create(Find(line.Key) ?? NoPart, new StockCell(line.Value.OnHand, line.Value.Price))).Where(line => line.Key != NoPart)];
        var now = stock.With(known);
        return new(this, Facets, Rows, Tail, states, now, OffersWith(known.Select(line => line.Key), states, now), outOfDate);
    }

    /// <summary>A snapshot of the same parts, all of them sorted, without rows out of date and facets that no part carries any more.</summary>
    public Catalogue Sorted()
    {
        List<int> live = [.. Enumerable.Range(0, Rows.Count + Tail.All.Length).Where(place => states[PartAt(place)].Place == place)];
        var tables = Facets.Select(_ => NoFacets()).ToArray();
        var codes = new int[Facets.Length][];
        Parallel.For(0, Facets.Length, aspect => codes[aspect] = Recode(aspect, live, tables[aspect]));
        var rows = SortedRows.Of([.. live.Select(PartAt)], IsDeciding, [.. tables.Select(table => table.Count)], codes);
        var placed = Enumerable.Range(0, rows.Count).Select(row => KeyValuePair.Create(rows.PartAt(row), states[rows.PartAt(row)] with { Place = row }));
        var now = states.With([.. placed]);
        return new(this, tables, rows, TailRows.Empty, now, stock, Offers(now, stock), outOfDate: 0);
    }

    /// <summary>
    /// A snapshot of the same parts as one that was made by writes while the sorting went on: a sorting need not be waited for.
    /// </summary>
    /// <param name="before">The snapshot that this is the sorting of.</param>
    /// <param name="now">One made of it since, by <see cref="With"/> and <see cref="WithStock"/>.</param>
    public Catalogue CaughtUp(Catalogue before, Catalogue now)
    {
        var tail = Tail.All.ToBuilder();
        var (became, gone) = (new Dictionary<int, PartState>(), outOfDate);
        for (var part = 0; part < now.states.Count; part++)
        {
            var state = now.states[part];
            if (state == before.StateOf(part)) continue;
            if (StateOf(part).IsOffered) gone++;
            became[part] = state with { Place = state.IsOffered ? Rows.Count + tail.Count : NoPlace };
            if (state.IsOffered) tail.Add(new(part, CodesOf([.. Facets.Select((_, aspect) => now.FacetAt(state.Place, aspect))])));
        }

        var caughtUp = states.With(became);
        return new(this, Facets, Rows, new(tail.ToImmutable()), caughtUp, now.stock, Offers(caughtUp, now.stock), gone);
    }

    /// <summary>Whether the part of a number, letter for letter, is offered; null when there is none.</summary>
    public bool? IsOffered(string number) => Find(number) is { } part ? states[part].IsOffered : null;

    /// <summary>Walks over all rows.</summary>
    internal void Walk<TWalk>(ref TWalk walk)
        where TWalk : IWalk
    {
        Rows.Walk(ref walk, default);
        Tail.Walk(ref walk, Rows);
    }

    /// <summary>The part of a number; null when there is none.</summary>
    internal int? Find(string number) => numbers.Find(number) is { } part && states[part].Standing != Standing.Absent ? part : null;

    /// <summary>The place of the part that a query leaves out; one that is none when it leaves none out, or the catalogue does not offer it.</summary>
    internal int LeftOut(string? number) => number is not null && Find(number) is { } part ? states[part].Place : NoPlace;

    internal PartState StateOf(int part) => states[part];

    /// <summary>Whether a part is offered in a place: else its row is out of date.</summary>
    internal bool IsCurrent(int place) => offers[place] != 0;

    /// <summary>What is offered in a place, roughly: <see cref="OfferKey.Rough"/>.</summary>
    internal uint RoughOfferAt(int place) => offers[place];

    internal OfferKey OfferAt(int place)
    {
        var part = PartAt(place);
        return new(SupplyOf(states[part], stock[part]), stock[part].Price, numbers[part]);
    }

    internal Stock StockOf(string number)
    {
        var cell = Find(number) is { } part ? stock[part] : default;
        return new(cell.OnHand, cell.Price);
    }

    internal Stock StockAt(int place)
    {
        var cell = stock[PartAt(place)];
        return new(cell.OnHand, cell.Price);
    }

    /// <summary>The code of the facet that the part in a place carries.</summary>
    internal int CodeAt(int place, int aspect) => place < Rows.Count ? Rows.CodeOf(place, aspect) : Tail.All[place - Rows.Count].Codes[aspect];

    private bool[] IsDeciding => [.. Family.Aspects.Select(aspect => aspect.IsDeciding)];

    private static Supply SupplyOf(PartState state, StockCell stock) => OfferKey.SupplyOf(state.Standing == Standing.Made, stock.OnHand);

    private static uint Rough(PartState state, StockCell stock) => OfferKey.Rough(SupplyOf(state, stock), stock.Price);

    /// <summary>What is offered in every place.</summary>
    private static Column<uint> Offers(Column<PartState> states, Column<StockCell> stock) => Column<uint>.Empty.With(
        [.. Enumerable.Range(0, states.Count).Where(part => states[part].IsOffered).Select(part => KeyValuePair.Create(states[part].Place, Rough(states[part], stock[part])))]);

    /// <summary>The same where some parts came, went or changed.</summary>
    private Column<uint> OffersWith(IEnumerable<int> changed, Column<PartState> states, Column<StockCell> stock)
    {
        List<KeyValuePair<int, uint>> offered = [];
        foreach (var part in changed)
        {
            if (StateOf(part).IsOffered) offered.Add(KeyValuePair.Create(StateOf(part).Place, 0u));
            if (states[part].IsOffered) offered.Add(KeyValuePair.Create(states[part].Place, Rough(states[part], stock[part])));
        }

        return offers.With(offered);
    }

    private object FacetAt(int place, int aspect) => Facets[aspect][CodeAt(place, aspect)];

    private int PartAt(int place) => place < Rows.Count ? Rows.PartAt(place) : Tail.All[place - Rows.Count].Part;

    private int[] Recode(int aspect, List<int> places, Numbered<object> table)
    {
        var (codeOf, codes) = (new int[Facets[aspect].Count], new int[places.Count]);
        codeOf.AsSpan().Fill(-1);
        foreach (var (row, place) in places.Index())
        {
            var code = CodeAt(place, aspect);
            if (codeOf[code] < 0) codeOf[code] = table.Add(Facets[aspect][code]);
            codes[row] = codeOf[code];
        }

        return codes;
    }

    private static Numbered<object> NoFacets() => new(EqualityComparer<object>.Default);

    private int[] CodesOf(object[] facets) => [.. facets.Select((facet, aspect) => Facets[aspect].Add(facet))];

    private (CataloguePart Part, object[] Facets) Read(CataloguePart part)
    {
        if (!part.IsOffered) return (part, []);
        var deduced = Family.Deduce(part.Spec).Spec;
        return (part, [.. Family.Aspects.Select(aspect => aspect.FacetOf(deduced))]);
    }
}

/// <summary>How large a snapshot is.</summary>
/// <param name="Sorted">Sorted rows.</param>
/// <param name="Tail">Rows that came since.</param>
/// <param name="RowBytes">Bytes held for the sorted rows: codes, order and marks, without numbers, stock and facets.</param>
/// <param name="Facets">Distinct facets of every aspect, in the family's order.</param>
public sealed record CatalogueFigures(int Sorted, int Tail, long RowBytes, IReadOnlyList<int> Facets);
