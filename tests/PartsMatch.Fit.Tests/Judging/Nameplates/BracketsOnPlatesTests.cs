namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>10(6) A on European controls: resistive amps, and in brackets those of an inductive load, a motor's at full load (EN 60730-1, from memory).</summary>
public sealed class BracketsOnPlatesTests
{
    [Theory]
    [InlineData("thermostat", "10(6)A 250V", "ratedVolts=250 V; fullLoadAmps=6 A; resistiveAmps=10 A")]
    [InlineData("thermostat", "16 A (4 A) 250 V~", "ratedVolts=250 V; fullLoadAmps=4 A; resistiveAmps=16 A")]
    [InlineData("pressureControl", "SPDT 16 (10) A 400V~", "action=change-over; poles=1; ratedVolts=400 V; fullLoadAmps=10 A; resistiveAmps=16 A")]
    [InlineData("defrostTimer", "230V 50HZ 16(3)A 250V", "clockVolts=230 V; clockFrequency=50 Hz; ratedVolts=250 V; fullLoadAmps=3 A; resistiveAmps=16 A")]
    public void Amps_in_brackets_are_the_motors_and_those_before_them_the_heaters(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData("10(6) 250V", "10(6)")]
    [InlineData("10 (6 A 250V", "10 (6 A")]
    [InlineData("10 6 A 250V", "10 6 A")]
    public void Without_a_bracket_or_a_unit_neither_is_read(string plate, string left)
    {
        ReadPlate.Fields("thermostat", plate).ShouldBe("ratedVolts=250 V");
        Families.Find("thermostat")!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }
}
