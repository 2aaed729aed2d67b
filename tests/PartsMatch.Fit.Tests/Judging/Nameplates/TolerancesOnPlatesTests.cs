namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Tolerances on plates, 20 ±5 °F. Expected values are worked by hand: the figure before the sign is what is meant.</summary>
public sealed class TolerancesOnPlatesTests
{
    private const string Thermostat = "thermostat";
    private const string PressureControl = "pressureControl";

    private static string Fields(string kind, string plate)
    {
        var reading = Families.Find(kind)!.ReadNameplate(plate);
        reading.Contradictions.ShouldBeEmpty();
        return string.Join("; ", reading.Fields.Select(field => $"{field.Field.Name}={field.Text}"));
    }

    [Theory]
    [InlineData("CLOSES AT 20 +/- 5 F OPENS AT 40 F")]
    [InlineData("CLOSES AT 20 ± 5 F OPENS AT 40 F")]
    [InlineData("CLOSES AT 20±5F OPENS AT 40±5F")]
    [InlineData("CLOSES 20F +/-5F OPENS 40F +/-5F")]
    [InlineData("CLOSES 20 F ±5 OPENS 40 F ±5")]
    [InlineData("CLOSES 20F(±5) OPENS 40F(±5)")]
    [InlineData("CLOSES 20 (±5) F OPENS 40 (±5) F")]
    [InlineData("20F ±5F CLOSES 40F ±5F OPENS")]
    public void A_tolerance_is_no_setting(string plate)
    {
        Fields(Thermostat, plate).ShouldBe("cutOut=40 °F; cutIn=20 °F");
        Families.Find(Thermostat)!.ReadNameplate(plate).Leftovers.ShouldBeEmpty();
    }

    [Theory]
    [InlineData(Thermostat, "CLOSES -7 ±3 C OPENS 4 ±3 C", "cutOut=4 °C; cutIn=-7 °C")]
    [InlineData(Thermostat, "RANGE -30 TO 90 ±2 F", "range=-30 to 90 °F")]
    [InlineData(PressureControl, "OPENS 400 ±10 PSI", "cutOut=400 psi")]
    [InlineData(Thermostat, "OPENS ±5 F", "")]
    [InlineData("motor", "230 V ±10% 50 HZ", "voltage=230 V; frequency=50 Hz")]
    [InlineData("capacitor", "5 MFD ±6% 370 V", "rating=5 µF; tolerance=6 %")]
    [InlineData("capacitor", "5 MFD 370 V ±6%", "rating=5 µF 370 V; tolerance=6 %")]
    public void A_tolerance_does_not_come_between_a_figure_and_its_unit(string kind, string plate, string read) => Fields(kind, plate).ShouldBe(read);
}
