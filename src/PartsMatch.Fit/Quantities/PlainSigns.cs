using System.Buffers;

namespace PartsMatch.Fit.Quantities;

/// <summary>Signs that some keyboards put where the trade means plain ones: the slashes of fractions and of division, and full-width letters, digits and signs.</summary>
internal static class PlainSigns
{
    private static readonly SearchValues<char> Others = SearchValues.Create([.. Enumerable.Range(0, char.MaxValue + 1).Select(code => (char)code).Where(character => Plain(character) != character)]);

    private const char FirstFullWidth = '！';
    private const char LastFullWidth = '～';

    /// <summary>The same text in plain signs, every one in its place: positions in the one are positions in the other.</summary>
    public static string In(string text) =>
        text.AsSpan().IndexOfAny(Others) >= 0 ? string.Create(text.Length, text, (plain, given) => { for (var at = 0; at < given.Length; at++) plain[at] = Plain(given[at]); }) : text;

    private static char Plain(char character) => character switch
    {
        '\u2044' or '\u2215' => '/',
        >= FirstFullWidth and <= LastFullWidth => (char)(character - FirstFullWidth + '!'),
        _ => character,
    };
}
