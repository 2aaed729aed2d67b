using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Letters typed or scanned for digits: mended where the figure is certain, and never silently. Expected values are worked by hand.</summary>
public sealed class MendedSlipsTests
{
    private static NameplateReading Read(string plate) => MotorFamily.Motor.ReadNameplate(plate);

    private static string Fields(NameplateReading reading) => string.Join("; ", reading.Fields.Select(field => $"{field.Field.Name}={field.Text}"));

    [Theory]
    [InlineData("l/4 HP", "power=1/4 hp", "l/4", "1/4")]
    [InlineData("I/2 HP", "power=1/2 hp", "I/2", "1/2")]
    [InlineData("HP I-l/2", "power=1-1/2 hp", "I-l/2", "1-1/2")]
    [InlineData("6O HZ", "frequency=60 Hz", "6O", "60")]
    [InlineData("6OHZ", "frequency=60 Hz", "6O", "60")]
    [InlineData("HZ S0", "frequency=50 Hz", "S0", "50")]
    [InlineData("2O8-23OV", "voltage=208-230 V", "2O8-23O", "208-230")]
    [InlineData("11S V", "voltage=115 V", "11S", "115")]
    [InlineData("1O75 RPM", "speed=1075 rpm", "1O75", "1075")]
    [InlineData("RPM1O75", "speed=1075 rpm", "1O75", "1075")]
    [InlineData("RPM B25", "speed=825 rpm", "B25", "825")]
    [InlineData("AMPS 2.S", "fullLoadAmps=2.5 A", "2.S", "2.5")]
    [InlineData("2.lA", "fullLoadAmps=2.1 A", "2.l", "2.1")]
    [InlineData("O,37 KW", "power=0.37 kW", "O,37", "0,37")]
    [InlineData("CAP 5/37O", "runCapacitor=5 µF 370 V", "5/37O", "5/370")]
    [InlineData("FR 4BY", "frame=48Y", "4B", "48")]
    [InlineData("SF 1.IS", "serviceFactor=1.15", "1.IS", "1.15")]
    [InlineData("AMB 4OC", "ambientMost=40 °C", "4O", "40")]
    public void A_slip_is_mended_and_told(string plate, string read, string typed, string readAs)
    {
        var reading = Read(plate);
        Fields(reading).ShouldBe(read);
        reading.Fields[0].Mended.ShouldHaveSingleItem().ShouldBe(new(typed, readAs));
        reading.Leftovers.ShouldBeEmpty();
        reading.Complaints.ShouldBeEmpty();
    }

    [Fact]
    public void What_was_mended_still_points_at_what_was_typed() =>
        Read("HP 1/4 RPM 1O75").Fields.Single(field => field.Field.Name == "speed").Spans.ShouldHaveSingleItem().ShouldBe(new("RPM 1O75", 7, 8));

    [Fact]
    public void A_slip_in_a_group_is_told_at_each_of_its_fields() =>
        Read("115/1/6O").Fields.ShouldAllBe(field => field.Mended.Single() == new Mended("115/1/6O", "115/1/60"));

    [Theory]
    [InlineData("S1", "duty=continuous")]
    [InlineData("RPM 1380 B3 A 1.2", "speed=1380 rpm; fullLoadAmps=1.2 A")]
    [InlineData("1/4HP 2SPD", "power=1/4 hp; speeds=2")]
    [InlineData("FR 90S", "frame=IEC 90S")]
    [InlineData("AMPS2.1", "fullLoadAmps=2.1 A")]
    [InlineData("INS B", "insulation=B")]
    [InlineData("TYPE S115 V 230", "voltage=230 V")]
    [InlineData("I15 V 230", "voltage=230 V")]
    [InlineData("SER 4O77S HP 1/2", "power=1/2 hp")]
    [InlineData("HP 1/4 RPM 1075", "power=1/4 hp; speed=1075 rpm")]
    public void Words_codes_and_whole_figures_are_never_mended(string plate, string read)
    {
        var reading = Read(plate);
        Fields(reading).ShouldBe(read);
        reading.Fields.ShouldAllBe(field => field.Mended.Count == 0);
    }

    [Theory]
    [InlineData("HZ 9OO", "HZ 9OO")]
    [InlineData("RPM 1O", "RPM 1O")]
    [InlineData("V 2lO", "V 2lO")]
    [InlineData("6O", "6O")]
    [InlineData("RPM 1O_5", "RPM 1O_5")]
    public void A_slip_that_nothing_makes_certain_or_possible_is_left_over_as_typed(string plate, string left)
    {
        var reading = Read($"{plate}, HP 1/4");
        Fields(reading).ShouldBe("power=1/4 hp");
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    [Fact]
    public void A_mended_figure_never_outvotes_one_that_was_read_as_it_stands()
    {
        var reading = Read("HP 1/4 l/3 HP");
        Fields(reading).ShouldBe("power=1/4 hp");
        reading.Contradictions.ShouldBeEmpty();
    }

    [Fact]
    public void A_code_among_the_slips_keeps_none_of_them_from_being_mended() => Fields(Read("QX7S-1O 6O HZ, HP l/4")).ShouldBe("power=1/4 hp; frequency=60 Hz");
}
