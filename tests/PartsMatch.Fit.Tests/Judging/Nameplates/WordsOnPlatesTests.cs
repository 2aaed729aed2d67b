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

    /// <summary>One contact of each: two poles, of which neither action is both's. Form A closes, form B opens (trade terms of relays).</summary>
    [Theory]
    [InlineData("SPNO-SPNC COIL 24V")]
    [InlineData("SPNO/SPNC COIL 24V")]
    [InlineData("SPNC SPNO COIL 24V")]
    [InlineData("SPNO + SPNC COIL 24V")]
    [InlineData("SPNO AND SPNC COIL 24V")]
    [InlineData("1 SPNO 1 SPNC COIL 24V")]
    [InlineData("1 FORM A + 1 FORM B COIL 24V")]
    public void One_contact_of_each_kind_is_no_contradiction_and_neither_of_the_two(string plate) =>
        ReadPlate.Whole(Contactor, plate).ShouldBe("poleCount=2 poles; contactAction=one of each; coilVolts=24 V");

    /// <summary>Behind what it is called, or its poles, the short words say what its poles do, and the long ones do anywhere.</summary>
    [Theory]
    [InlineData("RELAY 1 POLE NORMALLY CLOSED COIL 24V", "poleCount=1 pole; contactAction=normally closed; coilVolts=24 V")]
    [InlineData("1 POLE NORMALLY OPEN RELAY COIL 24V", "poleCount=1 pole; contactAction=normally open; coilVolts=24 V")]
    [InlineData("RELAY, COIL 24V, 1 POLE, NORMALLY CLOSED", "poleCount=1 pole; contactAction=normally closed; coilVolts=24 V")]
    [InlineData("RELAY 1 POLE N.C. COIL 24V", "poleCount=1 pole; contactAction=normally closed; coilVolts=24 V")]
    [InlineData("RELAY, 1 POLE, N.C., COIL 24V", "poleCount=1 pole; contactAction=normally closed; coilVolts=24 V")]
    [InlineData("2P NC COIL 24V", "poleCount=2 poles; contactAction=normally closed; coilVolts=24 V")]
    [InlineData("RELAY NC 24V COIL", "contactAction=normally closed; coilVolts=24 V")]
    [InlineData("FAN RELAY NC 24V COIL", "contactAction=normally closed; coilVolts=24 V")]
    [InlineData("RELAY N.O. 24V COIL", "contactAction=normally open; coilVolts=24 V")]
    [InlineData("RELAY NO 1 POLE 24V COIL", "poleCount=1 pole; contactAction=normally open; coilVolts=24 V")]
    [InlineData("SPST-NC COIL 24V", "poleCount=1 pole; contactAction=normally closed; coilVolts=24 V")]
    [InlineData("DPST NC COIL 24V", "poleCount=2 poles; contactAction=normally closed; coilVolts=24 V")]
    [InlineData("RELAY 1 FORM B COIL 24V", "poleCount=1 pole; contactAction=normally closed; coilVolts=24 V")]
    [InlineData("RELAY 2 FORM C COIL 24V", "poleCount=2 poles; contactAction=change-over; coilVolts=24 V")]
    [InlineData("2 FORM A COIL 24V", "poleCount=2 poles; contactAction=normally open; coilVolts=24 V")]
    [InlineData("DPNC COIL 24V", "poleCount=2 poles; contactAction=normally closed; coilVolts=24 V")]
    [InlineData("2 POLE NORMALLY OPEN AUX 1 NC COIL 24V", "poleCount=2 poles; contactAction=normally open; auxiliaries=1 NC; coilVolts=24 V")]
    [InlineData("RELAY NO/NC COIL 24V", "contactAction=change-over; coilVolts=24 V")] // both: which is wired is asked
    [InlineData("2 POLE N.C. + N.O. COIL 24V", "poleCount=2 poles; contactAction=change-over; coilVolts=24 V")]
    [InlineData("3P NC CONTACTS COIL 24V", "poleCount=3 poles; contactAction=normally closed; coilVolts=24 V")]
    [InlineData("1 NC AUX 2 POLE NO COIL 24V", "poleCount=2 poles; contactAction=normally open; auxiliaries=1 NC; coilVolts=24 V")]
    public void What_poles_do_is_read_beside_them(string plate, string read) => ReadPlate.Whole(Contactor, plate).ShouldBe(read);

    /// <summary>Beside AUX, or counted, they are auxiliary contacts; before a number NO is that number's.</summary>
    [Theory]
    [InlineData("3P NC AUX COIL 24V", "NC AUX")]
    [InlineData("3P AUX NORMALLY CLOSED COIL 24V", "AUX NORMALLY CLOSED")]
    [InlineData("3P NORMALLY CLOSED AUX CONTACT COIL 24V", "NORMALLY CLOSED AUX CONTACT")]
    [InlineData("3P AUX CONTACTS NC COIL 24V", "AUX CONTACTS NC")]
    [InlineData("3P AUX NO/NC COIL 24V", "AUX NO/NC")]
    [InlineData("3 POLE 1 NC COIL 24V", "1 NC")]
    [InlineData("3P 1 NORMALLY CLOSED COIL 24V", "1 NORMALLY CLOSED")]
    [InlineData("3 POLE NO 12345 COIL 24V", "NO 12345")]
    [InlineData("CONTACTOR 3 POLE NC 21-22 COIL 24V", "NC 21-22")] // EN 50005: 21-22 are the terminals of a small contact that opens
    [InlineData("3 POLE 21-22 NC COIL 24V", "21-22 NC")]
    [InlineData("3 POLE NC INTERLOCK COIL 24V", "NC INTERLOCK")]
    [InlineData("3 POLE INTERLOCK NORMALLY CLOSED COIL 24V", "INTERLOCK NORMALLY CLOSED")]
    [InlineData("3 POLE NORMALLY CLOSED INTERLOCK CONTACT COIL 24V", "NORMALLY CLOSED INTERLOCK CONTACT")]
    [InlineData("3 POLE AUX CONTACT BLOCK NORMALLY CLOSED COIL 24V", "AUX CONTACT BLOCK NORMALLY CLOSED")]
    [InlineData("3 POLE NO ENCLOSURE COIL 24V", "NO ENCLOSURE")] // it is without one
    [InlineData("CONTACTOR NO COVER 3 POLE COIL 24V", "NO COVER")]
    public void What_auxiliary_contacts_do_says_nothing_of_poles(string plate, string left)
    {
        ReadPlate.Fields(Contactor, plate).ShouldBe("poleCount=3 poles; coilVolts=24 V");
        Families.Find(Contactor)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    /// <summary>A pilot rating is that of small contacts, and an interlock or an overload relay has its own; whose NC it is beside them is not known.</summary>
    [Theory]
    [InlineData("3 POLE WITH OVERLOAD RELAY NC COIL 24V", "poleCount=3 poles; coilVolts=24 V", "WITH OVERLOAD | NC")]
    [InlineData("3 POLE OVERLOAD RELAY NORMALLY CLOSED COIL 24V", "poleCount=3 poles; coilVolts=24 V", "OVERLOAD | NORMALLY CLOSED")]
    [InlineData("3 POLE NC PILOT DUTY A600 COIL 24V", "poleCount=3 poles; coilVolts=24 V; pilotDuty=A600", "NC")]
    [InlineData("3 POLE NORMALLY CLOSED PILOT DUTY A600 COIL 24V", "poleCount=3 poles; coilVolts=24 V; pilotDuty=A600", "NORMALLY CLOSED")]
    [InlineData("3 POLE NC MECHANICAL INTERLOCK COIL 24V", "poleCount=3 poles; hasInterlock=yes; coilVolts=24 V", "NC")]
    public void NC_beside_what_has_contacts_of_its_own_is_left_over(string plate, string read, string left)
    {
        ReadPlate.Fields(Contactor, plate).ShouldBe(read);
        string.Join(" | ", Families.Find(Contactor)!.ReadNameplate(plate).Leftovers.Select(one => one.Text)).ShouldBe(left);
    }

    /// <summary>Contacts counted behind as many poles, or behind what a relay is called, may be these, or small ones beside them.</summary>
    [Theory]
    [InlineData("RELAY 2 POLE (1 NO 1 NC) COIL 24V", "poleCount=2 poles; coilVolts=24 V")]
    [InlineData("4 POLE 2NO+2NC COIL 24V", "poleCount=4 poles; coilVolts=24 V")]
    [InlineData("3 POLE 3 NO 1 NC COIL 24V", "poleCount=3 poles; coilVolts=24 V")]
    [InlineData("RELAY DPST 2 NC COIL 24V", "poleCount=2 poles; coilVolts=24 V")]
    [InlineData("RELAY 2 NC COIL 24V", "coilVolts=24 V")]
    [InlineData("RELAY 1 NO 1 NC COIL 24V", "coilVolts=24 V")]
    [InlineData("RELAY CONTACTS 1 NO 1 NC COIL 24V", "coilVolts=24 V")]
    [InlineData("RELAY COIL 24V NC", "coilVolts=24 V")]
    [InlineData("CONTACTOR 3 POLE NC INTERLOCK COIL 24V", "poleCount=3 poles; coilVolts=24 V")]
    public void Contacts_that_may_be_the_poles_or_others_are_in_doubt(string plate, string read)
    {
        ReadPlate.Fields(Contactor, plate).ShouldBe(read);
        Families.Find(Contactor)!.ReadNameplate(plate).Doubted.ShouldContain("contactAction");
    }

    /// <summary>Two contacts, so that neither the action nor the one pole of either is the relay's.</summary>
    [Theory]
    [InlineData("SPNO 10 A RES ¦SPNC 10 A RES ¦COIL 24 V")]
    [InlineData("RELAY SPNO ¦SPNC ¦COIL 24 V ¦10 A RES")]
    public void Two_single_poles_that_differ_are_not_one(string plate)
    {
        var reading = Families.Find(Contactor)!.ReadNameplate(plate);
        reading.Contradictions.ShouldHaveSingleItem().Fields.ShouldBe(["contactAction"]);
        reading.Doubted.ShouldBe(["poleCount", "contactAction"]);
        reading.Fields.Select(field => field.Field.Name).ShouldBe(["coilVolts", "resistiveAmps"]);
    }

    [Theory]
    [InlineData("3P 1NO+1NC COIL 24V", "poleCount=3 poles; auxiliaries=1 NO + 1 NC; coilVolts=24 V")]
    [InlineData("2 POLE COIL 24V", "poleCount=2 poles; coilVolts=24 V")]
    [InlineData("CONTACTOR NO 12345 2 POLE COIL 24V", "poleCount=2 poles; coilVolts=24 V")]
    [InlineData("2 POLE NO 12345 COIL 24V", "poleCount=2 poles; coilVolts=24 V")]
    [InlineData("2 POLE FILE NO 123 COIL 24V", "poleCount=2 poles; coilVolts=24 V")]
    [InlineData("2 POLE MODEL NO. AB12 COIL 24V", "poleCount=2 poles; coilVolts=24 V")]
    public void A_plate_that_names_no_contacts_of_its_poles_is_silent_on_them(string plate, string read)
    {
        ReadPlate.Fields(Contactor, plate).ShouldBe(read);
        Families.Find(Contactor)!.ReadNameplate(plate).Doubted.ShouldNotContain("contactAction");
    }

    /// <summary>NO behind NC may be a number's abbreviation.</summary>
    [Theory]
    [InlineData("RELAY NC NO. 1234 COIL 24V", "contactAction=normally closed; coilVolts=24 V", "NO. 1234")]
    [InlineData("RELAY 1 POLE NC NO. 1234 COIL 24V", "poleCount=1 pole; contactAction=normally closed; coilVolts=24 V", "NO. 1234")]
    [InlineData("RELAY NC NO. AB1234 COIL 24V", "contactAction=normally closed; coilVolts=24 V", "NO. AB1234")]
    public void NO_of_a_number_behind_NC_makes_no_change_over(string plate, string read, string left)
    {
        ReadPlate.Fields(Contactor, plate).ShouldBe(read);
        Families.Find(Contactor)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    /// <summary>A common terminal beside both is that of change-over contacts.</summary>
    [Theory]
    [InlineData("RELAY NO COM NC COIL 24V")]
    [InlineData("RELAY N.C./COM/N.O. COIL 24V")]
    [InlineData("RELAY NO C NC COIL 24V")]
    [InlineData("RELAY COM NO NC COIL 24V")]
    public void NO_and_NC_with_a_common_between_change_over(string plate) => ReadPlate.Whole(Contactor, plate).ShouldBe("contactAction=change-over; coilVolts=24 V");

    /// <summary>Behind SPDT they are what its terminals are marked with.</summary>
    [Fact]
    public void What_terminals_of_change_over_contacts_are_called_contradicts_nothing() => ReadPlate.Fields(Contactor, "RELAY SPDT NO NC COM COIL 24V").ShouldBe("poleCount=1 pole; contactAction=change-over; coilVolts=24 V");

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
