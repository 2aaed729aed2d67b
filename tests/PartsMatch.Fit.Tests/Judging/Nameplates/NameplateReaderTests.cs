using System.Globalization;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Nameplates;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

public sealed class NameplateReaderTests
{
    private static NameplateReading Read(string text) => MotorFamily.Motor.ReadNameplate(text);

    private static string? Value(string text, string field) => Read(text).Fields.SingleOrDefault(read => read.Field.Name == field)?.Text;

    // Lead-mark table of the trade's facts on rotation: public pages on motor plates; the turn facing the shaft follows by geometry.
    [Theory]
    [InlineData("CWSE", "CW shaft end")]
    [InlineData("CWOE", "CW shaft end")]
    [InlineData("CWDE", "CW shaft end")]
    [InlineData("CWPE", "CW shaft end")]
    [InlineData("CWOLE", "CW shaft end")]
    [InlineData("CCWLE", "CCW lead end")]
    [InlineData("CCWOSE", "CCW lead end")]
    [InlineData("CCWODE", "CCW lead end")]
    [InlineData("CCWSE", "CCW shaft end")]
    [InlineData("CCWOE", "CCW shaft end")]
    [InlineData("CCWDE", "CCW shaft end")]
    [InlineData("CCWPE", "CCW shaft end")]
    [InlineData("CCWOLE", "CCW shaft end")]
    [InlineData("CWLE", "CW lead end")]
    [InlineData("CWOSE", "CW lead end")]
    [InlineData("CWODE", "CW lead end")]
    [InlineData("CWOPE", "CW lead end")] // opposite the pulley end: practice
    [InlineData("CCW OPE", "CCW lead end")]
    [InlineData("CW LE", "CW lead end")]
    [InlineData("CCW OPP LE", "CCW shaft end")]
    [InlineData("ROT CW/SE", "CW shaft end")]
    [InlineData("ROTATION: CCW (LE)", "CCW lead end")]
    [InlineData("CW-LE", "CW lead end")]
    [InlineData("LE CCW", "CCW lead end")]
    [InlineData("ROTATION CW FACING SHAFT END", "CW shaft end")]
    [InlineData("CCW", "CCW")]
    [InlineData("ECCW", "CCW")]
    public void A_turn_is_read_with_the_end_it_is_seen_from(string plate, string turn) => Value(plate, "rotation").ShouldBe(turn);

    [Theory]
    [InlineData("REV")]
    [InlineData("CW/CCW")]
    [InlineData("ROT CCW/CW")]
    [InlineData("ECW")]
    [InlineData("ECCW")]
    [InlineData("REVERSIBLE")]
    public void A_reversible_motor_is_reversed_by_its_leads(string plate) => Value(plate, "reversing").ShouldBe("by leads");

    [Fact]
    public void Clockwise_and_counterclockwise_with_a_slash_name_no_turn() => Value("ROT CW/CCW", "rotation").ShouldBeNull();

    [Theory]
    [InlineData("HP 1/0", "power", "1/0")]
    [InlineData("1/0 HP", "power", "1/0")]
    [InlineData("RPM 1e999", "speed", "1e999")]
    [InlineData("HP -1/4", "power", "-1/4")]
    [InlineData("RPM 90000", "speed", "90000")]
    [InlineData("VOLTS 99999999999999999999999999999999", "voltage", "99999")]
    [InlineData("W 1,500", "power", "1,500")]
    [InlineData("RPM 1075,825", "speed", "1075,825")]
    [InlineData("RPM 1075,5", "speed", "1075,5")]
    [InlineData("AMB 900C", "ambientMost", "900C")]
    public void A_named_figure_that_cannot_be_is_a_complaint_and_no_value(string plate, string field, string quoted)
    {
        var reading = Read(plate);
        reading.Fields.ShouldBeEmpty();
        var complaint = reading.Complaints.ShouldHaveSingleItem();
        (complaint.Code, complaint.Field).ShouldBe((ComplaintCode.Unreadable, field));
        complaint.Message.ShouldContain(quoted);
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe(plate);
    }

    [Theory]
    [InlineData("🙂 🙃")]
    [InlineData("V A HZ RPM")]
    [InlineData("1075 60 230")]
    [InlineData("٣٤ HP")]
    [InlineData("HP\u00001/4 \uD800")]
    [InlineData("QZ9ZQ-230V-9A")]
    [InlineData("NOT FOR INVERTER DUTY")]
    public void What_says_nothing_is_left_over(string plate)
    {
        var reading = Read(plate);
        reading.Fields.ShouldBeEmpty();
        reading.Leftovers.ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData("🙂 🙃")]
    [InlineData("1075 60 230")]
    [InlineData("NOT FOR INVERTER DUTY")]
    public void A_text_that_says_nothing_is_said_to_say_nothing(string plate)
    {
        var complaint = Read(plate).Complaints.ShouldHaveSingleItem();
        (complaint.Code, complaint.Field, complaint.Given).ShouldBe((ComplaintCode.NothingRead, "plateText", plate));
        complaint.Message.ShouldStartWith("Nothing on the plate could be read");
    }

