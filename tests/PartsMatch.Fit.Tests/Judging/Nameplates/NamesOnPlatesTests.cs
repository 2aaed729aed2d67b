using PartsMatch.Fit.Switches.Contactors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>What a part is called is known before its plate is read; the readings are worked by hand from the plates.</summary>
public sealed class NamesOnPlatesTests
{
    [Theory]
    [InlineData("CONTACTOR 2 POLE FLA 30 COIL 24 V")]
    [InlineData("2 POLE CONTACTOR FLA 30 COIL 24 V")]
    [InlineData("2 POLE FLA 30 COIL 24 V\nDEFINITE PURPOSE CONTACTOR")]
    public void What_a_part_is_called_is_not_left_over(string plate)
    {
        var reading = ContactorFamily.Contactor.ReadNameplate(plate);
        reading.Leftovers.ShouldBeEmpty();
        reading.Names.ShouldHaveSingleItem().Text.ShouldEndWith("CONTACTOR");
        reading.Fields.Select(field => $"{field.Field.Name}={field.Text}").ShouldBe(["poleCount=2 poles", "coilVolts=24 V", "fullLoadAmps=30 A"], ignoreOrder: true);
    }

    [Theory]
    [InlineData("CONTACTOR MODEL QZ-9 COIL 24 V", "MODEL QZ-9")]
    [InlineData("CONTACTORS COIL 24 V", "CONTACTORS")]
    public void What_stands_beside_it_is(string plate, string left) => ContactorFamily.Contactor.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
}
