namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Start capacitors on motors' plates. Expected values are worked by hand: a start capacitor is marked with a span of µF and is no run capacitor (IEC 60252-2), and its volts are not the supply's.</summary>
public sealed class StartCapacitorsOnPlatesTests
{
    private const string Motor = "motor";

    [Theory]
    [InlineData("START CAP 88-108 MFD RPM 1725", "speed=1725 rpm", "START CAP 88-108 MFD")]
    [InlineData("START CAP 88-108 MFD 250V RUN CAP 10 MFD 370 V", "runCapacitor=10 µF 370 V", "START CAP 88-108 MFD 250V")]
    [InlineData("RUN CAP 10 MFD 370 V START CAP 88-108 MFD 250V", "runCapacitor=10 µF 370 V", "START CAP 88-108 MFD 250V")]
    [InlineData("STARTING CAPACITOR 100 MFD 125 V 1/3 HP", "power=1/3 hp", "STARTING CAPACITOR 100 MFD 125 V")]
    [InlineData("88-108 MFD 125 VAC START CAP V 115", "voltage=115 V", "88-108 MFD 125 VAC START CAP")]
    [InlineData("START CAP MFD 88-108 V 250 RPM 1725", "speed=1725 rpm", "START CAP MFD 88-108 V 250")]
    [InlineData("CAPACITOR START 88-108 MFD 110VAC", "type=capacitor start", "88-108 MFD 110VAC")]
    [InlineData("START CAP 5 MFD 370 V 1/4 HP", "power=1/4 hp", "START CAP 5 MFD 370 V")]
    public void A_start_capacitor_is_left_over_with_its_volts(string plate, string read, string left)
    {
        ReadPlate.Fields(Motor, plate).ShouldBe(read);
        Families.Find(Motor)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    [Theory]
    [InlineData("CAP START 1/2 HP 1725 RPM 115/230 V", "type=capacitor start; power=1/2 hp; speed=1725 rpm; voltage=115/230 V")]
    [InlineData("CAP 10 MFD 370 V 230 V", "voltage=230 V; runCapacitor=10 µF 370 V")]
    public void What_is_no_start_capacitor_is_read(string plate, string read) => ReadPlate.Whole(Motor, plate).ShouldBe(read);
}
