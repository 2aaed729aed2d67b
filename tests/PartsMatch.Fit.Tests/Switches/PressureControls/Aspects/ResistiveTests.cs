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
}
