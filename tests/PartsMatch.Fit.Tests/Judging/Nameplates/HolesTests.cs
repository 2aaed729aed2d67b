using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>What somebody could not read, and says so. Expected values are worked by hand.</summary>
public sealed class HolesTests
{
    private static NameplateReading Read(string plate) => MotorFamily.Motor.ReadNameplate(plate);

    private static string Fields(string plate) => string.Join("; ", Read(plate).Fields.Select(field => $"{field.Field.Name}={field.Text}"));

    [Theory]
    [InlineData("HP [burnt] RPM [burnt] 1075", "", "HP [burnt] RPM [burnt] 1075")]
    [InlineData("HP [?] RPM [?] 1075 V 230", "voltage=230 V", "HP [?] RPM [?] 1075")]
    [InlineData("HP ... RPM 1075", "speed=1075 rpm", "HP ...")]
    [InlineData("HP … RPM 1075", "speed=1075 rpm", "HP …")]
    [InlineData("HP ? RPM 1075", "speed=1075 rpm", "HP ?")]
    [InlineData("HP (?) RPM 1075", "speed=1075 rpm", "HP (?)")]
    [InlineData("HP[burnt] RPM 1075", "speed=1075 rpm", "HP[burnt]")]
    [InlineData("[burnt] 1075 RPM", "speed=1075 rpm", "[burnt]")]
    [InlineData("HP [illegible] 1075 RPM [scratched] V 230", "voltage=230 V", "HP [illegible] 1075 RPM [scratched]")]
    [InlineData("HZ [burnt] 60 A [burnt] RPM 1075", "speed=1075 rpm", "HZ [burnt] 60 A [burnt]")]
    [InlineData("HZ [burnt] 60 A [burnt]", "", "HZ [burnt] 60 A [burnt]")]
    [InlineData("1/4 HP [burnt] RPM 230 V", "power=1/4 hp; voltage=230 V", "[burnt] RPM")]
    [InlineData("1/4 HP 2.1 A [burnt]", "power=1/4 hp; fullLoadAmps=2.1 A", "[burnt]")]
    public void A_hole_comes_back_whole_and_its_label_is_lent_no_figure(string plate, string read, string left)
    {
        Fields(plate).ShouldBe(read);
        Read(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    [Theory]
    [InlineData("ROT [CCW LE] [TEAO]", "rotation=CCW lead end; enclosure=totally enclosed air over")]
    [InlineData("HP [1/4] RPM [1075]", "power=1/4 hp; speed=1075 rpm")]
    [InlineData("[SLEEVE BRG] 230 V", "voltage=230 V; bearings=sleeve")]
    public void Brackets_about_what_can_be_read_are_no_holes(string plate, string read) => Fields(plate).ShouldBe(read);

    [Theory]
    [InlineData("(XQ) LISTED V 230", "(XQ) LISTED")]
    [InlineData("V 230 XQ (ZZQ)", "XQ (ZZQ)")]
    [InlineData("V 230 {XQ}", "{XQ}")]
    public void A_leftover_keeps_its_brackets(string plate, string left) => Read(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
}
