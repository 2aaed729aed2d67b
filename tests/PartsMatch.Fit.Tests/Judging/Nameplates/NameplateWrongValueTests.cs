using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Texts of which a careless reading makes a value that the plate does not have; what they mean is worked by hand from the habits of plates.</summary>
public sealed class NameplateWrongValueTests
{
    private static string Read(string text) => string.Join("; ", MotorFamily.Motor.ReadNameplate(text).Fields.Select(field => $"{field.Field.Name}={field.Text}"));

    private static void LeavesOver(string text)
    {
        var reading = MotorFamily.Motor.ReadNameplate(text);
        (reading.Leftovers.Count + reading.Complaints.Count).ShouldBeGreaterThan(0);
    }

    // NEMA MG 1 gives a letter before the number no meaning; 556 and 548 are no frames of it.
    [Theory]
    [InlineData("FR S56C", "frame=56C")]
    [InlineData("FRAME S48", "frame=48")]
    [InlineData("FR S56", "frame=56")]
    [InlineData("FR B48Y", "frame=48Y")]
    [InlineData("FR S6C", "")]
    [InlineData("FR I43T", "")]
    public void A_letter_before_a_frame_is_no_digit(string text, string read) => Read(text).ShouldBe(read);

    [Theory]
    [InlineData("HP 1/4 V 230 A 2,1", "power=1/4 hp; voltage=230 V; fullLoadAmps=2.1 A")]
    [InlineData("A 2,1 CAP S/370", "fullLoadAmps=2.1 A; runCapacitor=5 µF 370 V")]
    [InlineData("RPM 1075,60HZ", "speed=1075 rpm; frequency=60 Hz")]
    public void A_comma_between_digits_does_not_tear_a_figure(string text, string read) => Read(text).ShouldBe(read);

    [Fact]
    public void A_figure_with_a_comma_between_two_labels_is_not_given_to_both() => Read("A 2,1 MFD S").ShouldNotContain("=1 µF");

    [Theory]
    [InlineData("1I4 HP", "1I4")]
    [InlineData("1l4 HP", "1l4")]
    [InlineData("1|4 HP", "1|4")]
    public void A_stroke_between_two_digits_is_a_lost_slash(string text, string typed)
    {
        var field = MotorFamily.Motor.ReadNameplate(text).Fields.ShouldHaveSingleItem();
        field.Text.ShouldBe("1/4 hp");
        field.Mended.ShouldHaveSingleItem().ShouldBe(new(typed, "1/4"));
    }

    [Theory]
    [InlineData("l14 HP")]
    [InlineData("1I40 HP")]
    [InlineData("1I5 V")]
    [InlineData("1I7I2 HP")]
    [InlineData("2I3 A")]
    [InlineData("11/2 HP")]
    [InlineData("V 20 -230")]
    [InlineData("V 20-230")]
    [InlineData("V 208-23")]
    [InlineData("A 2.")]
    [InlineData("THERMALLY PROTECTED NO")]
    [InlineData("REVERSIBLE NO")]
    [InlineData("REVERSIBLE: NO")]
    [InlineData("NOT SUITABLE FOR INVERTER")]
    public void What_may_mean_two_things_or_is_denied_is_no_value(string text)
    {
        Read(text).ShouldBeEmpty();
        LeavesOver(text);
    }

    [Theory]
    [InlineData("REVERSIBLE NO CAP", "runCapacitor=none; reversing=by leads")]
    [InlineData("115-230 V", "voltage=115/230 V")]
    [InlineData("HP 3/4, 21 A", "power=3/4 hp; fullLoadAmps=21 A")]
    public void What_only_looks_like_it_is_read(string text, string read) => Read(text).ShouldBe(read);

    // Of the last the amps have a figure of their own before them.
    [Theory]
    [InlineData("A 2.1 CAP 370V", "fullLoadAmps=2.1 A")]
    [InlineData("HP 1/4 RPM 1075 V 115 A 2.1 CAP 370V", "power=1/4 hp; speed=1075 rpm; voltage=115 V; fullLoadAmps=2.1 A")]
    [InlineData("HP 1/4 A 2.1 CAP 370 VAC RPM 1075", "power=1/4 hp; speed=1075 rpm; fullLoadAmps=2.1 A")]
    [InlineData("A 2.1 CAP 5 MFD 370V", "fullLoadAmps=2.1 A; runCapacitor=5 µF 370 V")]
    [InlineData("A 2.1 5 MFD 370V", "fullLoadAmps=2.1 A; runCapacitor=5 µF 370 V")]
    [InlineData("1/4 HP 2.1 A 5 CAP 370V", "power=1/4 hp; fullLoadAmps=2.1 A; runCapacitor=5 µF 370 V")]
    public void A_figure_between_two_labels_belongs_to_the_one_before_that_has_no_other(string text, string read) => Read(text).ShouldBe(read);

    [Theory]
    [InlineData("A 2.1 CAP 370V", "CAP 370V")]
    [InlineData("HP 1/4 RPM 1075 V 115 A 2.1 CAP 370V", "CAP 370V")]
    public void A_capacitor_s_volts_without_its_microfarads_are_left_over(string text, string left) =>
        string.Join(" ", MotorFamily.Motor.ReadNameplate(text).Leftovers.Select(span => span.Text)).ShouldBe(left);

    // An inch is divided into halves to sixty-fourths; 50/60 stands on plates for hertz.
    [Theory]
    [InlineData("motor", "HP 1/4 SHAFT 50/60", "power=1/4 hp")]
    [InlineData("motor", "HP 1/4 SHAFT 7/16", "power=1/4 hp; shaftDiameter=7/16 in")]
    [InlineData("capacitor", "45+5 MFD 440 VAC ROUND 50/60", "rating=45+5 µF 440 V; can=round")]
    [InlineData("capacitor", "45+5 MFD 440 VAC ROUND 50/60 HZ", "rating=45+5 µF 440 V; frequency=50/60 Hz; can=round")]
    public void What_divides_no_inch_is_no_length(string kind, string text, string read) =>
        string.Join("; ", Families.Find(kind)!.ReadNameplate(text).Fields.Select(field => $"{field.Field.Name}={field.Text}")).ShouldBe(read);

    // In is the rated current of IEC plates, and in is the inch.
    [Theory]
    [InlineData("0,09 kW In 0,95 A 230 V")]
    [InlineData("SHAFT 1/2 IN 120 W")]
    public void In_beside_amps_or_inches_says_nothing_of_the_power(string text)
    {
        Read(text).ShouldNotContain("powerMeaning");
        Read(text).ShouldContain("power=");
    }

    [Theory]
    [InlineData("120 W IN")]
    [InlineData("INPUT 120 W")]
    [InlineData("P1 120 W")]
    public void Watts_in_are_input(string text) => Read(text).ShouldBe("power=120 W; powerMeaning=input");
}
