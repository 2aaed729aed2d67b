using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>5 and 10 °F: practice; 5 °F = 2.78 K and 10 °F = 5.56 K are written 2.8 and 5.6 K, worked by hand.</summary>
[Trait("Source", "thermostat.switchingPoint")]
public sealed class SwitchingPointTests : ThermostatAspectTests<SwitchingPoint, TemperaturesFacet>
{
    private const string Twin = "action=change-over; range=0 to 55 °F; differential=5 °F; cutOut=34 °F";
    private const string Fixed = "action=change-over; isAdjustable=no; cutOut=37 °F; differential=8 °F";

    [Theory]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=60 °F; cutIn=35 °F", "Meets")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=60.1 °F; cutIn=35 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=65 °F; cutIn=35 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=65.1 °F; cutIn=35 °F", "Fails")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=59.9 °F; cutIn=35 °F", "Meets")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=64.9 °F; cutIn=35 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=50.1 °F; cutIn=35 °F", "Meets")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=50 °F; cutIn=35 °F", "Meets")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=49.9 °F; cutIn=35 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=45.1 °F; cutIn=35 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=45 °F; cutIn=35 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "cutOut=44.9 °F; cutIn=35 °F", "Fails")]
    [InlineData("function=defrost end; cutOut=12.8 °C; cutIn=2 °C", "cutOut=15.6 °C; cutIn=2 °C", "Meets")]
    [InlineData("function=defrost end; cutOut=12.8 °C; cutIn=2 °C", "cutOut=15.7 °C; cutIn=2 °C", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("function=defrost end; cutOut=12.8 °C; cutIn=2 °C", "cutOut=18.4 °C; cutIn=2 °C", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("function=defrost end; cutOut=12.8 °C; cutIn=2 °C", "cutOut=18.5 °C; cutIn=2 °C", "Fails")]
    [InlineData("function=defrost end; cutIn=55 °F; cutOut=35 °F", "cutOut=35 °F; cutIn=60.1 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("function=fan delay; cutIn=25 °F; cutOut=45 °F", "cutIn=30 °F; cutOut=80 °F", "Meets")]
    [InlineData("function=fan delay; cutIn=25 °F; cutOut=45 °F", "cutIn=35.1 °F; cutOut=45 °F", "Fails")]
    [InlineData("function=low limit; cutOut=37 °F; cutIn=42 °F", "cutOut=31.9 °F; cutIn=42 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("function=high limit; cutOut=140 °F; reset=manual", "function=high limit; action=opens on rise; reset=manual; cutOut=145 °F", "Meets")]
    [InlineData("function=high limit; cutOut=140 °F", "function=high limit", "Unknown Part cutOut")]
    [InlineData("function=fan delay; cutOut=45 °F", "cutIn=25 °F; cutOut=45 °F", "Unknown Site cutInNeeded")]
    [InlineData("cutOut=45 °F; cutIn=25 °F", "cutIn=25 °F; cutOut=45 °F", "Unknown Plate function")]
    public void Fixed_temperatures_meet_within_5_and_are_checked_within_10_degrees_fahrenheit(string plate, string part, string answer) => Answer(plate, "", $"isAdjustable=no; {part}").ShouldBe(answer);

    /// <summary>A defrost end may open or close on rise: of the one temperature that its plate names it is asked which way, not for the temperature again.</summary>
    [Theory]
    [InlineData("cutIn=55 °F", "isAdjustable=no; action=closes on rise; cutIn=55 °F; cutOut=35 °F", "Unknown Plate action")]
    [InlineData("cutOut=55 °F", "isAdjustable=no; action=closes on rise; cutIn=55 °F; cutOut=35 °F", "Unknown Plate action")]
    [InlineData("cutIn=55 °F; range=30 to 60 °F", "range=40 to 80 °F", "Unknown Plate action")]
    [InlineData("cutIn=55 °F; range=30 to 60 °F", "range=30 to 80 °F", "MeetsWithChanges setThermostat")]
    [InlineData("", "isAdjustable=no; action=closes on rise; cutIn=55 °F; cutOut=35 °F", "Unknown Site cutInNeeded")]
    public void Of_a_temperature_that_is_known_it_is_asked_which_way_contacts_move_there(string plate, string part, string answer) => Answer($"function=defrost end; {plate}", "", part).ShouldBe(answer);

    /// <summary>Of a record that does not say whether it can be set it is not taken that it cannot.</summary>
    [Theory]
    [InlineData("cutOut=60 °F; cutIn=35 °F", "Meets")]
    [InlineData("cutOut=65 °F; cutIn=35 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("cutOut=65.1 °F; cutIn=35 °F", "Unknown Part isAdjustable")]
    [InlineData("cutOut=65.1 °F; cutIn=35 °F; bulb=strap-on disc", "Fails")] // a disc has nothing to be set by
    [InlineData("cutOut=65.1 °F; cutIn=35 °F; isAdjustable=yes", "Unknown Part range")]
    public void What_may_be_set_is_not_turned_away(string part, string answer) => Answer("function=defrost end; cutOut=55 °F; cutIn=35 °F", "", part).ShouldBe(answer);

    /// <summary>One temperature of two is told apart by what the contacts do, or by the other one of change-over contacts.</summary>
    [Theory]
    [InlineData("cutOut=145 °F", "Unknown Part action")]
    [InlineData("action=opens on rise; cutOut=145 °F", "Meets")]
    [InlineData("action=change-over; cutOut=145 °F", "Unknown Part cutIn")]
    [InlineData("action=change-over; cutOut=145 °F; cutIn=115 °F", "Meets")]
    [InlineData("action=change-over; cutIn=115 °F", "Unknown Part cutOut")]
    public void What_tells_which_temperature_it_is_is_asked(string part, string answer) => Answer("function=high limit; cutOut=140 °F", "", $"isAdjustable=no; {part}").ShouldBe(answer);

    /// <summary>A box thermostat of which one temperature is known is taken for one for cold; nothing fails by that.</summary>
    [Theory]
    [InlineData("function=box thermostat; cutOut=35 °F", "cutOut=38 °F; cutIn=60 °F; action=closes on rise", "Meets")]
    [InlineData("function=box thermostat; cutOut=35 °F", "cutOut=20 °F; cutIn=37 °F; action=closes on rise", "Unknown Plate action")] // 37 °F on rise would do for heat
    [InlineData("function=box thermostat; action=closes on rise; cutOut=35 °F", "cutOut=20 °F; cutIn=37 °F; action=closes on rise", "Fails")]
    [InlineData("function=box thermostat; cutOut=35 °F", "cutOut=46 °F; cutIn=60 °F; action=closes on rise", "Fails")] // either way
    [InlineData("function=box thermostat; action=closes on rise; cutOut=35 °F", "cutOut=46 °F; cutIn=60 °F; action=closes on rise", "Fails")]
    [InlineData("function=box thermostat; cutOut=35 °F; cutIn=39 °F", "cutOut=46 °F; cutIn=60 °F; action=closes on rise", "Fails")]
    [InlineData("function=box thermostat; cutOut=35 °F; differential=4 °F", "cutOut=46 °F; cutIn=60 °F; action=closes on rise", "Fails")]
    [InlineData("function=box thermostat; cutOut=35 °F", "range=46 to 80 °F; isAdjustable=yes", "Fails")] // it cannot be set there for heat either
    [InlineData("function=fan delay; cutIn=25 °F", "cutIn=40 °F; cutOut=60 °F; action=opens on rise", "Fails")] // no fan delay closes on rise
    public void What_is_taken_to_be_for_cold_turns_nothing_away(string plate, string part, string answer) => Answer(plate, "", part.Contains("isAdjustable", StringComparison.Ordinal) ? part : $"isAdjustable=no; {part}").ShouldBe(answer);

    /// <summary>Of change-over contacts one temperature is enough where only one side is wired.</summary>
    [Theory]
    [InlineData("", "Unknown Site sidesWired")]
    [InlineData("cutInNeeded=44 °F", "Meets")]
    [InlineData("sidesWired=the one that closes on rise", "Meets")]
    [InlineData("sidesWired=the one that opens on rise", "MeetsWithChanges checkSwitchingTemperature")] // 8 °F off
    public void The_side_that_is_wired_tells_which_temperature_it_is(string site, string answer) =>
        Answer("function=box thermostat; action=change-over; cutOut=37 °F", site, "action=closes on rise; isAdjustable=no; cutOut=38 °F; cutIn=45 °F").ShouldBe(answer);

    /// <summary>Whichever of its sides is wired: what can move there at neither of its temperatures is turned away.</summary>
    [Theory]
    [InlineData("isAdjustable=no; cutOut=48 °F; cutIn=60 °F", "Fails")]
    [InlineData("isAdjustable=no; cutOut=20 °F; cutIn=47 °F", "Unknown Site sidesWired")] // 10 °F off on rise
    [InlineData("isAdjustable=no; cutOut=48 °F", "Unknown Site sidesWired")]
    [InlineData("range=48 to 80 °F", "Fails")]
    [InlineData("range=47 to 80 °F", "Unknown Site sidesWired")]
    public void What_moves_there_on_neither_side_fails(string part, string answer) =>
        Answer("function=box thermostat; action=change-over; cutOut=37 °F", "", $"action=closes on rise; {part}").ShouldBe(answer);

    /// <summary>A differential is counted as the side that is wired moves, and as most do only where nothing tells: by what is counted nothing is turned away.</summary>
    [Theory]
    [InlineData("action=change-over; cutOut=60 °F; differential=12 °F", "sidesWired=the one that opens on rise", "action=opens on rise; cutOut=60 °F; cutIn=48 °F", "Meets")]
    [InlineData("cutOut=60 °F; differential=12 °F", "sidesWired=the one that opens on rise", "action=opens on rise; cutOut=60 °F; cutIn=48 °F", "Meets")]
    [InlineData("action=change-over; cutOut=35 °F; differential=4 °F", "", "action=closes on rise; cutOut=20 °F; cutIn=37 °F", "Unknown Site sidesWired")]
    [InlineData("action=change-over; cutOut=35 °F; differential=4 °F", "", "action=closes on rise; cutOut=46 °F; cutIn=60 °F", "Fails")] // on either side
    [InlineData("cutOut=35 °F; differential=4 °F", "", "action=closes on rise; cutOut=20 °F; cutIn=37 °F", "Unknown Plate action")]
    public void A_differential_is_counted_by_the_side_that_is_wired(string plate, string site, string part, string answer) =>
        Answer($"function=box thermostat; {plate}", site, $"isAdjustable=no; {part}").ShouldBe(answer);

    /// <summary>A plate may name where its usual side moves, though the other one is wired.</summary>
    [Theory]
    [InlineData("function=box thermostat; action=change-over; cutOut=37 °F", "the one that opens on rise", "action=opens on rise; cutOut=60 °F; cutIn=38 °F", "Unknown Plate cutIn")]
    [InlineData("function=box thermostat; action=change-over; cutOut=37 °F", "the one that opens on rise", "action=opens on rise; cutOut=60 °F; cutIn=48 °F", "Fails")] // on neither side
    [InlineData("function=box thermostat; action=opens on rise; cutOut=37 °F", "the one that opens on rise", "action=opens on rise; cutOut=60 °F; cutIn=38 °F", "Fails")]
    [InlineData("function=box thermostat; action=change-over; cutOut=37 °F; cutIn=40 °F", "the one that opens on rise", "action=opens on rise; cutOut=60 °F; cutIn=38 °F", "Meets")] // on fall
    [InlineData("function=defrost end; action=change-over; cutIn=55 °F", "the one that closes on rise", "action=closes on rise; cutOut=55 °F; cutIn=75 °F", "Unknown Plate cutOut")]
    [InlineData("function=box thermostat; action=change-over; cutOut=37 °F", "both", "action=change-over; cutOut=38 °F; cutIn=45 °F", "Unknown Site cutInNeeded")]
    [InlineData("function=box thermostat; action=change-over; cutOut=37 °F", "both", "action=change-over; cutOut=48 °F; cutIn=60 °F", "Fails")] // neither side moves there
    public void One_temperature_may_be_of_the_side_that_is_not_wired(string plate, string wired, string part, string answer) =>
        Answer(plate, $"sidesWired={wired}", $"isAdjustable=no; {part}").ShouldBe(answer);

    /// <summary>A wired side is named of contacts that change over; whether they do is asked where it is not marked.</summary>
    [Theory]
    [InlineData("", "Unknown Plate action")]
    [InlineData("action=opens on rise", "Fails")]
    [InlineData("action=change-over", "Unknown Plate cutIn")]
    public void Whether_there_is_another_side_is_asked_first(string plate, string answer) =>
        Answer($"function=defrost end; cutOut=55 °F; {plate}", "sidesWired=the one that opens on rise", "action=opens on rise; isAdjustable=no; cutOut=100 °F; cutIn=80 °F").ShouldBe(answer);

    /// <summary>Change-over contacts that are set as the old ones were, or move at the very same by the same differential, do the same on either side.</summary>
    [Theory]
    [InlineData(Twin, "", Twin, "MeetsWithChanges setThermostat")]
    [InlineData(Twin, "sidesWired=both", Twin, "MeetsWithChanges setThermostat")]
    [InlineData(Twin, "", "action=change-over; range=34 to 90 °F; differential=3 to 30 °F", "MeetsWithChanges setThermostat")]
    [InlineData(Twin, "", "action=change-over; range=35 to 90 °F; differential=3 to 30 °F", "Unknown Site sidesWired")]
    [InlineData(Twin, "sidesWired=both", "action=change-over; range=0 to 55 °F; differential=7 °F", "MeetsWithChanges setThermostat")] // 2 °F off
    [InlineData(Twin, "sidesWired=both", "action=change-over; range=0 to 55 °F; differential=7.1 °F", "Unknown Site cutInNeeded")]
    [InlineData(Twin, "sidesWired=both", "action=change-over; range=0 to 55 °F", "Unknown Site cutInNeeded")]
    [InlineData(Twin, "", "action=closes on rise; range=0 to 55 °F; differential=5 °F", "Unknown Site sidesWired")]
    [InlineData(Twin, "cutOutNeeded=38 °F", Twin, "Unknown Site sidesWired")]
    [InlineData(Twin, "cutOutNeeded=40 °F", Twin, "Unknown Site sidesWired")] // not as the old one was set
    [InlineData(Fixed, "", Fixed, "Meets")]
    [InlineData(Fixed, "sidesWired=both", Fixed, "Meets")]
    [InlineData(Fixed, "sidesWired=the one that closes on rise", Fixed, "Meets")]
    [InlineData(Fixed, "sidesWired=the one that opens on rise", Fixed, "Meets")]
    [InlineData(Fixed, "", "action=change-over; isAdjustable=no; cutOut=38 °F; differential=8 °F", "Unknown Site sidesWired")]
    [InlineData(Fixed, "", "action=change-over; isAdjustable=no; cutIn=37 °F; differential=8 °F", "Unknown Site sidesWired")]
    [InlineData(Fixed, "", "action=change-over; isAdjustable=no; cutOut=37 °F; cutIn=45 °F; differential=8 °F", "Unknown Site sidesWired")] // on rise the old one may move at 37 °F
    [InlineData(Fixed, "", "action=change-over; isAdjustable=no; cutOut=37 °F; differential=12 °F", "Unknown Site sidesWired")]
    [InlineData(Fixed, "", "action=change-over; isAdjustable=no; cutOut=37 °F", "Unknown Site sidesWired")]
    [InlineData("action=change-over; isAdjustable=no; cutIn=45 °F; differential=8 °F", "", "action=change-over; isAdjustable=no; cutIn=45 °F; differential=8 °F", "Meets")]
    public void Its_twin_does_the_same_on_either_side(string plate, string site, string part, string answer) =>
        Answer($"function=box thermostat; {plate}", site, $"function=box thermostat; {part}").ShouldBe(answer);

    [Fact]
    public void A_twin_is_set_as_the_old_one_was() =>
        Judge($"function=box thermostat; {Twin}", "sidesWired=both", $"function=box thermostat; {Twin}").Changes.ShouldHaveSingleItem().Text.ShouldBe("set it as the old one was set");

    /// <summary>Contacts move on rise at the higher of their two temperatures, whatever they are said to do: one like the old one does for it.</summary>
    [Theory]
    [InlineData("function=high limit; cutOut=115 °F; cutIn=140 °F", "cutOut=115 °F; cutIn=140 °F", "Meets")]
    [InlineData("function=high limit; cutOut=115 °F; cutIn=140 °F", "cutOut=140 °F; cutIn=115 °F", "Meets")]
    [InlineData("function=high limit; cutOut=115 °F; cutIn=140 °F", "action=opens on rise; cutOut=115 °F; cutIn=90 °F", "Fails")]
    [InlineData("function=high limit; action=closes on rise; cutOut=115 °F; cutIn=140 °F", "action=closes on rise; cutOut=115 °F; cutIn=140 °F", "Meets")]
    [InlineData("function=high limit; action=opens on rise; cutOut=115 °F; cutIn=140 °F", "action=opens on rise; cutOut=115 °F; cutIn=140 °F", "Meets")]
    [InlineData("function=high limit; action=closes on rise; cutOut=115 °F; differential=25 °F", "action=closes on rise; cutOut=115 °F; cutIn=140 °F", "Meets")]
    [InlineData("function=high limit; action=closes on rise; cutOut=115 °F", "action=closes on rise; cutOut=115 °F; cutIn=140 °F", "Unknown Plate action")] // it opens on rise as a high limit
    [InlineData("function=high limit; cutOut=115 °F", "action=closes on rise; cutOut=115 °F; cutIn=140 °F", "Fails")]
    [InlineData("function=fan delay; cutOut=25 °F; cutIn=45 °F", "cutOut=25 °F; cutIn=45 °F", "Meets")]
    public void Both_temperatures_outrank_the_function(string plate, string part, string answer) => Answer(plate, "", $"isAdjustable=no; {part}").ShouldBe(answer);

    /// <summary>What a defrost end closes at may be where the defrost ends, or where it may begin again.</summary>
    [Fact]
    public void Nothing_fails_by_a_temperature_that_may_be_that_of_the_return() =>
        Answer("function=defrost end; action=change-over; cutIn=37 °F", "", "action=closes on rise; isAdjustable=no; cutOut=48 °F; cutIn=60 °F").ShouldBe("Unknown Site sidesWired");

    /// <summary>A limit or a fan delay of which one temperature is known moves by its function, whatever its plate says besides, and any by where it opens and closes.</summary>
    [Theory]
    [InlineData("function=low limit; action=change-over; cutOut=37 °F", "Meets")]
    [InlineData("function=low limit; action=opens on rise; cutOut=37 °F", "Meets")]
    [InlineData("function=box thermostat; action=opens on rise; cutOut=37 °F; cutIn=44 °F", "Meets")] // which is complained of
    [InlineData("function=low limit; cutOut=37 °F; differential=7 °F", "Meets")]
    [InlineData("function=low limit; cutIn=64 °F; differential=7 °F", "Unknown Plate action")] // a cut-out of 57 °F is counted one way only
    public void A_function_tells_which_temperature_it_is(string plate, string answer) => Answer(plate, "", "action=closes on rise; isAdjustable=no; cutOut=38 °F; cutIn=45 °F").ShouldBe(answer);

    [Fact]
    public void Of_three_wires_the_other_temperature_is_asked() =>
        Answer("function=fan delay and defrost end; cutOut=40 °F", "", "function=fan delay and defrost end; cutIn=55 °F; cutOut=40 °F").ShouldBe("Unknown Site cutInNeeded");

    /// <summary>Of three wires the side that ends the defrost closes on rise: its one temperature is where that ends.</summary>
    [Theory]
    [InlineData("cutIn=55 °F", "", "cutIn=55 °F", "Meets")]
    [InlineData("cutIn=55 °F", "", "cutIn=60.1 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("cutIn=55 °F", "", "cutIn=65.1 °F", "Fails")]
    [InlineData("cutIn=55 °F", "sidesWired=both", "cutIn=65.1 °F", "Fails")]
    [InlineData("cutIn=55 °F; differential=25 °F", "", "cutIn=55 °F; cutOut=30 °F", "Meets")]
    [InlineData("cutIn=55 °F; cutOut=30 °F", "", "cutIn=55 °F", "Meets")]
    [InlineData("cutIn=55 °F", "", "cutOut=40 °F", "Unknown Part cutIn")]
    public void Of_three_wires_the_cut_in_alone_tells_where_the_defrost_ends(string plate, string site, string part, string answer) =>
        Answer($"function=fan delay and defrost end; {plate}", site, $"function=fan delay and defrost end; isAdjustable=no; {part}").ShouldBe(answer);

    /// <summary>The same side does for a defrost end alone.</summary>
    [Fact]
    public void A_defrost_end_is_replaced_by_three_wires_of_one_temperature() =>
        Answer("function=defrost end; action=closes on rise; cutIn=55 °F", "", "function=fan delay and defrost end; cutIn=55 °F").ShouldBe("Meets");

    [Fact]
    public void An_answer_that_rests_on_what_was_taken_says_so() =>
        Judge("function=box thermostat; cutOut=35 °F", "", "cutOut=38 °F; cutIn=42 °F; action=closes on rise").Sentence.ShouldEndWith("What the old ones do is not marked: closes on rise is taken.");

    [Theory]
    [InlineData("cutOutNeeded=20 °F", "range=20 to 80 °F", "MeetsWithChanges setThermostat")]
    [InlineData("cutOutNeeded=15 °F", "range=20 to 80 °F", "MeetsWithChanges setThermostat")]
    [InlineData("cutOutNeeded=14.9 °F", "range=20 to 80 °F", "MeetsWithChanges setThermostat checkSwitchingTemperature")]
    [InlineData("cutOutNeeded=10 °F", "range=20 to 80 °F", "MeetsWithChanges setThermostat checkSwitchingTemperature")]
    [InlineData("cutOutNeeded=9.9 °F", "range=20 to 80 °F", "Fails")]
    [InlineData("cutOutNeeded=35 °F", "range=20 to 80 °F; cutOut=36 °F; cutIn=39 °F", "Meets")]
    [InlineData("cutOutNeeded=35 °F", "isAdjustable=yes; cutOut=45 °F; cutIn=49 °F", "Unknown Part range")]
    public void One_that_can_be_set_is_set(string site, string part, string answer) => Answer("function=box thermostat", site, $"function=box thermostat; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("range=0 to 55 °F", "range=-30 to 90 °F", "MeetsWithChanges setThermostat")]
    [InlineData("range=0 to 55 °F", "range=0 to 55 °F", "MeetsWithChanges setThermostat")]
    [InlineData("range=0 to 55 °F", "range=1 to 90 °F", "Unknown Site cutOutNeeded")]
    [InlineData("range=0 to 55 °F", "cutOut=35 °F", "Unknown Site cutOutNeeded")]
    [InlineData("", "range=-30 to 90 °F", "Unknown Site cutOutNeeded")]
    public void Without_a_setting_the_range_holds_the_old_one(string plate, string part, string answer) => Answer($"function=box thermostat; {plate}", "", $"function=box thermostat; {part}").ShouldBe(answer);

    /// <summary>Where something else is needed than the old one is marked with it is not set as that was. The temperature that is not known lies on the other side of the one that is: what cannot be set within 10 °F (practice) of any such is turned away.</summary>
    [Theory]
    [InlineData("cutInNeeded=0 °F", "range=30 to 90 °F", "Fails")]
    [InlineData("cutInNeeded=0 °F", "range=10.1 to 90 °F", "Fails")]
    [InlineData("cutInNeeded=0 °F", "range=10 to 90 °F", "Unknown Site cutOutNeeded")]
    [InlineData("cutInNeeded=0 °F", "range=-30 to 90 °F", "Unknown Site cutOutNeeded")]
    [InlineData("cutInNeeded=80 °F", "range=-30 to 20 °F", "Unknown Site cutOutNeeded")] // it may stop the cooling at any lower one
    [InlineData("cutInNeeded=40 °F", "range=30 to 90 °F", "MeetsWithChanges setThermostat")] // within 5 °F of what is marked
    [InlineData("cutInNeeded=0 °F; cutOutNeeded=-4 °F", "range=30 to 90 °F", "Fails")]
    public void Where_something_else_is_needed_it_is_not_set_as_the_old_one_was(string site, string part, string answer) =>
        Answer("function=box thermostat; action=closes on rise; range=30 to 90 °F; cutOut=35 °F; cutIn=39 °F", site, $"function=box thermostat; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("range=0 to 60 °F", "Unknown Site cutInNeeded")]
    [InlineData("range=65.1 to 90 °F", "Fails")]
    [InlineData("range=65 to 90 °F", "Unknown Site cutInNeeded")]
    public void A_fan_delay_is_to_start_the_fans_below_where_it_stops_them(string part, string answer) =>
        Answer("function=fan delay; range=0 to 60 °F; cutIn=20 °F; cutOut=40 °F", "cutOutNeeded=55 °F", $"function=fan delay; {part}").ShouldBe(answer);

    /// <summary>By the old one's only differential the other temperature is counted, and by what is counted none is turned away: 0 °F less 4 °F.</summary>
    [Theory]
    [InlineData("range=-20 to 40 °F", "MeetsWithChanges setThermostat")]
    [InlineData("range=1 to 40 °F", "MeetsWithChanges setThermostat")] // 5 °F off
    [InlineData("range=1.1 to 40 °F", "MeetsWithChanges setThermostat checkSwitchingTemperature")]
    [InlineData("range=6.1 to 40 °F", "Unknown Site cutOutNeeded")]
    [InlineData("range=10.1 to 40 °F", "Fails")]
    public void The_other_temperature_is_counted_by_the_old_differential(string part, string answer) =>
        Answer("function=box thermostat; action=closes on rise; range=30 to 90 °F; cutOut=35 °F; cutIn=39 °F; differential=4 °F", "cutInNeeded=0 °F", $"function=box thermostat; {part}").ShouldBe(answer);

    [Fact]
    public void What_is_needed_of_one_that_was_marked_with_nothing_is_not_what_it_was_set_to() =>
        Answer("function=box thermostat; action=closes on rise; range=0 to 55 °F", "cutInNeeded=39 °F", "function=box thermostat; range=-30 to 90 °F").ShouldBe("Unknown Site cutOutNeeded");

    [Theory]
    [InlineData("function=fan delay; cutIn=25 °F; cutOut=45 °F", "Meets")]
    [InlineData("function=fan delay; cutIn=35.1 °F; cutOut=45 °F", "MeetsWithChanges checkSwitchingTemperature")]
    [InlineData("function=defrost end; action=closes on rise; cutIn=55 °F; cutOut=40 °F", "Meets")]
    public void Three_wires_have_a_pair_for_either(string plate, string answer) =>
        Answer(plate, "", "function=fan delay and defrost end; cutIn=55 °F; cutOut=40 °F; fanCutIn=28 °F; fanCutOut=45 °F").ShouldBe(answer);

    [Theory]
    [InlineData("55 °F", 0)]
    [InlineData("58 °F", 0.3)]
    [InlineData("60 °F", 0.5)]
    [InlineData("65 °F", 1)]
    public void What_is_further_off_costs_more(string cutOut, double shortfall) =>
        Judge("function=defrost end; cutOut=55 °F; cutIn=35 °F", "", $"cutOut={cutOut}; cutIn=35 °F").Shortfall.ShouldBe(shortfall, 0.01); // of 10 °F

    [Fact]
    public void The_change_names_the_temperature() =>
        Judge("function=box thermostat", "cutOutNeeded=35 °F; cutInNeeded=39 °F", "function=box thermostat; range=20 to 80 °F").Changes.ShouldHaveSingleItem().Text.ShouldBe("set it so that its contacts move at 35 °F (1.7 °C) on fall");

    /// <summary>Cooling stops as it gets colder, whatever the old one is marked with.</summary>
    [Fact]
    public void Another_cut_out_does_not_turn_the_contacts_round() =>
        Judge("function=box thermostat; action=closes on rise; cutOut=35 °F; cutIn=39 °F", "cutOutNeeded=50 °F", "function=box thermostat; action=closes on rise; range=-30 to 90 °F").Changes.ShouldHaveSingleItem().Text.ShouldBe("set it so that its contacts move at 50 °F (10 °C) on fall");
}
