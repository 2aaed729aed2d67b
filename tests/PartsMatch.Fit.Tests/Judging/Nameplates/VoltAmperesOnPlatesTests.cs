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

    /// <summary>A figure goes with the unit right behind it, whatever label stands before (practice).</summary>
    [Theory]
    [InlineData(Contactor, "COIL 9 VA 24 V 60 HZ", "coilVolts=24 V; coilFrequency=60 Hz; coilVa=9 VA")]
    [InlineData(Contactor, "COIL 9VA 24V 60HZ", "coilVolts=24 V; coilFrequency=60 Hz; coilVa=9 VA")]
    [InlineData(Contactor, "COIL: 9 VA, 24 V, 60 HZ", "coilVolts=24 V; coilFrequency=60 Hz; coilVa=9 VA")]
    [InlineData(Contactor, "COIL 9 VA 24 V", "coilVolts=24 V; coilVa=9 VA")]
    [InlineData(Contactor, "COIL 60 HZ 9 VA 24 V", "coilVolts=24 V; coilFrequency=60 Hz; coilVa=9 VA")]
    [InlineData(Contactor, "COIL 9 VA 60 HZ 24 V 2 POLE FLA 30", "poleCount=2 poles; coilVolts=24 V; coilFrequency=60 Hz; coilVa=9 VA; fullLoadAmps=30 A")]
    [InlineData(Contactor, "COIL 9 VA 24 V 2 POLE FLA 30", "poleCount=2 poles; coilVolts=24 V; coilVa=9 VA; fullLoadAmps=30 A")]
    [InlineData(Contactor, "COIL 9 VA 120 V 60 HZ 2 POLE FLA 30", "poleCount=2 poles; coilVolts=120 V; coilFrequency=60 Hz; coilVa=9 VA; fullLoadAmps=30 A")]
    [InlineData(Contactor, "COIL 9 VA 24 VDC", "coilVolts=24 V; coilCurrent=DC; coilVa=9 VA")]
    [InlineData(Contactor, "COIL 12 OHMS 24 V", "coilVolts=24 V; coilOhms=12 Ω")]
    [InlineData(Contactor, "COIL 9 VA HOLDING 24 V 60 HZ", "coilVolts=24 V; coilFrequency=60 Hz; coilVa=9 VA")]
    [InlineData(Contactor, "COIL 9 VA SEALED 120 V FLA 30", "coilVolts=120 V; coilVa=9 VA; fullLoadAmps=30 A")]
    [InlineData(Contactor, "24 V 9 VA COIL", "coilVolts=24 V; coilVa=9 VA")]
    [InlineData(Contactor, "FLA 30 240 V COIL 9 VA 24 V", "coilVolts=24 V; coilVa=9 VA; ratedVolts=240 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "FLA 30 LRA 150 600 V COIL 9 VA 240 V 60 HZ", "coilVolts=240 V; coilFrequency=60 Hz; coilVa=9 VA; ratedVolts=600 V; fullLoadAmps=30 A; lockedRotorAmps=150 A")]
    [InlineData(Contactor, "FLA 30 600 V COIL 60 HZ 240 V", "coilVolts=240 V; coilFrequency=60 Hz; ratedVolts=600 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "COIL 24 VA 9", "coilVolts=24 V; coilVa=9 VA")]
    [InlineData(Contactor, "COIL 24 VA 9 HZ 60 FLA 30", "coilVolts=24 V; coilFrequency=60 Hz; coilVa=9 VA; fullLoadAmps=30 A")]
    [InlineData("solenoidValve", "COIL 9 VA 24 V 60 HZ", "coilVolts=24 V; coilFrequency=60 Hz; coilPower=9 VA")]
    [InlineData("solenoidValve", "COIL 16 VA 120V 60HZ R-22 NC", "normalState=normally closed; refrigerants=R-22; coilVolts=120 V; coilFrequency=60 Hz; coilPower=16 VA")]
    public void Volt_amperes_right_behind_the_label_of_a_coil_are_not_its_volts(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    /// <summary>What no field holds is left over, and the volts behind it are still those of the coil or of the clock.</summary>
    [Theory]
    [InlineData("solenoidValve", "COIL 9 W 24 V 60 HZ", "coilVolts=24 V; coilFrequency=60 Hz", "9 W")]
    [InlineData("solenoidValve", "COIL 10 W 120/60", "coilVolts=120 V; coilFrequency=60 Hz", "COIL 10 W")]
    [InlineData("solenoidValve", "COIL 24 V 9 W", "coilVolts=24 V", "9 W")]
    [InlineData(Contactor, "COIL 33 VA INRUSH 24 V", "coilVolts=24 V", "33 VA INRUSH")]
    [InlineData(Contactor, "COIL 9 W 24 V 60 HZ", "coilVolts=24 V; coilFrequency=60 Hz", "9 W")]
    [InlineData(Contactor, "COIL 9 W 120 V FLA 30", "coilVolts=120 V; fullLoadAmps=30 A", "9 W")]
    [InlineData("defrostTimer", "CLOCK 3 W 120 V", "clockVolts=120 V", "3 W")]
    [InlineData("defrostTimer", "CLOCK 3 W 120 V RES 40 A 240 V", "clockVolts=120 V; ratedVolts=240 V; resistiveAmps=40 A", "3 W")]
    [InlineData("defrostTimer", "CLOCK 24 VA 240 V", "clockVolts=240 V", "24 VA")]
    [InlineData("defrostTimer", "CLOCK 3 W 240 V 60 HZ", "clockVolts=240 V; clockFrequency=60 Hz", "3 W")]
    [InlineData("defrostTimer", "RELEASE COIL 5 VA 240 V", "releaseVolts=240 V", "5 VA")]
    [InlineData("defrostTimer", "RELEASE COIL 40 VA 240 V RES 40 A", "releaseVolts=240 V; resistiveAmps=40 A", "40 VA")]
    public void Nor_are_watts_or_volt_amperes_that_no_field_holds(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }
}
