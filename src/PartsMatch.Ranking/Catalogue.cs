using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Columns;
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

    private readonly int outOfDate;

    private Catalogue(Questions questions, FacetTable[] facets, SortedRows rows, TailRows tail, PartBook book, int outOfDate) =>
        (Questions, Facets, Rows, Tail, Book, this.outOfDate) = (questions, facets, rows, tail, book, outOfDate);

    /// <summary>The family of all its parts.</summary>
    public Family Family => Questions.Family;

    /// <summary>How many parts are offered: each has one row that is not out of date.</summary>
    public int Offered => Rows.Count + Tail.All.Length - outOfDate;

    /// <summary>Whether so many rows came or went since the sorting, over 1 %, that sorting anew is worth it.</summary>
    public bool WantsSorting => Tail.All.Length + outOfDate > Math.Max(FewUnsorted, Rows.Count / 100);

    /// <summary>How large it is.</summary>
    public CatalogueFigures Figures => new(Rows.Count, Tail.All.Length, Rows.Bytes, [.. Facets.Take(Family.Aspects.Count).Select(table => table.Count)]);

    /// <summary>What is asked of every part.</summary>
    internal Questions Questions { get; }

    /// <summary>The distinct facets that every question reads. Questions that read the same of every part share a table.</summary>
    internal FacetTable[] Facets { get; }

    internal SortedRows Rows { get; }

    internal TailRows Tail { get; }

    /// <summary>What is known of parts beside their facets.</summary>
    internal PartBook Book { get; }

    /// <summary>Makes a sorted snapshot. Of parts with the same number the last one counts.</summary>
    /// <param name="family">The family whose specs the parts have.</param>
    /// <param name="parts">The parts.</param>
    public static Catalogue Of(Family family, IEnumerable<CataloguePart> parts) => Empty(Questions.Of(family)).With(parts).Sorted();

    /// <summary>Reads a snapshot that was written, as it was. It is refused, and never misread, when anything is not as it was written, or as this code would write it.</summary>
    /// <param name="from">Stands at the first byte; nothing may follow the last.</param>
    /// <param name="family">The family whose parts are wanted.</param>
    /// <exception cref="IOException">It cannot be read from.</exception>
    public static ColumnsReading ReadFrom(Stream from, Family family)
    {
        using var reader = new ColumnsReader(from, family);
        if (reader.Refusal is { } why) return new ColumnsReading.Refused(why);
        var (asOf, outOfDate) = (reader.NextFigure(), (int)reader.NextFigure());
        var questions = new Questions(family, [.. family.Aspects.Select(_ => (int)reader.NextFigure())]);
        var facets = new FacetTable[questions.Count];
        for (var question = 0; question < facets.Length; question++)
        {
            var like = (int)reader.NextFigure();
            facets[question] = like < question ? facets[like] : new(FacetForm.Of(questions.AspectOf(question).FacetType), Numbered.ReadFrom(reader));
        }

        var (rows, tail, book) = (SortedRows.ReadFrom(reader, facets.Length), TailRows.ReadFrom(reader, facets.Length), PartBook.ReadFrom(reader));
        if (!reader.IsWhole()) return new ColumnsReading.Refused(ColumnsRefusal.Damaged);
        return new ColumnsReading.Read(new(questions, facets, rows(), tail, book(), outOfDate), asOf);
    }

    /// <summary>Writes the snapshot, so that it need not be made from its parts again.</summary>
    /// <param name="to">Nothing else may be written behind it.</param>
    /// <param name="asOf">What the reader is to be told, such as the revision of the store that it is made of.</param>
    /// <exception cref="IOException">It cannot be written to.</exception>
    public void WriteTo(Stream to, long asOf)
    {
        var writer = new ColumnsWriter();
        writer.Add(asOf);
        writer.Add(outOfDate);
        foreach (var turned in Questions.TurnedAway) writer.Add(turned);
        foreach (var (question, table) in Facets.Index())
        {
            var like = Array.IndexOf(Facets, table);
            writer.Add(like);
            if (like == question) table.All.AddTo(writer);
        }

        Rows.AddTo(writer);
        Tail.AddTo(writer);
        Book.AddTo(writer);
        writer.WriteTo(to, Family);
    }

    /// <summary>A new snapshot with parts added, or put in the place of those with the same number; to retire a part is to put it in as not offered.</summary>
    /// <remarks>They come into the tail: see <see cref="WantsSorting"/>.</remarks>
    public Catalogue With(IEnumerable<CataloguePart> changed)
    {
        var tail = Tail.All.ToBuilder();
        var (became, gone) = (new Dictionary<int, PartState>(), outOfDate);
        var sample = new SpreadSample<Spec>(TurnedAway.Sample);
        foreach (var (part, facets) in changed.AsParallel().AsOrdered().Select(part => (part, WrittenFacets.Of(Questions, part))))
        {
            var index = Book.IndexOf(part.Number);
            if (became.TryGetValue(index, out var before) ? before.IsOffered : Book.StateOf(index).IsOffered) gone++;
            became[index] = new(!part.IsOffered ? Standing.Retired : part.IsMade ? Standing.Made : Standing.Discontinued, part.IsOffered ? Rows.Count + tail.Count : NoPlace);
            if (!part.IsOffered) continue;
            sample.Add(part.Spec);
            tail.Add(new(index, [.. Facets.Select((table, question) => table.Add(facets[question]))]));
        }

        // What only adds a little to the catalogue leaves what is known of it as it is.
        var tellsAnew = sample.Seen >= Math.Max(TurnedAway.LeastParts, Offered);
        return new(tellsAnew ? new(Family, TurnedAway.Of(Family, sample.Kept)) : Questions, Facets, Rows, new(tail.ToImmutable()), Book.With(became), gone);
    }

    /// <summary>A new snapshot with what is said of stock and price; of numbers that the catalogue does not have nothing is kept.</summary>
    /// <param name="lines">The last one said of a number counts.</param>
    public Catalogue WithStock(IEnumerable<KeyValuePair<string, Stock>> lines) => new(Questions, Facets, Rows, Tail, Book.WithStock(lines), outOfDate);

    /// <summary>A snapshot of the same parts, all of them sorted, without rows out of date and facets that no part carries any more.</summary>
    public Catalogue Sorted()
    {
        List<int> live = [.. Enumerable.Range(0, Rows.Count + Tail.All.Length).Where(place => Book.StateOf(PartAt(place)).Place == place)];
        var tables = Facets.Select(table => table.Emptied()).ToArray();
        var becomes = new int[Facets.Length][];
        Parallel.For(0, Facets.Length, question => becomes[question] = Carried(question, live, tables[question]));
        var rows = SortedRows.Of([.. live.Select(PartAt)], Questions, [.. tables.Select(table => table.Count)], (question, codes) =>
        {
            for (var row = 0; row < codes.Length; row++) codes[row] = becomes[question][CodeAt(live[row], question)];
        });
        var placed = Enumerable.Range(0, rows.Count).Select(row => KeyValuePair.Create(rows.PartAt(row), Book.StateOf(rows.PartAt(row)).In(row)));
        return new(Questions, Shared(tables), rows, TailRows.Empty, Book.PlacedAnew(placed.ToArray()), outOfDate: 0);
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
        for (var part = 0; part < now.Book.Count; part++)
        {
            var state = now.Book.StateOf(part);
            if (state == before.Book.StateOf(part)) continue;
            if (Book.StateOf(part).IsOffered) gone++;
            became[part] = state.In(state.IsOffered ? Rows.Count + tail.Count : NoPlace);
            if (state.IsOffered) tail.Add(new(part, [.. Facets.Select((table, question) => table.Add(now.Facets[question].All[now.CodeAt(state.Place, question)].Span))]));
        }

        return new(Questions, Facets, Rows, new(tail.ToImmutable()), Book.With(became, now.Book), gone);
    }

    /// <summary>Whether the part of a number, letter for letter, is offered; null when there is none.</summary>
    public bool? IsOffered(string number) => Book.Find(number) is { } part ? Book.StateOf(part).IsOffered : null;

    /// <summary>Walks over all rows.</summary>
    internal void Walk<TWalk>(ref TWalk walk)
        where TWalk : IWalk
    {
        Rows.Walk(ref walk, default);
        Tail.Walk(ref walk, Rows);
    }

    /// <summary>The place of the part that a query leaves out; one that is none when it leaves none out, or the catalogue does not offer it.</summary>
    internal int LeftOut(string? number) => number is not null && Book.Find(number) is { } part ? Book.StateOf(part).Place : NoPlace;

    /// <summary>The number of the part in a place.</summary>
    internal string NumberAt(int place) => Book.NumberOf(PartAt(place));

    /// <summary>Whether a part is offered in a place: else its row is out of date.</summary>
    internal bool IsCurrent(int place) => Book.RoughOfferAt(place) != 0;

    internal OfferKey OfferAt(int place) => Book.OfferOf(PartAt(place));

    internal Stock StockAt(int place) => Book.StockOf(PartAt(place));

    /// <summary>The code of what a question reads of the part in a place.</summary>
    internal int CodeAt(int place, int question) => place < Rows.Count ? Rows.CodeOf(place, question) : Tail.All[place - Rows.Count].Codes[question];

    private int PartAt(int place) => place < Rows.Count ? Rows.PartAt(place) : Tail.All[place - Rows.Count].Part;

    /// <summary>Gives those facets that some row carries codes of their own.</summary>
    /// <returns>Of every code the new one.</returns>
    private int[] Carried(int question, List<int> places, FacetTable table)
    {
        var becomes = new int[Facets[question].Count];
        becomes.AsSpan().Fill(-1);
        foreach (var place in places)
        {
            var code = CodeAt(place, question);
            if (becomes[code] < 0) becomes[code] = table.Add(Facets[question].All[code].Span);
        }

        return becomes;
    }

    /// <summary>The tables, those that are alike once: what one of their questions adds from now on the others merely do not use.</summary>
    private static FacetTable[] Shared(FacetTable[] tables) => [.. tables.Select(table => Array.Find(tables, table.IsLike)!)];

    private static Catalogue Empty(Questions questions) => new(
        questions,
        [.. questions.Aspects.Select(aspect => new FacetTable(FacetForm.Of(aspect.FacetType), new([], [])))],
        SortedRows.Of([], questions, [.. questions.Aspects.Select(_ => 0)], (_, _) => { }),
        TailRows.Empty,
        PartBook.Empty(),
        outOfDate: 0);
}
