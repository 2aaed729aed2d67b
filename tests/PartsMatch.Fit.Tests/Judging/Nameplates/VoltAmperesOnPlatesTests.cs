namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Volt-amperes on plates of switches. Expected values are worked by hand: a coil takes more as it pulls in than when it holds, and pilot duty is a coil in the circuit (practice).</summary>
public sealed class VoltAmperesOnPlatesTests
{
    private const string Contactor = "contactor";
    private const string PressureControl = "pressureControl";

    [Theory]
    [InlineData("COIL 24V 60HZ 7.5 VA SEALED 33 VA INRUSH", "33 VA INRUSH")]
    [InlineData("COIL 24V 60HZ 33 VA INRUSH 7.5 VA SEALED", "33 VA INRUSH")]
    [InlineData("COIL 24V 60HZ INRUSH 33 VA SEALED 7.5 VA", "INRUSH 33")]
    [InlineData("COIL 24V 60HZ SEALED VA 7.5 INRUSH VA 33", "INRUSH VA 33")]
    [InlineData("COIL 24V 60HZ VA INRUSH 33 VA HOLDING 7.5", "VA INRUSH 33")]
    [InlineData("COIL 24V 60HZ 7.5 VA, 33 VA INRUSH", "33 VA INRUSH")]
    [InlineData("COIL 24V 60HZ 7.5VA HOLDING 33VA INRUSH", "33VA INRUSH")]
    public void What_a_coil_takes_as_it_pulls_in_is_not_what_it_holds_with(string plate, string left)
    {
        ReadPlate.Fields(Contactor, plate).ShouldBe("coilVolts=24 V; coilFrequency=60 Hz; coilVa=7.5 VA");
        var reading = Families.Find(Contactor)!.ReadNameplate(plate);
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
        reading.Complaints.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("COIL 24V 60HZ 33 VA INRUSH 7.5 VA")]
    [InlineData("COIL 24V 60HZ 7.5 VA INRUSH 33 VA")]
    [InlineData("COIL 24V 60HZ 33 VA INRUSH")]
    public void Beside_INRUSH_alone_no_figure_is_what_it_holds_with(string plate) => ReadPlate.Fields(Contactor, plate).ShouldBe("coilVolts=24 V; coilFrequency=60 Hz");

    [Theory]
    [InlineData(PressureControl, "FAN CYCLING CLOSES 250 PSI OPENS 180 PSI 16 FLA 96 LRA 240 V 125 VA 24 V", "function=fan cycling; cutOut=180 psi; cutIn=250 psi; ratedVolts=240 V; fullLoadAmps=16 A; lockedRotorAmps=96 A", "125 VA 24 V")]
    [InlineData(PressureControl, "16 FLA 240 V 125 VA AT 24 V", "ratedVolts=240 V; fullLoadAmps=16 A", "125 VA AT 24 V")]
    [InlineData("thermostat", "FLA 16 LRA 96 240 V 125 VA 120 V", "ratedVolts=240 V; fullLoadAmps=16 A; lockedRotorAmps=96 A", "125 VA 120 V")]
    [InlineData(PressureControl, "16 FLA 96 LRA 240 V 125 VA", "ratedVolts=240 V; fullLoadAmps=16 A; lockedRotorAmps=96 A", "125 VA")]
    public void The_volts_of_pilot_duty_are_not_those_of_the_amps(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }
}
