using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>A bulb for a bulb, a disc for a disc: practice.</summary>
[Trait("Source", "thermostat.formOfBulb")]
public sealed class FormOfBulbTests : ThermostatAspectTests<FormOfBulb, BulbFacet>
{
    [Theory]
    [InlineData("bulb=straight bulb", "bulb=straight bulb", "Meets")]
    [InlineData("bulb=straight bulb", "bulb=coiled bulb", "MeetsWithChanges mountBulb")]
    [InlineData("bulb=clip-on disc", "bulb=strap-on disc", "MeetsWithChanges mountBulb")]
    [InlineData("bulb=clip-on disc", "bulb=straight bulb", "MeetsWithChanges checkBulbPlace")]
    [InlineData("bulb=averaging capillary", "bulb=straight bulb", "Fails")]
    [InlineData("bulb=straight bulb", "bulb=averaging capillary", "Fails")]
    [InlineData("", "bulb=straight bulb", "Unknown Plate bulb")]
    [InlineData("bulb=straight bulb", "", "Unknown Part bulb")]
    public void It_feels_where_the_old_one_felt(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Fact]
    public void What_holds_it_is_brought() => Judge("bulb=clip-on disc", "", "bulb=strap-on disc").Changes.ShouldHaveSingleItem().Kit.ShouldHaveSingleItem().What.ShouldBe("strap for a disc thermostat");
}
