using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Quantities;

public sealed class UnseenSignsTests
{
    /// <summary>Codes and names: Unicode Character Database, from memory.</summary>
    [Theory]
    [InlineData("a\u0000", "U+0000 (null) stands at character 2. It does not show: take it out.")]
    [InlineData("\u202Eab", "U+202E (right-to-left override) stands at character 1. It does not show: take it out.")]
    [InlineData("a\u2066b", "U+2066 (left-to-right isolate) stands at character 2. It does not show: take it out.")]
    [InlineData("a\uFEFF", "U+FEFF (byte order mark) stands at character 2. It does not show: take it out.")]
    [InlineData("ab\u0085", "U+0085 (control character) stands at character 3. It does not show: take it out.")]
    [InlineData("a\nb", "U+000A (line feed) stands at character 2. Write one line, with a space there.")]
    public void Each_is_named_with_its_place_and_what_would_be_right(string text, string sentence) => UnseenSigns.Complaint(text).ShouldBe(sentence);

    [Fact]
    public void Half_of_a_surrogate_pair_is_one_and_a_whole_pair_is_none()
    {
        // Not as a theory's data: what runs the tests cannot carry half a pair.
        UnseenSigns.Complaint("\U0001F527\uD83D").ShouldBe("U+D83D (half of a surrogate pair) stands at character 3. It does not show: take it out.");
        UnseenSigns.Complaint("\uDD27").ShouldNotBeNull();
        UnseenSigns.Complaint("\U0001F527").ShouldBeNull();
    }

    [Theory]
    [InlineData("1/4 hp, 60 °C µF “x” <b>")]
    [InlineData("مروحة\u200F 5")]
    [InlineData("क\u200Dष")]
    public void What_scripts_need_is_let_be(string text) => UnseenSigns.Complaint(text).ShouldBeNull();

    [Property(MaxTest = 2000)]
    public Property A_shown_text_holds_none_and_a_text_without_any_is_shown_as_it_is() => Prop.ForAll(ArbMap.Default.ArbFor<NonNull<string>>(), text =>
        UnseenSigns.Complaint(UnseenSigns.Shown(text.Get)) is null && (UnseenSigns.Complaint(text.Get) is not null || UnseenSigns.Shown(text.Get) == text.Get));

    [Theory]
    [InlineData("frame", "48\u202EY")]
    [InlineData("power", "1/4\u0000 hp")]
    public void No_field_of_a_spec_is_read_with_one_in_it_and_the_complaint_does_not_repeat_it(string field, string text)
    {
        var complaint = Shape<MotorSpec>.Of.Read([new(field, text)]).Complaints.ShouldHaveSingleItem();
        (complaint.Field, complaint.Code).ShouldBe((field, ComplaintCode.Unreadable));
        UnseenSigns.Complaint(complaint.Message).ShouldBeNull();
        complaint.Message.ShouldContain("(");
    }
}
