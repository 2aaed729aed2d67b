using PartsMatch.Fit.Switches.Contactors.Aspects;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>A300 makes 7200 and breaks 720 VA, B300 3600 and 360, D300 432 and 72 (published: NEMA ICS 5, IEC 60947-5-1 annex A); at 24 V a fifth of it: from memory, 360 x 24 / 120 = 72 VA worked by hand.</summary>
[Trait("Source", "contactor.pilotLoad")]
public sealed class PilotLoadTests : ContactorAspectTests<PilotLoad, PilotDutyFacet>
{
    [Theory]
    [InlineData("B300", "coilsVa=360 VA; loadVolts=120 V", "Meets")]
    [InlineData("B300", "coilsVa=360.1 VA; loadVolts=120 V", "Fails")]
    [InlineData("B300", "coilsVa=360 VA; loadVolts=240 V", "Meets")]
    [InlineData("B300", "coilsVa=72 VA; loadVolts=24 V", "Meets")]
    [InlineData("B300", "coilsVa=72.1 VA; loadVolts=24 V", "Fails")]
    [InlineData("B300", "coilsVa=10 VA; loadVolts=300 V", "Meets")]
    [InlineData("B300", "coilsVa=10 VA; loadVolts=300.1 V", "Fails")]
    [InlineData("A600", "coilsVa=700 VA; loadVolts=480 V", "Meets")]
    [InlineData("B300", "coilsVa=100 VA; coilsInrushVa=3600 VA; loadVolts=120 V", "Meets")]
    [InlineData("B300", "coilsVa=100 VA; coilsInrushVa=3601 VA; loadVolts=120 V", "Fails")]
    [InlineData("D300", "coilsVa=43.2 VA; loadVolts=120 V", "Meets")] // ten times as much is 432 VA
    [InlineData("D300", "coilsVa=43.3 VA; loadVolts=120 V", "Unknown Site coilsInrushVa")]
    [InlineData("D300", "coilsVa=72 VA; coilsInrushVa=432 VA; loadVolts=120 V", "Meets")]
    [InlineData("B300", "coilsVa=100 VA", "Unknown Site loadVolts")]
    [InlineData("B300", "loads=coil", "Unknown Site coilsVa")]
    [InlineData("B300", "motors=5/25 A", "Meets")]
    public void Coils_stay_within_make_and_break(string duty, string site, string answer) => Answer("", site, $"pilotDuty={duty}").ShouldBe(answer);

    [Fact]
    public void Motor_amps_and_resistive_amps_do_not_stand_in() =>
        Answer("", "coilsVa=20 VA; loadVolts=24 V", "ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps=150 A; resistiveAmps=40 A").ShouldBe("Unknown Part pilotDuty");

    [Theory]
    [InlineData("pilotDuty=B300", "Meets")]
    [InlineData("pilotDuty=C300", "Meets")]
    [InlineData("pilotDuty=A300", "Unknown Site coilsVa")]
    [InlineData("pilotDuty=B600", "Unknown Site coilsVa")]
    [InlineData("", "Meets")]
    public void Where_nobody_named_what_is_on_it_the_old_duty_is_enough(string plate, string answer) => Answer(plate, "", "pilotDuty=B300").ShouldBe(answer);
}
