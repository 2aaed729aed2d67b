using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Quantities;

/// <summary>What meters and gauges show, as text.</summary>
public sealed class MeterFormTests
{
    [Theory]
    [InlineData("4.2 Ω", 4.2)]
    [InlineData("4.2 ohm", 4.2)]
    [InlineData("3.3 kΩ", 3300)]
    [InlineData("20 MΩ", 2e7)]
    [InlineData("20 megohms", 2e7)]
    [InlineData("0 Ω", 0)]
    [InlineData("OL", double.PositiveInfinity)]
    [InlineData("open", double.PositiveInfinity)]
    public void Ohms_read_with_their_unit(string text, double ohms) => Ohms.Form.Read(text).Value!.Value.ShouldBe(ohms);

    [Theory]
    [InlineData("20")]
    [InlineData("20 mΩ")]
    [InlineData("20 mohm")]
    [InlineData("-1 Ω")]
    [InlineData("20 M")]
    [InlineData("")]
    [InlineData("100000 GΩ")]
    public void A_milliohm_is_never_taken_for_a_megohm_nor_a_bare_number_for_either(string text) => Ohms.Form.Read(text).IsRead.ShouldBeFalse();

    [Theory]
    [InlineData("0 V", true)]
    [InlineData("460/467/450 V", true)]
    [InlineData("460/467/450/460 V", false)]
    [InlineData("-5 V", false)]
    public void A_meter_may_show_nothing_and_has_at_most_three_legs(string text, bool isRead) => TextForms.Of(typeof(Measured<UnitsNet.ElectricPotential>)).ReadAny(text).IsRead.ShouldBe(isRead);

    // Published: 1 psi is 6.894757 kPa.
    [Theory]
    [InlineData("220 psi", 1516.847)]
    [InlineData("220 psig", 1516.847)]
    [InlineData("15 bar", 1500)]
    [InlineData("1500 kPa", 1500)]
    [InlineData("-5 psi", -34.474)]
    public void Gauge_pressures_read_in_the_units_of_gauges(string text, double kilopascals) => QuantityForms.GaugePressure.Read(text).Value.Kilopascals.ShouldBe(kilopascals, 0.001);

    [Theory]
    [InlineData("18 °F", 10)]
    [InlineData("10 K", 10)]
    [InlineData("10 °C", 10)]
    [InlineData("0 °F", 0)]
    public void A_difference_of_temperatures_has_no_32_in_it(string text, double kelvin) => QuantityForms.TemperatureDifference.Read(text).Value.Kelvins.ShouldBe(kelvin, 1e-9);

    [Fact]
    public void Every_reading_of_every_family_has_a_label_a_help_and_a_group_and_its_example_reads_back()
    {
        foreach (var family in Families.All)
        {
            var fields = family.ReadingsShape.Fields;
            fields.ShouldNotBeEmpty();
            fields.ShouldAllBe(field => field.Label.Length > 0 && field.Help.EndsWith('.') && field.Group != "General");
            fields.Select(field => field.Name).ShouldBeUnique();
            var texts = fields.Select(field => new NamedText(field.Name, field.Example)).ToList();
            var (readings, complaints) = family.ReadReadings(texts);
            complaints.ShouldBeEmpty();
            var (again, _) = family.ReadReadings(family.ReadingsShape.Write(readings));
            again.ShouldBe(readings);
        }
    }

    [Fact]
    public void All_bad_readings_are_complained_of_at_once() =>
        MotorFamily.Motor.ReadReadings([new("leadVolts", "many"), new("ohmsCommonToRun", "12"), new("volts", "230 V")]).Complaints.Select(complaint => complaint.Code)
            .ShouldBe([ComplaintCode.Unreadable, ComplaintCode.Unreadable, ComplaintCode.UnknownField]);

    [Fact]
    public void Capacitors_have_readings_of_their_own() => CapacitorFamily.Capacitor.ReadingsShape.Find("microfarads").ShouldNotBeNull();
}
