using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Resistive amps for heaters, and nothing else: IEC 60947-4-1 table 1, published; 6000 W / 240 V = 25 A worked by hand.</summary>
[Trait("Source", "thermostat.resistive")]
public sealed class ResistiveTests : ThermostatAspectTests<Resistive, EachContact<ContactAmpsFacet>>
{
    [Theory]
    [InlineData("heaterPower=6 kW; loadVolts=240 V; loadPhase=single-phase", "resistiveAmps=25 A", "Meets")]
    [InlineData("heaterAmps=25.1 A; loadVolts=240 V", "resistiveAmps=25 A", "Fails")]
    [InlineData("heaterAmps=5 A; loadVolts=240 V", "fullLoadAmps=30 A", "Unknown Part resistiveAmps")]
    public void Heaters_ask_for_resistive_amps(string site, string part, string answer) => Answer("", site, $"ratedVolts=240 V; {part}").ShouldBe(answer);

    /// <summary>6000 / 208 = 28.846; × 240 / 208 = 33.28. 6000 / (√3 × 208) = 16.654; × 240 / 208 = 19.22: worked by hand.</summary>
    [Theory]
    [InlineData("single-phase", "33.28 A", "Meets")]
    [InlineData("single-phase", "33.27 A", "Fails")]
    [InlineData("three-phase", "19.22 A", "Meets")]
    [InlineData("three-phase", "19.21 A", "Fails")]
    public void Heaters_made_for_208_volts_take_more_on_240(string phase, string amps, string answer) =>
        Answer("", $"heaterPower=6 kW; heaterOwnVolts=208 V; loadVolts=240 V; loadPhase={phase}", $"ratedVolts=240 V; resistiveAmps={amps}").ShouldBe(answer);

    private const string ThreeWires = "function=fan delay and defrost end";

    /// <summary>Both sets at one supply: 25 A end the defrost, 10 A run with the fans.</summary>
    private const string Part = $"{ThreeWires}; ratedVolts=240 V; resistiveAmps=25 A; fanFullLoadAmps=8 A; fanResistiveAmps=10 A";

    [Theory]
    [InlineData("heaterAmps=25 A; loadVolts=240 V; fanHeaterAmps=10 A; fanVolts=240 V", "Meets")]
    [InlineData("heaterAmps=25.1 A; loadVolts=240 V; fanHeaterAmps=10 A; fanVolts=240 V", "Fails")]
    [InlineData("heaterAmps=25 A; loadVolts=240 V; fanHeaterAmps=10.1 A; fanVolts=240 V", "Fails")] // the other contact's 25 A are nothing to it
    [InlineData("heaterAmps=25 A; loadVolts=240 V; fanHeaterAmps=10 A", "Unknown Site fanVolts")]
    [InlineData("heaterAmps=25 A; loadVolts=240 V; fanMotors=8/40 A; fanVolts=240 V", "Meets")] // what is named of the fans' contacts is all
    [InlineData("fanHeaterAmps=10 A; fanVolts=240 V", "Meets")]
    public void With_three_wires_each_contact_carries_its_own_heaters(string site, string answer) => Answer(ThreeWires, site, Part).ShouldBe(answer);

    [Theory]
    [InlineData("function=fan delay", "heaterAmps=10 A; loadVolts=240 V", "Meets")]
    [InlineData("function=fan delay", "heaterAmps=10.1 A; loadVolts=240 V", "Fails")]
    [InlineData("function=defrost end", "heaterAmps=25 A; loadVolts=240 V", "Meets")]
    [InlineData("function=defrost end", "heaterAmps=25.1 A; loadVolts=240 V", "Fails")]
    [InlineData("", "heaterAmps=10 A; loadVolts=240 V", "Meets")] // on either
    [InlineData("", "heaterAmps=20 A; loadVolts=240 V", "Unknown Plate function")]
    public void In_place_of_one_function_alone_the_contact_that_does_it_counts(string plate, string site, string answer) => Answer(plate, site, Part).ShouldBe(answer);

    [Theory]
    [InlineData("fanFullLoadAmps=8 A", "Unknown Part fanResistiveAmps")]
    [InlineData("lockedRotorAmps=40 A", "Meets")] // one set stands for both
    public void A_part_whose_fans_contacts_are_not_marked_for_heaters_is_open(string part, string answer) =>
        Answer("function=fan delay", "heaterAmps=10 A; loadVolts=240 V", $"{ThreeWires}; ratedVolts=240 V; resistiveAmps=25 A; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("ratedVolts=240 V; resistiveAmps=25 A", "Meets")] // which are those of what ends the defrost
    [InlineData("ratedVolts=240 V; resistiveAmps=25 A; fanResistiveAmps=10 A", "Meets")]
    [InlineData("ratedVolts=240 V; resistiveAmps=25 A; fanResistiveAmps=10.1 A", "Unknown Site fanHeaterAmps")]
    [InlineData("ratedVolts=240 V; resistiveAmps=25.1 A", "Unknown Site heaterAmps")]
    public void Where_nobody_named_them_the_old_ones_rating_is_enough(string old, string answer) => Answer($"{ThreeWires}; {old}", "", Part).ShouldBe(answer);
}
