namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Short words that mean one thing here and another there. Expected values are worked by hand from how plates print them (practice).</summary>
public sealed class WordsOnPlatesTests
{
    private const string Contactor = "contactor";
    private const string SolenoidValve = "solenoidValve";

    /// <summary>NO is normally open, and the abbreviation of number.</summary>
    [Theory]
    [InlineData(SolenoidValve, "VALVE NO 12345 COIL 24V 60HZ", "coilVolts=24 V; coilFrequency=60 Hz", "NO 12345")]
    [InlineData(SolenoidValve, "VALVE NO. 12345 24V 60HZ", "coilVolts=24 V; coilFrequency=60 Hz", "NO. 12345")]
    [InlineData(SolenoidValve, "VALVE NO AX-17 NC", "normalState=normally closed", "NO AX-17")]
    [InlineData(SolenoidValve, "VALVE NO 5 NC 24V", "normalState=normally closed; coilVolts=24 V", "NO 5")]
    [InlineData(Contactor, "CONTACTOR NO 12345 COIL 24V", "coilVolts=24 V", "NO 12345")]
    public void NO_between_what_a_part_is_called_and_its_number_opens_nothing(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    [Theory]
    [InlineData("VALVE NO 24V COIL", "normalState=normally open; coilVolts=24 V")]
    [InlineData("VALVE NO R404A COIL 24V", "normalState=normally open; refrigerants=R-404A; coilVolts=24 V")]
    [InlineData("VALVE NO 3/8 ODF", "normalState=normally open; joint=solder; inletSize=3/8 in")]
    [InlineData("VALVE NO 120/60", "normalState=normally open; coilVolts=120 V; coilFrequency=60 Hz")]
    public void Before_anything_else_it_says_normally_open(string plate, string read) => ReadPlate.Whole(SolenoidValve, plate).ShouldBe(read);

    /// <summary>One contact of each: two poles, of which neither action is both's.</summary>
    [Theory]
    [InlineData("SPNO-SPNC COIL 24V")]
    [InlineData("SPNO/SPNC COIL 24V")]
    [InlineData("SPNC SPNO COIL 24V")]
    public void One_contact_of_each_kind_is_no_contradiction(string plate)
    {
        ReadPlate.Whole(Contactor, plate).ShouldBe("poleCount=2 poles; coilVolts=24 V");
        Families.Find(Contactor)!.ReadNameplate(plate).Contradictions.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("solenoidValve", "R22 MO", "refrigerants=R-22", "MO")]
    [InlineData("expansionValve", "R22 AB 123", "refrigerants=R-22", "AB 123")]
    [InlineData("condensingPressureValve", "R22 AB", "refrigerants=R-22", "AB")]
    public void Two_letters_without_a_label_are_no_oil(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    [Theory]
    [InlineData("OIL: MO/AB/POE", "oils=mineral oil, alkylbenzene, polyolester")]
    [InlineData("OILS MO, AB R22", "refrigerants=R-22; oils=mineral oil, alkylbenzene")]
    [InlineData("MO OIL", "oils=mineral oil")]
    [InlineData("POE, PVE", "oils=polyolester, polyvinylether")]
    [InlineData("MINERAL OIL, AB OIL", "oils=mineral oil, alkylbenzene")]
    public void Oils_are_read_behind_their_label_and_by_their_whole_names(string plate, string read) => ReadPlate.Whole(SolenoidValve, plate).ShouldBe(read);

    [Fact]
    public void COIL_may_stand_behind_the_volts_and_the_hertz() => ReadPlate.Whole(SolenoidValve, "NORMALLY OPEN 24 V 60 HZ COIL").ShouldBe("normalState=normally open; coilVolts=24 V; coilFrequency=60 Hz");

    [Fact]
    public void AT_alone_announces_no_volts() => Families.Find("thermostat")!.ReadNameplate("TRIPS AT 36 DIFF 4 F").Complaints.ShouldBeEmpty();
}
