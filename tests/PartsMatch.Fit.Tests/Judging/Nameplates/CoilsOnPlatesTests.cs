namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Coils beside contacts on plates. Expected values are worked by hand: a label takes the figure of its field right behind it, and a coil for two frequencies gives volts for each (practice).</summary>
public sealed class CoilsOnPlatesTests
{
    private const string Contactor = "contactor";
    private const string SolenoidValve = "solenoidValve";
    private const string DefrostTimer = "defrostTimer";

    [Theory]
    [InlineData(Contactor, "CONTACTOR 2P FLA 30 RES 40 480V COIL 240V 60HZ", "poleCount=2 poles; coilVolts=240 V; coilFrequency=60 Hz; ratedVolts=480 V; fullLoadAmps=30 A; resistiveAmps=40 A")]
    [InlineData(Contactor, "3 POLE AC-3 25A AC-1 40A 400V COIL 230V 50HZ", "poleCount=3 poles; coilVolts=230 V; coilFrequency=50 Hz; acOneAmps=40 A; acThreeAmps=25 A; ratedVolts=400 V")]
    [InlineData(Contactor, "3P 30 FLA 600V COIL 120V 60HZ", "poleCount=3 poles; coilVolts=120 V; coilFrequency=60 Hz; ratedVolts=600 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "FLA 30 277V COIL 208/240V", "coilVolts=208-240 V; ratedVolts=277 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "2P 30 FLA 480 V COIL 240 V DC", "poleCount=2 poles; coilVolts=240 V; coilCurrent=DC; ratedVolts=480 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "COIL 240V 60HZ FLA 30 RES 40 480V", "coilVolts=240 V; coilFrequency=60 Hz; ratedVolts=480 V; fullLoadAmps=30 A; resistiveAmps=40 A")]
    [InlineData(Contactor, "120/240 V COIL 120V A300", "coilVolts=120 V; ratedVolts=120/240 V; pilotDuty=A300")]
    [InlineData(DefrostTimer, "DEFROST TIMER 240V CLOCK 120V 60HZ", "clockVolts=120 V; clockFrequency=60 Hz; ratedVolts=240 V")]
    [InlineData(DefrostTimer, "TIMER 40A RES 240V CLOCK MOTOR 120V", "clockVolts=120 V; ratedVolts=240 V; resistiveAmps=40 A")]
    [InlineData(DefrostTimer, "TIMER RES 40 A 240 V CLOCK 60 HZ 120 V", "clockVolts=120 V; clockFrequency=60 Hz; ratedVolts=240 V; resistiveAmps=40 A")]
    [InlineData(DefrostTimer, "TIMER 120 V CLOCK 60 HZ 240 V", "clockVolts=120 V; clockFrequency=60 Hz; ratedVolts=240 V")]
    [InlineData(SolenoidValve, "COIL 24V 60HZ 14VA INRUSH 35VA", "coilVolts=24 V; coilFrequency=60 Hz; coilPower=14 VA; coilInrush=35 VA")]
    [InlineData("thermostat", "240V FAN VOLTS 120V", "fanRatedVolts=120 V; ratedVolts=240 V")]
    public void A_label_takes_the_figure_right_behind_it_and_not_the_one_of_the_contacts_before_it(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    /// <summary>Nobody switches 24 V with what is rated for 240: contacts are rated from 100 V up.</summary>
    [Theory]
    [InlineData(Contactor, "2P 24V COIL 240V 30 FLA", "poleCount=2 poles; coilVolts=24 V; ratedVolts=240 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "2P 240V COIL 40 FLA 277V", "poleCount=2 poles; coilVolts=240 V; ratedVolts=277 V; fullLoadAmps=40 A")]
    [InlineData(Contactor, "480V COIL, 240V", "coilVolts=480 V; ratedVolts=240 V")]
    [InlineData(DefrostTimer, "TIMER RES 40 A 24 V CLOCK 240 V", "clockVolts=24 V; ratedVolts=240 V; resistiveAmps=40 A")]
    [InlineData(SolenoidValve, "35VA INRUSH 14VA HOLDING", "coilPower=14 VA; coilInrush=35 VA")]
    [InlineData(SolenoidValve, "14VA HOLDING 35VA INRUSH", "coilPower=14 VA; coilInrush=35 VA")]
    public void It_keeps_the_figure_before_it_where_that_can_be_no_others(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData("COIL 24V PILOT DUTY 125VA", "coilVolts=24 V", "PILOT DUTY 125VA")]
    [InlineData("COIL 24V 125 VA PILOT DUTY", "coilVolts=24 V", "125 VA PILOT DUTY")]
    [InlineData("COIL 24V 9VA PILOT DUTY 125VA", "coilVolts=24 V; coilVa=9 VA", "PILOT DUTY 125VA")]
    [InlineData("COIL 24V 9VA PILOT DUTY B300", "coilVolts=24 V; coilVa=9 VA; pilotDuty=B300", "")]
    [InlineData("PILOT DUTY B300 9VA COIL 24V", "coilVolts=24 V; coilVa=9 VA; pilotDuty=B300", "")]
    public void What_coils_a_contact_switches_is_not_what_its_own_takes(string plate, string read, string left)
    {
        var reading = Families.Find(Contactor)!.ReadNameplate(plate);
        string.Join("; ", reading.Fields.Select(field => $"{field.Field.Name}={field.Text}")).ShouldBe(read);
        string.Join(" ", reading.Leftovers.Select(leftover => leftover.Text)).ShouldBe(left);
    }

    /// <summary>COIL stands behind the 120 V as LRA does behind the 240, or before the 600 V.</summary>
    [Theory]
    [InlineData(Contactor, "2P 40 FLA 240 LRA 120V COIL 600V", "120V COIL 600V")]
    [InlineData(Contactor, "2P 9 VA HOLDING 240V COIL 120V", "240V COIL 120V")]
    [InlineData(SolenoidValve, "24V COIL 14VA INRUSH 35VA", "14VA INRUSH 35VA")]
    public void It_takes_neither_where_the_plate_puts_its_labels_behind_and_nothing_tells_which(string kind, string plate, string left)
    {
        var reading = Families.Find(kind)!.ReadNameplate(plate);
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
        reading.Complaints.ShouldHaveSingleItem().Message.ShouldContain("can be read in several ways");
    }

    /// <summary>24 V COIL with the volts of the contacts behind is how relays are mostly worded; amps stand beside the contact's volts, and hertz beside the coil's (practice).</summary>
    [Theory]
    [InlineData(Contactor, "RELAY SPNO 120 VAC COIL 250 VAC 12A RES", "poleCount=1 pole; contactAction=normally open; coilVolts=120 V; ratedVolts=250 V; resistiveAmps=12 A")]
    [InlineData(Contactor, "RELAY SPNO 240V COIL 277V 12A RES", "poleCount=1 pole; contactAction=normally open; coilVolts=240 V; ratedVolts=277 V; resistiveAmps=12 A")]
    [InlineData(Contactor, "2P 120/240V COIL 600V FLA 30", "poleCount=2 poles; coilVolts=120/240 V; ratedVolts=600 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "2P 120V COIL 240V CONTACTS FLA 30", "poleCount=2 poles; coilVolts=120 V; ratedVolts=240 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "2P FLA 30 120V 60HZ COIL 600V", "poleCount=2 poles; coilVolts=120 V; coilFrequency=60 Hz; ratedVolts=600 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "RELAY 24V 50/60HZ COIL SPDT 15A RES 277V", "poleCount=1 pole; contactAction=change-over; coilVolts=24 V; coilFrequency=50/60 Hz; ratedVolts=277 V; resistiveAmps=15 A")]
    [InlineData(Contactor, "120V 60HZ 110V 50HZ COIL 600V", "coilVolts=110-120 V; coilFrequency=60/50 Hz; ratedVolts=600 V")]
    [InlineData(Contactor, "COIL 60 HZ 120 V FLA 30 600 V", "coilVolts=120 V; coilFrequency=60 Hz; ratedVolts=600 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "3P 400V 50HZ COIL 230V 50HZ", "poleCount=3 poles; coilVolts=230 V; coilFrequency=50 Hz; ratedVolts=400 V")]
    [InlineData(Contactor, "480V COIL VOLTAGE 240V", "coilVolts=240 V; ratedVolts=480 V")]
    [InlineData(DefrostTimer, "120V CLOCK 240V RES 40A", "clockVolts=120 V; ratedVolts=240 V; resistiveAmps=40 A")]
    [InlineData(DefrostTimer, "120V 60HZ CLOCK 240V RES 40A", "clockVolts=120 V; clockFrequency=60 Hz; ratedVolts=240 V; resistiveAmps=40 A")]
    public void Amps_and_hertz_tell_the_volts_of_contacts_from_those_of_the_coil_beside_them(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    /// <summary>The 30 A may be those of contacts for 120 V, or of contacts for 480 V with a coil for 120 V.</summary>
    [Theory]
    [InlineData(Contactor, "2 POLE 30 AMP 120 VOLT COIL 480 VOLT", "poleCount=2 poles", "120 VOLT COIL 480 VOLT")]
    [InlineData(Contactor, "2P 30A 120V COIL 600V MAX", "poleCount=2 poles", "120V COIL 600V")]
    [InlineData(Contactor, "FLA 30 240V COIL 600V", "fullLoadAmps=30 A", "240V COIL 600V")]
    [InlineData(Contactor, "120 V COIL 240 V", "", "120 V COIL 240 V")]
    [InlineData(Contactor, "240V 60HZ COIL 480V 60HZ", "coilFrequency=60 Hz", "240V 60HZ COIL 480V")]
    [InlineData(Contactor, "2P 480V COIL 240V 30 FLA", "poleCount=2 poles; fullLoadAmps=30 A", "480V COIL 240V")]
    [InlineData(DefrostTimer, "RES 40A 120V CLOCK 240V", "resistiveAmps=40 A", "120V CLOCK 240V")]
    public void Volts_on_both_sides_of_a_coil_are_not_taken_where_nothing_tells_which_are_its_own(string kind, string plate, string read, string given)
    {
        var reading = Families.Find(kind)!.ReadNameplate(plate);
        string.Join("; ", reading.Fields.Select(field => $"{field.Field.Name}={field.Text}")).ShouldBe(read);
        reading.Complaints.ShouldHaveSingleItem().Message.ShouldStartWith($"“{given}” can be read in several ways");
    }

    [Theory]
    [InlineData("COIL 120V 60HZ 240V 60HZ", "coilVolts=120 V; coilFrequency=60 Hz", "240V")]
    [InlineData("COIL 24V 50HZ 400V 50HZ 25A AC-3", "coilVolts=24 V; coilFrequency=50 Hz; acThreeAmps=25 A; ratedVolts=400 V", "")]
    public void Volts_with_hertz_right_behind_those_of_a_coil_are_the_contacts_only_beside_amps(string plate, string read, string left)
    {
        var reading = Families.Find(Contactor)!.ReadNameplate(plate);
        string.Join("; ", reading.Fields.Select(field => $"{field.Field.Name}={field.Text}")).ShouldBe(read);
        string.Join(" / ", reading.Leftovers.Select(leftover => leftover.Text)).ShouldBe(left);
    }

    [Theory]
    [InlineData(Contactor, "FLA 40 LRA 240 COIL 120V 60HZ 110V 50HZ", "coilVolts=110-120 V; coilFrequency=60/50 Hz; fullLoadAmps=40 A; lockedRotorAmps=240 A")]
    [InlineData(Contactor, "NEMA SIZE 1 COIL 110V 50HZ / 120V 60HZ", "coilVolts=110-120 V; coilFrequency=50/60 Hz; size=NEMA 1")]
    [InlineData(Contactor, "COIL 208/240 V 60 HZ, 220 V 50 HZ FLA 30 600 V", "coilVolts=208-240/220 V; coilFrequency=60/50 Hz; ratedVolts=600 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "600V 120V/60HZ 110V/50HZ COIL", "coilVolts=110-120 V; coilFrequency=60/50 Hz; ratedVolts=600 V")]
    [InlineData(SolenoidValve, "120V 60HZ 110V 50HZ 14VA", "coilVolts=110-120 V; coilFrequency=60/50 Hz; coilPower=14 VA")]
    [InlineData(SolenoidValve, "COIL 240V 60HZ-220V 50HZ", "coilVolts=220-240 V; coilFrequency=60/50 Hz")]
    [InlineData(DefrostTimer, "CLOCK 120V 60HZ 110V 50HZ RES 40 A 240 V", "clockVolts=110-120 V; clockFrequency=60/50 Hz; ratedVolts=240 V; resistiveAmps=40 A")]
    public void A_coil_for_two_frequencies_has_volts_for_each(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(SolenoidValve, "COIL 220V 50HZ 230V 50HZ 240V 60HZ", "coilVolts=220-230/240 V; coilFrequency=50/60 Hz")]
    [InlineData(Contactor, "COIL 220V 50HZ 230V 50HZ 240V 60HZ FLA 30 600V", "coilVolts=220-230/240 V; coilFrequency=50/60 Hz; ratedVolts=600 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "COIL 208V/60HZ 240V/60HZ FLA 30 600V", "coilVolts=208-240 V; coilFrequency=60 Hz; ratedVolts=600 V; fullLoadAmps=30 A")]
    [InlineData(Contactor, "COIL 24V 50HZ 24V 60HZ", "coilVolts=24 V; coilFrequency=50/60 Hz")]
    [InlineData(Contactor, "COIL 208/240/220 V", "coilVolts=208-240 V")]
    [InlineData(SolenoidValve, "COIL 208-240/220 V 60/50 HZ", "coilVolts=208-240/220 V; coilFrequency=60/50 Hz")]
    public void Several_volts_at_one_frequency_are_a_span(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    /// <summary>Volts and hertz without their units are known by their label and by there being mains of 50 and 60 Hz only.</summary>
    [Theory]
    [InlineData(Contactor, "COIL 120/60", "coilVolts=120 V; coilFrequency=60 Hz")]
    [InlineData(Contactor, "240/60 COIL", "coilVolts=240 V; coilFrequency=60 Hz")]
    [InlineData(Contactor, "COIL 24/50-60 FLA 30", "coilVolts=24 V; coilFrequency=50/60 Hz; fullLoadAmps=30 A")]
    [InlineData(Contactor, "COIL 208-240/60", "coilVolts=208-240 V; coilFrequency=60 Hz")]
    [InlineData(Contactor, "COIL 120/60 110/50", "coilVolts=110-120 V; coilFrequency=60/50 Hz")]
    [InlineData(Contactor, "COIL 24V 50/60", "coilVolts=24 V; coilFrequency=50/60 Hz")]
    [InlineData(SolenoidValve, "COIL 120/60", "coilVolts=120 V; coilFrequency=60 Hz")]
    [InlineData(DefrostTimer, "CLOCK 120/60 RES 40 A 240 V", "clockVolts=120 V; clockFrequency=60 Hz; ratedVolts=240 V; resistiveAmps=40 A")]
    [InlineData(SolenoidValve, "240V 50/60 MOPD 275 PSI", "openingDifferential=275 psi; coilVolts=240 V; coilFrequency=50/60 Hz")]
    [InlineData(Contactor, "COIL 24/48", "coilVolts=24/48 V")]
    [InlineData(Contactor, "COIL 120/240", "coilVolts=120/240 V")]
    [InlineData(Contactor, "2P 40 FLA COIL 24V 60 LRA", "poleCount=2 poles; coilVolts=24 V; fullLoadAmps=40 A; lockedRotorAmps=60 A")]
    public void Mains_hertz_behind_a_coils_volts_are_no_second_voltage(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData("COIL 24V 60HZ 240V 50HZ")]
    [InlineData("COIL 24V 60HZ 240V 50/60HZ")]
    public void Volts_that_lie_farther_apart_than_frequencies_are_not_of_one_coil(string plate) => Families.Find(Contactor)!.ReadNameplate(plate).Fields.ShouldContain(field => field.Field.Name == "coilVolts" && field.Text == "24 V");

    /// <summary>What a valve opens against with either coil says nothing of the one that is on it.</summary>
    [Theory]
    [InlineData("MOPD 275PSI AC / 200 PSI DC", "openingDifferential=275 psi; directDifferential=200 psi")]
    [InlineData("MOPD 21 BAR AC / 14 BAR DC PS 35 BAR", "openingDifferential=21 bar; directDifferential=14 bar; workingPressure=35 bar")]
    [InlineData("MOPD 275 PSI AC 200 PSI DC COIL 24V DC", "openingDifferential=275 psi; directDifferential=200 psi; coilVolts=24 V; coilCurrent=DC")]
    [InlineData("MOPD 200 PSI DC", "openingDifferential=200 psi; coilCurrent=DC")]
    public void An_opening_differential_for_each_current_is_no_contradiction(string plate, string read) => ReadPlate.Whole(SolenoidValve, plate).ShouldBe(read);

    [Fact]
    public void A_coil_for_two_frequencies_leaves_the_volts_of_a_size_alone() =>
        Families.Find(Contactor)!.ReadNeed(new("NEMA SIZE 1 3 POLE COIL 120V 60HZ 110V 50HZ", [], [])).Deductions.ShouldContain(deduction => deduction.Field == "ratedVolts");
}
