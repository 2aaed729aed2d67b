using System.ComponentModel.DataAnnotations;

namespace PartsMatch.Service.Graph.Limits;

/// <summary>How much one request may ask for. A client that asks for what a person can look at never meets these.</summary>
public sealed class QueryLimits
{
    public const string Section = "Limits";

    /// <summary>Of a POST's body.</summary>
    [Range(1, 100_000_000)]
    public int RequestBytes { get; set; } = 128 * 1024;

    /// <summary>Of the query alone. Overlapping fields are compared pairwise before any cost is known: 48 kB of them take over a second.</summary>
    [Range(1, 1_000_000)]
    public int QueryBytes { get; set; } = 16 * 1024;

    [Range(1, 100_000_000)]
    public int VariablesBytes { get; set; } = 64 * 1024;

    /// <summary>How deep fields may stand in one another. The usual introspection goes 15 deep.</summary>
    [Range(1, 128)]
    public int Depth { get; set; } = 20;

    /// <summary>Of all operations together, with each fragment written out where it is spread. A query that fills its bytes without a fragment has 8192.</summary>
    [Range(1, 1_000_000)]
    public int Selections { get; set; } = 10_000;

    /// <summary>About how many fields an answer may have: one each, times the items of the lists it stands in.</summary>
    [Range(1, int.MaxValue)]
    public int Cost { get; set; } = 50_000;

    /// <summary>Introspection costs nothing of the above; this keeps it from being asked for a thousand times over. What it costs once grows with the number of types: it passed 200,000 at about 130 of them.</summary>
    [Range(1, int.MaxValue)]
    public int IntrospectionCost { get; set; } = 500_000;

    /// <summary>The greatest <c>first</c>.</summary>
    [Range(1, 10_000)]
    public int ListSize { get; set; } = 100;

    /// <summary>Of a list that is cross-referenced.</summary>
    [Range(1, 10_000)]
    public int PartNumbers { get; set; } = 200;

    [Range(0.001, 3600)]
    public double Seconds { get; set; } = 10;
}