    [Theory]
    [InlineData("")]
    [InlineData(" \r\n\t ")]
    public void An_empty_text_is_said_to_be_empty(string plate) => Read(plate).Complaints.ShouldHaveSingleItem().Code.ShouldBe(ComplaintCode.Empty);

    [Fact]
    public void Four_thousand_characters_are_read_and_one_more_is_refused()
    {
        var longest = "HP 1/4 ".PadRight(NameplateReader.LongestText);
        Value(longest, "power").ShouldBe("1/4 hp");
        var refused = Read(longest + " ");
        refused.Complaints.ShouldHaveSingleItem().Code.ShouldBe(ComplaintCode.TooLong);
        refused.Complaints[0].Message.ShouldContain("4000");
        refused.Fields.ShouldBeEmpty();
    }

    [Fact]
    public void Two_different_values_contradict_each_other_and_neither_is_taken()
    {
        var reading = Read("HP 1/4 RPM 1075 1/3 HP");
        reading.Fields.ShouldHaveSingleItem().Text.ShouldBe("1075 rpm");
        reading.Contradictions.ShouldHaveSingleItem().Fields.ShouldBe(["power"]);
        reading.Contradictions[0].Sentence.ShouldContain("1/4 hp");
        reading.Contradictions[0].Sentence.ShouldContain("1/3 hp");
    }

    [Fact]
    public void Two_figures_with_a_label_each_are_no_list() => Read("HP 1/4, 1/3 HP").Contradictions.ShouldHaveSingleItem().Fields.ShouldBe(["power"]);

    [Fact]
    public void The_same_value_twice_is_one_field_with_two_places() =>
        Read("HP 1/4, RPM 1075, 1/4 HP").Fields[0].Spans.Select(span => span.Text).ShouldBe(["HP 1/4", "1/4 HP"]);

    [Fact]
    public void A_figure_between_two_labels_with_nothing_to_decide_is_said_to_be_doubtful()
    {
        var reading = Read("A 60 HZ");
        reading.Fields.ShouldBeEmpty();
        reading.Complaints.ShouldHaveSingleItem().Code.ShouldBe(ComplaintCode.Ambiguous);
    }

    [Theory]
    [InlineData("HP 1/4 RPM 1075 V 230 A", "voltage", "230 V")]
    [InlineData("1/4 HP 1075 RPM V 60 HZ", "frequency", "60 Hz")]
    [InlineData("A 2.1 HZ 60 V", "frequency", "60 Hz")]
    public void Where_a_figure_is_missing_the_plates_own_habit_decides(string plate, string field, string value) => Value(plate, field).ShouldBe(value);

    [Theory]
    [InlineData("CAP 5/370")]
    [InlineData("5 MFD 370 VAC")]
    [InlineData("5MFD/370V")]
    [InlineData("MFD 5 VAC 370")]
    [InlineData("370 VAC 5 MFD")]
    [InlineData("CAP: 370V 5UF")]
    [InlineData("CAPACITOR 5 µF @ 370 V")]
    [InlineData("CAP MFD/VAC 5/370")]
    public void A_capacitors_volts_are_not_the_supplys(string plate)
    {
        Value(plate, "runCapacitor").ShouldBe("5 µF 370 V");
        Value(plate, "voltage").ShouldBeNull();
        Value($"V 230 {plate} A 2.1", "voltage").ShouldBe("230 V");
    }

    [Theory]
    [InlineData("60C AMB 60 HZ", "ambientMost", "60 °C")]
    [InlineData("AMB 40", "ambientMost", "40 °C")]
    [InlineData("104 F AMB", "ambientMost", "104 °F")]
    [InlineData("FR 56 C", "frame", "56C")]
    [InlineData("IEC FRAME 71", "frame", "IEC 71")]
    [InlineData("1/3HP 4P", "poles", "4")]
    [InlineData("CL B", "insulation", "B")]
    [InlineData("CLASS F INS", "insulation", "F")]
    [InlineData("TIME RATING CONT", "duty", "continuous")]
    [InlineData("SER FACT 1.15", "serviceFactor", "1.15")]
    [InlineData("208-230/460 V", "voltage", "208-230/460 V")]
    [InlineData("115/230", "voltage", null)]
    [InlineData("115 V / 230 V", "voltage", "115/230 V")]
    [InlineData("3Ø", "phase", "three-phase")]
    [InlineData("1PH", "phase", "single-phase")]
    [InlineData("1.7 A LRA 14 3/4 HP", "power", "3/4 hp")]
    [InlineData("12 A LRA 14 3/4 HP", "lockedRotorAmps", "14 A")]
    [InlineData("THERMALLY PROTECTED, AUTO RESET", "protection", "automatic")]
    [InlineData("ROT CW, SLEEVE BRG, CWLE", "rotation", "CW lead end")]
    [InlineData("1/4, 1/6, 1/8 HP", "power", "1/4 / 1/6 / 1/8 hp")]
    [InlineData("1075, 975, 850 RPM", "speed", "1075/975/850 rpm")]
    [InlineData("RPM 1075, 230", "speed", "1075 rpm")]
    [InlineData("3/2 HP", "power", "3 / 2 hp")]
    [InlineData("370/250 W", "power", "370/250 W")]
    [InlineData("1-1/2 HP", "power", "1-1/2 hp")]
    [InlineData("1½ A", "fullLoadAmps", "1.5 A")]
    [InlineData("1-1/2 A", "fullLoadAmps", null)]
    [InlineData("SHAFT 5/8 X 2-1/4", "shaftLength", "2-1/4 in")]
    [InlineData("INS A", "fullLoadAmps", null)]
    [InlineData("1/2 HP DIRECT DRIVE", "speedControls", null)]
    public void Words_and_figures_mean_what_stands_beside_them(string plate, string field, string? value) => Value(plate, field).ShouldBe(value);

