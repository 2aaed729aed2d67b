using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Pages;

/// <summary>An address of a page with what it holds, short enough to be sent.</summary>
internal static class Link
{
    /// <summary>Longer ones are cut by mail programs and refused by some servers (practice).</summary>
    public const int Longest = 2000;

    /// <summary>Path and query; blank texts are left out.</summary>
    public static string To(string path, IEnumerable<NamedText> holds)
    {
        var query = string.Join('&', holds.Where(text => !string.IsNullOrWhiteSpace(text.Text)).Select(text => $"{Escaped(text.Name)}={Escaped(text.Text)}"));
        return query.Length == 0 ? path : $"{path}?{query}";
    }

    /// <summary>Spaces, slashes and the like stay as short as a query allows (RFC 3986, form encoding's plus for a space).</summary>
    private static string Escaped(string text) => Uri.EscapeDataString(text).Replace("%20", "+", StringComparison.Ordinal).Replace("%2F", "/", StringComparison.Ordinal).Replace("%2C", ",", StringComparison.Ordinal).Replace("%3A", ":", StringComparison.Ordinal);
}
