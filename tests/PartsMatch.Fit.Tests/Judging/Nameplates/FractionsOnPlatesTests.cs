using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>A fraction is one figure however its slash is typed; lists of figures stay lists. Expected values are worked by hand.</summary>
public sealed class FractionsOnPlatesTests
{
    [Theory]
    [InlineData("HP 1 / 4", "power=1/4 hp")]
    [InlineData("1 / 4 HP RPM 1075", "power=1/4 hp; speed=1075 rpm")]
    [InlineData("HP 1/ 4", "power=1/4 hp")]
    [InlineData("HP 1 1 / 2", "power=1-1/2 hp")]
    [InlineData("1-1 / 2 HP", "power=1-1/2 hp")]
    [InlineData("HP 1 / 5 / 1 / 6", "power=1/5 / 1/6 hp")]
    [InlineData("HP 3/4 / 1/3", "power=3/4 / 1/3 hp")]
    [InlineData("V 115 / 230 1 / 4 HP", "power=1/4 hp; voltage=115/230 V")]
    [InlineData("V 208 - 230 1 / 4 HP", "power=1/4 hp; voltage=208-230 V")]
    [InlineData("V 115 / 230 1 1 / 2 HP", "power=1-1/2 hp; voltage=115/230 V")]
    [InlineData("HP 3 / 2", "power=3 / 2 hp")]
    [InlineData("HP 1 / 3 PH", "power=1 hp; phase=three-phase")]
    [InlineData("1 / 4 HP 4 POLE", "power=1/4 hp; poles=4")]
    [InlineData("12 A LRA 14 3 / 4 HP", "power=3/4 hp; fullLoadAmps=12 A; lockedRotorAmps=14 A")]
    [InlineData("SHAFT 1 / 2 X 4", "shaftDiameter=1/2 in; shaftLength=4 in")]
    [InlineData("V 115 / 230", "voltage=115/230 V")]
    [InlineData("RPM 1725 / 1140", "speed=1725/1140 rpm")]
    [InlineData("A 5.4 / 2.8", "fullLoadAmps=5.4/2.8 A")]
    [InlineData("HP 1\u20444 V 115\u2044230", "power=1/4 hp; voltage=115/230 V")]
    [InlineData("HP 1\u22154 CAP 5\u2215370", "power=1/4 hp; runCapacitor=5 µF 370 V")]
    [InlineData("V\u2044PH\u2044HZ 230\u20441\u204460", "voltage=230 V; phase=single-phase; frequency=60 Hz")]
    [InlineData("ＨＰ　１／４", "power=1/4 hp")]
    [InlineData("½ HP", "power=1/2 hp")]
    [InlineData("⅓ HP", "power=1/3 hp")]
    public void A_slash_may_stand_apart_and_be_any_of_the_keyboards_slashes(string plate, string read) =>
        string.Join("; ", MotorFamily.Motor.ReadNameplate(plate).Fields.Select(field => $"{field.Field.Name}={field.Text}")).ShouldBe(read);

    [Theory]
    [InlineData("HP 1 / 0", "power", "HP 1 / 0")]
    [InlineData("0 / 4 HP", "power", "0 / 4 HP")]
    [InlineData("1-1 / 2 A", "fullLoadAmps", "1-1 / 2 A")]
    [InlineData("V 230 / 71", "voltage", "V 230 / 71")]
    public void Of_a_figure_that_can_be_read_in_part_only_no_part_is_taken(string plate, string field, string quoted)
    {
        var reading = MotorFamily.Motor.ReadNameplate($"{plate}, HZ 60");
        reading.Fields.ShouldHaveSingleItem().Text.ShouldBe("60 Hz");
        var complaint = reading.Complaints.ShouldHaveSingleItem();
        (complaint.Field, complaint.Given).ShouldBe((field, quoted));
        complaint.Message.ShouldContain("no part of it is taken");
    }

    [Fact]
    public void What_was_read_is_shown_as_it_was_typed_and_where_it_stood()
    {
        var reading = MotorFamily.Motor.ReadNameplate("V 230 ＨＰ 1\u20444 QQ\u22157");
        var power = reading.Fields.Single(field => field.Field.Name == "power").Spans.ShouldHaveSingleItem();
        (power.Text, power.From, power.Length).ShouldBe(("ＨＰ 1\u20444", 6, 6));
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe("QQ\u22157");
    }

    [Theory]
    [InlineData("h.p. 1/0", "power", "“1/0”")]
    [InlineData("H.P. 1\u20440", "power", "“1\u20440”")]
    [InlineData("90000 r.p.m.", "speed", "“90000”")]
    [InlineData("R.P.M. 850,600", "speed", "“850,600”")]
    [InlineData("AMB 900", "ambientMost", "“900”")]
    public void A_complaint_quotes_the_figure_as_it_was_typed(string plate, string field, string quoted)
    {
        var complaint = MotorFamily.Motor.ReadNameplate(plate).Complaints.ShouldHaveSingleItem();
        (complaint.Field, $"“{complaint.Given}”").ShouldBe((field, quoted));
        complaint.Message.ShouldContain($": {quoted} is ");
    }
}