    [Fact]
    public void A_line_of_labels_is_not_read_with_the_first_figure_of_the_next_line() =>
        Read("HP RPM V A\n1/4 1075 QQ").Fields.ShouldBeEmpty();

    [Fact]
    public void A_plate_reads_the_same_where_a_comma_is_the_decimal_point()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            var reading = Read("HP .75 A 2.1 V 230 SF 1.15 0,37 KW OUTPUT");
            reading.Fields.Select(field => field.Text).ShouldContain("2.1 A");
            reading.Fields.Select(field => field.Text).ShouldContain("1.15");
            reading.Contradictions.ShouldHaveSingleItem().Sentence.ShouldContain("0.37 kW");
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("PF 1.5 SF 99", "")]
    [InlineData("PF, 1.5, SF, 99", "")]
    [InlineData("PF 1.5 SF", "")]
    [InlineData("PF 1.5 SF 99 EFF 140 % POLES 3", "")]
    [InlineData("PF 1.5 SF 1.15", "serviceFactor=1.15")]
    [InlineData("RPM 200/230 V 115/230V", "")]
    [InlineData("HP 1/4 PF 1.5 SF 99", "power=1/4 hp")]
    [InlineData("230 V PF 1.5 SF 99", "voltage=230 V")]
    public void An_impossible_figure_is_not_lent_to_the_label_behind_it(string text, string read)
    {
        var reading = PartsMatch.Fit.Motors.MotorFamily.Motor.ReadNameplate(text);
        string.Join("; ", reading.Fields.Select(field => $"{field.Field.Name}={field.Text}")).ShouldBe(read);
        (reading.Complaints.Count + reading.Contradictions.Count).ShouldBeGreaterThan(0);
    }

    [Theory]
    [InlineData("V 1/4 HP 1075 RPM 60 HZ", "power=1/4 hp; speed=1075 rpm; frequency=60 Hz")]
    [InlineData("RPM 115V 1/4HP", "power=1/4 hp; voltage=115 V")]
    public void A_plate_that_puts_its_labels_behind_reads_on_where_the_first_has_lost_its_figure(string text, string read) =>
        string.Join("; ", PartsMatch.Fit.Motors.MotorFamily.Motor.ReadNameplate(text).Fields.Select(field => $"{field.Field.Name}={field.Text}")).ShouldBe(read);

    // What is left of a figure is no value: 1/_ may be any fraction, 107_ any speed from 1070 to 1079.
    [Theory]
    [InlineData("HP 1/_ V 230", "voltage=230 V")]
    [InlineData("1/ HP 230V", "voltage=230 V")]
    [InlineData("HP 1/", "")]
    [InlineData("1-1/_ HP", "")]
    [InlineData("RPM 107_", "")]
    [InlineData("RPM _075 HZ 60", "frequency=60 Hz")]
    [InlineData("RPM 1_75", "")]
    [InlineData("107?RPM", "")]
    [InlineData("A 2._", "")]
    [InlineData("7._ MFD 370V", "")]
    [InlineData("CAP 5/___", "")]
    [InlineData("115/___ V", "")]
    [InlineData("V 208-", "")]
    [InlineData("V 208- HZ 60", "frequency=60 Hz")]
    [InlineData("V 2_0 PH 1", "phase=single-phase")]
    public void A_figure_of_which_a_part_cannot_be_read_is_no_value(string text, string read)
    {
        var reading = PartsMatch.Fit.Motors.MotorFamily.Motor.ReadNameplate(text);
        string.Join("; ", reading.Fields.Select(field => $"{field.Field.Name}={field.Text}")).ShouldBe(read);
        (reading.Leftovers.Count + reading.Complaints.Count).ShouldBeGreaterThan(0);
    }

    [Theory]
    [InlineData("HP 1/4. RPM 1075. V 230.", "power=1/4 hp; speed=1075 rpm; voltage=230 V")]
    [InlineData("1/4 HP - 1075 RPM - 230 V", "power=1/4 hp; speed=1075 rpm; voltage=230 V")]
    public void Stops_and_free_dashes_leave_figures_whole(string text, string read) =>
        string.Join("; ", PartsMatch.Fit.Motors.MotorFamily.Motor.ReadNameplate(text).Fields.Select(field => $"{field.Field.Name}={field.Text}")).ShouldBe(read);
}
