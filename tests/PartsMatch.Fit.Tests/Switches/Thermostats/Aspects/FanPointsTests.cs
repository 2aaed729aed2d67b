using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>5 and 10 °F: practice.</summary>
[Trait("Source", "thermostat.fanPoints")]
public sealed class FanPointsTests : ThermostatAspectTests<FanPoints, TemperaturesFacet>
{
    private const string Old = "function=fan delay and defrost end; cutIn=55 °F; cutOut=40 °F; ";

    [Theory]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=30 °F; fanCutOut=45 °F", "Meets")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=30.1 °F; fanCutOut=45 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=29.9 °F; fanCutOut=44.9 °F", "Meets")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=35 °F; fanCutOut=45 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=35.1 °F; fanCutOut=45 °F", "Fails")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=20 °F; fanCutOut=35 °F", "Meets")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=19.9 °F; fanCutOut=35 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=15 °F; fanCutOut=35 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=14.9 °F; fanCutOut=35 °F", "Fails")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=25 °F; fanCutOut=45.1 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=25 °F; fanCutOut=50 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=25 °F; fanCutOut=50.1 °F", "Fails")]
    [InlineData(Old + "fanCutIn=25 °F", "fanCutIn=25 °F; fanCutOut=50.1 °F", "Meets")]
    [InlineData(Old + "fanCutIn=25 °F", "", "Unknown Part fanCutIn")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=25 °F", "Unknown Part fanCutOut")]
    [InlineData(Old + "fanCutIn=25 °F; fanCutOut=40 °F", "fanCutIn=36 °F", "Fails")]
    [InlineData(Old, "fanCutIn=25 °F", "Unknown Site fanCutInNeeded")]
    [InlineData("function=fan delay", "", "Meets")]
    [InlineData("", "", "Unknown Plate function")]
    public void The_fans_start_where_they_did(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
