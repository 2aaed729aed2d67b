using FsCheck;
using FsCheck.Fluent;

namespace PartsMatch.Service.Tests.Exchange;

/// <summary>Texts that a table is likely to spoil: signs of formulas, guards, quotation marks, separators, line ends, blanks, letters of all kinds.</summary>
internal static class Awkward
{
    private static readonly string[] Pieces = ["=", "+", "-", "@", "\t", "\r", "\n", "\r\n", "'", "''", "\"", "\"\"", ",", ";", " ", "\u00a0", "\u0000", "\ufeff", "µF", "°C", "＝", "<script>", "1/4 hp", "\U0001F527"];

    /// <summary>Any text that UTF-8 can hold: half a surrogate pair is none.</summary>
    public static Arbitrary<string> Text() => Gen.OneOf(
        Gen.Elements(Pieces).ArrayOf().Select(string.Concat),
        ArbMap.Default.GeneratorFor<NonNull<string>>().Select(text => string.Concat(text.Get.EnumerateRunes().Where(rune => rune.Value != 0xFFFD)))).ToArbitrary();
}
