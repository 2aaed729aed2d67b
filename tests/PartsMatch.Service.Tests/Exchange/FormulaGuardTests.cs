using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Service.Exchange;

namespace PartsMatch.Service.Tests.Exchange;

public sealed class FormulaGuardTests
{
    // The signs: OWASP, "CSV Injection"; the guards worked by hand.
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+49 30", "'+49 30")]
    [InlineData("-20 °C", "'-20 °C")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("\r=1", "'\r=1")]
    [InlineData("＝1", "'＝1")]
    [InlineData("'=1", "''=1")]
    [InlineData("''-1", "'''-1")]
    public void What_could_begin_a_formula_is_guarded(string text, string cell)
    {
        FormulaGuard.On(text).ShouldBe(cell);
        FormulaGuard.Off(cell).ShouldBe(text);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1/4 hp")]
    [InlineData("'")]
    [InlineData("''")]
    [InlineData("'tis")]
    [InlineData("1=1")]
    public void What_could_not_is_left_alone(string text)
    {
        FormulaGuard.On(text).ShouldBe(text);
        FormulaGuard.Off(text).ShouldBe(text);
    }

    [Property(MaxTest = 2000)]
    public Property Any_text_comes_back_exactly_and_begins_no_formula() => Prop.ForAll(Awkward.Text(), text =>
    {
        var cell = FormulaGuard.On(text);
        return FormulaGuard.Off(cell) == text && (cell.Length == 0 || !"=+-@\t\r".Contains(cell[0], StringComparison.Ordinal));
    });
}
