using System.Runtime.InteropServices;

namespace PartsMatch.Ranking.Engine;

/// <summary>What one query knows of facets: a place for each, made when one near it is first asked for, since a query asks for some hundreds of as many thousands.</summary>
/// <typeparam name="T">What is known of one; the default when nothing is yet.</typeparam>
/// <param name="catalogue">The parts whose facets they are.</param>
internal sealed class ByFacet<T>(Catalogue catalogue)
{
    /// <summary>Up to so many facets of an aspect stand in pages; of more, few are asked for.</summary>
    private const int MostInPages = 2048;

    /// <summary>So many facets with codes one behind the other stand in one page.</summary>
    private const int PageBits = 5;

    private readonly Place[]?[]?[] few = new Place[]?[]?[catalogue.Facets.Length];
    private readonly Dictionary<int, T?>?[] many = new Dictionary<int, T?>?[catalogue.Facets.Length];

    /// <summary>The place of a facet, to be read and written before another is asked for.</summary>
    public ref T? At(int aspect, int code)
    {
        if (few[aspect] is { } pages && pages[code >> PageBits] is { } page) return ref page[code & ((1 << PageBits) - 1)].Known;
        return ref New(aspect, code);
    }

    private ref T? New(int aspect, int code)
    {
        if (few[aspect] is { } pages)
        {
            pages[code >> PageBits] ??= new Place[1 << PageBits];
            return ref At(aspect, code);
        }

        if (many[aspect] is { } known) return ref CollectionsMarshal.GetValueRefOrAddDefault(known, code, out _);
        var count = catalogue.Facets[aspect].Count;
        if (count <= MostInPages) few[aspect] = new Place[]?[(count >> PageBits) + 1];
        else many[aspect] = [];
        return ref New(aspect, code);
    }

    /// <summary>A struct: whoever takes the place of a reference in an array is asked for its type each time.</summary>
    private struct Place
    {
        public T? Known;
    }
}
