using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>NEMA ICS 2 tables 2-4-1 and 2-4-2 (published): size 1 has 7-1/2 hp at 200 and 230 V and 10 hp at 460 V on three phases, 3 hp at 230 V on one. A tenth of the volts: practice.</summary>
[Trait("Source", "contactor.horsepower")]
public sealed class HorsepowerTests : ContactorAspectTests<Horsepower, HorsepowerFacet>
{
    [Theory]
    [InlineData("motorPower=7-1/2 hp; loadVolts=230 V; loadPhase=3", "Meets")]
    [InlineData("motorPower=7.6 hp; loadVolts=230 V; loadPhase=3", "Fails")]
    [InlineData("motorPower=10 hp; loadVolts=230 V; loadPhase=3", "Fails")]
    [InlineData("motorPower=10 hp; loadVolts=460 V; loadPhase=3", "Meets")]
    [InlineData("motorPower=7-1/2 hp; loadVolts=208 V; loadPhase=3", "Meets")]
    [InlineData("motorPower=10 hp; loadVolts=300 V; loadPhase=3", "Unknown Part threePhaseHorsepower")]
    [InlineData("motorPower=3 hp; loadVolts=230 V; loadPhase=1", "Unknown Part singlePhaseHorsepower")]
    [InlineData("motorPower=3 hp; loadVolts=230 V", "Unknown Site loadPhase")]
    [InlineData("motorPower=3 hp; loadPhase=3", "Unknown Site loadVolts")]
    [InlineData("", "Meets")]
    public void It_is_that_of_its_volts_and_phases(string site, string answer) => Answer("", site, "size=NEMA 1; poleCount=3P").ShouldBe(answer);
}
