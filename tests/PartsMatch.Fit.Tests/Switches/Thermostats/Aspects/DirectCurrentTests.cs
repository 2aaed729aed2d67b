using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Direct current by DC amps alone: practice.</summary>
[Trait("Source", "thermostat.directCurrent")]
public sealed class DirectCurrentTests : ThermostatAspectTests<DirectCurrent, EachContact<ContactAmpsFacet>>
{
    [Theory]
    [InlineData("", "heaterAmps=2 A; loadVolts=24 V", "directVolts=28 V; directAmps=2 A", "Meets")]
    [InlineData("", "heaterAmps=2.1 A; loadVolts=24 V", "directVolts=28 V; directAmps=2 A", "Fails")]
    [InlineData("", "heaterAmps=2 A; loadVolts=24 V", "ratedVolts=240 V; resistiveAmps=20 A", "Unknown Part directAmps")]
    [InlineData("function=fan delay and defrost end", "heaterAmps=2 A; loadVolts=24 V; fanMotors=2/2 A; fanVolts=24 V", "directVolts=28 V; directAmps=2 A", "Meets")]
    [InlineData("function=fan delay and defrost end", "heaterAmps=2 A; loadVolts=24 V; fanMotors=2.1/10 A; fanVolts=24 V", "directVolts=28 V; directAmps=2 A", "Fails")] // each of its contacts
    public void Its_amps_of_direct_current_count(string plate, string site, string part, string answer) => Answer(plate, $"loadCurrent=DC; {site}", part).ShouldBe(answer);

    /// <summary>Heaters at 1 A and fans at 2 A, both at 24 V. Of contacts that are not alike nobody knows whose the DC amps are: taken for those of the unmarked one, as its other ratings are (practice).</summary>
    [Theory]
    [InlineData("heaterAmps=1 A; fanMotors=2/2 A", "resistiveAmps=25 A; fullLoadAmps=8 A", "Meets")] // one set for both
    [InlineData("heaterAmps=1 A; fanMotors=2/2 A", "resistiveAmps=25 A; fullLoadAmps=8 A; fanFullLoadAmps=16 A", "Unknown Part directAmps")]
    [InlineData("heaterAmps=1 A; fanHeaterAmps=2 A", "resistiveAmps=25 A; fanResistiveAmps=25 A", "Unknown Part directAmps")]
    [InlineData("heaterAmps=2.1 A; fanMotors=2/2 A", "resistiveAmps=25 A; fullLoadAmps=8 A; fanFullLoadAmps=16 A", "Fails")]
    public void Given_once_they_say_nothing_of_fans_contacts_that_are_not_alike(string loads, string part, string answer) =>
        Answer("function=fan delay and defrost end", $"loadCurrent=DC; loadVolts=24 V; fanVolts=24 V; {loads}", $"function=fan delay and defrost end; directVolts=28 V; directAmps=2 A; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("fan delay and defrost end", "Unknown Part directAmps")]
    [InlineData("fan delay", "Unknown Part directAmps")]
    [InlineData("defrost end", "Meets")] // its side is the other
    public void A_single_function_takes_the_contact_of_its_own(string function, string answer) =>
        Answer($"function={function}", "loadCurrent=DC; loadVolts=24 V; heaterAmps=1 A; fanVolts=24 V; fanMotors=2/2 A", "function=fan delay and defrost end; directVolts=28 V; directAmps=2 A; fullLoadAmps=8 A; fanFullLoadAmps=16 A").ShouldBe(answer);

    [Fact]
    public void Why_they_stay_open_is_told() =>
        Judge("function=fan delay and defrost end", "loadCurrent=DC; loadVolts=24 V; heaterAmps=1 A; fanVolts=24 V; fanMotors=2/2 A", "function=fan delay and defrost end; directVolts=28 V; directAmps=2 A; fullLoadAmps=8 A; fanFullLoadAmps=16 A")
            .Sentence.ShouldEndWith("Its DC amps are given once, and its contacts are not alike: of the fans' they say nothing.");
}
