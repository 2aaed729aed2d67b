using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Capacitors;

/// <summary>Markings as they are typed from cans; which volts are usual on cans is practice, the rest is worked by hand.</summary>
public sealed class CapacitorPlateTests
{
    [Theory]
    [InlineData("40/5 mfd 440", "40+5 µF 440 V")]
    [InlineData("40 / 5 mfd 440", "40+5 µF 440 V")]
    [InlineData("MFD 40/5 VAC 440", "40+5 µF 440 V")]
    [InlineData("CAP 40/5 440 V", "40+5 µF 440 V")]
    [InlineData("45+5 MFD 370/440 VAC", "45+5 µF 440 V")]
    [InlineData("370/440 VAC 45+5 MFD", "45+5 µF 440 V")]
    [InlineData("45 + 5 MFD 370 / 440 VAC", "45+5 µF 440 V")]
    [InlineData("35/5 UF 370/440", "35+5 µF 440 V")]
    [InlineData("10 mfd 440", "10 µF 440 V")]
    [InlineData("MFD 10 440", "10 µF 440 V")]
    [InlineData("CAP 10 250", "10 µF 250 V")]
    [InlineData("10µF 440", "10 µF 440 V")]
    [InlineData("7.5 uf 370v", "7.5 µF 370 V")]
    [InlineData("MFD 10 VAC 370", "10 µF 370 V")]
    [InlineData("10/370", "10 µF 370 V")]
    [InlineData("45+5/440 60HZ ROUND", "45+5 µF 440 V")]
    [InlineData("10 MFD 440 ROUND 2 X 4", "10 µF 440 V")]
    [InlineData("5/370 MFD", "5 µF 370 V")]
    [InlineData("START CAP 330 MFD", "330 µF")]
    public void A_can_is_read_with_its_sections_and_its_volts(string can, string rating) => Rating(can).ShouldBe(rating);

    [Theory]
    [InlineData("145-174 MFD 250 VAC")]
    [InlineData("5/10 MFD 440")]
    [InlineData("10 MFD 1234")]
    [InlineData("MFD 370/440 VAC")]
    [InlineData("10/60")]
    [InlineData("LOT 10/370")]
    [InlineData("QZ10/370")]
    public void What_may_mean_something_else_is_no_rating(string can)
    {
        Rating(can).ShouldBeNull();
        CapacitorFamily.Capacitor.ReadNameplate(can).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(can);
    }

    [Theory]
    [InlineData("10 MFD 440 HP 1/4", "10 µF 440 V", null)]
    [InlineData("CAP 5 MFD 230 V", "5 µF", "230 V")]
    [InlineData("V 230 CAP 5", "5 µF", "230 V")]
    [InlineData("10/440 HP 1/4", null, null)]
    [InlineData("3/440 HP 1/4", null, null)]
    public void A_motors_plate_lends_a_bare_figure_to_its_capacitor_only_behind_the_capacitance(string plate, string? capacitor, string? volts)
    {
        var fields = MotorFamily.Motor.ReadNameplate(plate).Fields;
        Text(fields, "runCapacitor").ShouldBe(capacitor);
        Text(fields, "voltage").ShouldBe(volts);
    }

    [Theory]
    [InlineData("10/370 HP 1/4")]
    [InlineData("HP 1/4 V 230 10/370")]
    [InlineData("1/4 HP 208-230V 1PH 60HZ 10/370 CWLE")]
    [InlineData("HP 1/4\n10/370\nRPM 1075")]
    public void A_motors_plate_says_its_capacitor_without_a_word_where_nothing_is_supplied_with_such_volts(string plate) =>
        Text(MotorFamily.Motor.ReadNameplate(plate).Fields, "runCapacitor").ShouldBe("10 µF 370 V");

    [Theory]
    [InlineData("SER 10/370", "HP 1/4")]
    [InlineData("QZ10/370", "HP 1/4")]
    [InlineData("10/370-6", "HP 1/4")]
    [InlineData("START CAP 10/370", "HP 1/4")]
    public void What_is_part_of_something_else_on_a_motors_plate_is_no_capacitor(string other, string rest)
    {
        var reading = MotorFamily.Motor.ReadNameplate($"{rest} {other}");
        Text(reading.Fields, "runCapacitor").ShouldBeNull();
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe(other);
    }

    private static string? Rating(string can) => Text(CapacitorFamily.Capacitor.ReadNameplate(can).Fields, "rating");

    private static string? Text(IReadOnlyList<ReadField> fields, string name) => fields.SingleOrDefault(field => field.Field.Name == name)?.Text;
}
