using PartsMatch.Fit;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Lists;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Exchange.Lists;

/// <summary>The columns of a list of old parts, and those that its answer puts behind them.</summary>
internal static class ListColumns
{
    public const string Number = "number";
    public const string Text = "text";
    public const string Kind = "kind";

    /// <summary>Before a field of the site: site.volts.</summary>
    public const string Site = "site.";

    private const string Answer = "replacement";

    /// <summary>What is told of each replacement.</summary>
    private static readonly string[] OfAPart = ["number", "maker", "title", "fit", "changes", "likelihood", "likelihoodFrom", "onHand", "price"];

    private static readonly string[] OfARow = ["supersessions", "why"];

    private static readonly IReadOnlyList<string> SiteFields = [.. Families.All.SelectMany(family => family.SiteShape.Fields).Select(field => field.Name).Distinct(StringComparer.OrdinalIgnoreCase)];

    /// <summary>How many cells a replacement has.</summary>
    public static int CellsOfAPart => OfAPart.Length;

    /// <summary>The header of an answer.</summary>
    /// <param name="given">The list's own columns.</param>
    /// <param name="first">How many replacements a row has room for.</param>
    public static IEnumerable<string> Header(IReadOnlyList<string> given, int first) =>
        [.. given, .. Enumerable.Range(1, first).SelectMany(at => OfAPart.Select(name => FormattableString.Invariant($"{Answer}{at}.{name}"))), .. OfARow];

    /// <summary>All that is wrong with a list's header; columns that it does not know are the shop's own.</summary>
    public static IReadOnlyList<Refusal> Check(IReadOnlyList<string> given)
    {
        if (given.All(string.IsNullOrEmpty)) return [new(Codes.Empty, string.Empty, $"The list is empty. Its first row names the columns: {Number} or {Text}, or both; {Kind}, {Site}{SiteFields[0]} and others of your own if you like.")];
        if (TableColumns.WrongSeparator(given) is { } separator) return [separator];
        if (TableColumns.TooMany(given) is { } many) return [many];
        var answers = Header([], CrossReference.MostParts).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return
        [
            .. TableColumns.Nameless(given),
            .. TableColumns.Twice(given),
            .. given.Where(answers.Contains).Select(name => new Refusal(Codes.GivenTwice, name, $"The answer has a column “{name}” of its own. Give this one another name, or take it out.")),
            .. given.Select(SiteFieldOf).OfType<string>().Where(field => !SiteFields.Contains(field, StringComparer.OrdinalIgnoreCase)).Select(field => new Refusal(Codes.UnknownField, Site + field, Unknown(field))),
            .. given.Contains(Number, StringComparer.OrdinalIgnoreCase) || given.Contains(Text, StringComparer.OrdinalIgnoreCase) ? []
                : (Refusal[])[new(Codes.ColumnMissing, Number, $"There is no column “{Number}”, nor one “{Text}”: a row needs an old part's number or its plate's text.")],
        ];
    }

    /// <summary>The field of the site that a column is of; null for another.</summary>
    public static string? SiteFieldOf(string column) => column.StartsWith(Site, StringComparison.OrdinalIgnoreCase) ? column[Site.Length..] : null;

    private static string Unknown(string field)
    {
        var near = Spelling.Nearest(field, SiteFields);
        return $"A site has no field “{field}”. {(near.Count > 0 ? $"Did you mean {string.Join(" or ", near.Select(name => Site + name))}?" : $"The fields are: {string.Join(", ", SiteFields)}.")}";
    }
}
