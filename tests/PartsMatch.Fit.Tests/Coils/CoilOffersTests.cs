using PartsMatch.Fit.Coils;

namespace PartsMatch.Fit.Tests.Coils;

/// <summary>Further coils with their numbers, read and written.</summary>
public sealed class CoilOffersTests
{
    [Theory]
    [InlineData("24 V 50/60 Hz = QC-24", "24 V 50/60 Hz = QC-24")]
    [InlineData("24V 60Hz=QC-24;12 V DC = QC-12D", "24 V 60 Hz = QC-24; 12 V DC = QC-12D")]
    [InlineData("208-240 V 50/60 Hz = QC 240; ", "208-240 V 50/60 Hz = QC 240")]
    [InlineData("24 VDC = QC-24D", "24 V DC = QC-24D")]
    [InlineData("24 V = QC-24", "24 V = QC-24")]
    [InlineData("24 V 50/60 Hz 10 VA = QC-24", "24 V 50/60 Hz 10 VA = QC-24")]
    [InlineData("24V 60Hz 7.5va=QC-24; 12 V DC 18 VA = QC-12D", "24 V 60 Hz 7.5 VA = QC-24; 12 V DC 18 VA = QC-12D")]
    [InlineData("24 VDC 9VA = QC-24D; 120 V 9 VA = QC-120", "24 V DC 9 VA = QC-24D; 120 V 9 VA = QC-120")]
    public void Coils_are_read_with_their_numbers(string text, string written)
    {
        var reading = CoilOffers.Form.Read(text);
        reading.IsRead.ShouldBeTrue(reading.Wrong);
        CoilOffers.Form.Write(reading.Value).ShouldBe(written);
        CoilOffers.Form.Read(written).Value.ShouldBe(reading.Value);
    }

    [Theory]
    [InlineData("")]
    [InlineData("24 V 60 Hz")]
    [InlineData("= QC-24")]
    [InlineData("QC-24 = 24 V")]
    [InlineData("24 V 60 Hz DC = QC-24")]
    [InlineData("24 V 60 Hz = ")]
    [InlineData("24 VA = QC-24")]
    [InlineData("24 V 60 Hz VA = QC-24")]
    [InlineData("10 VA 24 V 60 Hz = QC-24")]
    public void What_is_no_coil_with_a_number_is_refused_with_what_would_be_right(string text) => CoilOffers.Form.Read(text).Wrong.ShouldNotBeNullOrEmpty();
}
