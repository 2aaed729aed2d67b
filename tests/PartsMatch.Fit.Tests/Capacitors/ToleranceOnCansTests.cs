using PartsMatch.Fit.Tests.Judging.Nameplates;

namespace PartsMatch.Fit.Tests.Capacitors;

/// <summary>A can's tolerance stands anywhere among its µF and volts. Expected values are worked by hand.</summary>
public sealed class ToleranceOnCansTests
{
    [Theory]
    [InlineData("45/5 MFD ±6 % 440 VAC")]
    [InlineData("440 VAC 45/5 MFD ±6 %")]
    [InlineData("±6 % 45/5 MFD 440 VAC")]
    [InlineData("45/5 ±6 % MFD 440 VAC")]
    [InlineData("45/5 MFD 440 VAC ±6%")]
    [InlineData("440VAC ±6% 45/5 MFD")]
    [InlineData("45/5 MFD 6 % 440 VAC")]
    [InlineData("45/5 MFD TOL 6% 440 VAC")]
    [InlineData("45/5 MFD 440 VAC 6% TOL")]
    [InlineData("45/5 MFD TOL ± 6 %, 440 VAC")]
    [InlineData("45/5MFD±6%440VAC")]
    [InlineData("45/5 MFD 440 VAC TOL ± 6")]
    public void Volts_belong_to_their_microfarads_wherever_the_tolerance_stands(string plate) => ReadPlate.Whole("capacitor", plate).ShouldBe("rating=45+5 µF 440 V; tolerance=6 %");

    [Theory]
    [InlineData("35±5%µF 450VAC 50/60Hz", "rating=35 µF 450 V; tolerance=5 %; frequency=50/60 Hz")]
    [InlineData("10 MFD 10% 370", "rating=10 µF 370 V; tolerance=10 %")]
    public void A_tolerance_is_no_second_figure(string plate, string read) => ReadPlate.Whole("capacitor", plate).ShouldBe(read);

    [Theory]
    [InlineData("10 MFD 40% 370 VAC", "rating=10 µF 370 V", "40%")]
    [InlineData("10 MFD -5/+10% 370 VAC", "rating=10 µF", "-5/+10% 370 VAC")]
    public void One_that_can_be_none_is_left_over(string plate, string read, string left)
    {
        ReadPlate.Fields("capacitor", plate).ShouldBe(read);
        Families.Find("capacitor")!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }
}
