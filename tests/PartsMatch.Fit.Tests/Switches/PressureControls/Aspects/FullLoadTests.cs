using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>Full-load amps at the volts: practice; 16 + 1.4 A worked by hand.</summary>
[Trait("Source", "pressureControl.fullLoad")]
public sealed class FullLoadTests : PressureControlAspectTests<FullLoad, FullLoadFacet>
{
    [Theory]
    [InlineData("motors=16/96 A; loadVolts=240 V", "Meets")]
    [InlineData("motors=16/96 + 1.4/7 A; loadVolts=240 V", "Fails")]
    [InlineData("motors=20/100 A; loadVolts=120 V", "Meets")]
    [InlineData("motors=20.1/100 A; loadVolts=120 V", "Fails")]
    [InlineData("coilsVa=20 VA; loadVolts=24 V", "Meets")]
    public void Motors_stay_within_it(string site, string answer) => Answer("", site, "ratedVolts=120/240 V; fullLoadAmps=20/16 A").ShouldBe(answer);

    /// <summary>Nobody marked the volts of 16 A: the old contact carried them at those there.</summary>
    [Theory]
    [InlineData("loadVolts=240 V", "ratedVolts=120/240 V; fullLoadAmps=20/16 A", "Meets")]
    [InlineData("loadVolts=240 V", "ratedVolts=120/240 V; fullLoadAmps=20/15.9 A", "Unknown Site motors")]
    [InlineData("loadVolts=120 V", "ratedVolts=120/240 V; fullLoadAmps=20/15.9 A", "Meets")]
    [InlineData("loadVolts=240 V", "fullLoadAmps=20 A", "Unknown Part ratedVolts")] // a part's are not taken
    [InlineData("", "ratedVolts=120/240 V; fullLoadAmps=20/16 A", "Unknown Plate ratedVolts")]
    public void Old_amps_without_volts_are_at_the_volts_there(string site, string part, string answer) => Answer("fullLoadAmps=16 A", site, part).ShouldBe(answer);
}
