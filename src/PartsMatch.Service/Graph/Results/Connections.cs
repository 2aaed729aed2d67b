using System.ComponentModel;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Results;

[Description("Where a page of a connection stands (Cursor Connections specification).")]
internal sealed class PageInfo(bool hasNext, bool hasPrevious, string? start, string? end)
{
    [Description("Whether more follow this page.")]
    public bool HasNextPage => hasNext;

    [Description("Whether some stand before this page.")]
    public bool HasPreviousPage => hasPrevious;

    [Description("The cursor of the first on this page; null on an empty one.")]
    public string? StartCursor => start;

    [Description("The cursor of the last on this page, to be given as after; null on an empty one.")]
    public string? EndCursor => end;
}

[Description("A page of the catalogue, in the order of part numbers.")]
internal sealed class PartConnection(PartPage page)
{
    [Description("The parts of this page.")]
    public IReadOnlyList<PartEdge> Edges { get; } = [.. page.Parts.Select(part => new PartEdge(part))];

    [Description("Where this page stands.")]
    public PageInfo PageInfo => new(page.HasNext, page.HasPrevious, Edges is [var start, ..] ? start.Cursor : null, Edges is [.., var end] ? end.Cursor : null);
}

[Description("A part with its place in the list.")]
internal sealed class PartEdge(CatalogueEntry part)
{
    [Description("Its place, to be given as after.")]
    public string Cursor => PartLists.Cursor(part);

    [Description("The part.")]
    public Part Node => new(part);
}
