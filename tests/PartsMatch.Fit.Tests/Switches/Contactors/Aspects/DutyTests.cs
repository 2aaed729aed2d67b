using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>AC-1, AC-3, AC-8 kept apart: IEC 60947-4-1 table 1 (published); locked-rotor amps for compressors: practice.</summary>
[Trait("Source", "contactor.duty")]
public sealed class DutyTests : ContactorAspectTests<Duty, DutyFacet>
{
    [Theory]
    [InlineData("loads=compressor", "ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps=150 A", "Meets")]
    [InlineData("loads=compressor", "ratedVolts=400 V; acThreeAmps=25 A", "Unknown Part acEightAmps")]
    [InlineData("loads=compressor", "ratedVolts=400 V; acThreeAmps=25 A; acEightAmps=28 A", "Meets")]
    [InlineData("loads=compressor", "ratedVolts=400 V; acOneAmps=50 A", "Unknown Part fullLoadAmps")]
    [InlineData("loads=motor", "ratedVolts=400 V; acThreeAmps=25 A", "Meets")]
    [InlineData("loads=motor", "ratedVolts=400 V; acOneAmps=50 A", "Unknown Part fullLoadAmps")]
    [InlineData("loads=motor", "pilotDuty=A600", "Unknown Part fullLoadAmps")]
    [InlineData("loads=heater", "ratedVolts=400 V; acOneAmps=50 A", "Meets")]
    [InlineData("loads=heater", "ratedVolts=400 V; acThreeAmps=50 A", "Unknown Part resistiveAmps")]
    [InlineData("loads=coil", "pilotDuty=B300", "Meets")]
    [InlineData("loads=coil", "ratedVolts=240 V; fullLoadAmps=30 A", "Unknown Part pilotDuty")]
    [InlineData("loads=motor", "", "Unknown Part fullLoadAmps")]
    [InlineData("loads=motor", "ratedVolts=400 V; acEightAmps=28 A", "Unknown Part fullLoadAmps")] // AC-8 is for hermetic compressors alone
    [InlineData("loads=compressor, motor", "ratedVolts=400 V; acEightAmps=28 A", "Unknown Part fullLoadAmps")]
    [InlineData("loads=compressor, motor", "ratedVolts=400 V; acThreeAmps=25 A", "Unknown Part acEightAmps")]
    [InlineData("loads=compressor, motor", "ratedVolts=400 V; acThreeAmps=25 A; acEightAmps=28 A", "Meets")]
    [InlineData("loads=motor", "ratedVolts=240 V; lockedRotorAmps=150 A", "Meets")] // its full-load amps are asked for by themselves
    public void A_load_of_each_kind_needs_its_own_marking(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("ratedVolts=240 V; fullLoadAmps=30 A", "Meets")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=30 A; resistiveAmps=40 A", "Unknown Site loads")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps=150 A", "Unknown Site loads")]
    [InlineData("pilotDuty=A300", "Unknown Site loads")]
    [InlineData("ratedVolts=400 V; acEightAmps=28 A", "Unknown Site loads")]
    [InlineData("", "Unknown Site loads")]
    public void Where_nobody_named_what_is_on_it_the_old_one_s_markings_are_asked_for(string plate, string answer) => Answer(plate, "", "ratedVolts=400 V; acThreeAmps=30 A").ShouldBe(answer);
}
