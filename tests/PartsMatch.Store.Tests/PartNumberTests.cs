using FsCheck.Xunit;

namespace PartsMatch.Store.Tests;

public sealed class PartNumberTests
{
    [Theory]
    [InlineData("QX-1048", "QX1048")]
    [InlineData("qx 1048", "QX1048")]
    [InlineData(" Qx–10 48 ", "QX1048")] // an en dash, as word processors make of a hyphen
    [InlineData("370/5.B", "3705B")]
    [InlineData("ßé7", "ßÉ7")]
    [InlineData("---", "")]
    [InlineData("", "")]
    public void A_key_is_the_letters_and_digits_upper_cased(string number, string key) => PartNumber.Key(number).ShouldBe(key);

    [Property]
    public bool A_key_is_its_own_key(string? number) => PartNumber.Key(PartNumber.Key(number ?? "")) == PartNumber.Key(number ?? "");

    [Property]
    public bool Dashes_and_blanks_make_no_difference(string? front, string? back) =>
        PartNumber.Key($"{front}- -{back}") == PartNumber.Key($"{front}{back}");
}
