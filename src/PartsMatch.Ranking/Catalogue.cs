using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking;

/// <summary>An immutable snapshot of one family's parts, held in columns: a query that has taken one is not disturbed by writes.</summary>
/// <remarks>Every spec is deduced once, when it comes in; what is judged is the facets read from it.</remarks>
public sealed class Catalogue
{
    private readonly Row[] rows;
    private readonly Dictionary<string, int> rowOf;

    private Catalogue(Family family, IEnumerable<Row> all)
    {
        Family = family;
        rows = [.. all];
        rowOf = rows.Select((row, index) => (row.Part.Number, index)).ToDictionary(pair => pair.Number, pair => pair.index, StringComparer.Ordinal);
        Columns = [.. family.Aspects.Select((_, aspect) => Column.Of([.. rows.Select(row => row.Facets[aspect])]))];
    }

    /// <summary>The family of all its parts.</summary>
    public Family Family { get; }

    /// <summary>How many parts it has, retired ones included.</summary>
    public int Count => rows.Length;

    /// <summary>Its parts, retired ones included, in the order in which they came.</summary>
    public IEnumerable<CataloguePart> Parts => rows.Select(row => row.Part);

    /// <summary>One column an aspect, in the family's order.</summary>
    internal IReadOnlyList<Column> Columns { get; }

    /// <summary>Makes a snapshot. Of parts with the same number the last one counts.</summary>
    /// <param name="family">The family whose specs the parts have.</param>
    /// <param name="parts">The parts.</param>
    public static Catalogue Of(Family family, IEnumerable<CataloguePart> parts) => new Catalogue(family, []).With(parts);

    /// <summary>A new snapshot with parts added, or put in the place of those with the same number; to retire a part is to put it in as not offered.</summary>
    /// <remarks>Only the parts that come in are deduced and read; the columns are coded anew, so that facets that no part carries any more do not stay.</remarks>
    public Catalogue With(IEnumerable<CataloguePart> changed)
    {
        var merged = new OrderedDictionary<string, Row>(rows.Select(row => KeyValuePair.Create(row.Part.Number, row)), StringComparer.Ordinal);
        var shared = Columns.Select(column => column.Facets.ToDictionary(facet => facet)).ToList();
        foreach (var row in changed.AsParallel().AsOrdered().Select(Read)) merged[row.Part.Number] = row.Sharing(shared);
        return new(Family, merged.Values);
    }

    /// <summary>The part of a number, letter for letter; null when there is none.</summary>
    public CataloguePart? Find(string number) => rowOf.TryGetValue(number, out var row) ? rows[row].Part : null;

    /// <summary>The part in a row.</summary>
    internal CataloguePart PartAt(int row) => rows[row].Part;

    private Row Read(CataloguePart part)
    {
        var deduced = Family.Deduce(part.Spec).Spec;
        return new(part, [.. Family.Aspects.Select(aspect => aspect.FacetOf(deduced))]);
    }

    private sealed record Row(CataloguePart Part, object[] Facets)
    {
        /// <summary>The same row with the facet that others carry already in the place of one that equals it: so columns are coded by reference.</summary>
        /// <remarks>Hashing every facet of 100,000 rows anew with each group of an import took as long as all the rest of it.</remarks>
        public Row Sharing(List<Dictionary<object, object>> shared)
        {
            for (var aspect = 0; aspect < Facets.Length; aspect++)
            {
                ref var kept = ref CollectionsMarshal.GetValueRefOrAddDefault(shared[aspect], Facets[aspect], out _);
                Facets[aspect] = kept ??= Facets[aspect];
            }

            return this;
        }
    }
}
