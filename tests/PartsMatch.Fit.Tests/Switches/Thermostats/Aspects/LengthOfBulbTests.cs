using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>No longer than there is room for, or than the old one was: practice.</summary>
[Trait("Source", "thermostat.lengthOfBulb")]
public sealed class LengthOfBulbTests : ThermostatAspectTests<LengthOfBulb, BulbLengthFacet>
{
    [Theory]
    [InlineData("", "bulbRoom=4 in", "bulbLength=4 in", "Meets")]
    [InlineData("", "bulbRoom=4 in", "bulbLength=4.1 in", "Fails")]
    [InlineData("", "bulbRoom=4 in", "bulbLength=3.9 in", "Meets")]
    [InlineData("bulbLength=3 in", "bulbRoom=4 in", "bulbLength=4 in", "Meets")] // the room counts, not the old one
    [InlineData("bulbLength=5 in", "bulbRoom=4 in", "bulbLength=4.1 in", "Fails")]
    [InlineData("", "bulbRoom=4 in", "", "Unknown Part bulbLength")]
    [InlineData("bulbLength=4 in", "", "bulbLength=4 in", "Meets")]
    [InlineData("bulbLength=4 in", "", "bulbLength=3 in", "Meets")]
    [InlineData("bulbLength=4 in", "", "bulbLength=4.1 in", "Unknown Site bulbRoom")]
    [InlineData("bulbLength=4 in", "", "", "Unknown Part bulbLength")]
    [InlineData("", "", "bulbLength=4 in", "Unknown Site bulbRoom")]
    [InlineData("", "bulbRoom=1 in", "bulb=strap-on disc", "Meets")]
    [InlineData("", "bulbRoom=1 in", "bulb=averaging capillary", "Meets")]
    public void It_goes_in_where_the_old_one_was(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
