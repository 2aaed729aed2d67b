using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>Resistive amps by themselves: IEC 60947-4-1 table 1 (published).</summary>
[Trait("Source", "pressureControl.resistive")]
public sealed class ResistiveTests : PressureControlAspectTests<Resistive, ContactAmpsFacet>
{
    [Theory]
    [InlineData("heaterAmps=22 A; loadVolts=240 V", "resistiveAmps=22 A", "Meets")]
    [InlineData("heaterAmps=22.1 A; loadVolts=240 V", "resistiveAmps=22 A", "Fails")]
    [InlineData("heaterAmps=10 A; loadVolts=240 V", "fullLoadAmps=22 A", "Unknown Part resistiveAmps")]
    public void Heaters_stay_within_them(string site, string part, string answer) => Answer("", site, $"ratedVolts=240 V; {part}").ShouldBe(answer);

    /// <summary>6000 / 208 = 28.846; × 240 / 208 = 33.28. 6000 / (√3 × 208) = 16.654; × 240 / 208 = 19.22: worked by hand.</summary>
    [Theory]
    [InlineData("single-phase", "33.28 A", "Meets")]
    [InlineData("single-phase", "33.27 A", "Fails")]
    [InlineData("three-phase", "19.22 A", "Meets")]
    [InlineData("three-phase", "19.21 A", "Fails")]
    public void Heaters_made_for_208_volts_take_more_on_240(string phase, string amps, string answer) =>
        Answer("", $"heaterPower=6 kW; heaterOwnVolts=208 V; loadVolts=240 V; loadPhase={phase}", $"ratedVolts=240 V; resistiveAmps={amps}").ShouldBe(answer);
}
