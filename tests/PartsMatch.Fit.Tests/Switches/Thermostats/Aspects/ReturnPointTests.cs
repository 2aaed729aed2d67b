using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>5 and 10 °F: practice.</summary>
[Trait("Source", "thermostat.returnPoint")]
public sealed class ReturnPointTests : ThermostatAspectTests<ReturnPoint, TemperaturesFacet>
{
    [Theory]
    [InlineData("cutOut=55 °F; cutIn=40 °F", "Meets")]
    [InlineData("cutOut=55 °F; cutIn=39.9 °F", "Meets")]
    [InlineData("cutOut=55 °F; cutIn=40.1 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("cutOut=55 °F; cutIn=44.9 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("cutOut=55 °F; cutIn=45 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("cutOut=55 °F; cutIn=45.1 °F", "Fails")]
    [InlineData("cutOut=55 °F; cutIn=30 °F", "Meets")]
    [InlineData("cutOut=55 °F; cutIn=29.9 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("cutOut=55 °F; cutIn=25 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("cutOut=55 °F; cutIn=24.9 °F", "Fails")]
    [InlineData("action=opens on rise; cutOut=55 °F", "Unknown Part cutIn")]
    [InlineData("action=opens on rise; cutOut=55 °F; reset=manual", "Meets")]
    public void It_comes_back_where_the_old_one_did(string part, string answer) => Answer("function=defrost end; cutOut=55 °F; cutIn=35 °F", "", $"isAdjustable=no; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("cutOut=55 °F; cutIn=24.9 °F; range=20 to 80 °F", "Meets")]
    [InlineData("cutOut=55 °F; cutIn=24.9 °F", "Unknown Part isAdjustable")]
    public void One_that_can_be_set_or_may_be_is_not_turned_away(string part, string answer) => Answer("function=defrost end; cutOut=55 °F; cutIn=35 °F", "", part).ShouldBe(answer);

    [Theory]
    [InlineData("function=defrost end; cutOut=55 °F", "Unknown Plate action")]
    [InlineData("function=defrost end; cutIn=55 °F", "Unknown Plate action")]
    [InlineData("function=defrost end; action=opens on rise; cutOut=55 °F", "Unknown Site cutInNeeded")]
    [InlineData("cutOut=55 °F; cutIn=35 °F", "Unknown Plate function")]
    public void What_is_not_known_of_the_old_one_is_asked(string plate, string answer) => Answer(plate, "", "cutOut=55 °F; cutIn=35 °F").ShouldBe(answer);

    /// <summary>What is marked alike does the same on either side.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("sidesWired=both")]
    public void Its_twin_comes_back_where_the_old_one_did(string site)
    {
        const string twin = "function=box thermostat; action=change-over; isAdjustable=no; cutOut=37 °F; differential=8 °F";
        Answer(twin, site, twin).ShouldBe("Meets");
    }

    /// <summary>A fan delay opens on rise, whatever is counted of its other temperature by a differential.</summary>
    [Theory]
    [InlineData("function=fan delay; cutOut=45 °F")]
    [InlineData("function=fan delay; cutOut=45 °F; differential=20 °F")]
    public void What_is_read_of_a_defined_function_is_judged_whatever_is_counted(string plate) => Answer(plate, "", "action=opens on rise; isAdjustable=no; cutOut=60 °F").ShouldBe("Fails");

    /// <summary>What is counted by a differential turns nothing away.</summary>
    [Theory]
    [InlineData("function=box thermostat; action=change-over; cutOut=60 °F; differential=12 °F", "", "Unknown Site cutInNeeded")]
    [InlineData("function=box thermostat; action=change-over; cutOut=60 °F; differential=12 °F", "sidesWired=the one that opens on rise", "Meets")]
    [InlineData("function=box thermostat; action=change-over; cutOut=60 °F; differential=40 °F", "sidesWired=the one that opens on rise", "Unknown Plate cutIn")]
    [InlineData("function=fan delay; action=change-over; cutIn=48 °F; differential=40 °F", "", "Unknown Plate cutOut")]
    public void What_is_counted_turns_nothing_away(string plate, string site, string answer) => Answer(plate, site, "action=opens on rise; isAdjustable=no; cutOut=60 °F; cutIn=48 °F").ShouldBe(answer);

    /// <summary>A fixed one of 50 and 54 °F stops the cooling at the 50 °F that are needed; where it is to start again is to be asked, and is not the 39 °F that are marked.</summary>
    [Fact]
    public void Where_another_cut_out_is_needed_the_cut_in_is_asked() =>
        Answer("function=box thermostat; action=closes on rise; range=-30 to 90 °F; cutOut=35 °F; cutIn=39 °F", "cutOutNeeded=50 °F", "action=closes on rise; isAdjustable=no; cutOut=50 °F; cutIn=54 °F").ShouldBe("Unknown Site cutInNeeded");

    /// <summary>Of three wires the side that ends the defrost opens again below where it closes.</summary>
    [Theory]
    [InlineData("cutIn=55 °F", "cutIn=55 °F", "Unknown Site cutOutNeeded")]
    [InlineData("cutIn=55 °F; differential=25 °F", "cutIn=55 °F", "Unknown Part cutOut")]
    [InlineData("cutIn=55 °F; differential=25 °F", "cutIn=55 °F; cutOut=35.1 °F", "MeetsWithChanges checkSwitchingTemperature")]
    public void Of_three_wires_the_other_temperature_is_asked(string plate, string part, string answer) =>
        Answer($"function=fan delay and defrost end; {plate}", "", $"function=fan delay and defrost end; isAdjustable=no; {part}").ShouldBe(answer);
}
