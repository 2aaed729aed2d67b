using PartsMatch.Service.Pages.Sheets;

namespace PartsMatch.Service.Tests.Pages;

public sealed class QrPictureTests
{
    /// <summary>ISO/IEC 18004: a version 1 symbol has 21 modules a side, and a quiet zone of 4 on each (from memory).</summary>
    [Fact]
    public void A_short_text_is_the_smallest_symbol_with_its_quiet_zone() => QrPicture.Of("PARTS")!.Size.ShouldBe(21 + 8);

    /// <summary>Its finder pattern begins with a run of seven dark modules in the first row behind the quiet zone (ISO/IEC 18004, from memory).</summary>
    [Fact]
    public void Its_first_stroke_is_the_finder_patterns_top() => QrPicture.Of("PARTS")!.Path.ShouldStartWith("M4 4.5h7");

    [Fact]
    public void A_thousand_characters_are_coded_and_one_more_is_not()
    {
        QrPicture.Of(new('x', 1000)).ShouldNotBeNull();
        QrPicture.Of(new('x', 1001)).ShouldBeNull();
    }
}
