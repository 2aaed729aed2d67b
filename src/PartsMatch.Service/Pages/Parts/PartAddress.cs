using PartsMatch.Store;

namespace PartsMatch.Service.Pages.Parts;

/// <summary>A part's page, by its number.</summary>
/// <remarks>
/// Dashes, spaces and case do not tell numbers apart, so whatever is no letter and no digit is written as a dash: an escaped slash is
/// undone by some proxies and refused by others. An address with the number as it is written leads to the part as well.
/// </remarks>
internal static class PartAddress
{
    public const string List = "/parts";
    public const string New = $"{List}/new";
    public const string Change = "change";
    public const string Retire = "retire";

    public static string Of(string number) => $"{List}/{Written(number)}";

    public static string Of(string number, string verb) => $"{Of(number)}/{verb}";

    /// <summary>The number in an address; routing leaves a slash in it escaped.</summary>
    public static string NumberIn(string written) => Uri.UnescapeDataString(written);

    private static string Written(string number)
    {
        var written = string.Concat(number.Select(letter => char.IsLetterOrDigit(letter) ? letter : '-'));
        // A part may be numbered like the page that adds one.
        return PartNumber.Key(number) == "NEW" ? "-new" : Uri.EscapeDataString(written);
    }
}
