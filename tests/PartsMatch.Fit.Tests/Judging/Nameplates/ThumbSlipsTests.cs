using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>What a thumb or a small keyboard makes of a plate: read where it is certain, else left over. Expected values are worked by hand; words and abbreviations are the trade's (practice).</summary>
public sealed class ThumbSlipsTests
{
    private static NameplateReading Read(string plate) => MotorFamily.Motor.ReadNameplate(plate);

    private static string Fields(string plate) => string.Join("; ", Read(plate).Fields.Select(field => $"{field.Field.Name}={field.Text}"));

    [Theory]
    [InlineData("1/4HP,1075RPM,208-230V", "power=1/4 hp; speed=1075 rpm; voltage=208-230 V")]
    [InlineData("208/230v 1ph 60hz 2.1a", "voltage=208-230 V; phase=single-phase; frequency=60 Hz; fullLoadAmps=2.1 A")]
    [InlineData("RPM1075", "speed=1075 rpm")]
    [InlineData("1,075 RPM", "speed=1075 rpm")]
    [InlineData("RPM 1,725/1,140", "speed=1725/1140 rpm")]
    [InlineData("PH 1,825 RPM", "speed=825 rpm; phase=single-phase")]
    [InlineData(".25HP", "power=1/4 hp")]
    [InlineData("hp.25", "power=1/4 hp")]
    [InlineData("A.9 V.230", "voltage=230 V; fullLoadAmps=0.9 A")]
    [InlineData("PF.70 SF.95", "serviceFactor=0.95; powerFactor=0.7")]
    [InlineData("2.1AMPS", "fullLoadAmps=2.1 A")]
    [InlineData("50/60HZ", "frequency=50/60 Hz")]
    [InlineData("220-240V~50/60Hz", "voltage=220-240 V; frequency=50/60 Hz")]
    [InlineData("IP 54 CL.F", "ipCode=IP54; insulation=F")]
    [InlineData("S.F. 1.15", "serviceFactor=1.15")]
    [InlineData("SF1.0", "serviceFactor=1")]
    [InlineData("DUTY CONT", "duty=continuous")]
    [InlineData("40°C AMB", "ambientMost=40 °C")]
    [InlineData("40C AMB.", "ambientMost=40 °C")]
    [InlineData("THERMALLY PROTECTED", "protection=thermal")]
    [InlineData("TH.PROT", "protection=thermal")]
    [InlineData("TP", "protection=thermal")]
    [InlineData("IMP PROT", "protection=impedance")]
    [InlineData("AUTO OVLD", "protection=automatic")]
    [InlineData("5MFD/370VAC", "runCapacitor=5 µF 370 V")]
    [InlineData("5uF 450V~", "runCapacitor=5 µF 450 V")]
    [InlineData("Kond. 4µF/450V", "runCapacitor=4 µF 450 V")]
    [InlineData("0.12kW", "power=0.12 kW")]
    [InlineData("2p", "poles=2")]
    [InlineData("4 POLE", "poles=4")]
    [InlineData("6-POLE", "poles=6")]
    [InlineData("1~", "phase=single-phase")]
    [InlineData("3~", "phase=three-phase")]
    [InlineData("ccw/le", "rotation=CCW lead end")]
    [InlineData("ROT: CCW (LE)", "rotation=CCW lead end")]
    [InlineData("REV", "reversing=by leads")]
    [InlineData("60 cycle", "frequency=60 Hz")]
    public void A_slip_that_can_mean_one_thing_only_is_read(string plate, string read)
    {
        Fields(plate).ShouldBe(read);
        Read(plate).Leftovers.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("H.P.25", "power", "write 0.25, or leave a space")]
    [InlineData("CAP.5/370", "runCapacitor", "may be a decimal point")]
    [InlineData("AMPS.9", "fullLoadAmps", "may be a decimal point")]
    [InlineData("1,500 W", "power", "“1,500”")]
    [InlineData("850,600 RPM", "speed", "“850,600”")]
    public void A_slip_that_can_mean_two_things_is_left_over_and_says_why(string plate, string field, string why)
    {
        Read(plate).Fields.ShouldBeEmpty();
        Read(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(plate);
        var complaint = Read(plate).Complaints.ShouldHaveSingleItem();
        complaint.Field.ShouldBe(field);
        complaint.Message.ShouldContain(why);
    }
}
