using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Switches.Contacts;

/// <summary>Texts of contacts as the trade writes them. Sums worked by hand.</summary>
public sealed class ContactFormsTests
{
    [Theory]
    [InlineData("14/73 A", 14, 73, "14/73 A")]
    [InlineData("3.5/21A", 3.5, 21, "3.5/21 A")]
    [InlineData("14/73 + 1.4/7 + 1.4/7 A", 16.8, 87, "14/73 + 1.4/7 + 1.4/7 A")]
    [InlineData("14/73 + 2 x 1.4/7 A", 16.8, 87, "14/73 + 2 x 1.4/7 A")]
    [InlineData("2×1,4/7 A", 2.8, 14, "2 x 1.4/7 A")]
    [InlineData("14/73 + 2 x 1.4", 16.8, 89.8, "14/73 + 2 x 1.4 A")] // 73 + 2 x 6 x 1.4
    [InlineData("5 A", 5, 30, "5 A")]
    public void Motors_add_up(string text, double fullLoad, double lockedRotor, string written)
    {
        var motors = MotorLoads.Form.Read(text).Value!;
        motors.FullLoad.ShouldBe(fullLoad, 1e-9);
        motors.LockedRotor(6).ShouldBe(lockedRotor, 1e-9);
        MotorLoads.Form.Write(motors).ShouldBe(written);
        MotorLoads.Form.Read(written).Value.ShouldBe(motors);
    }

    [Theory]
    [InlineData("73/14 A", "full-load amps stand first")]
    [InlineData("14/73/5 A", "full-load and locked-rotor amps")]
    [InlineData("0 x 5 A", "full-load and locked-rotor amps")]
    [InlineData("-5 A", "full-load and locked-rotor amps")]
    [InlineData("14 + A", "full-load and locked-rotor amps")]
    [InlineData("", "nothing is written")]
    public void What_is_no_motor_is_refused(string text, string wrong) => MotorLoads.Form.Read(text).Wrong!.ShouldContain(wrong);

    [Theory]
    [InlineData("R300", "R300")]
    [InlineData("n 600", "N600")]
    public void Pilot_duty_for_direct_current_reads(string text, string written) => DirectPilotDuty.Form.Write(DirectPilotDuty.Form.Read(text).Value!).ShouldBe(written);

    [Theory]
    [InlineData("A300")]
    [InlineData("R600")]
    public void Pilot_duty_for_direct_current_has_letters_of_its_own(string text) => DirectPilotDuty.Form.Read(text).IsRead.ShouldBeFalse();

    [Theory]
    [InlineData("A300", "A300")]
    [InlineData("a 300", "A300")]
    [InlineData("b-600", "B600")]
    public void Pilot_duty_is_read(string text, string written) => PilotDuty.Form.Write(PilotDuty.Form.Read(text).Value!).ShouldBe(written);

    [Theory]
    [InlineData("A500")]
    [InlineData("F300")]
    [InlineData("D600")]
    [InlineData("")]
    public void What_the_table_lacks_is_no_pilot_duty(string text) => PilotDuty.Form.Read(text).IsRead.ShouldBeFalse();

    [Theory]
    [InlineData("1 NO + 1 NC", "1 NO + 1 NC")]
    [InlineData("1NO1NC", "1 NO + 1 NC")]
    [InlineData("2 NC + 1 NO", "1 NO + 2 NC")]
    [InlineData("2 no", "2 NO")]
    [InlineData("none", "none")]
    public void Auxiliary_contacts_are_read(string text, string written) => AuxiliaryContacts.Form.Write(AuxiliaryContacts.Form.Read(text).Value!).ShouldBe(written);

    [Theory]
    [InlineData("1 NO + 1 NO")]
    [InlineData("NO")]
    [InlineData("11")]
    [InlineData("")]
    public void What_is_no_auxiliary_contact_is_refused(string text) => AuxiliaryContacts.Form.Read(text).IsRead.ShouldBeFalse();

    [Theory]
    [InlineData("8 VA", "8 VA")]
    [InlineData("7.5va", "7.5 VA")]
    public void Apparent_power_is_read(string text, string written) => QuantityForms.VoltAmperes.Write(QuantityForms.VoltAmperes.Read(text).Value).ShouldBe(written);

    [Theory]
    [InlineData("40/40/32 A", "40/40/32 A")]
    [InlineData("30 amps", "30 A")]
    public void Amps_stand_side_by_side(string text, string written) => TextForms.Of<Figures<ElectricCurrent>>().Write(TextForms.Of<Figures<ElectricCurrent>>().Read(text).Value!).ShouldBe(written);
}
