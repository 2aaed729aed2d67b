using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Cut-in less cut-out: practice; 2 and 5 °F: practice; 2 °F = 1.1 K, 5 °F = 2.8 K worked by hand.</summary>
[Trait("Source", "thermostat.differentialSpan")]
public sealed class DifferentialSpanTests : ThermostatAspectTests<DifferentialSpan, ThermostatDifferentialFacet>
{
    [Theory]
    [InlineData("39 °F", "3 to 36 °F", "Meets")]
    [InlineData("38 °F", "5 °F", "Meets")]
    [InlineData("38 °F", "5.1 °F", "MeetsWithChanges checkThermostatDifferential")]
    [InlineData("38 °F", "8 °F", "MeetsWithChanges checkThermostatDifferential")]
    [InlineData("38 °F", "8.1 °F", "Fails")]
    [InlineData("38 °F", "4.9 °F", "Meets")] // 3 °F between
    [InlineData("38 °F", "7.9 °F", "MeetsWithChanges checkThermostatDifferential")]
    [InlineData("45 °F", "8.1 °F", "Meets")] // 10 °F between, the low side of both limits
    [InlineData("45 °F", "8 °F", "Meets")]
    [InlineData("45 °F", "7.9 °F", "MeetsWithChanges checkThermostatDifferential")]
    [InlineData("45 °F", "5.1 °F", "MeetsWithChanges checkThermostatDifferential")]
    [InlineData("45 °F", "5 °F", "MeetsWithChanges checkThermostatDifferential")]
    [InlineData("45 °F", "4.9 °F", "Fails")]
    [InlineData("75 °F", "3 to 36 °F", "MeetsWithChanges checkThermostatDifferential")] // 40 °F between, 4 °F more than the most
    [InlineData("39 °F", "", "Unknown Part differential")]
    public void It_reaches_from_cut_out_to_cut_in(string cutIn, string differential, string answer) =>
        Answer("", $"cutOutNeeded=35 °F; cutInNeeded={cutIn}", $"range=20 to 80 °F{(differential.Length > 0 ? $"; differential={differential}" : "")}").ShouldBe(answer);

    [Theory]
    [InlineData("function=box thermostat; differential=3 to 10 °F", "range=20 to 80 °F; differential=3 to 36 °F", "Meets")]
    [InlineData("function=box thermostat; differential=3 to 10 °F", "range=20 to 80 °F; differential=4 to 36 °F", "Unknown Site cutOutNeeded")]
    [InlineData("function=box thermostat; cutOut=35 °F", "range=20 to 80 °F; differential=4 to 36 °F", "Unknown Site cutInNeeded")]
    [InlineData("function=box thermostat; differential=3 to 10 °F", "range=20 to 80 °F", "Unknown Part differential")]
    [InlineData("function=box thermostat", "cutOut=35 °F; cutIn=39 °F", "Meets")]
    [InlineData("function=low limit", "range=20 to 80 °F; reset=manual", "Meets")]
    public void Without_a_distance_it_holds_the_old_one(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    /// <summary>A differential of one figure is the distance, whichever way the contacts go; by it alone nothing is turned away.</summary>
    [Theory]
    [InlineData("action=change-over; cutOut=35 °F", "5 °F", "Meets")] // 1 °F off
    [InlineData("action=change-over; cutOut=35 °F", "8.9 °F", "MeetsWithChanges checkThermostatDifferential")]
    [InlineData("action=change-over; cutOut=35 °F", "12 °F", "Unknown Plate cutIn")]
    [InlineData("cutIn=39 °F", "12 °F", "Unknown Plate cutOut")]
    [InlineData("action=closes on rise; cutIn=39 °F", "12 °F", "Fails")]
    [InlineData("action=closes on rise", "12 °F", "Unknown Plate cutOut")]
    public void A_single_differential_is_the_distance(string plate, string differential, string answer) =>
        Answer($"function=box thermostat; differential=4 °F; {plate}", "", $"range=20 to 80 °F; differential={differential}").ShouldBe(answer);

    /// <summary>The old one's cut-in of 39 °F does not belong to another cut-out: its twin is not turned away by the 49 °F between.</summary>
    [Theory]
    [InlineData("action=change-over", "cutOutNeeded=-10 °F; sidesWired=the one that closes on rise", "Meets")]
    [InlineData("action=closes on rise", "cutOutNeeded=50 °F", "Meets")]
    [InlineData("action=closes on rise", "cutOutNeeded=-10 °F; cutInNeeded=39 °F", "Fails")] // who asks for it gets it
    public void Another_cut_out_is_not_paired_with_the_old_cut_in(string plate, string site, string answer)
    {
        const string marked = "function=box thermostat; range=-30 to 90 °F; differential=3.5 to 36 °F; cutOut=35 °F; cutIn=39 °F";
        Answer($"{marked}; {plate}", site, $"{marked}; {plate}").ShouldBe(answer);
    }

    /// <summary>A plate may have one temperature and the only differential: its twin has that, too, wherever it is to be set.</summary>
    [Theory]
    [InlineData("action=change-over; cutIn=39 °F", "cutOutNeeded=-10 °F; sidesWired=the one that closes on rise")]
    [InlineData("cutIn=39 °F", "cutOutNeeded=-10 °F")]
    [InlineData("cutOut=35 °F", "cutInNeeded=-6 °F")]
    public void A_twin_has_the_old_differential_wherever_it_is_to_be_set(string plate, string site)
    {
        const string marked = "function=box thermostat; range=-30 to 90 °F; differential=4 °F";
        Answer($"{marked}; {plate}", site, $"{marked}; {plate}").ShouldBe("Meets");
    }

    /// <summary>By a temperature that is counted for the side that is wired nothing is turned away: ranking has to know that the answer follows from that side.</summary>
    [Fact]
    public void What_is_counted_for_the_side_that_is_wired_follows_from_it()
    {
        Answer("function=box thermostat; action=change-over; cutOut=60 °F; differential=12 °F", "sidesWired=the one that opens on rise", "range=20 to 80 °F; differential=4 °F").ShouldBe("Unknown Plate cutIn");
        new DifferentialSpan().Fields.All.ShouldContain("sidesWired");
    }

    /// <summary>Both temperatures of the old one are marked; of those that are needed one is not known.</summary>
    [Theory]
    [InlineData("differential=3 to 30 °F", "Meets")]
    [InlineData("differential=20 °F", "Unknown Site cutOutNeeded")]
    public void Where_one_other_temperature_is_needed_the_second_is_asked(string part, string answer)
    {
        const string plate = "function=box thermostat; action=closes on rise; range=30 to 90 °F; cutOut=35 °F; cutIn=39 °F; differential=4 °F";
        Answer(plate, "cutInNeeded=0 °F", $"range=-20 to 40 °F; {part}").ShouldBe(answer);
        Judge(plate, "cutInNeeded=0 °F", $"range=-20 to 40 °F; {part}").Sentence.ShouldNotContain("not both marked");
    }
}
